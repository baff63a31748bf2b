import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseFormula, type Shape, shapeOf } from '../../src/core/formula.js';
import { functions } from '../../src/core/functions.js';
import { leastSquaresSlope } from '../../src/core/models/cycle-log.js';
import { ammoniaSolutionDensity } from '../../src/core/models/nitrogen.js';
import { dimensionOf, dimensionText } from '../../src/core/quantity/dimension.js';
import { writeOut } from '../../src/core/sum.js';

const call = (name: string, ...values: number[]) => functions.get(name)!.apply(...values);
const DAY = 86_400;

describe('the least-squares line', () => {
  test('2.0, 1.8, 1.45, 1.2, 0.9 on days 0 to 4 falls by 0.28 a day (by hand: Σ(t−2)(y−1.47)/10 = −2.8/10)', () => {
    expect(
      leastSquaresSlope([
        [0, 2],
        [1, 1.8],
        [2, 1.45],
        [3, 1.2],
        [4, 0.9],
      ]),
    ).toBeCloseTo(-0.28, 12);
  });
  test('runs through points that lie on a line, wherever they lie', () => {
    const number = fc.double({ min: -50, max: 50, noNaN: true });
    fc.assert(
      fc.property(number, number, fc.uniqueArray(fc.integer({ min: 0, max: 100 }), { minLength: 2 }), (a, b, times) => {
        expect(leastSquaresSlope(times.map((t) => [t, a + b * t]))).toBeCloseTo(b, 6);
      }),
    );
  });
  test('no line through one point', () => {
    expect(leastSquaresSlope([[1, 2]])).toBeNaN();
  });
  test('counts only readings after the last dose', () => {
    const rows = [0, 0, 5, 1, 2, 0, 2, 0, 1.9, 3, 0, 1.6];
    expect(call('slope_since_dose', ...rows)).toBeCloseTo(-0.3, 12);
  });
});

describe('rows of a log', () => {
  test('last dose, readings and time since', () => {
    expect(call('last_dose', 0, 2, 0, 1.5, 0)).toBe(1.5);
    expect(call('last_dose', 0, 0)).toBe(0);
    expect(call('readings_since_dose', 0, 2, 0, 1.5, 0)).toBe(1);
    expect(call('readings_since_dose', 0, 0)).toBe(2);
    expect(call('readings_since_dose', 0, 2)).toBe(0);
    expect(call('span_since_dose', 0, 2, 3, 0, 9, 0)).toBe(6);
    expect(call('span_since_dose', 0, 2)).toBe(0);
  });
  test('time at a level or above, up to the last reading', () => {
    expect(call('time_at_least', 1, 0, 3, 5, 1, 9, 2)).toBe(9);
    expect(call('time_at_least', 1, 0, 3, 5, 0.9, 9, 2, 11, 2)).toBe(2);
    expect(call('time_at_least', 1, 0, 3, 5, 0.9)).toBe(0);
  });
  test('shortest step is negative for days that run backwards', () => {
    expect(call('shortest_step', 1, 3, 4)).toBe(1);
    expect(call('shortest_step', 1, 3, 2)).toBe(-1);
  });
  test('a dose judged: gone a day later counts, still there later ends the row, gone later is passed over', () => {
    const cleared = (...rows: number[][]) =>
      call('cleared_in_a_row', 1.5, 0.25, 0.1, ...rows.flatMap(([day, ...rest]) => [day! * DAY, ...rest]));
    expect(cleared([0, 2, 0, 0], [1, 2, 0, 0], [2, 0, 0, 0])).toBe(2);
    expect(cleared([0, 2, 0, 0], [1, 2, 0, 0], [3, 0, 0, 0])).toBe(1);
    expect(cleared([0, 2, 0, 0], [1, 2, 0, 0], [3, 0, 1, 0])).toBe(0);
    expect(cleared([0, 2, 0, 0], [0.5, 1, 0, 0], [1, 0, 0, 0])).toBe(0);
  });
});

describe('rows in a formula', () => {
  const shapes = new Map<string, Shape>(
    [1, 2].flatMap((i) => [
      [`t_${i}`, { dimension: dimensionOf('s') }] as const,
      [`y_${i}`, { dimension: dimensionOf('kg/m^3') }] as const,
    ]),
  );
  const dimension = (formula: string) =>
    dimensionText(
      shapeOf(parseFormula(writeOut(formula, (symbol) => shapes.has(symbol))!), shapes, functions).dimension,
    );

  test('a list is written out as arguments, over the rows that have every value', () => {
    const known = new Set(['t_1', 'y_1', 't_3', 'y_3', 't_4']);
    expect(writeOut('-slope(list_i(t_i, 2*y_i))', (symbol) => known.has(symbol))).toBe(
      '-slope(t_1, 2*y_1, t_3, 2*y_3)',
    );
    expect(writeOut('slope(list_i(t_i, y_i))', () => false)).toBeUndefined();
  });
  test('the dimension follows from the column', () => {
    expect(dimension('slope(list_i(t_i, y_i))')).toBe(dimensionText(dimensionOf('kg/(m^3 s)')));
    expect(dimension('last(list_i(t_i))')).toBe('s');
  });
  test.each([
    ['slope(list_i(y_i, t_i))', /slope takes s/],
    ['last_dose(list_i(t_i))', /last_dose takes/],
    ['slope(t_1, y_1, t_2)', /rows of 2/],
  ])('%s is refused when it loads', (formula, because) => {
    expect(() => dimension(formula)).toThrow(because);
  });
});

describe('density of ammonia solution', () => {
  test.each([
    [0.03, 985],
    [0.1, 957.5],
    [0.28, 898],
    [0.04, 981],
  ])('%d by mass is %d kg/m³ (CRC Handbook; halfway lies in the middle)', (share, density) => {
    expect(ammoniaSolutionDensity(share)).toBeCloseTo(density, 6);
  });
  test('falls with strength, and ends with the table', () => {
    const share = fc.double({ min: 0, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(share, share, (a, b) => {
        if (a < b - 1e-6) expect(ammoniaSolutionDensity(a)).toBeGreaterThan(ammoniaSolutionDensity(b));
      }),
    );
    expect(ammoniaSolutionDensity(0.31)).toBeNaN();
  });
});
