import { caution, quantity, result, step } from '../calculation.js';
import { bigChange, kitNoise, matchedWater, rockReleases } from '../cautions/water-change.js';
import { tiny } from '../constants.js';
import { calculation } from '../define.js';
import { before, fraction, newWater, riseBetween, settledSteps, volumeForTotals } from '../inputs/water-change.js';

const ARRIVES = 'n < 10001';

export const waterChangeToTarget = calculation({
  id: 'water_change.to_target',
  slash: 'water to-target',
  title: 'Water changes to reach a reading',
  question: 'How many water changes bring nitrate or phosphate down to what I want?',
  part: 'water',
  cues: [
    'how many # percent',
    'how many # changes',
    'number of # water changes',
    'number of # changes',
    'down to # ppm',
    'nitrate from # to',
    'nitrate from # down',
    'get nitrate from',
    'phosphate from # to',
    'how many water changes',
    'how many # water changes',
    'how many changes',
    'number of water changes',
    'water changes to get',
    'water changes to bring',
    'water changes to lower',
    'water changes until',
    'changes do i need',
    'changes to get',
    'get nitrate',
    'get nitrate down',
    'bring nitrate down',
    'lower nitrate',
    'lower my nitrate',
    'reduce nitrate',
    'nitrate from',
    'nitrate down',
    'get phosphate',
    'get phosphate down',
    'bring phosphate down',
    'lower phosphate',
    'reduce phosphate',
    'phosphate from',
    'phosphate down',
    '~nitrate',
    '~phosphate',
  ],
  inputs: {
    before: quantity('dissolved', { ...before, aboveLow: true }),
    target: quantity('dissolved', {
      symbol: 'c_2',
      name: 'reading wanted',
      words: ['to', 'target', 'want', 'wanted', 'down to', 'goal', 'below', 'under', 'get to'],
      range: [0, 10_000, 'mg/L'],
      usual: [0.01, 50, 'mg/L'],
      ask: 'Down to which reading?',
      example: '10 mg/L',
    }),
    fraction,
    new_water: newWater,
    rise_between: riseBetween,
    volume: volumeForTotals,
  },
  constants: { tiny },
  rules: [
    {
      refuse: 'c_2 >= c_1',
      because: 'It is already at or below what you want: there is nothing to do.',
      about: 'target',
    },
    {
      refuse: 'c_2 <= c_n',
      because:
        'The reading wanted is not above what the new water brings, so changes alone never get there: test the new water.',
      about: 'target',
    },
  ],
  steps: [
    step('f_1', '(c_1 - c_2)/(c_1 - c_n)', 'fraction', 'one change that would do it at once'),
    step('n', '1', 'count', 'changes needed', 'f >= f_1'),
    step('n', 'ceil(ln((c_2 - c_n)/(c_1 - c_n))/ln(1 - f) - tiny)', 'count', 'changes needed', 'p == 0'),
    step('n', 'changes_to_reach(c_1, c_2, c_n, f, p)', 'count', 'changes needed, worked change by change'),
    ...settledSteps,
    step(
      'c_3',
      'c_n + (c_1 - c_n)*(1 - f)^n + p*((1 - f) - (1 - f)^n)/f',
      'dissolved',
      'reading after the last change',
      ARRIVES,
    ),
    step('V_out', 'n*f*V', 'volume', 'new water they take', ARRIVES),
  ],
  results: {
    changes: result('n', 'count', 'changes needed'),
    single_fraction: result('f_1', 'fraction', 'one change that would do it at once'),
    after: result('c_3', 'dissolved', 'reading after the last change'),
    settled_after: result('c_after', 'dissolved', 'settles at, after a change'),
    total_water: result('V_out', 'volume', 'new water they take'),
  },
  headline: [
    { text: 'One change of {fraction} is enough: it takes it from {before} to {after}.', when: 'n == 1' },
    {
      text: '{changes} changes of {fraction} take it from {before} to {after}; or one of {single_fraction} at once.',
      when: ARRIVES,
    },
    {
      text: 'Never: with that much coming in between, changes of {fraction} settle at {settled_after}, above {target}. Change a larger share, or bring less in.',
    },
  ],
  cautions: [
    caution('caution', 'One change that large is for an empty tank: with animals take the series.', 'f_1 > 0.5'),
    bigChange,
    matchedWater,
    caution(
      'note',
      'Nothing is assumed to come in between: where feeding raises it, tell me by how much and I count again.',
      'p == 0',
    ),
    rockReleases,
    kitNoise,
  ],
  sources: ['mass balance of a well-mixed tank, change by change'],
  examples: [
    'how many 20% water changes to get nitrate from 40 to 10',
    'how many water changes to bring phosphate down from 0.3 to 0.1 with 15 % each',
    'lower nitrate from 80 to 20 ppm with 25% changes, rises 4 between changes, 90 gal',
  ],
});
