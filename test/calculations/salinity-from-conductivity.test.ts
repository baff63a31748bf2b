import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { salinityFromConductivity } from '../../src/core/calculations/salinity-from-conductivity.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const salinityOf = (said: Said) => worked(salinityFromConductivity, said).value('salinity', 'g/kg');

describe('worked examples', () => {
  // UNESCO 44: R_t 0.81705885 at 5 °C is 27.995347 and R_t 1.0568875 at 20 °C is 37.245628; temperatures are IPTS-68 there,
  // and r_t is 0.77956585 and 1.11649272. C = 42.914 mS/cm * R_t * r_t.
  test.each([
    [42.914 * 0.81705885 * 0.77956585, 5, 27.995347],
    [42.914 * 1.0568875 * 1.11649272, 20, 37.245628],
    [42.914, 15, 35],
  ])('%d mS/cm at %d °C (IPTS-68) is %d: UNESCO 44', (C, t68, S) => {
    const said: Said = { conductivity: [C, 'mS/cm'], temperature: [t68 / 1.00024, 'degC'], reading: 'actual' };
    expect(salinityOf(said)).toBeCloseTo(S, 4);
  });

  test('a meter of 2 % per degree in water of 26 °C: 50 mS/cm shown is 50*1.02 = 51 mS/cm', () => {
    const shown: Said = {
      conductivity: [50, 'mS/cm'],
      reading: 'compensated_25',
      compensation: [2, '%/K'],
      temperature: [26, 'degC'],
    };
    const raw: Said = { conductivity: [51, 'mS/cm'], reading: 'actual', temperature: [26, 'degC'] };
    expect(salinityOf(shown)).toBeCloseTo(salinityOf(raw), 9);
  });

  test('corrected twice: 53.06 mS/cm at 25 °C taken as raw at 20 °C comes out above 39', () => {
    expect(salinityOf({ conductivity: [53.06, 'mS/cm'], temperature: [20, 'degC'], reading: 'actual' })).toBeCloseTo(
      39.3,
      1,
    );
  });

  test('true mass of salt is 35.16504/35 of the practical salinity', () => {
    const { value } = worked(salinityFromConductivity, { conductivity: [53, 'mS/cm'], reading: 'compensated_25' });
    expect(value('absolute_salinity', 'g/kg') / value('salinity', 'g/kg')).toBeCloseTo(35.16504 / 35, 12);
  });
});

test('more conductivity is more salt, and the same conductivity in warmer water is less', () => {
  const reading = (C: number, t: number): Said => ({
    conductivity: [C, 'mS/cm'],
    temperature: [t, 'degC'],
    reading: 'actual',
  });
  fc.assert(
    fc.property(fc.double({ min: 25, max: 50, noNaN: true }), fc.double({ min: 16, max: 34, noNaN: true }), (C, t) => {
      expect(salinityOf(reading(C + 0.1, t))).toBeGreaterThan(salinityOf(reading(C, t)));
      expect(salinityOf(reading(C, t + 0.1))).toBeLessThan(salinityOf(reading(C, t)));
    }),
  );
});

describe('asks and refusals', () => {
  test('asks whether the reading is corrected before it asks for the temperature', () => {
    expect(told(outcomeOf(salinityFromConductivity, { conductivity: [53, 'mS/cm'] }))).toEqual(['reading']);
    const raw: Said = { conductivity: [53, 'mS/cm'], reading: 'actual' };
    expect(told(outcomeOf(salinityFromConductivity, raw))).toEqual(['temperature']);
  });

  test('a corrected reading needs no temperature unless the meter’s rule is given', () => {
    const corrected: Said = { conductivity: [53, 'mS/cm'], reading: 'compensated_25' };
    expect(outcomeOf(salinityFromConductivity, corrected).kind).toBe('answer');
    expect(told(outcomeOf(salinityFromConductivity, { ...corrected, compensation: [2, '%/K'] }))).toEqual([
      'temperature',
    ]);
  });

  test.each([
    [{ conductivity: [53_000, 'mS/cm'], reading: 'compensated_25' }, /µS\/cm/],
    [{ conductivity: [53, 'mS/cm'], reading: 'actual', temperature: [78, 'degC'] }, /78 °F/],
    [{ conductivity: [2.2, 'mS/cm'], reading: 'compensated_25' }, /2 to 42 ppt/],
    [{ conductivity: [75, 'mS/cm'], reading: 'compensated_25' }, /2 to 42 ppt/],
  ] as [Said, RegExp][])('%j is refused', (said, because) => {
    const outcome = outcomeOf(salinityFromConductivity, said);
    expect(outcome.kind).toBe('refusal');
    expect(told(outcome).join(' ')).toMatch(because);
  });

  test('35 on a display may be the salinity already', () => {
    const { outcome } = worked(salinityFromConductivity, { conductivity: [35, 'mS/cm'], reading: 'compensated_25' });
    expect(outcome.cautions.some(({ text }) => text.includes('the number is the salinity already'))).toBe(true);
  });
});
