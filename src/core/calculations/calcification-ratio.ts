import { type Condition, caution, quantity, result, step } from '../calculation.js';
import { oneStrangeReading } from '../cautions/chemistry.js';
import { day } from '../constants.js';
import { calculation } from '../define.js';
import { alkalinity } from '../inputs/alkalinity.js';
import { calcium, MOLAR_MASS_SOURCE, sodiumChloride } from '../molar-masses.js';

const measured: Condition = { given: 'calcium_measured' };
/** A fifth either way, about what two kits differ by. */
const LOW = 'q < 0.8';
const HIGH = 'q > 1.2';

export const calcificationRatio = calculation({
  id: 'calcification.ratio',
  slash: 'water calcium-used',
  title: 'Calcium that goes with alkalinity',
  question:
    'How much calcium do corals use with an amount of alkalinity, and how much salt does two-part dosing leave?',
  part: 'chemistry',
  cues: [
    'calcium used',
    'calcium goes with',
    'calcium for',
    'calcium is used',
    'calcium per dkh',
    'ratio of calcium',
    'calcium to alkalinity',
    'calcium to alk ratio',
    'two part',
    'two-part',
    'balanced dosing',
    'salt from dosing',
    'salinity creep',
    'calcification',
    'salt does two part',
    'two part leave',
    'alk used',
    'alkalinity used',
    'normal calcium to alkalinity',
    'normal ratio',
    'with the alkalinity',
  ],
  inputs: {
    alkalinity_used: quantity('alkalinity', {
      ...alkalinity,
      symbol: 'dA',
      name: 'alkalinity used',
      words: ['alkalinity used', 'alk used', 'used', 'uses', 'alkalinity', 'alk', 'dkh'],
      range: [0, 200, 'dKH'],
      usual: [0.2, 20, 'dKH'],
      aboveLow: true,
      slips: [],
      default: { formula: 'r*t' },
      needed: { not: { given: 'alkalinity_per_day' } },
      ask: 'How much alkalinity was used, or dosed to make up for it?',
      example: '1 dKH',
    }),
    alkalinity_per_day: quantity('alkalinity rate', {
      symbol: 'r',
      name: 'alkalinity used a day',
      words: ['uses', 'a day', 'per day', 'daily'],
      range: [0, 10, 'dKH/day'],
      aboveLow: true,
      needed: false,
      ask: 'How much alkalinity does the tank use a day?',
      example: '1 dKH a day',
    }),
    days: quantity('time', {
      symbol: 't',
      name: 'days of that',
      words: ['for', 'over', 'after', 'days of', 'a month'],
      range: [1, 400, 'day'],
      units: { metric: 'day', us: 'day' },
      default: { value: 30, unit: 'day', why: 'a month', when: { given: 'alkalinity_per_day' } },
      needed: false,
      ask: 'For how many days?',
      example: '30 days',
    }),
    calcium_measured: quantity('dissolved', {
      symbol: 'C',
      name: 'calcium used by the test',
      words: ['calcium', 'calcium used', 'calcium fell', 'calcium dropped', 'ca'],
      range: [0, 1500, 'mg/L'],
      usual: [2, 200, 'mg/L'],
      needed: false,
      ask: 'How much calcium was used in the same time?',
      example: '7 ppm',
    }),
  },
  constants: { day, M_Ca: calcium, M_NaCl: sodiumChloride },
  steps: [
    step('c', 'dA*M_Ca/2', 'dissolved', 'calcium, one for two equivalents in CaCO₃'),
    step(
      's',
      'dA*M_NaCl',
      'dissolved',
      'sodium chloride that chloride and bicarbonate dosing leaves, two for each CaCO₃',
    ),
    step('q', 'C/c', 'ratio', 'calcium measured over calcium expected'),
  ],
  results: {
    calcium_used: result('c', 'dissolved', 'calcium used'),
    sodium_chloride_left: result('s', 'dissolved', 'sodium chloride left by two-part dosing'),
    measured_over_expected: result('q', 'ratio', 'calcium measured over expected', { figures: 2 }),
  },
  headline: [
    {
      text: 'Less calcium went than the {calcium_used} that {dA} takes ({measured_over_expected} of it): likeliest a test is off, or alkalinity went elsewhere, to nitrification or precipitation.',
      when: LOW,
    },
    {
      text: 'More calcium went than the {calcium_used} that {dA} takes ({measured_over_expected} times): likeliest a test is off, or water was changed.',
      when: HIGH,
    },
    {
      text: 'In proportion: {dA} takes {calcium_used} of calcium, and you measured {calcium_measured}.',
      when: measured,
    },
    {
      text: '{dA} of alkalinity takes {calcium_used} of calcium with it; two-part dosing that makes up for both leaves {sodium_chloride_left} of table salt.',
    },
  ],
  cautions: [
    caution(
      'caution',
      'That much salt lifts the salinity by more than half a ppt: check it monthly and swap water when it creeps.',
      's > 0.5',
    ),
    caution('note', 'Magnesium in the skeletons takes 5 to 10 % of calcium’s place (common practice).'),
    oneStrangeReading,
  ],
  sources: ['stoichiometry of calcium carbonate; two-part dosing by chlorides', MOLAR_MASS_SOURCE],
  examples: [
    'how much calcium is used with 1 dKH of alkalinity',
    'how much salt does two part leave if my tank uses 1 dKH a day',
    'alk used 3 dKH and calcium dropped 35 ppm, is that a normal calcium to alkalinity ratio',
  ],
});
