import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stockingRateAtLowAmmonia } from '../../src/core/calculations/stocking-rate-at-low-ammonia.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

const at = (maximum: number, half: number, ammonia: number): Said => ({
  maximum_rate: [maximum, 'mg/L/day'],
  half_saturation: [half, 'mg/L'],
  total_ammonia_nitrogen: [ammonia, 'mg/L'],
});
const rate = (said: Said) => worked(stockingRateAtLowAmmonia, said).value('rate', 'mg/L/day');

describe('by hand', () => {
  test.each([
    [2, 1, 0.1, 2 / 11],
    [2, 1, 1, 1],
    [3, 0.5, 0.05, 3 / 11],
    [1.5, 0.1, 0.1, 0.75],
    [4, 2, 0.5, 0.8],
  ])('%d at most, half at %d: at %d it is %d mg/L a day', (maximum, half, ammonia, expected) => {
    expect(rate(at(maximum, half, ammonia))).toBeCloseTo(expected, 9);
  });
  test('a half-pace level that nobody gave may be 0.1 or 2', () => {
    const { low, high } = worked(stockingRateAtLowAmmonia, { maximum_rate: [2, 'mg/L/day'] });
    expect(low('rate', 'mg/L/day')).toBeCloseTo(0.2 / 2.1, 9);
    expect(high('rate', 'mg/L/day')).toBeCloseTo(1, 9);
  });
});

test('rises with ammonia, is half at the half-pace level, and never reaches the most', () => {
  const level = fc.double({ min: 0.01, max: 10, noNaN: true });
  fc.assert(
    fc.property(level, level, level, (half, a, b) => {
      expect(rate(at(2, half, half))).toBeCloseTo(1, 9);
      if (a < b - 1e-6) expect(rate(at(2, half, a))).toBeLessThan(rate(at(2, half, b)));
      expect(rate(at(2, half, b))).toBeLessThan(2);
    }),
  );
});

test('says the pace with its range, and what animals can live in', () => {
  const { headline, cautions } = spoken(stockingRateAtLowAmmonia, { maximum_rate: [2, 'mg/L/day'] });
  expect(headline).toMatch(
    /^At 0\.1 mg\/L of ammonia the bacteria clear 0\.182 mg\/L a day, likely 0\.0952 to 1, about 9\.1%/,
  );
  expect(cautions.join()).toMatch(/weak point/);
  expect(cautions.join()).not.toMatch(/more than animals/);
  const known = spoken(stockingRateAtLowAmmonia, at(2, 1, 0.11)).cautions.join();
  expect(known).toMatch(/more than animals/);
  expect(known).not.toMatch(/weak point/);
});

test('asks for the pace, refuses none', () => {
  expect(told(outcomeOf(stockingRateAtLowAmmonia, {}))).toEqual(['maximum_rate']);
  expect(told(outcomeOf(stockingRateAtLowAmmonia, at(0, 1, 0.1))).join()).toMatch(/above 0/);
});
