import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { saltMix } from '../../src/core/calculations/salt-mix.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

describe('worked examples', () => {
  test('a kilogram of reference seawater weighed out with its hydrates is 41.25 g of solids (Millero et al. 2008, from memory)', () => {
    const { value } = worked(saltMix, {
      volume: [1000 / 1023.34306, 'L'],
      salinity: [35, 'g/kg'],
      temperature: [25, 'degC'],
      dry_fraction: [35.165 / 41.25, 'fraction'],
    });
    // Salinity is counted in grams a kilogram, 0.47 % below the true mass of salt.
    expect(value('salt_mass', 'g') * (35.16504 / 35)).toBeCloseTo(41.25, 1);
  });

  test('by hand: 100 L of 1023.34 kg/m³ hold 3.5817 kg of salt, 3.9797 kg of mix that is nine tenths dry', () => {
    const { value, low, high } = worked(saltMix, { volume: [100, 'L'], salinity: [35, 'g/kg'] });
    expect(value('salt_mass', 'kg')).toBeCloseTo((102.334 * 0.035) / 0.9, 3);
    expect(low('salt_mass', 'kg')).toBeCloseTo(102.334 * 0.035, 3);
    expect(high('salt_mass', 'kg')).toBeCloseTo((102.334 * 0.035) / 0.85, 3);
  });

  test('a label followed to the letter gives back its own rate: 38 g a litre of finished water for 35', () => {
    const label: Said = { label_rate: [38, 'g/L'], label_salinity: [35, 'g/kg'], basis: 'final' };
    const { value } = worked(saltMix, { volume: [10, 'L'], salinity: [35, 'g/kg'], ...label });
    expect(value('salt_mass', 'g')).toBeCloseTo(380, 6);
  });

  test('and 38 g a litre of fresh water for 35, mixed into fresh water', () => {
    const label: Said = { label_rate: [38, 'g/L'], label_salinity: [35, 'g/kg'], basis: 'fresh' };
    const { value } = worked(saltMix, { fresh_water_volume: [10, 'L'], salinity: [35, 'g/kg'], ...label });
    expect(value('salt_mass', 'g')).toBeCloseTo(380, 6);
  });
});

const recipes = fc.record({
  volume: fc.double({ min: 0.5, max: 2000, noNaN: true }),
  S: fc.double({ min: 12, max: 42, noNaN: true }),
  S0: fc.double({ min: 0, max: 11, noNaN: true }),
  f: fc.double({ min: 0.6, max: 1, noNaN: true }),
  t: fc.double({ min: 0, max: 40, noNaN: true }),
});
const saidOf = ({ S, S0, f, t }: { S: number; S0: number; f: number; t: number }): Said => ({
  salinity: [S, 'g/kg'],
  start_salinity: [S0, 'g/kg'],
  temperature: [t, 'degC'],
  dry_fraction: [f, 'fraction'],
});

test('the salt in the mix and in the starting water is the salt in the finished water', () => {
  fc.assert(
    fc.property(recipes, (recipe) => {
      const { outcome, value } = worked(saltMix, { ...saidOf(recipe), volume: [recipe.volume, 'L'] });
      const M = outcome.steps.find(({ step }) => step.symbol === 'M')!.si;
      const m = value('salt_mass', 'kg');
      const salt = recipe.f * m + ((M - m) * recipe.S0) / 1000;
      expect(salt / ((M * recipe.S) / 1000)).toBeCloseTo(1, 9);
    }),
  );
});

test('starting from the water that a batch needs makes that batch', () => {
  fc.assert(
    fc.property(recipes, (recipe) => {
      const batch = worked(saltMix, { ...saidOf(recipe), volume: [recipe.volume, 'L'] });
      const again = worked(saltMix, { ...saidOf(recipe), fresh_water_volume: [batch.value('start_water', 'L'), 'L'] });
      expect(again.value('finished_volume', 'L') / recipe.volume).toBeCloseTo(1, 9);
      expect(again.value('salt_mass', 'kg') / batch.value('salt_mass', 'kg')).toBeCloseTo(1, 9);
    }),
  );
});

test('drier mix, less of it; twice the water, twice the mix', () => {
  fc.assert(
    fc.property(recipes, fc.double({ min: 0.001, max: 0.05, noNaN: true }), (recipe, drier) => {
      fc.pre(recipe.f + drier <= 1);
      const massOf = (said: Said) => worked(saltMix, { ...saidOf(recipe), volume: [recipe.volume, 'L'], ...said });
      const mass = massOf({}).value('salt_mass', 'kg');
      expect(massOf({ dry_fraction: [recipe.f + drier, 'fraction'] }).value('salt_mass', 'kg')).toBeLessThan(mass);
      expect(massOf({ volume: [2 * recipe.volume, 'L'] }).value('salt_mass', 'kg') / mass).toBeCloseTo(2, 9);
    }),
  );
});

describe('asks and refusals', () => {
  const batch: Said = { volume: [100, 'L'], salinity: [35, 'g/kg'] };

  test('asks for the salinity, for one of the volumes, and for the rest of a label', () => {
    expect(told(outcomeOf(saltMix, {}))).toEqual(['salinity', 'volume']);
    expect(told(outcomeOf(saltMix, { ...batch, label_rate: [38, 'g/L'] }))).toEqual(['label_salinity', 'basis']);
  });

  test('a label takes the place of the guess', () => {
    const label: Said = { label_rate: [38, 'g/L'], label_salinity: [35, 'g/kg'], basis: 'final' };
    const { outcome } = worked(saltMix, { ...batch, ...label });
    expect(outcome.inputs.some(({ id }) => id === 'dry_fraction')).toBe(false);
  });

  test.each([
    [{ ...batch, label_rate: [25, 'g/L'], label_salinity: [35, 'g/kg'], basis: 'final' }, /don’t fit/],
    [{ ...batch, label_rate: [60, 'g/L'], label_salinity: [35, 'g/kg'], basis: 'final' }, /don’t fit/],
    [{ ...batch, start_salinity: [36, 'g/kg'] }, /cannot lower/],
    [{ ...batch, fresh_water_volume: [90, 'L'] }, /not both/],
    [{ ...batch, volume: [0, 'L'] }, /above 0/],
    [{ ...batch, dry_fraction: [1.1, 'fraction'] }, /to 1/],
    [{ ...batch, salinity: [45, 'g/kg'] }, /42/],
  ] as [Said, RegExp][])('%j is refused', (said, because) => {
    const outcome = outcomeOf(saltMix, said);
    expect(outcome.kind).toBe('refusal');
    expect(told(outcome).join(' ')).toMatch(because);
  });
});
