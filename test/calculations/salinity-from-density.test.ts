import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { salinityFromDensity } from '../../src/core/calculations/salinity-from-density.js';
import { outcomeOf, told, worked } from './worked.js';

const salinityOf = (density: number, t: number) =>
  worked(salinityFromDensity, { density: [density, 'kg/m3'], temperature: [t, 'degC'] }).value('salinity', 'g/kg');

describe('worked examples', () => {
  // Densities printed in UNESCO 44; temperatures are IPTS-68 there.
  test.each([
    [1023.34306, 25, 35],
    [1027.67547, 5, 35],
    [997.04796, 25, 0],
    [1021.728639, 30, 35],
  ])('%d kg/m³ at %d °C is %d: UNESCO 44', (density, t68, S) => {
    expect(salinityOf(density + 1e-6, t68 / 1.00024)).toBeCloseTo(S, 4);
  });

  test('grams a millilitre are the same number over 1000', () => {
    const said = { temperature: [22, 'degC'] } as const;
    const inGrams = worked(salinityFromDensity, { density: [1.0222, 'g/mL'], ...said });
    expect(inGrams.value('salinity', 'g/kg')).toBeCloseTo(salinityOf(1022.2, 22), 9);
  });

  test('forgetting the buoyancy of air, 1.05 kg/m³, costs 1.4 ppt', () => {
    expect(salinityOf(1023.35, 25) - salinityOf(1022.3, 25)).toBeCloseTo(1.4, 1);
  });
});

test('heavier is saltier; the same density in warmer water is saltier too', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1005, max: 1020, noNaN: true }),
      fc.double({ min: 6, max: 38, noNaN: true }),
      (density, t) => {
        expect(salinityOf(density + 0.1, t)).toBeGreaterThan(salinityOf(density, t));
        expect(salinityOf(density, t + 0.5)).toBeGreaterThan(salinityOf(density, t));
      },
    ),
  );
});

test('asks for the temperature, and refuses what no seawater weighs', () => {
  expect(told(outcomeOf(salinityFromDensity, { density: [1023, 'kg/m3'] }))).toEqual(['temperature']);
  const refused = (density: number) =>
    told(outcomeOf(salinityFromDensity, { density: [density, 'kg/m3'], temperature: [25, 'degC'] })).join();
  expect(refused(993)).toMatch(/lighter than fresh water/);
  expect(refused(1035)).toMatch(/above 42 ppt/);
  expect(refused(1.0233)).toMatch(/g\/mL/);
  expect(refused(35)).toMatch(/salinity/);
});
