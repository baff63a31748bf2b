import { type Condition, caution, choice, quantity, result, step } from '../calculation.js';
import { secondMethod } from '../cautions/salinity.js';
import { calculation } from '../define.js';
import { absoluteSalinityStep, againstReef, sampleTemperature } from '../inputs/salinity.js';
import { seawaterConductivity } from '../inputs/seawater-conductivity.js';

const ruleKnown: Condition = { all: [{ is: ['reading', 'compensated_25'] }, { given: 'compensation' }] };
const asMeasured: Condition = { is: ['reading', 'actual'] };
const atSampleTemperature: Condition = { any: [asMeasured, ruleKnown] };

export const salinityFromConductivity = calculation({
  id: 'salinity.from_conductivity',
  slash: 'salinity from-conductivity',
  title: 'Salinity from a conductivity reading',
  question: 'What salinity does this conductivity stand for?',
  part: 'water',
  cues: [
    'conductivity',
    'salinity from conductivity',
    'conductivity probe',
    'conductivity meter',
    'meter shows',
    'meter reads',
    'ms/cm',
    'us/cm',
    'µs/cm',
    'millisiemens',
    'microsiemens',
  ],
  inputs: {
    conductivity: quantity('conductivity', {
      symbol: 'C',
      name: 'conductivity',
      words: ['conductivity', 'reads', 'shows', 'reading', 'meter', 'probe', 'ec'],
      range: [1, 80, 'mS/cm'],
      usual: [20, 70, 'mS/cm'],
      slips: [
        [1000, 100_000, 'That looks like µS/cm: 53,000 µS/cm is 53 mS/cm.'],
        [0, 1, 'Water that conducts so little is nearly fresh; 5.3 S/m is 53 mS/cm.'],
      ],
      ask: 'Which conductivity does the meter show?',
      example: '53 mS/cm',
    }),
    reading: choice({
      name: 'kind of reading',
      ask: 'Does the meter show the conductivity as it is, or corrected to 25 °C (most pocket meters correct, and say ATC)?',
      options: {
        actual: {
          label: 'as it is, not corrected',
          words: ['uncompensated', 'not compensated', 'not corrected', 'uncorrected', 'raw', 'without compensation'],
        },
        compensated_25: {
          label: 'corrected to 25 °C',
          words: [
            'compensated',
            'temperature compensated',
            'compensated to 25',
            'already compensated',
            'corrected to 25',
            'automatic temperature compensation',
            'atc',
            'specific conductance',
          ],
        },
      },
    }),
    temperature: quantity('temperature', {
      ...sampleTemperature,
      range: [-2, 35, 'degC'],
      needed: { any: [asMeasured, { given: 'compensation' }] },
    }),
    compensation: quantity('temperature coefficient', {
      symbol: 'alpha',
      name: 'correction the meter applies, per degree',
      words: ['per degree', 'compensates', 'compensation', 'coefficient', 'per k', '% per'],
      range: [0, 0.03, '1/K'],
      slips: [[0.5, 3, 'Write it with the per cent sign: 2 % per degree.']],
      needed: false,
      ask: 'By how much per degree does the meter correct? Its manual says.',
      example: '2 % per degree',
    }),
  },
  constants: seawaterConductivity,
  steps: [
    step(
      'C_T',
      'C*(1 + alpha*(T - celsius(25)))',
      'conductivity',
      'conductivity at the sample’s temperature, the correction taken back',
      ruleKnown,
    ),
    step('R', 'C_T/C_0', 'ratio', 'conductivity over that of salinity 35 at 15 °C'),
    step('R', 'C/C_0', 'ratio', 'conductivity over that of salinity 35 at 15 °C'),
    step('R_t', 'R/r_t(T)', 'ratio', 'conductivity over that of salinity 35 as warm', atSampleTemperature),
    step('R_t', 'R/r_t(celsius(25))', 'ratio', 'conductivity over that of salinity 35 at 25 °C'),
    step('S', 'S_of_ratio(R_t, T)', 'salinity', 'practical salinity', atSampleTemperature),
    step('S', 'S_of_ratio(R_t, celsius(25))', 'salinity', 'practical salinity'),
    absoluteSalinityStep,
  ],
  results: {
    salinity: result('S', 'salinity', 'salinity', {
      range: [2, 42, 'g/kg'],
      because:
        'The salinity comes out outside 2 to 42 ppt, where the practical salinity scale holds. Check the unit of the conductivity and whether the meter corrects for temperature.',
    }),
    absolute_salinity: result('S_A', 'salinity', 'true mass of salt', { decimals: 2 }),
    conductivity_ratio: result('R', 'ratio', 'conductivity over that of salinity 35 at 15 °C', { figures: 5 }),
  },
  headline: againstReef('{conductivity} reads as {salinity}'),
  cautions: [
    caution(
      'caution',
      'That is far from any reef. If the display said ppt, the number is the salinity already; 5.3 S/m is 53 mS/cm.',
      { any: ['S < 0.01', 'C >= 3 and C <= 3.8'] },
    ),
    caution(
      'caution',
      'Taken as corrected by seawater’s own rule, 1.9 to 2.0 % per degree. A meter that corrects by a fresh-water rule of 2.1 to 2.2 % shows about 0.4 ppt too much at 20 °C and 0.3 too little at 30 °C: tell me its rule and the water’s temperature.',
      { all: [{ is: ['reading', 'compensated_25'] }, { not: { given: 'compensation' } }] },
    ),
    caution('note', 'The correction that you gave is not used: the reading was said to be uncorrected.', {
      all: [asMeasured, { given: 'compensation' }],
    }),
    caution(
      'caution',
      'Correct for temperature once only: a reading corrected to 25 °C but taken as raw at 20 °C comes out 4 ppt too high. A degree of error in the temperature is 0.8 ppt.',
      asMeasured,
    ),
    caution(
      'note',
      'Rinse the cell, shake off bubbles, and check it in a standard near 53 mS/cm at the tank’s temperature. A TDS scale in ppm is for tap water, never for seawater.',
    ),
    secondMethod,
  ],
  sources: [
    'conductivity of salinity 35 at 15 °C 42.914 mS/cm: the usual constant (from memory)',
    'reference composition: Millero et al. 2008',
  ],
  examples: [
    'my conductivity meter shows 53 mS/cm uncompensated at 25 C, what salinity is that',
    'conductivity probe reads 51.7 mS/cm, temperature compensated to 25',
    '50200 uS/cm raw conductivity at 76F, is my salinity ok?',
  ],
});
