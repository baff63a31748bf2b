import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { volumeCorner } from '../../src/core/calculations/volume-corner.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const corner = (a: number, c: number, t = 0): Said => ({
  side: [a, 'cm'],
  cut: [c, 'cm'],
  height: [50, 'cm'],
  glass_thickness: [t, 'cm'],
  bottom_thickness: [0, 'cm'],
});
const litres = (said: Said) => worked(volumeCorner, said).value('water_volume', 'L');

type Point = readonly [x: number, y: number];
const shoelace = (points: readonly Point[]): number =>
  Math.abs(
    points.reduce((sum, [x, y], i) => {
      const [nextX, nextY] = points[(i + 1) % points.length]!;
      return sum + x * nextY - nextX * y;
    }, 0),
  ) / 2;

/** Inside corners: four sides moved in by t, and the cut x + y = 2a - c moved in by t along its normal. */
function insideArea(a: number, c: number, t: number): number {
  const onCut = 2 * a - c - t * Math.SQRT2;
  const far = a - t;
  return shoelace([
    [t, t],
    [far, t],
    [far, onCut - far],
    [onCut - far, far],
    [t, far],
  ]);
}

describe('worked by hand', () => {
  test('60 cm sides and a 20 cm cut: 3600 − 200 = 3400 cm²', () => {
    expect(worked(volumeCorner, corner(60, 20)).value('plan_area_outside', 'cm2')).toBeCloseTo(3400, 6);
    expect(litres(corner(60, 20))).toBeCloseTo(170, 6);
  });
  test('24 in sides, 10 in cut: 576 − 50 = 526 in²', () => {
    const said: Said = { side: [24, 'in'], cut: [10, 'in'], height: [22, 'in'] };
    expect(worked(volumeCorner, said).value('plan_area_outside', 'in2')).toBeCloseTo(526, 6);
  });
  test('with 1/4 in glass, inside side 23.5 in and leg 9.8536 in: 503.70 in² by 20.75 in = 171.275 L', () => {
    const said: Said = {
      side: [24, 'in'],
      cut: [10, 'in'],
      height: [22, 'in'],
      glass_thickness: [0.25, 'in'],
      freeboard: [1, 'in'],
    };
    expect(litres(said)).toBeCloseTo(171.275, 2);
  });
});

test('agrees with the corners of the inside, each pane moved in by its thickness', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 40, max: 150, noNaN: true }),
      fc.double({ min: 0.2, max: 0.8, noNaN: true }),
      fc.double({ min: 0.1, max: 2, noNaN: true }),
      (a, share, t) => {
        expect(litres(corner(a, share * a, t))).toBeCloseTo((insideArea(a, share * a, t) * 50) / 1000, 6);
      },
    ),
  );
});

test('a larger cut leaves less water', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 50, noNaN: true }),
      fc.double({ min: 0.1, max: 5, noNaN: true }),
      (c, more) => {
        expect(litres(corner(60, c + more))).toBeLessThan(litres(corner(60, c)));
      },
    ),
  );
});

test.each([
  [corner(60, 60), /swapped/],
  [corner(60, 59, 2), /no square/],
  [corner(60, 1, 3), /no square/],
  [corner(20, 8, 10), /No inside/],
])('%j is refused', (said, because) => {
  const outcome = outcomeOf(volumeCorner, said);
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(because);
});
