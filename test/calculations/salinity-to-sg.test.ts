import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { salinityToSg } from '../../src/core/calculations/salinity-to-sg.js';
import { outcomeOf, told, worked } from './worked.js';

describe('worked examples', () => {
  // Ratios of the densities that UNESCO 44 prints: 1023.34306, 997.04796, 1027.67547, 999.96675 (temperatures IPTS-68).
  test.each([
    [25, 25, 1023.34306 / 997.04796],
    [5, 5, 1027.67547 / 999.96675],
    [25, 5, 1023.34306 / 999.96675],
  ])('35 at %d °C over water of %d °C is %d', (sample68, water68, SG) => {
    const { value } = worked(salinityToSg, {
      salinity: [35, 'g/kg'],
      temperature: [sample68 / 1.00024, 'degC'],
      reference_temperature: [water68 / 1.00024, 'degC'],
    });
    expect(value('specific_gravity', '1')).toBeCloseTo(SG, 7);
  });
});

test('without temperatures it is 25 °C over 25 °C, listed as a default, with what other scales make of it', () => {
  const { value, low, high, outcome } = worked(salinityToSg, { salinity: [35, 'g/kg'] });
  expect(value('specific_gravity', '1')).toBeCloseTo(1.0264, 4);
  expect(low('specific_gravity', '1')).toBeCloseTo(1.0248, 4);
  expect(high('specific_gravity', '1')).toBeCloseTo(1.0269, 4);
  const defaults = outcome.inputs.filter(({ from }) => from === 'default').map(({ id }) => id);
  expect(defaults).toEqual(['temperature', 'reference_temperature']);
});

test.each([
  ['60/60', 60, 60, 'degF'],
  ['60/60 F', 60, 60, 'degF'],
  ['20/4', 20, 4, 'degC'],
  ['25 C / 25 C', 25, 25, 'degC'],
  ['77°F/77°F', 77, 77, 'degF'],
  ['20 over 20', 20, 20, 'degC'],
])('a scale printed “%s” means its two temperatures, and leaves no spread', (scale, sample, water, unit) => {
  const printed = worked(salinityToSg, { salinity: [35, 'g/kg'], scale });
  const spelled = worked(salinityToSg, {
    salinity: [35, 'g/kg'],
    temperature: [sample, unit],
    reference_temperature: [water, unit],
  });
  expect(printed.value('specific_gravity', '1')).toBe(spelled.value('specific_gravity', '1'));
  expect(() => printed.low('specific_gravity', '1')).toThrow();
});

test('more salt is heavier, and fresh water over itself is 1', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 41, noNaN: true }), fc.double({ min: 0, max: 40, noNaN: true }), (S, t) => {
      const gravityOf = (salinity: number) =>
        worked(salinityToSg, { salinity: [salinity, 'g/kg'], temperature: [t, 'degC'] }).value('specific_gravity', '1');
      expect(gravityOf(S + 1)).toBeGreaterThan(gravityOf(S));
      expect(gravityOf(0)).toBe(1);
    }),
  );
});

test('asks for the salinity, and refuses 350 and an unreadable scale', () => {
  expect(told(outcomeOf(salinityToSg, {}))).toEqual(['salinity']);
  expect(told(outcomeOf(salinityToSg, { salinity: [350, 'g/kg'] })).join()).toMatch(/decimal point/);
  expect(told(outcomeOf(salinityToSg, { salinity: [35, 'g/kg'], scale: 'standard' })).join()).toMatch(/60\/60 F/);
});
