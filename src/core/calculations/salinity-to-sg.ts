import { caution, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { salinityKept } from '../inputs/salinity.js';
import { gravityScale, gravityTemperature, referenceTemperature, scaleAssumed } from '../inputs/specific-gravity.js';

export const salinityToSg = calculation({
  id: 'salinity.to_sg',
  slash: 'salinity to-sg',
  title: 'Specific gravity of a salinity',
  question: 'Which specific gravity belongs to this salinity?',
  part: 'water',
  cues: [
    'on the sg scale',
    'what on the sg',
    'as sg',
    'what sg',
    'which sg',
    'what specific gravity',
    'which specific gravity',
    'ppt in sg',
    'ppt to sg',
    'salinity to sg',
    'salinity to specific gravity',
    'in specific gravity',
    'in sg',
  ],
  inputs: {
    salinity: salinityKept,
    scale: gravityScale('temperature', 'reference_temperature'),
    temperature: gravityTemperature,
    reference_temperature: referenceTemperature,
  },
  steps: [
    step('rho', 'rho_sw(S, T)', 'density', 'density of the water'),
    step('rho_ref', 'rho_w(T_ref)', 'density', 'density of the pure water compared with'),
    step('SG', 'rho/rho_ref', 'specific gravity', 'specific gravity'),
    step(
      'SG_4',
      'rho_sw(S, celsius(20))/rho_w(celsius(4))',
      'specific gravity',
      'the same water on a scale of 20 °C over 4 °C',
      scaleAssumed,
    ),
    step('T_60', 'celsius((60 - 32)/1.8)', 'temperature', '60 °F', scaleAssumed),
    step('SG_60', 'rho_sw(S, T_60)/rho_w(T_60)', 'specific gravity', 'the same water on a scale of 60/60 °F'),
  ],
  results: {
    specific_gravity: result('SG', 'specific gravity', 'specific gravity', { low: 'SG_4', high: 'SG_60' }),
    density: result('rho', 'density', 'density, which has no convention'),
    reference_density: result('rho_ref', 'density', 'density of the pure water compared with'),
  },
  headline: [
    {
      text: 'Water of {salinity} has a specific gravity of {specific_gravity} at {temperature} over pure water of {reference_temperature}, the scale I assume; it is {SG_60} on a 60/60 °F scale and {SG_4} on a 20 °C over 4 °C one.',
      when: scaleAssumed,
    },
    {
      text: 'Water of {salinity} has a specific gravity of {specific_gravity}, at {temperature} over pure water of {reference_temperature}.',
    },
  ],
  cautions: [
    caution(
      'note',
      'A specific gravity means nothing without its two temperatures: look for them on the instrument (60/60 °F, 20/4) and tell me.',
      scaleAssumed,
    ),
    caution('note', 'One thousandth of specific gravity is 1.3 ppt, so read it to four decimals.'),
  ],
  sources: ['specific gravity as a ratio of two densities (definition)'],
  examples: [
    'what sg is 35 ppt',
    '33 ppt to sg on a 60/60 F hydrometer scale',
    'which specific gravity is 35 psu at 77F',
  ],
});
