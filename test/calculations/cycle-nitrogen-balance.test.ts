import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cycleNitrogenBalance } from '../../src/core/calculations/cycle-nitrogen-balance.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

const balance = (dosed: number, ammonia: number, nitrite: number, from: number, to: number, more: Said = {}): Said => ({
  nitrogen_dosed: [dosed, 'mg/L'],
  total_ammonia_nitrogen_end: [ammonia, 'mg/L'],
  nitrite_nitrogen_end: [nitrite, 'mg/L'],
  nitrate_start: [from, 'mg/L'],
  nitrate_end: [to, 'mg/L'],
  ...more,
});

describe('nitrate over 4.427 is nitrogen (handbook factor)', () => {
  test.each([
    [6, 0, 0, 0.2, 22, 21.8 / 4.4268],
    [2, 0.5, 0.25, 0, 4.4268, 1.75],
    [10, 0, 0, 5, 49.2667, 10],
    [4, 0, 0.5, 10, 10, 0.5],
    [3, 1, 0, 20, 15, 1 - 5 / 4.4268],
  ])('dosed %d, ammonia %d, nitrite %d, nitrate %d to %d: found %d', (dosed, a, n, from, to, found) => {
    const { value } = worked(cycleNitrogenBalance, balance(dosed, a, n, from, to));
    expect(value('nitrogen_found', 'mg/L')).toBeCloseTo(found, 3);
    expect(value('recovery', '1')).toBeCloseTo(found / dosed, 3);
  });
});

test('nitrogen that all became nitrate is found whole, in either way of printing nitrate', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 100, noNaN: true }), (dosed) => {
      const ion = worked(cycleNitrogenBalance, balance(dosed, 0, 0, 0, (dosed * 62.004) / 14.007));
      expect(ion.value('recovery', '1')).toBeCloseTo(1, 9);
      const asNitrogen = worked(cycleNitrogenBalance, balance(dosed, 0, 0, 0, dosed, { nitrate_form: 'as_nitrogen' }));
      expect(asNitrogen.value('recovery', '1')).toBeCloseTo(1, 9);
    }),
  );
});

describe('what is said', () => {
  const found = (share: number, nitrite = 0) => balance(10, 0, nitrite, 0, 44.2667 * share);
  test.each([
    [found(0.71), /^In balance/],
    [found(1.19), /^In balance/],
    [found(0.69), /^Less is found/],
    [found(1.21), /^More is found than was dosed, 1\.2 times/],
    [found(0.5, 0.51), /^The nitrate reading cannot be used yet: nitrite at 0\.51 mg\/L/],
    [found(0.8, 0.5), /^In balance/],
  ])('%j', (said, expected) => {
    expect(spoken(cycleNitrogenBalance, said).headline).toMatch(expected);
  });
  test('with high nitrite no recovery is given, only what is left', () => {
    const { outcome, value } = worked(cycleNitrogenBalance, balance(8, 1, 2, 0, 50));
    expect(outcome.results.map(({ id }) => id)).toEqual(['nitrogen_not_nitrate']);
    expect(value('nitrogen_not_nitrate', 'mg/L')).toBeCloseTo(3, 9);
  });
  test('of the zero only where there is one, of the form only where it was assumed', () => {
    const cautions = (said: Said) => spoken(cycleNitrogenBalance, said).cautions.join('\n');
    expect(cautions(balance(6, 0, 0.1, 0, 20))).toMatch(/zero means/);
    expect(cautions(balance(6, 0.1, 0.1, 0, 20))).not.toMatch(/zero means/);
    expect(cautions(balance(6, 0, 0, 0, 20))).toMatch(/counted as NO₃/);
    expect(cautions(balance(6, 0, 0, 0, 20, { nitrate_form: 'as_no3' }))).not.toMatch(/counted as NO₃/);
  });
});

test('asks for all five numbers, and refuses a dose of nothing', () => {
  expect(told(outcomeOf(cycleNitrogenBalance, {}))).toHaveLength(5);
  expect(told(outcomeOf(cycleNitrogenBalance, balance(0, 0, 0, 0, 5))).join()).toMatch(/above 0/);
});
