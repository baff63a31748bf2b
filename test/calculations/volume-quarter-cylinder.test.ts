import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { volumeQuarterCylinder } from '../../src/core/calculations/volume-quarter-cylinder.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const quarter = (R: number, t = 0): Said => ({
  radius: [R, 'cm'],
  height: [50, 'cm'],
  glass_thickness: [t, 'cm'],
  bottom_thickness: [0, 'cm'],
});
const litres = (said: Said) => worked(volumeQuarterCylinder, said).value('water_volume', 'L');

/** Plan area [cm²] inside two back panes and a round front, by strips. */
function strips(R: number, t: number): number {
  const r = R - t;
  const end = Math.sqrt(r ** 2 - t ** 2);
  const n = 40_000;
  const step = (end - t) / n;
  let area = 0;
  for (let i = 0; i < n; i += 1) area += (Math.sqrt(r ** 2 - (t + (i + 0.5) * step) ** 2) - t) * step;
  return area;
}

describe('worked by hand', () => {
  test('inside sizes: a quarter of the circle of 70 cm, pi·70²/4 = 3848.451 cm²', () => {
    expect(worked(volumeQuarterCylinder, quarter(70)).value('plan_area_outside', 'cm2')).toBeCloseTo(3848.451, 3);
    expect(litres(quarter(70))).toBeCloseTo((3848.451 * 50) / 1000, 3);
  });
  test('four quarters make the cylinder: 20 cm across, 50 cm high, 15.708 L', () => {
    expect(4 * litres(quarter(10))).toBeCloseTo(5 * Math.PI, 9);
  });
  test('70 cm in 10 mm, 55 cm of water: 198.1257 L by quadrature of the inner arc', () => {
    const said: Said = {
      radius: [70, 'cm'],
      height: [60, 'cm'],
      glass_thickness: [10, 'mm'],
      freeboard: [4, 'cm'],
    };
    expect(litres(said)).toBeCloseTo(198.1257, 2);
  });
});

test('agrees with strips between the panes', () => {
  fc.assert(
    fc.property(fc.double({ min: 25, max: 150, noNaN: true }), fc.double({ min: 0.1, max: 3, noNaN: true }), (R, t) => {
      expect(litres(quarter(R, t)) / ((strips(R, t) * 50) / 1000)).toBeCloseTo(1, 4);
    }),
    { numRuns: 40 },
  );
});

test('refuses panes that leave no inside', () => {
  const outcome = outcomeOf(volumeQuarterCylinder, quarter(20, 8.4));
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(/No inside/);
  expect(outcomeOf(volumeQuarterCylinder, quarter(20, 8.2)).kind).toBe('answer');
});
