import { describe, expect, test } from 'vitest';
import { functions } from '../../src/core/functions.js';

const call = (name: string, x: number): number => functions.get(name)!.apply(x);

describe('coefficients of plates', () => {
  // Roark, Table 11.4 case 1a.
  test.each([
    [1, 0.2874],
    [1.4, 0.453],
    [2, 0.6102],
    [3, 0.7134],
    [5, 0.7476],
  ])('four edges held, %d times as long as wide: %d', (r, beta) => {
    expect(call('beta_four_edges', r)).toBeCloseTo(beta, 9);
  });

  // Beam tables: a strip under a triangular load bends with q a²/(9√3), a stress of 6/(9√3) q (a/t)².
  const STRIP = 6 / (9 * Math.sqrt(3));
  test('a long pane held along its top bends no more than a strip that spans its height', () => {
    expect(call('beta_top_supported', 4)).toBeLessThan(STRIP);
    expect(call('beta_top_supported', 4)).toBeGreaterThan(0.97 * STRIP);
  });

  test('half-way between two rows is their mean', () => {
    expect(call('beta_top_free', 1.875)).toBeCloseTo((call('beta_top_free', 1.75) + call('beta_top_free', 2)) / 2, 12);
  });

  test('a free edge never helps, and a longer pane is never better off', () => {
    for (let r = 0.5; r < 3.9; r += 0.05) {
      expect(call('beta_top_free', r)).toBeGreaterThan(call('beta_top_supported', r));
      expect(call('alpha_top_free', r)).toBeGreaterThan(call('alpha_top_supported', r));
      for (const name of ['beta_top_free', 'beta_top_supported', 'alpha_top_free', 'alpha_top_supported'])
        expect(call(name, r + 0.05)).toBeGreaterThan(call(name, r));
    }
  });

  test('the row copied for this job is 1.35 times too small for a rimless pane at 1.5, and 1.8 times at 3', () => {
    expect(call('beta_top_free', 1.5) / 0.26).toBeCloseTo(1.35, 2);
    expect(call('beta_top_free', 3) / 0.37).toBeCloseTo(1.84, 2);
  });

  test('nothing is said outside the tables', () => {
    for (const [name, x] of [
      ['beta_top_free', 0.49],
      ['beta_top_free', 4.01],
      ['beta_four_edges', 0.99],
      ['beta_four_edges', 5.01],
    ] as const)
      expect(call(name, x)).toBeNaN();
  });
});

test('the next sheet is never thinner, and above 25 mm there is none', () => {
  expect(call('next_sheet', 0.012)).toBe(0.012);
  expect(call('next_sheet', 0.0121)).toBe(0.015);
  expect(call('next_sheet', 0.001)).toBe(0.002);
  expect(call('next_sheet', 0.0251)).toBeNaN();
});
