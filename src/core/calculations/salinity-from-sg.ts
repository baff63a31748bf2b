import { caution, result, step } from '../calculation.js';
import { secondMethod } from '../cautions/salinity.js';
import { calculation } from '../define.js';
import { againstReef, densityRules } from '../inputs/salinity.js';
import {
  gravity,
  gravityScale,
  gravityTemperature,
  referenceTemperature,
  scaleAssumed,
} from '../inputs/specific-gravity.js';

export const salinityFromSg = calculation({
  id: 'salinity.from_sg',
  slash: 'salinity from-sg',
  title: 'Salinity from a specific gravity',
  question: 'What salinity does this specific gravity stand for?',
  part: 'water',
  cues: [
    'sg is what ppt',
    'in ppt',
    'sg',
    'specific gravity',
    'sg to ppt',
    'sg to salinity',
    'sg in ppt',
    'salinity from sg',
    'what salinity is sg',
    'what salinity is a specific gravity',
    'how many ppt',
    'what ppt',
    'which ppt',
    'in psu',
    'to psu',
    'to ppt',
    'how salty',
    'what salinity',
    'which salinity',
    'how much salinity',
    '~gravity',
    'gravity of #',
    'gravity #',
    'sg #',
    'sg of #',
    'gravity to salinity',
    'gravity to ppt',
    'gravity in ppt',
    'convert sg',
    'is # ok',
  ],
  inputs: {
    specific_gravity: gravity,
    scale: gravityScale('temperature', 'reference_temperature'),
    temperature: gravityTemperature,
    reference_temperature: referenceTemperature,
  },
  rules: densityRules('specific_gravity'),
  steps: [
    step('rho_ref', 'rho_w(T_ref)', 'density', 'density of the pure water compared with'),
    step('rho', 'SG*rho_ref', 'density', 'density of the water'),
    step('S', 'S_of_density(rho, T)', 'salinity', 'salinity with that density'),
    step('T_60', 'celsius((60 - 32)/1.8)', 'temperature', '60 °F', scaleAssumed),
    step('S_60', 'S_of_density(SG*rho_w(T_60), T_60)', 'salinity', 'the same digits on a scale of 60/60 °F'),
    step(
      'S_4',
      'S_of_density(SG*rho_w(celsius(4)), celsius(20))',
      'salinity',
      'the same digits on a scale of 20 °C over 4 °C',
      scaleAssumed,
    ),
  ],
  results: {
    salinity: result('S', 'salinity', 'salinity', { range: [0, 42, 'g/kg'], low: 'S_60', high: 'S_4' }),
    density: result('rho', 'density', 'density, which has no convention'),
  },
  headline: [
    {
      text: 'A specific gravity of {specific_gravity} is {salinity} at {temperature} over pure water of {reference_temperature}, the scale I assume; the same digits are {S_60} on a 60/60 °F scale and {S_4} on a 20 °C over 4 °C one.',
      when: scaleAssumed,
    },
    ...againstReef(
      'A specific gravity of {specific_gravity}, at {temperature} over pure water of {reference_temperature}, is {salinity}',
    ),
  ],
  cautions: [
    caution(
      'caution',
      'Which instrument is it, and which pair of temperatures is printed on it (60/60 °F, 20/4)? A wrong pair costs up to 4 ppt.',
      scaleAssumed,
    ),
    caution(
      'note',
      'A floating hydrometer read in water of another temperature than its own needs a correction as well: see salinity hydrometer.',
    ),
    caution('note', 'One thousandth of specific gravity is 1.3 ppt, so read it to four decimals.'),
    secondMethod,
  ],
  sources: ['specific gravity as a ratio of two densities (definition)'],
  examples: [
    'what salinity is sg 1.025',
    'specific gravity 1.0264 on a 20/4 scale, how many ppt',
    'sg 1.0235 at 20/20, salinity?',
  ],
});
