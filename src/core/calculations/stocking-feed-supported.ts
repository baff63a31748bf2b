import { type Condition, caution, list, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { FEED_SOURCE, feedConstant, food, proteinFraction, vetAndWelfare } from '../inputs/nitrogen.js';
import { systemVolume } from '../inputs/system-water.js';
import { MOLAR_MASS_SOURCE, nitrate, nitrogen } from '../molar-masses.js';

const planned: Condition = { given: 'feed_planned' };

export const stockingFeedSupported = calculation({
  id: 'stocking.feed_supported',
  slash: 'cycle feed',
  title: 'Food that the cycled tank carries',
  question: 'How much food can a cycled tank start with, and how fast may it rise?',
  part: 'cycle',
  cues: [
    'how much can i feed',
    'how much food can',
    'how many fish',
    'feed can it',
    'food can it',
    'feed supported',
    'how fast can i stock',
    'stocking',
    'stock after cycle',
    'first fish',
    'add fish',
    'start feeding',
    'feed after cycling',
    'feed after the cycle',
    'how much to feed',
    'bioload',
    'feeding can my',
  ],
  inputs: {
    water_volume: systemVolume,
    proven_rate: quantity('dissolved rate', {
      symbol: 'r',
      name: 'ammonia cleared a day, proven by dosing',
      words: ['clears', 'proven', 'processes', 'rate', 'handles', 'oxidises', 'oxidizes', 'ammonia', 'cleared'],
      range: [0, 20, 'mg/L/day'],
      aboveLow: true,
      usual: [0.2, 6, 'mg/L/day'],
      slips: [[20, 1e6, 'That is far more than a home tank clears: 1 to 4 mg/L a day is usual.']],
      ask: 'How much ammonia does the tank clear in a day, proven by a dose?',
      example: '2 mg/L a day',
    }),
    protein_fraction: proteinFraction,
    food,
    share_used: quantity('fraction', {
      symbol: 's',
      name: 'share of the ceiling to start with',
      words: ['share', 'start at', 'start with'],
      range: [0.1, 0.5, 'fraction'],
      default: {
        value: 0.25,
        unit: 'fraction',
        why: 'common practice: the test ran at 1 to 2 mg/L, animals must live below 0.1',
      },
      ask: 'Which share of the ceiling do you start with?',
      example: '25 %',
    }),
    feed_planned: quantity('mass a day', {
      symbol: 'F_p',
      name: 'food a day that you plan',
      words: ['want to feed', 'plan', 'feed', 'planned', 'feeding', 'going to feed'],
      range: [0, 5000, 'g/day'],
      aboveLow: true,
      usual: [0.2, 100, 'g/day'],
      needed: false,
      ask: 'How much food a day do you plan?',
      example: '5 g a day',
    }),
  },
  constants: {
    ...feedConstant,
    g: { value: 1.25, unit: '1', name: 'most growth of the food in a week' },
    week: { value: 7 * 86_400, unit: 's', name: 'seconds in a week' },
    day: { value: 86_400, unit: 's', name: 'seconds in a day' },
    s_f: { value: 0.02, unit: '1', name: 'dry food a day over the mass of the fish' },
    tiny: { value: 1e-9, unit: '1', name: 'rounding guard' },
    M_N: nitrogen,
    M_3: nitrate,
  },
  steps: [
    step('F_c', 'V*r/(PC*y*q)', 'mass a day', 'food whose ammonia takes all of the pace proven'),
    step('F_s', 's*F_c', 'mass a day', 'food to start with'),
    step('m_f', 'F_s*q*day/s_f', 'mass', 'fish that eat about that'),
    step('n', 'ceil(ln(F_c/F_s)/ln(g) - tiny)', 'count', 'weeks of a quarter more until the ceiling'),
    step('t', 'n*week', 'time', 'time until the ceiling'),
    step(
      'n_p',
      'max(ceil(ln(F_p/F_s)/ln(g) - tiny), 0)',
      'count',
      'weeks of a quarter more until the food planned',
      'F_p <= F_c',
    ),
    step('t_p', 'n_p*week', 'time', 'time until the food planned'),
    step('r_3', 'F_s*q*PC*y/V*M_3/M_N', 'dissolved rate', 'nitrate that the first food ends as'),
  ],
  results: {
    feed_per_day_ceiling: result('F_c', 'mass a day', 'food a day at the ceiling'),
    feed_per_day_start: result('F_s', 'mass a day', 'food a day to start with'),
    fish_mass_start: result('m_f', 'mass', 'fish that eat about that', {
      units: { metric: 'g', us: 'g' },
      figures: 2,
    }),
    time_to_ceiling: result('t', 'time', 'time until the ceiling, a quarter more each week', {
      units: { metric: 'week', us: 'week' },
    }),
    time_to_planned: result('t_p', 'time', 'time until the food planned', { units: { metric: 'week', us: 'week' } }),
    feed_by_week: list('food a day, week by week', {
      formula: 'min(F_s*g^w, F_c)',
      over: 'w',
      to: 'n',
      quantity: 'mass a day',
    }),
    nitrate_rate: result('r_3', 'dissolved rate', 'nitrate a day from the first food', { figures: 2 }),
  },
  headline: [
    {
      text: 'More than this tank has proven: {feed_planned} is above the ceiling of {feed_per_day_ceiling}. Start with {feed_per_day_start} and prove a faster pace before you go on.',
      when: 'F_p > F_c',
    },
    {
      text: 'Not at once: start with {feed_per_day_start} and raise it by a quarter a week; {feed_planned} is reached after {time_to_planned}.',
      when: 'n_p > 0',
    },
    {
      text: '{feed_planned} is within the {feed_per_day_start} to start with; the ceiling is {feed_per_day_ceiling}.',
      when: planned,
    },
    {
      text: 'Start with {feed_per_day_start} of {food}, about {fish_mass_start} of fish, and raise it by at most a quarter a week towards {feed_per_day_ceiling}.',
    },
  ],
  cautions: [
    caution(
      'caution',
      'First hardy animals only; test ammonia and nitrite every other day. Any reading above 0.1 mg/L: hold, halve the food, add nothing.',
    ),
    caution('caution', 'Bacteria starve without a dose: keep dosing until the day before the first animal.'),
    caution(
      'caution',
      'Start lower than that: more than a quarter of the ceiling leaves little for a slow start.',
      's > 0.2500001',
    ),
    caution('note', 'Weigh dry food once: a pinch is about 0.2 to 0.5 g. Frozen food is four fifths water.'),
    vetAndWelfare,
  ],
  sources: [
    FEED_SOURCE,
    'a quarter of the ceiling, a quarter more a week, food of 2 % of the fish a day: common practice, no published source found',
    MOLAR_MASS_SOURCE,
  ],
  examples: [
    'how much can I feed after the cycle: 400 L, clears 2 mg/L a day, 45% protein',
    'how fast can I stock 75 gal, tank processes 2 ppm a day',
    'first fish: 200 L clears 1.5 mg/L a day and I want to feed 3 g a day',
  ],
});
