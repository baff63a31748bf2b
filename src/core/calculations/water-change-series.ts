import { caution, quantity, result, step } from '../calculation.js';
import { bigChange, kitNoise, matchedWater, rockReleases } from '../cautions/water-change.js';
import { tiny } from '../constants.js';
import { calculation } from '../define.js';
import {
  A_WEEK,
  before,
  fraction,
  interval,
  newWater,
  newWaterBelow,
  riseBetweenOrRate,
  riseRate,
  settledSteps,
  volumeForTotals,
} from '../inputs/water-change.js';

export const waterChangeSeries = calculation({
  id: 'water_change.series',
  slash: 'water changes',
  title: 'A series of water changes',
  question:
    'Where do several water changes in a row take it, and where does it settle when something comes in between?',
  part: 'water',
  cues: [
    '# weekly changes',
    '# changes in a row',
    'water changes starting',
    'water changes',
    'water changes of',
    'weekly',
    'weekly water changes',
    'every week',
    'each week',
    'in a row',
    'keep up',
    'settle',
    'level off',
    'changes a month',
    '~rises',
    '~nitrate',
    '~phosphate',
  ],
  wording: /^(?!.*\bhow many\b).*\bwater changes\b(?! (?:to (?:get|bring|lower)|until))/,
  inputs: {
    before,
    fraction,
    changes: quantity('count', {
      symbol: 'n',
      name: 'number of changes',
      words: ['times', 'changes', 'weeks', 'water changes', 'weekly', 'in a row'],
      range: [1, 1000, 'count'],
      whole: true,
      usual: [2, 60, 'count'],
      default: { formula: 'floor(t_d/t_w + tiny)' },
      needed: 'p == 0',
      ask: 'How many changes do you make?',
      example: '4',
    }),
    new_water: newWater,
    rise_between: riseBetweenOrRate,
    rise_rate: riseRate,
    duration: quantity('time', {
      symbol: 't_d',
      name: 'how long it goes on',
      words: ['for', 'after', 'over', 'during'],
      range: [1, 3650, 'day'],
      usual: [14, 1000, 'day'],
      needed: false,
      ask: 'How long does it go on?',
      example: '20 weeks',
    }),
    interval: quantity('time', {
      ...interval,
      default: { ...A_WEEK, when: { any: [{ given: 'rise_rate' }, { given: 'duration' }] } },
    }),
    volume: volumeForTotals,
  },
  constants: { tiny },
  rules: [{ ...newWaterBelow(), refuse: 'c_n > c_1 and p == 0' }],
  steps: [
    step(
      'c_2',
      'c_n + (c_1 - c_n)*(1 - f)^n + p*((1 - f) - (1 - f)^n)/f',
      'dissolved',
      'reading after the last change, the rise added before each but the first',
    ),
    step('f_e', '1 - (1 - f)^n', 'fraction', 'one change that would do the same, without the rise'),
    ...settledSteps,
    step('V_out', 'n*f*V', 'volume', 'new water they take'),
  ],
  results: {
    after: result('c_2', 'dissolved', 'reading after the last change'),
    equivalent_fraction: result('f_e', 'fraction', 'one change that would do the same, without the rise'),
    settled_after: result('c_after', 'dissolved', 'settles at, after a change'),
    settled_before: result('c_before', 'dissolved', 'settles at, before a change'),
    total_water: result('V_out', 'volume', 'new water they take'),
  },
  headline: [
    {
      text: 'In the long run it settles at {settled_after} after and {settled_before} before each change.',
      when: { not: { given: 'changes' } },
    },
    {
      text: 'The changes lose: it climbs from {before} to {after} and settles at {settled_after} after and {settled_before} before each change.',
      when: 'p > 0 and c_2 > c_1',
    },
    {
      text: '{changes} changes of {fraction} take it from {before} to {after}; in the long run it settles at {settled_after} after and {settled_before} before each change.',
      when: 'p > 0',
    },
    {
      text: '{changes} changes of {fraction} take it from {before} to {after}, as one of {equivalent_fraction} would.',
    },
  ],
  cautions: [
    caution(
      'note',
      'Shares do not add up: four changes of 20 % take out 59 %, not 80 %, since each takes out some of the new water.',
      'n > 1',
    ),
    caution(
      'note',
      'Nothing is assumed to come in between: where feeding raises it, tell me by how much and I say where it settles.',
      'p == 0',
    ),
    caution(
      'caution',
      'To settle lower, change a larger share, or bring less in: less food, more export. Changing more often by the same share helps only as much as less rises in between.',
      'p > 0 and c_before > c_1',
    ),
    bigChange,
    matchedWater,
    rockReleases,
    kitNoise,
  ],
  sources: ['mass balance of a well-mixed tank, change by change; the sum of a geometric series'],
  examples: [
    'four weekly water changes of 20 % at nitrate 40',
    'nitrate is 20, weekly 10% water changes for 20 weeks, it rises 5 ppm a week: do they keep up',
    'where am I after 6 water changes of 15% from 50 ppm nitrate in a 400 L system',
  ],
});
