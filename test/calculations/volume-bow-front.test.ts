import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { volumeBowFront } from '../../src/core/calculations/volume-bow-front.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const bow = (L: number, end: number, centre: number, t = 0): Said => ({
  length: [L, 'cm'],
  width_end: [end, 'cm'],
  width_centre: [centre, 'cm'],
  height: [50, 'cm'],
  glass_thickness: [t, 'cm'],
  bottom_thickness: [0, 'cm'],
});

/** Plan area [cm²] between panes of thickness t, by strips across the length: no formula of a segment in it. */
function strips(L: number, end: number, centre: number, t: number): number {
  const rise = centre - end;
  const R = L ** 2 / (8 * rise) + rise / 2;
  const n = 20_000;
  const step = (L - 2 * t) / n;
  let area = 0;
  for (let i = 0; i < n; i += 1) {
    const x = -L / 2 + t + (i + 0.5) * step;
    area += (centre - R + Math.sqrt((R - t) ** 2 - x ** 2) - t) * step;
  }
  return area;
}

describe('worked by hand', () => {
  test('a front bowed out by half its length is a half circle: 80 cm long, 20 cm ends, 60 cm middle', () => {
    const { value } = worked(volumeBowFront, bow(80, 20, 60));
    expect(value('radius', 'cm')).toBeCloseTo(40, 9);
    expect(value('plan_area', 'cm2')).toBeCloseTo(80 * 20 + (Math.PI * 40 ** 2) / 2, 6);
  });
  test('radius from chord and rise: 120 cm and 10 cm give (60² + 10²)/(2·10) = 185 cm', () => {
    expect(worked(volumeBowFront, bow(120, 40, 50)).value('radius', 'cm')).toBeCloseTo(185, 9);
  });
  test('8 mm panes, 91 cm, 30 to 40 cm, 46.2 cm of water: the inner arc about the same centre gives 145.4811 L', () => {
    const said: Said = { ...bow(91, 30, 40, 0.8), bottom_thickness: [0.8, 'cm'], freeboard: [3, 'cm'] };
    expect(worked(volumeBowFront, said).value('water_volume', 'L')).toBeCloseTo(145.4811, 2);
  });
});

test('agrees with strips across the length, panes included', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 50, max: 200, noNaN: true }),
      fc.double({ min: 20, max: 60, noNaN: true }),
      fc.double({ min: 0.05, max: 0.45, noNaN: true }),
      fc.double({ min: 0, max: 2, noNaN: true }),
      (L, end, bulge, t) => {
        const said = bow(L, end, end + bulge * L, t);
        const area = strips(L, end, end + bulge * L, t);
        expect(worked(volumeBowFront, said).value('water_volume', 'L') / ((area * 50) / 1000)).toBeCloseTo(1, 4);
      },
    ),
    { numRuns: 40 },
  );
});

test('lies between the boxes of its end width and its middle width', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 50, max: 200, noNaN: true }),
      fc.double({ min: 20, max: 60, noNaN: true }),
      fc.double({ min: 1.5, max: 20, noNaN: true }),
      (L, end, rise) => {
        const area = worked(volumeBowFront, bow(L, end, end + rise)).value('plan_area', 'cm2');
        expect(area).toBeGreaterThan(L * end);
        expect(area).toBeLessThan(L * (end + rise));
      },
    ),
  );
});

test.each([
  [bow(91, 40, 30), /swapped/],
  [bow(40, 30, 55), /half/],
  [bow(91, 30, 30.4), /rectangular tank/],
  [bow(91, 30, 40, 15.5), /No inside/],
])('%j is refused', (said, because) => {
  const outcome = outcomeOf(volumeBowFront, said);
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(because);
});
