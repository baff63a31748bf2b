import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { salinityToConductivity } from '../../src/core/calculations/salinity-to-conductivity.js';
import { outcomeOf, told, worked } from './worked.js';

const conductivityOf = (S: number, t: number) =>
  worked(salinityToConductivity, { salinity: [S, 'g/kg'], temperature: [t, 'degC'] });

describe('worked examples', () => {
  // UNESCO 44: r_t at 5, 15 and 20 °C (IPTS-68) is 0.77956585, 1 and 1.11649272; salinity 35 conducts 42.914 mS/cm times that.
  test.each([
    [5, 0.77956585],
    [15, 1],
    [20, 1.11649272],
  ])('35 at %d °C: ratio %d (UNESCO 44)', (t68, ratio) => {
    const { value } = conductivityOf(35, t68 / 1.00024);
    expect(value('conductivity_ratio', '1')).toBeCloseTo(ratio, 7);
    expect(value('conductivity', 'mS/cm')).toBeCloseTo(42.914 * ratio, 5);
  });

  test('27.995347 at 5 °C (IPTS-68): 0.81705885 of what salinity 35 conducts there (UNESCO 44)', () => {
    expect(conductivityOf(27.995347, 5 / 1.00024).value('conductivity_ratio', '1')).toBeCloseTo(
      0.81705885 * 0.77956585,
      6,
    );
  });

  test('at 25 °C the raw and the corrected reading are one', () => {
    const { value } = conductivityOf(33, 25);
    expect(value('conductivity', 'S/m')).toBeCloseTo(value('conductivity_at_25', 'S/m'), 12);
  });
});

test('seawater conducts 1.8 to 2.1 % more per degree, counted from 25 °C', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 28, max: 40, noNaN: true }),
      fc.oneof(fc.double({ min: 15, max: 24, noNaN: true }), fc.double({ min: 26, max: 32, noNaN: true })),
      (S, t) => {
        const { value } = conductivityOf(S, t);
        const perDegree = (value('conductivity', 'S/m') / value('conductivity_at_25', 'S/m') - 1) / (t - 25);
        expect(perDegree).toBeGreaterThan(0.018);
        expect(perDegree).toBeLessThan(0.021);
      },
    ),
  );
});

test('asks for the temperature, and refuses a salinity that the scale does not hold for', () => {
  expect(told(outcomeOf(salinityToConductivity, { salinity: [35, 'g/kg'] }))).toEqual(['temperature']);
  const fresh = outcomeOf(salinityToConductivity, { salinity: [0.5, 'g/kg'], temperature: [25, 'degC'] });
  expect(fresh.kind).toBe('refusal');
  expect(told(fresh).join()).toMatch(/2 to 42/);
});
