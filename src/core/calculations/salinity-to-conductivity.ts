import { caution, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { salinityKept } from '../inputs/salinity.js';
import { seawaterConductivity } from '../inputs/seawater-conductivity.js';
import { waterTemperature } from '../inputs/system-water.js';

const { default: _, ...askedTemperature } = waterTemperature;

export const salinityToConductivity = calculation({
  id: 'salinity.to_conductivity',
  slash: 'salinity to-conductivity',
  title: 'What a conductivity meter should show',
  question: 'Which conductivity belongs to this salinity at this temperature?',
  part: 'water',
  cues: [
    'conductivity for',
    'how many millisiemens',
    'should my meter show',
    'should the meter read',
    'what ms',
    'what conductivity',
    'which conductivity',
    'conductivity of',
    'conductivity should',
    'meter show',
    'meter read',
    'probe show',
    'probe read',
    'salinity to conductivity',
    'ppt in ms',
    'what ms/cm',
    'conductivity at',
    'conductivity does',
    'conductivity has',
    'psu to ms',
    'ppt to ms',
    'psu in ms',
    'ppt to conductivity',
    'ppt in conductivity',
    'psu to conductivity',
    'which ec',
    'what ec',
    'ec for',
    'ec at',
    'ec of # ppt',
    'how many ms',
    'what should my probe',
    'should my probe',
    'should the probe',
    'should my meter',
    'probe should',
    'meter should',
    'millisiemens should',
    'to ms cm',
    'to ms',
    'in ms',
    '~conductivity',
  ],
  inputs: {
    salinity: quantity('salinity', { ...salinityKept, range: [2, 42, 'g/kg'] }),
    temperature: quantity('temperature', { ...askedTemperature, range: [-2, 35, 'degC'] }),
  },
  constants: seawaterConductivity,
  steps: [
    step('R_t', 'ratio_of_S(S, T)', 'ratio', 'conductivity over that of salinity 35 at the same temperature'),
    step('R', 'R_t*r_t(T)', 'ratio', 'conductivity over that of salinity 35 at 15 °C'),
    step('C', 'R*C_0', 'conductivity', 'conductivity at the water’s temperature'),
    step('R_25', 'ratio_of_S(S, celsius(25))*r_t(celsius(25))', 'ratio', 'the same ratio at 25 °C'),
    step('C_25', 'R_25*C_0', 'conductivity', 'conductivity at 25 °C'),
  ],
  results: {
    conductivity: result('C', 'conductivity', 'conductivity at the water’s temperature'),
    conductivity_at_25: result('C_25', 'conductivity', 'what a meter that corrects to 25 °C should show'),
    conductivity_ratio: result('R', 'ratio', 'conductivity over that of salinity 35 at 15 °C', { figures: 5 }),
  },
  headline: [
    { text: 'Water of {salinity} conducts {conductivity} at {temperature}.', when: 'abs(T - celsius(25)) < 0.05' },
    {
      text: 'Water of {salinity} conducts {conductivity} at {temperature}; a meter that corrects to 25 °C should show {conductivity_at_25}.',
    },
  ],
  cautions: [
    caution(
      'note',
      'A meter set to a fresh-water rule (2.1 to 2.2 % per degree) shows a little more than this below 25 °C and a little less above.',
    ),
    caution('note', 'Near 35 ppt, 1 mS/cm is 0.74 ppt.', 'S >= 0.03 and S <= 0.04'),
  ],
  sources: ['conductivity of salinity 35 at 15 °C 42.914 mS/cm: the usual constant (from memory)'],
  examples: ['what conductivity should my meter show at 35 ppt and 78F', 'which conductivity is 33 ppt at 24 C'],
});
