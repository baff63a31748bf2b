import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cycleDoseAmmoniaSolution } from '../../src/core/calculations/cycle-dose-ammonia-solution.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

const dose = (litres: number, percent: number, more: Said = {}): Said => ({
  water_volume: [litres, 'L'],
  ammonia_mass_percent: [percent, '%'],
  ...more,
});
const millilitres = (said: Said) => worked(cycleDoseAmmoniaSolution, said).value('dose_volume', 'mL');

describe('by hand: N·17.031/14.007 of ammonia, over strength and density', () => {
  // CRC Handbook densities at 20 °C.
  test.each([
    [400, 10, 0.9575, 10.16],
    [100, 5, 0.977, 4.978],
    [200, 3, 0.985, 16.46],
    [1000, 28, 0.898, 9.672],
    [250, 8, 0.965, 7.874],
  ])('%d L with %d % of %d g/mL: %d mL', (litres, percent, density, expected) => {
    expect(millilitres(dose(litres, percent))).toBeCloseTo(expected, 2);
    expect(millilitres(dose(litres, percent))).toBeCloseTo(
      (((litres * 2) / 1000) * (17.031 / 14.007)) / (percent / 100) / density,
      6,
    );
  });
  test('a density from the label stands before the table', () => {
    const { value } = worked(cycleDoseAmmoniaSolution, dose(400, 10, { solution_density: [0.96, 'g/mL'] }));
    expect(value('dose_volume', 'mL')).toBeCloseTo(10.159 * (0.9575 / 0.96), 2);
  });
});

test('a stronger bottle takes less, twice the rise twice as much', () => {
  const percent = fc.double({ min: 1, max: 30, noNaN: true });
  fc.assert(
    fc.property(percent, percent, fc.double({ min: 0.5, max: 2, noNaN: true }), (a, b, rise) => {
      if (a < b - 0.01) expect(millilitres(dose(100, a))).toBeGreaterThan(millilitres(dose(100, b)));
      const [one, two] = [rise, 2 * rise].map((mg) => millilitres(dose(100, a, { rise_wanted: [mg, 'mg/L'] })));
      expect(two).toBeCloseTo(2 * one!, 9);
    }),
  );
});

test('says the dose, and what all doses take where they are counted', () => {
  expect(spoken(cycleDoseAmmoniaSolution, dose(400, 10)).headline).toMatch(
    /^10\.2 mL of 10% ammonia raises 400 L by 2 mg/,
  );
  expect(spoken(cycleDoseAmmoniaSolution, dose(400, 10, { doses: [5, 'count'] })).headline).toMatch(
    /50\.8 mL do for 5/,
  );
});

test('stops above 10 %, and not at it', () => {
  const cautions = (percent: number) => spoken(cycleDoseAmmoniaSolution, dose(400, percent)).cautions.join('\n');
  expect(cautions(10)).not.toMatch(/people trained/);
  expect(cautions(11)).toMatch(/stop: Above 10 %.*people trained/);
  expect(cautions(10)).toMatch(/stop: Only into water without[\s\S]*stop: Never near bleach/);
});

test('refuses soap, animals, and a strength that is none', () => {
  expect(told(outcomeOf(cycleDoseAmmoniaSolution, dose(400, 5, { additives: 'soap' }))).join()).toMatch(/Not that one/);
  expect(told(outcomeOf(cycleDoseAmmoniaSolution, dose(400, 5, { animals: 'yes' }))).join()).toMatch(/gills/);
  expect(told(outcomeOf(cycleDoseAmmoniaSolution, dose(400, 35))).join()).toMatch(/1 to 30/);
  expect(told(outcomeOf(cycleDoseAmmoniaSolution, {}))).toEqual(['water_volume', 'ammonia_mass_percent']);
});
