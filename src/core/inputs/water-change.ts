import { type Condition, choice, quantity, type Rule, step } from '../calculation.js';
import { systemVolume } from './system-water.js';

/** What is diluted: nitrate, phosphate, anything that the new water has less of. */
export const before = quantity('dissolved', {
  symbol: 'c_1',
  name: 'reading before the change',
  words: [
    'nitrate',
    'phosphate',
    'no3',
    'po4',
    'reading',
    'from',
    'at',
    'is',
    'before',
    'start',
    'now',
    'currently',
    'nitrates',
    'nitrite',
    'nitrites',
    'phosphates',
    'ammonia',
    'reads',
    'reading of',
    'test says',
    'tests at',
    'its',
    'its at',
    'im at',
    'i have',
    'starting',
    'starting at',
    'shows',
    'high',
    'right now',
    'sitting at',
    'sits at',
  ],
  range: [0, 10_000, 'mg/L'],
  usual: [0.05, 200, 'mg/L'],
  ask: 'What does the test read before the change?',
  example: '40 mg/L',
});

/** Ammonia with animals is no matter of patience: what is said of nitrate is not said of it. */
export const diluted = choice({
  name: 'what is diluted',
  words: ['what'],
  needed: false,
  ask: 'What is it: nitrate, phosphate, ammonia or nitrite?',
  options: {
    ammonia: { label: 'ammonia', words: ['ammonia', 'amonia', 'nh3', 'nh4', 'tan', 'amm', 'nh3 nh4', 'total ammonia'] },
    nitrite: { label: 'nitrite', words: ['nitrite', 'no2', 'nitrites'] },
    nitrate: { label: 'nitrate', words: ['nitrate', 'no3', 'nitrates', 'nitrat', 'ntirate'] },
    phosphate: { label: 'phosphate', words: ['phosphate', 'po4', 'phosphates', 'phos', 'phosphat'] },
  },
});

/** What harms animals at once. */
export const harmful: Condition = { any: [{ is: ['diluted', 'ammonia'] }, { is: ['diluted', 'nitrite'] }] };

export const newWater = quantity('dissolved', {
  symbol: 'c_n',
  name: 'reading of the new water',
  words: [
    'new water',
    'new saltwater',
    'fresh mix',
    'new mix',
    'new water has',
    'replacement',
    'fresh water',
    'fresh saltwater',
    'mixing water',
    'make up water',
    'makeup water',
    'water i put in',
    'water i add',
    'water going in',
    'replacement water',
    'new mix has',
    'new water is',
  ],
  range: [0, 10_000, 'mg/L'],
  usual: [0, 10, 'mg/L'],
  default: { value: 0, unit: 'mg/L', why: 'pure water and a clean salt; test yours' },
  ask: 'What does the new water read?',
  example: '0 mg/L',
});

export const fraction = quantity('fraction', {
  symbol: 'f',
  name: 'share of the water that is changed',
  words: [
    'change',
    'changes',
    'water change',
    'water changes',
    'swap',
    'each',
    'changing',
    'changed',
    'wc',
    'wcs',
    'percent',
    'percent changes',
    'percent each',
    'each time',
    'of the water',
    'replaced',
    'replace',
    'exchange',
    'swap out',
    'weekly',
    'swapped',
    'swapping',
    'per change',
    'a time',
    'a week',
    'every week',
    'every',
    'replacing',
    'at a time',
    'taken out',
    'of water',
    'of the tank',
    'of it',
    'each week',
    'weekly change',
    'out',
  ],
  range: [0, 1, 'fraction'],
  aboveLow: true,
  usual: [0.02, 0.9, 'fraction'],
  ask: 'How much of the water do you change, in percent?',
  example: '20 %',
});

/** What people say of what comes back between the changes. */
export const rising: readonly string[] = [
  'rise',
  'rises',
  'rising',
  'climbs',
  'goes up',
  'adds',
  'gains',
  'produces',
  'creeps up',
  'rises by',
  'goes up by',
  'increases',
  'builds up',
  'brings',
  'feeding brings',
];

export const riseBetween = quantity('dissolved', {
  symbol: 'p',
  name: 'rise between two changes',
  words: [
    ...rising,
    'between changes',
    'increase',
    'creeps up by',
    'between',
    'between them',
    'in between',
    'comes back',
    'grows',
    'production',
    'adds back',
    'climbs back',
    'each time between',
    'rises again',
    'goes back up',
    'comes up',
    'rise between',
  ],
  range: [0, 10_000, 'mg/L'],
  usual: [0.01, 50, 'mg/L'],
  default: { value: 0, unit: 'mg/L', why: 'nothing comes in between; feeding usually brings some' },
  ask: 'By how much does the reading rise between two changes?',
  example: '5 mg/L',
});

/** The rise between two changes, from what it rises in a given time where that was said. */
export const riseBetweenOrRate = quantity('dissolved', {
  ...riseBetween,
  default: [
    { formula: 'q*t_w' },
    {
      value: 0,
      unit: 'mg/L',
      why: 'nothing comes in between; feeding usually brings some',
      when: { not: { given: 'rise_rate' } },
    },
  ],
});

export const riseRate = quantity('dissolved rate', {
  symbol: 'q',
  name: 'rise in a given time',
  words: [
    ...rising,
    'increase',
    'creeps up by',
    'a week',
    'per week',
    'a day',
    'per day',
    'comes back',
    'grows',
    'adds back',
    'climbs by',
    'comes up',
    'feeding adds',
    'rise of',
  ],
  range: [0, 1000, 'mg/L/day'],
  usual: [0.01, 10, 'mg/L/day'],
  needed: false,
  ask: 'How fast does the reading rise without changes?',
  example: '5 ppm a week',
});

export const A_WEEK = { value: 7, unit: 'day', why: 'a change a week' } as const;

export const interval = quantity('time', {
  symbol: 't_w',
  name: 'time between two changes',
  words: [
    'every',
    'weekly',
    'apart',
    'interval',
    'each',
    'once every',
    'once a',
    'change every',
    'between changes',
    'days apart',
    'every other',
  ],
  range: [0.5, 120, 'day'],
  usual: [1, 31, 'day'],
  default: { ...A_WEEK, when: { given: 'rise_rate' } },
  needed: false,
  ask: 'How long is it from one change to the next?',
  example: '1 week',
});

/** For the water that the changes take; without it they are shares only. */
export const volumeForTotals = quantity('volume', { ...systemVolume, needed: false });

/** Where the new water reads what the tank reads, a change does nothing; above it, harm. */
export const newWaterBelow = (about = 'new_water'): Rule => ({
  refuse: 'c_n > c_1',
  because: 'The new water reads more than the tank does: a change would raise it. Test the new water first.',
  about,
});

/** Where a series ends when something comes in between. */
export const settledSteps = [
  step('c_after', 'c_n + p*(1 - f)/f', 'dissolved', 'where it settles after a change', 'p > 0'),
  step('c_before', 'c_n + p/f', 'dissolved', 'where it settles before a change', 'p > 0'),
];
