import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rockMass } from '../../src/core/calculations/rock-mass.js';
import { spoken } from './spoken.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

describe('by hand', () => {
  // 0.09 and 0.18 kg for each litre.
  test.each([
    [100, 9, 18],
    [400, 36, 72],
    [1000, 90, 180],
  ])('%d L take %d to %d kg', (litres, low, high) => {
    const { value } = worked(rockMass, { volume: [litres, 'L'] });
    expect(value('rock_mass_low', 'kg')).toBeCloseTo(low, 9);
    expect(value('rock_mass_high', 'kg')).toBeCloseTo(high, 9);
  });

  test('a tank of 120 × 60 × 60 cm in 10 mm glass: 118 × 58 × 59 cm inside', () => {
    const { value } = worked(rockMass, {
      length: [120, 'cm'],
      width: [60, 'cm'],
      height: [60, 'cm'],
      glass_thickness: [10, 'mm'],
    });
    expect(value('rock_mass_low', 'kg')).toBeCloseTo(118 * 58 * 59 * 0.09e-3, 9);
  });

  test('36 to 72 kg at 9.50 a kilogram', () => {
    const { value } = worked(rockMass, { volume: [400, 'L'], price: [9.5, 'currency/kg'] });
    expect(value('cost_low', 'currency')).toBeCloseTo(342, 9);
    expect(value('cost_high', 'currency')).toBeCloseTo(684, 9);
  });
});

test('twice the water is twice the rock and the money', () => {
  fc.assert(
    fc.property(fc.double({ min: 10, max: 4000, noNaN: true }), (litres) => {
      const one = worked(rockMass, { volume: [litres, 'L'], price: [7, 'currency/kg'] });
      const two = worked(rockMass, { volume: [2 * litres, 'L'], price: [7, 'currency/kg'] });
      for (const [id, unit] of [
        ['rock_mass_low', 'kg'],
        ['rock_mass_high', 'kg'],
        ['cost_high', 'currency'],
      ] as const)
        expect(two.value(id, unit) / one.value(id, unit)).toBeCloseTo(2, 9);
    }),
  );
});

describe('the first line', () => {
  const at = (kg: number): Said => ({ volume: [400, 'L'], rock_mass: [kg, 'kg'] });
  test.each([
    [at(35), /^Your 35 kg is less than usual/],
    [at(37), /^Your 37 kg is inside what is usual/],
    [at(71), /^Your 71 kg is inside what is usual/],
    [at(73), /^Your 73 kg is more than usual/],
    [at(0), /^Common practice is 36 kg to 72 kg of dry rock\.$/],
    [{ volume: [400, 'L'] }, /^Common practice is 36 kg to 72 kg of dry rock\.$/],
    [{ volume: [400, 'L'], price: [9.5, 'currency/kg'] }, /for 342\.00 to 684\.00\.$/],
  ] as [Said, RegExp][])('%o', (said, expected) => {
    expect(spoken(rockMass, said).headline).toMatch(expected);
  });
});

test('what is there already is told by the litre', () => {
  const { value } = worked(rockMass, { volume: [400, 'L'], rock_mass: [60, 'kg'] });
  expect(value('rock_rate', 'g/L')).toBeCloseTo(150, 9);
});

test('says that it is a rule of thumb, and that rock goes on the base', () => {
  const { cautions } = spoken(rockMass, { volume: [400, 'L'] });
  expect(cautions).toMatch(/rule of thumb/);
  expect(cautions).toMatch(/burrowers/);
});

test('asks for the water or the sizes, and refuses swapped rates', () => {
  expect(told(outcomeOf(rockMass, {}))).toEqual(['volume']);
  expect(told(outcomeOf(rockMass, { length: [120, 'cm'] }))).toEqual(['width', 'height']);
  const swapped: Said = { volume: [400, 'L'], rate_low: [180, 'g/L'], rate_high: [90, 'g/L'] };
  expect(told(outcomeOf(rockMass, swapped)).join()).toMatch(/swapped/);
});
