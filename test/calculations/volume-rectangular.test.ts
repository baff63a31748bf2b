import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { volumeRectangular } from '../../src/core/calculations/volume-rectangular.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const box = (L: number, W: number, H: number, more: Said = {}): Said => ({
  length: [L, 'cm'],
  width: [W, 'cm'],
  height: [H, 'cm'],
  ...more,
});
const litres = (said: Said) => worked(volumeRectangular, said).value('water_volume', 'L');

describe('worked by hand', () => {
  test('a cube of 1 m holds 1000 L', () => expect(litres(box(100, 100, 100))).toBeCloseTo(1000, 9));
  test('231 cubic inches are one US gallon: 11 x 7 x 3 in', () => {
    const said: Said = { length: [11, 'in'], width: [7, 'in'], height: [3, 'in'] };
    expect(worked(volumeRectangular, said).value('water_volume', 'gal_US')).toBeCloseTo(1, 9);
  });
  test('60 x 40 x 40 cm, 10 mm glass, 5 cm below the rim: 58 x 38 x 34 cm = 74.936 L', () => {
    expect(litres(box(60, 40, 40, { glass_thickness: [10, 'mm'], freeboard: [5, 'cm'] }))).toBeCloseTo(74.936, 6);
  });
  test('a thicker bottom counts: 12 mm panes on 19 mm, 100 x 50 x 50 cm: 97.6 x 47.6 x 48.1 cm = 223.461 L', () => {
    const said = box(100, 50, 50, { glass_thickness: [12, 'mm'], bottom_thickness: [19, 'mm'] });
    expect(litres(said)).toBeCloseTo(223.461, 3);
  });
});

test('panes, bottom and freeboard only ever take water away, and freeboard exactly its share of the inside', () => {
  const size = fc.double({ min: 30, max: 300, noNaN: true });
  fc.assert(
    fc.property(
      size,
      size,
      size,
      fc.double({ min: 1, max: 25, noNaN: true }),
      fc.double({ min: 0, max: 10, noNaN: true }),
      (L, W, H, t, fb) => {
        const bare = litres(box(L, W, H));
        const glass = worked(volumeRectangular, box(L, W, H, { glass_thickness: [t, 'mm'], freeboard: [fb, 'cm'] }));
        const full = glass.value('volume_inside', 'L');
        expect(full).toBeLessThan(bare);
        const inside = (L - t / 5) * (W - t / 5);
        expect(full - glass.value('water_volume', 'L')).toBeCloseTo((inside * fb) / 1000, 6);
      },
    ),
  );
});

test('asks for what is missing, in order', () => {
  expect(told(outcomeOf(volumeRectangular, { length: [120, 'cm'] }))).toEqual(['width', 'height']);
});

test.each([
  [box(60, 30, 30, { glass_thickness: [160, 'mm'] }), /pane thickness/],
  [box(60, 30, 5, { freeboard: [5, 'cm'] }), /No water is left/],
  [box(700, 30, 30), /0\.03 to 6 m|3 to 600 cm/],
] as [Said, RegExp][])('%j is refused', (said, because) => {
  const outcome = outcomeOf(volumeRectangular, said);
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(because);
});
