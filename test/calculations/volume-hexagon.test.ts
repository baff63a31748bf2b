import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { volumeHexagon } from '../../src/core/calculations/volume-hexagon.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const hexagon = (f: number, t = 0): Said => ({
  across_flats: [f, 'cm'],
  height: [50, 'cm'],
  glass_thickness: [t, 'cm'],
  bottom_thickness: [0, 'cm'],
});
const litres = (said: Said) => worked(volumeHexagon, said).value('water_volume', 'L');

describe('worked by hand', () => {
  test('six equilateral triangles of side 20 cm: across flats 34.641 cm, area 6·173.205 = 1039.23 cm²', () => {
    const { value } = worked(volumeHexagon, hexagon(20 * Math.sqrt(3)));
    expect(value('side', 'cm')).toBeCloseTo(20, 9);
    expect(value('plan_area_outside', 'cm2')).toBeCloseTo(1039.23, 2);
  });
  test('60 cm across flats: side 34.641 cm, 3117.69 cm²', () => {
    const { value } = worked(volumeHexagon, hexagon(60));
    expect(value('side', 'cm')).toBeCloseTo(34.641, 3);
    expect(value('plan_area_outside', 'cm2')).toBeCloseTo(3117.69, 2);
  });
  test('panes of 8 mm leave 58.4 cm across flats: 2953.63 cm² by 50 cm = 147.68 L', () => {
    expect(litres(hexagon(60, 0.8))).toBeCloseTo(147.68, 2);
  });
});

test('agrees with the cross product of its six corners', () => {
  fc.assert(
    fc.property(fc.double({ min: 20, max: 200, noNaN: true }), fc.double({ min: 0, max: 2, noNaN: true }), (f, t) => {
      const corner = (f - 2 * t) / 2 / Math.cos(Math.PI / 6);
      let area = 0;
      for (let i = 0; i < 6; i += 1) {
        const [p, q] = [(i * Math.PI) / 3, ((i + 1) * Math.PI) / 3];
        area += (corner ** 2 * (Math.cos(p) * Math.sin(q) - Math.cos(q) * Math.sin(p))) / 2;
      }
      expect(litres(hexagon(f, t))).toBeCloseTo((area * 50) / 1000, 6);
    }),
  );
});

test('asks for the width, refuses panes that meet in the middle', () => {
  expect(told(outcomeOf(volumeHexagon, {}))).toEqual(['across_flats', 'height']);
  expect(outcomeOf(volumeHexagon, hexagon(30, 15)).kind).toBe('refusal');
});
