import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { salinityUnits } from '../../src/core/calculations/salinity-units.js';
import { outcomeOf, told, worked } from './worked.js';

describe('worked examples', () => {
  test('35 at 25 °C: 0.035 of the 1023.343 kg/m³ that UNESCO 44 prints is 35.817 g/L', () => {
    const { value } = worked(salinityUnits, { salinity: [35, 'g/kg'], temperature: [25 / 1.00024, 'degC'] });
    expect(value('concentration', 'g/L')).toBeCloseTo(0.035 * 1023.34306, 6);
    expect(value('concentration', 'mg/L')).toBeCloseTo(35_817, 0);
  });

  test('35 at 5 °C: 0.035 of 1027.67547 kg/m³', () => {
    const { value } = worked(salinityUnits, { salinity: [35, 'g/kg'], temperature: [5 / 1.00024, 'degC'] });
    expect(value('concentration', 'g/L')).toBeCloseTo(0.035 * 1027.67547, 6);
  });

  test('salinity 35 is 35.16504 g/kg of salt (reference composition, Millero et al. 2008)', () => {
    expect(worked(salinityUnits, { salinity: [35, 'g/kg'] }).value('absolute_salinity', 'g/kg')).toBeCloseTo(
      35.16504,
      9,
    );
  });

  test('35 g/L is not 35 g/kg', () => {
    expect(worked(salinityUnits, { concentration: [35, 'g/L'] }).value('salinity', 'g/kg')).toBeCloseTo(34.2, 1);
  });
});

test('grams a litre over grams a kilogram is the density', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 42, noNaN: true }), fc.double({ min: 0, max: 40, noNaN: true }), (S, t) => {
      const { value } = worked(salinityUnits, { salinity: [S, 'g/kg'], temperature: [t, 'degC'] });
      expect(value('concentration', 'g/L') / S).toBeCloseTo(value('density', 'g/mL'), 9);
    }),
  );
});

test('asks for one of the two, takes only one, and refuses what lies beyond', () => {
  expect(told(outcomeOf(salinityUnits, {}))).toEqual(['salinity']);
  const both = outcomeOf(salinityUnits, { salinity: [35, 'g/kg'], concentration: [35, 'g/L'] });
  expect(both.kind).toBe('refusal');
  expect(told(outcomeOf(salinityUnits, { concentration: [350, 'g/L'] })).join()).toMatch(/35\.0 g\/L/);
  expect(told(outcomeOf(salinityUnits, { concentration: [44.9, 'g/L'] })).join()).toMatch(/above 42 ppt/);
});
