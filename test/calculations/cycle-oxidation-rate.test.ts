import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cycleOxidationRate } from '../../src/core/calculations/cycle-oxidation-rate.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

const fall = (first: number, second: number, days: number, more: Said = {}): Said => ({
  first_reading: [first, 'mg/L'],
  second_reading: [second, 'mg/L'],
  elapsed: [days, 'day'],
  ...more,
});

describe('by hand', () => {
  // Halving times by counting halvings: 2 → 0.5 is two in a day, 1.6 → 0.2 three in two days.
  test.each([
    [2, 0.5, 1, 1.5, 0.5],
    [1.6, 0.2, 2, 0.7, 2 / 3],
    [4, 2, 3, 2 / 3, 3],
    [1, 0.25, 0.5, 1.5, 0.25],
    [3, 2.8, 1, 0.2, 10.05],
  ])('%d to %d mg/L in %d days: %d mg/L a day, halved in %d days', (a, b, days, rate, half) => {
    const { value } = worked(cycleOxidationRate, fall(a, b, days));
    expect(value('rate_zero_order', 'mg/L/day')).toBeCloseTo(rate, 9);
    expect(value('half_life', 'day')).toBeCloseTo(half, 2);
    expect(value('rate_constant_first_order', '1/day') * value('half_life', 'day')).toBeCloseTo(Math.LN2, 6);
  });
});

test('both ways lead from the first reading to the second', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.5, max: 8, noNaN: true }),
      fc.double({ min: 0.01, max: 0.999, noNaN: true }),
      fc.double({ min: 0.1, max: 20, noNaN: true }),
      (a, share, days) => {
        const { value } = worked(cycleOxidationRate, fall(a, a * share, days));
        expect(a - value('rate_zero_order', 'mg/L/day') * days).toBeCloseTo(a * share, 9);
        expect(a * Math.exp(-value('rate_constant_first_order', '1/day') * days)).toBeCloseTo(a * share, 9);
      },
    ),
  );
});

describe('a zero is less than the lowest step', () => {
  test('2 to 0 in a day with steps of 0.25: at least 1.75 mg/L a day, halved in a third of a day at most', () => {
    const { value, outcome } = worked(cycleOxidationRate, fall(2, 0, 1));
    expect(value('rate_at_least', 'mg/L/day')).toBeCloseTo(1.75, 9);
    expect(value('half_life_at_most', 'day')).toBeCloseTo(1 / 3, 9);
    expect(outcome.results.some(({ id }) => id === 'rate_zero_order')).toBe(false);
  });
  test('a finer kit proves more', () => {
    const { value } = worked(cycleOxidationRate, fall(2, 0, 1, { kit_step: [0.05, 'mg/L'] }));
    expect(value('rate_at_least', 'mg/L/day')).toBeCloseTo(1.95, 9);
  });
});

test('a kit that prints NH3 counts 17/14 of the nitrogen, which halves no faster for it', () => {
  const [nitrogen, molecule] = ['as_nitrogen', 'as_nh3'].map((form) =>
    worked(cycleOxidationRate, fall(2, 0.5, 1, { ammonia_form: form })),
  );
  expect(molecule!.value('rate_zero_order', 'mg/L/day')).toBeCloseTo((1.5 * 14.007) / 17.031, 9);
  expect(molecule!.value('half_life', 'h')).toBeCloseTo(nitrogen!.value('half_life', 'h'), 9);
});

describe('what is said', () => {
  test.each([
    [fall(2, 2, 1), /^Nothing was used/],
    [fall(2, 0, 1), /^At least 1\.75 mg\/L a day .* less than 0\.25 mg\/L/],
    [fall(3, 1, 1), /at their full pace/],
    [fall(1, 0.5, 1), /^At this low level the ammonia halves every 24 h/],
    [fall(2, 0.5, 1), /on average, slower towards the end/],
  ])('%j', (said, expected) => {
    expect(spoken(cycleOxidationRate, said).headline).toMatch(expected);
  });
  test('of the zero only where there is one, of the form only where it was assumed', () => {
    const cautions = (said: Said) => spoken(cycleOxidationRate, said).cautions.join('\n');
    expect(cautions(fall(2, 0, 1))).toMatch(/zero means/);
    expect(cautions(fall(2, 0.5, 1))).not.toMatch(/zero means/);
    expect(cautions(fall(2, 0.5, 1))).toMatch(/Counted as nitrogen/);
    expect(cautions(fall(2, 0.5, 1, { ammonia_form: 'as_nh4' }))).not.toMatch(/Counted as nitrogen/);
  });
});

test('refuses a rise, no time, and a start no higher than the lowest step', () => {
  expect(told(outcomeOf(cycleOxidationRate, fall(1, 2, 1))).join()).toMatch(/something added/);
  expect(told(outcomeOf(cycleOxidationRate, fall(2, 1, 0))).join()).toMatch(/above 0/);
  expect(told(outcomeOf(cycleOxidationRate, fall(0.25, 0, 1))).join()).toMatch(/tells nothing/);
  expect(told(outcomeOf(cycleOxidationRate, {}))).toEqual(['first_reading', 'second_reading', 'elapsed']);
});
