import { caution, quantity, result, step } from '../calculation.js';
import { oneStrangeReading } from '../cautions/chemistry.js';
import { calculation } from '../define.js';
import { alkalinity } from '../inputs/alkalinity.js';
import { MOLAR_MASS_SOURCE } from '../molar-masses.js';

const CACO3 = { metric: 'mg/L CaCO3', us: 'mg/L CaCO3' };
const MEQ = { metric: 'meq/L', us: 'meq/L' };
/** The habit of reef keepers, 7 to 9 dKH, with half of the last figure that is shown. */
const HABIT_LOW = 'A < 2.49478';
const HABIT_HIGH = 'A > 3.21165';

export const alkalinityUnits = calculation({
  id: 'alkalinity.units',
  slash: 'water alkalinity',
  title: 'Alkalinity in other units',
  question: 'What is an alkalinity in dKH, meq/L and mg/L as calcium carbonate?',
  part: 'chemistry',
  cues: [
    'dkh in ppm',
    'alk # in',
    'alkalinity # in',
    'alkalinity of # in',
    'dkh to ppm',
    'dkh to meq',
    'ppm to dkh',
    'meq to dkh',
    'meq in dkh',
    'dkh in meq',
    'convert alkalinity',
    'convert dkh',
    'alkalinity units',
    'in dkh',
    'in meq',
    'as caco3',
    'dkh the same',
    'alkalinity the same',
    'ppm alkalinity',
    'alkalinity of',
    'is alk',
    'is alkalinity',
    'alk high',
    'alk low',
    'alkalinity high',
    'alkalinity low',
    'my alk',
    'my alkalinity',
    'alk in',
    'alk is',
    'alkalinity is',
    'alk too',
    'kh is',
    '~alkalinity',
    '~alk',
    '~dkh',
    '~meq',
  ],
  inputs: {
    alkalinity,
    alkalinity_ppm: quantity('dissolved', {
      symbol: 'C',
      name: 'alkalinity as mg/L of calcium carbonate',
      words: ['alkalinity', 'alk', 'ppm', 'caco3'],
      range: [0, 550, 'mg/L'],
      usual: [70, 260, 'mg/L'],
      standsFor: 'alkalinity',
      needed: false,
      ask: 'What is the alkalinity in mg/L as calcium carbonate?',
      example: '140 ppm',
    }),
  },
  oneOf: [['alkalinity'], ['alkalinity_ppm']],
  constants: { M_c: { value: 0.100086, unit: 'kg/mol', name: 'molar mass of calcium carbonate, two equivalents' } },
  steps: [
    step('A', '2*C/M_c', 'alkalinity', 'alkalinity, two equivalents in each calcium carbonate'),
    step('c', 'A*M_c/2', 'dissolved', 'the calcium carbonate that has this alkalinity'),
  ],
  results: {
    alkalinity_dkh: result('A', 'alkalinity', 'in German degrees'),
    alkalinity_meq: result('A', 'alkalinity', 'in milliequivalents', { units: MEQ }),
    alkalinity_caco3: result('A', 'alkalinity', 'as calcium carbonate', { units: CACO3 }),
  },
  headline: [
    {
      text: '{alkalinity_dkh} is {alkalinity_meq} or {alkalinity_caco3}: below the 7 to 9 dKH that reefs are usually kept at (common practice).',
      when: HABIT_LOW,
    },
    {
      text: '{alkalinity_dkh} is {alkalinity_meq} or {alkalinity_caco3}: above the 7 to 9 dKH that reefs are usually kept at (common practice).',
      when: HABIT_HIGH,
    },
    {
      text: '{alkalinity_dkh} is {alkalinity_meq} or {alkalinity_caco3}: within the 7 to 9 dKH that reefs are usually kept at (common practice).',
    },
  ],
  cautions: [
    caution('note', 'A figure in mg/L or ppm is counted as calcium carbonate, as kits print it.', {
      given: 'alkalinity_ppm',
    }),
    caution(
      'note',
      'mg/L as CaCO₃ is not mg/L of bicarbonate: bicarbonate weighs 1.22 times as much for the same alkalinity.',
    ),
    oneStrangeReading,
  ],
  sources: ['definition: one German degree is 10 mg/L of CaO, two equivalents each', MOLAR_MASS_SOURCE],
  examples: [
    'what is 8 dKH in ppm',
    'is 2.5 meq/L alkalinity high, whats that in dkh',
    'my kit says 125 ppm alkalinity',
  ],
});
