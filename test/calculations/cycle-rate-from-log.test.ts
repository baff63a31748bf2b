import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cycleRateFromLog } from '../../src/core/calculations/cycle-rate-from-log.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

const lists = (days: readonly number[], ammonia: readonly number[], doses?: readonly number[]): Said => ({
  days: JSON.stringify(days),
  total_ammonia_nitrogen: JSON.stringify(ammonia),
  ...(doses ? { dose_after_reading: JSON.stringify(doses) } : {}),
});
const rate = (said: Said) => worked(cycleRateFromLog, said).value('rate_zero_order', 'mg/L/day');

describe('by hand', () => {
  test('five readings, Σ(t−2)(y−1.47)/10: 0.28 a day', () => {
    expect(rate(lists([0, 1, 2, 3, 4], [2, 1.8, 1.45, 1.2, 0.9]))).toBeCloseTo(0.28, 9);
  });
  test('two readings are a difference over a time', () => {
    expect(rate(lists([3, 5], [2, 1.2]))).toBeCloseTo(0.4, 9);
  });
  test('three: 1, 3, 8 days with 3, 2, 1: mean 4 and 2, −(−3·1 + −1·0 + 4·−1)/26 = 7/26', () => {
    expect(rate(lists([1, 3, 8], [3, 2, 1]))).toBeCloseTo(7 / 26, 9);
  });
  test('readings before the last dose do not count', () => {
    expect(rate(lists([0, 1, 2, 3], [0, 1.9, 1.4, 0.8], [2, 0, 0, 0]))).toBeCloseTo(0.55, 9);
    expect(
      rate({ log: 'day 0: ammonia 0, dosed 2; day 1: ammonia 1.9; day 2: ammonia 1.4; day 3: ammonia 0.8' }),
    ).toBeCloseTo(0.55, 9);
  });
  test('0.8, 0.4, 0.2 halves each day', () => {
    const { value } = worked(cycleRateFromLog, lists([1, 2, 3], [0.8, 0.4, 0.2]));
    expect(value('half_life', 'day')).toBeCloseTo(1, 9);
    expect(value('rate_constant_first_order', '1/day')).toBeCloseTo(Math.LN2, 9);
  });
});

test('a straight line gives its own slope, in nitrogen whatever the kit prints', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 1, noNaN: true }),
      fc.uniqueArray(fc.integer({ min: 0, max: 20 }), { minLength: 2, maxLength: 20 }),
      (slope, drawn) => {
        const days = [...drawn].sort((a, b) => a - b);
        const said = lists(
          days,
          days.map((day) => 22 - slope * day),
        );
        expect(rate(said)).toBeCloseTo(slope, 9);
        expect(rate({ ...said, ammonia_form: 'as_nh3' })).toBeCloseTo((slope * 14.007) / 17.031, 9);
      },
    ),
  );
});

describe('what is said', () => {
  test.each([
    [lists([0, 1, 2], [2, 2, 2]), /^No fall/],
    [lists([0, 1, 2], [0.8, 0.5, 0.3]), /^At this low level the ammonia halves/],
    [lists([0, 1, 2], [2, 1, 0]), /^At least 1 mg\/L a day/],
    [lists([0, 1, 2], [3, 2.5, 2]), /^The bacteria use 0\.5 mg\/L a day of ammonia, by 3 readings/],
  ])('%j', (said, expected) => {
    expect(spoken(cycleRateFromLog, said).headline).toMatch(expected);
  });
  test.each<[RegExp, Said, Said]>([
    [/take at least four/, lists([0, 1, 2], [3, 2.5, 2]), lists([0, 1, 2, 3], [3, 2.5, 2, 1.5])],
    [/straight line fits above/, lists([0, 1], [2, 0.9]), lists([0, 1], [2, 1])],
    [/zero means/, lists([0, 1], [2, 0]), lists([0, 1], [2, 1])],
    [/Counted as nitrogen/, lists([0, 1], [2, 1]), { ...lists([0, 1], [2, 1]), ammonia_form: 'as_nh4' }],
  ])('%s', (text, said, without) => {
    expect(spoken(cycleRateFromLog, said).cautions.join('\n')).toMatch(text);
    expect(spoken(cycleRateFromLog, without).cautions.join('\n')).not.toMatch(text);
  });
});

test('refuses what no line can be put through', () => {
  expect(told(outcomeOf(cycleRateFromLog, lists([0, 1], [1, 2]))).join()).toMatch(/rises/);
  expect(told(outcomeOf(cycleRateFromLog, lists([0, 1], [0, 2], [2, 0]))).join()).toMatch(/Fewer than two/);
  expect(told(outcomeOf(cycleRateFromLog, lists([0, 1, 2], [2, 1]))).join()).toMatch(/one length/);
  expect(told(outcomeOf(cycleRateFromLog, lists([1, 1], [2, 1]))).join()).toMatch(/do not rise/);
  expect(told(outcomeOf(cycleRateFromLog, {}))).toEqual(['log']);
});
