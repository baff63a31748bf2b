import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cycleDoseAmmoniumChloride } from '../../src/core/calculations/cycle-dose-ammonium-chloride.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

const dose = (litres: number, rise: number, more: Said = {}): Said => ({
  water_volume: [litres, 'L'],
  rise_wanted: [rise, 'mg/L'],
  ...more,
});
const grams = (said: Said) => worked(cycleDoseAmmoniumChloride, said).value('dose_mass', 'g');

describe('by the share of nitrogen, 26.19 % by mass', () => {
  test.each([
    [400, 2, 3.055],
    [100, 1, 0.3819],
    [75 * 3.785411784, 2, 2.168],
    [1000, 4, 15.275],
    [50, 0.5, 0.09547],
  ])('%d L by %d mg/L: %d g', (litres, rise, expected) => {
    expect(grams(dose(litres, rise))).toBeCloseTo(expected, 3);
    expect(grams(dose(litres, rise)) * 0.26187).toBeCloseTo((litres * rise) / 1000, 3);
  });
});

test('in proportion to water and rise, and against purity', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 5000, noNaN: true }),
      fc.double({ min: 0.5, max: 4, noNaN: true }),
      fc.double({ min: 0.5, max: 1, noNaN: true }),
      (litres, rise, purity) => {
        const pure = grams(dose(100, 1)) * (litres / 100) * rise;
        expect(grams(dose(litres, rise, { purity: [purity, 'fraction'] })) / (pure / purity)).toBeCloseTo(1, 9);
      },
    ),
  );
});

test('says the dose, and what all doses take where they are counted', () => {
  expect(spoken(cycleDoseAmmoniumChloride, { water_volume: [400, 'L'] }).headline).toBe(
    '3.05 g of ammonium chloride raises 400 L by 2 mg/L of ammonia (as nitrogen).',
  );
  const many = dose(400, 2, { doses: [10, 'count'] });
  expect(spoken(cycleDoseAmmoniumChloride, many).headline).toMatch(/30\.5 g do for 10 doses/);
  expect(spoken(cycleDoseAmmoniumChloride, many).cautions.join('\n')).toMatch(
    /stop: Only into water without any animals[\s\S]*bleach/,
  );
});

test('refuses animals, and doses that stall a cycle', () => {
  expect(told(outcomeOf(cycleDoseAmmoniumChloride, dose(400, 2, { animals: 'yes' }))).join()).toMatch(
    /burns their gills/,
  );
  expect(told(outcomeOf(cycleDoseAmmoniumChloride, dose(400, 5))).join()).toMatch(/may stall/);
  expect(told(outcomeOf(cycleDoseAmmoniumChloride, dose(400, 0.2))).join()).toMatch(/proves nothing/);
  expect(told(outcomeOf(cycleDoseAmmoniumChloride, {}))).toEqual(['water_volume']);
});
