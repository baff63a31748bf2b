import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cycleAlkalinityUsed } from '../../src/core/calculations/cycle-alkalinity-used.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

const used = (nitrogen: number, more: Said = {}): Said => ({ nitrogen_oxidised: [nitrogen, 'mg/L'], ...more });
const from = (nitrogen: number, dkh: number) => used(nitrogen, { alkalinity_now: [dkh, 'dKH'] });

describe('handbook factors: 7.14 mg of CaCO3 and 4.57 mg of O2 for each mg of N', () => {
  test.each([1, 2, 4, 10, 25])('%d mg/L', (nitrogen) => {
    const { value } = worked(cycleAlkalinityUsed, used(nitrogen));
    expect(value('alkalinity_used_caco3', 'mg/L CaCO3') / nitrogen).toBeCloseTo(7.14, 1);
    expect(value('oxygen_used', 'mg/L') / nitrogen).toBeCloseTo(4.57, 2);
    expect(value('alkalinity_used', 'dKH') / nitrogen).toBeCloseTo(0.4, 2);
  });
  test('0.8 dKH in 400 L takes 0.8·4·2.996 g of bicarbonate', () => {
    const { value } = worked(cycleAlkalinityUsed, used(2, { water_volume: [400, 'L'] }));
    expect(value('bicarbonate_mass', 'g')).toBeCloseTo(0.8007 * 4 * 2.99609, 2);
  });
});

test('what is used and what is left add up to what was there', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 100, noNaN: true }),
      fc.double({ min: 1, max: 20, noNaN: true }),
      (n, dkh) => {
        const { value } = worked(cycleAlkalinityUsed, from(n, dkh));
        expect(value('alkalinity_used', 'dKH') + value('alkalinity_after', 'dKH')).toBeCloseTo(dkh, 9);
      },
    ),
  );
});

describe('what is said', () => {
  test.each([
    [used(2), /^Turning 2 mg\/L of ammonia into nitrate uses 0\.8 dKH/],
    [from(2, 8), /^It uses 0\.8 dKH and leaves 7\.2 dKH, which is enough/],
    [from(2, 7.5), /leaves 6\.7 dKH, under the 7 dKH/],
    [from(20, 8), /^More than is there/],
    [from(2, 7.81), /which is enough/],
    [from(2, 7.79), /under the 7 dKH/],
  ])('%j', (said, expected) => {
    expect(spoken(cycleAlkalinityUsed, said).headline).toMatch(expected);
  });
  test('warns of air where it takes about half of the oxygen that water holds', () => {
    expect(spoken(cycleAlkalinityUsed, used(0.6)).cautions.join()).not.toMatch(/keep the surface moving/);
    expect(spoken(cycleAlkalinityUsed, used(0.7)).cautions.join()).toMatch(/keep the surface moving/);
  });
});

test('asks for the ammonia, refuses none', () => {
  expect(told(outcomeOf(cycleAlkalinityUsed, {}))).toEqual(['nitrogen_oxidised']);
  expect(told(outcomeOf(cycleAlkalinityUsed, used(0))).join()).toMatch(/above 0/);
});
