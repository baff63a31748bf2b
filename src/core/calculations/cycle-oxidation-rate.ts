import { caution, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { ammoniaForm, kitZero, totalAmmonia } from '../inputs/nitrogen.js';

const SEEN = 'b > 0';
const UNSEEN = 'b <= 0';
/** Above about 1 mg/L bacteria work at their full pace; below, in proportion to what is there. */
const HIGH = 'b >= 0.001';
const LOW = 'a <= 0.001';

export const cycleOxidationRate = calculation({
  id: 'cycle.oxidation_rate',
  slash: 'cycle rate',
  title: 'How fast ammonia is used',
  question: 'How fast do the bacteria use ammonia, from two readings with no dose between?',
  part: 'cycle',
  cues: [
    'how fast are my bacteria',
    'bacteria work',
    'how much per day',
    'ammonia # to #',
    'what rate',
    'dosed # ppm # after',
    '# after # day rate',
    'ammonia went',
    'hours later',
    '24 hours later',
    'ammonia went from',
    'ammonia dropped',
    'ammonia dropped from',
    'ammonia fell',
    'ammonia from',
    'how fast is ammonia',
    'oxidation rate',
    'nitrification rate',
    'ammonia per day',
    'process ammonia',
    'processing ammonia',
    'ammonia processed',
    'eat ammonia',
    'half life',
    'half-life',
  ],
  inputs: {
    first_reading: quantity('dissolved', {
      ...totalAmmonia,
      name: 'ammonia at the first test',
      words: ['from', 'first', 'was', 'started at', 'dosed to', 'went from', 'dropped from', 'ammonia'],
      aboveLow: true,
      ask: 'What did the first ammonia test read?',
      example: '2 ppm',
    }),
    second_reading: quantity('dissolved', {
      ...totalAmmonia,
      symbol: 'b',
      name: 'ammonia at the second test',
      words: ['to', 'second', 'now', 'down to', 'then', 'after', 'today', 'later', 'next day'],
      ask: 'What did the second ammonia test read?',
      example: '0.5 ppm',
    }),
    elapsed: quantity('time', {
      symbol: 't',
      name: 'time between the tests',
      words: ['in', 'over', 'after', 'later', 'within', 'apart'],
      range: [0, 60, 'day'],
      aboveLow: true,
      usual: [0.2, 10, 'day'],
      ask: 'How long after the first test was the second?',
      example: '24 h or 1 day',
    }),
    kit_step: quantity('dissolved', {
      symbol: 'c',
      name: 'lowest step of the kit',
      words: ['lowest step', 'kit step', 'kit reads down to', 'resolution'],
      range: [0.005, 1, 'mg/L'],
      usual: [0.01, 0.5, 'mg/L'],
      default: { value: 0.25, unit: 'mg/L', why: 'common colour charts', when: UNSEEN },
      needed: false,
      ask: 'What is the lowest step above zero that your kit shows?',
      example: '0.25 ppm',
    }),
    ammonia_form: ammoniaForm,
  },
  rules: [
    {
      refuse: 'b > a',
      because:
        'The second reading is higher though nothing was dosed: was something added, did something die, or were the two swapped?',
      about: 'second_reading',
    },
    {
      refuse: 'b <= 0 and c >= a',
      because:
        'The first reading is no more than the lowest step of the kit, so its zero tells nothing: start from a dose of 2 mg/L.',
      about: 'first_reading',
    },
  ],
  steps: [
    step('r', 'f_a*(a - b)/t', 'dissolved rate', 'ammonia used, straight line', SEEN),
    step('k', 'ln(a/b)/t', 'rate constant', 'share used, in proportion to what is there', SEEN),
    step('h', 'ln(2)/k', 'time', 'time in which it halves', SEEN),
    step('r_least', 'f_a*(a - c)/t', 'dissolved rate', 'ammonia used, at least', UNSEEN),
    step('k_least', 'ln(a/c)/t', 'rate constant', 'share used, at least', UNSEEN),
    step('h_most', 'ln(2)/k_least', 'time', 'time in which it halves, at most', UNSEEN),
  ],
  results: {
    rate_zero_order: result('r', 'dissolved rate', 'ammonia used a day'),
    rate_constant_first_order: result('k', 'rate constant', 'share used, rate constant'),
    half_life: result('h', 'time', 'time in which it halves'),
    rate_at_least: result('r_least', 'dissolved rate', 'ammonia used a day, at least'),
    rate_constant_at_least: result('k_least', 'rate constant', 'rate constant, at least'),
    half_life_at_most: result('h_most', 'time', 'time in which it halves, at most'),
  },
  headline: [
    { text: 'Nothing was used: both readings are the same.', when: 'a <= b' },
    {
      text: 'At least {rate_at_least} of ammonia: zero only means less than {c}, so test sooner after the next dose.',
      when: UNSEEN,
    },
    { text: 'The bacteria use {rate_zero_order} of ammonia, at their full pace.', when: HIGH },
    {
      text: 'At this low level the ammonia halves every {half_life}, {rate_zero_order} on average; more ammonia would go faster.',
      when: LOW,
    },
    {
      text: 'The bacteria used {rate_zero_order} of ammonia on average, slower towards the end: their full pace is at least that.',
    },
  ],
  cautions: [
    caution('caution', 'No dose, water change or feeding may lie between the two readings.'),
    caution(
      'note',
      'Several readings after one dose tell more than two: cycle rate-from-log fits a line through them.',
    ),
    { ...kitZero, when: UNSEEN },
    caution('note', 'Counted as nitrogen: a kit that prints NH₃ reads 1.22 times as much, NH₄ 1.29 times.', {
      assumed: 'ammonia_form',
    }),
  ],
  sources: [
    'definitions: slope of a straight line, and of an exponential decay',
    'limit of about 1 mg/L: common practice',
  ],
  examples: [
    'ammonia went from 2 ppm to 0.5 ppm in 24 hours',
    'how fast is ammonia processed: from 1.6 to 0.2 ppm in 2 days',
    'ammonia dropped from 2 mg/L to 0 in 1 day',
  ],
});
