import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { alkalinityUnits } from '../../src/core/calculations/alkalinity-units.js';
import { outcomeOf, spoken, told, worked } from './worked.js';

const of = (value: number, unit: string) => worked(alkalinityUnits, { alkalinity: [value, unit] });

describe('handbook factors', () => {
  // One German degree is 17.848 mg/L CaCO3 or 0.35665 meq/L; one meq/L is 50.04 mg/L CaCO3 (water analysis handbooks).
  test.each([
    [1, 'dKH', 0.35665, 1, 17.848],
    [8, 'dKH', 2.853, 8, 142.8],
    [1, 'meq/L', 1, 2.8039, 50.043],
    [2.5, 'meq/L', 2.5, 7.01, 125.1],
    [100, 'mg/L CaCO3', 1.9983, 5.603, 100],
  ])('%d %s is %d meq/L, %d dKH, %d mg/L CaCO3', (value, unit, meq, dkh, caco3) => {
    expect(of(value, unit).value('alkalinity_meq', 'meq/L')).toBeCloseTo(meq, 3);
    expect(of(value, unit).value('alkalinity_dkh', 'dKH')).toBeCloseTo(dkh, 2);
    expect(of(value, unit).value('alkalinity_caco3', 'mg/L CaCO3')).toBeCloseTo(caco3, 1);
  });
});

test('ppm counts as calcium carbonate, and it is said so', () => {
  const { value } = worked(alkalinityUnits, { alkalinity_ppm: [143, 'ppm'] });
  expect(value('alkalinity_dkh', 'dKH')).toBeCloseTo(143 / 17.848, 3);
  expect(spoken(alkalinityUnits, { alkalinity_ppm: [143, 'ppm'] }).cautions.join()).toMatch(/counted as calcium/);
  expect(spoken(alkalinityUnits, { alkalinity: [8, 'dKH'] }).cautions.join()).not.toMatch(/counted as calcium/);
});

test('the mass worked back from the alkalinity is the one that came in', () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 540, noNaN: true }), (ppm) => {
      const { outcome } = worked(alkalinityUnits, { alkalinity_ppm: [ppm, 'mg/L'] });
      expect(outcome.at.values.c! * 1000).toBeCloseTo(ppm, 9);
    }),
  );
});

test.each([
  [6.9, /below the 7 to 9/],
  [7, /within the 7 to 9/],
  [9, /within the 7 to 9/],
  [9.1, /above the 7 to 9/],
])('%d dKH reads %s', (dkh, expected) => {
  expect(spoken(alkalinityUnits, { alkalinity: [dkh, 'dKH'] }).headline).toMatch(expected);
});

test('asks for it, and guesses the slip of 140 given as dKH', () => {
  expect(told(outcomeOf(alkalinityUnits, {}))).toEqual(['alkalinity']);
  expect(told(outcomeOf(alkalinityUnits, { alkalinity: [140, 'dKH'] })).join()).toMatch(/mg\/L as CaCO3/);
});
