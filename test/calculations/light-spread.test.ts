import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lightSpread } from '../../src/core/calculations/light-spread.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const beam = (angle: number, height: number, more: Said = {}): Said => ({
  beam_angle: [angle, 'deg'],
  height: [height, 'cm'],
  ...more,
});

describe('worked by hand', () => {
  test('a 90° beam is as wide as twice its height, and its rim has 0.5·cos³45° = 0.177', () => {
    const { value } = worked(lightSpread, beam(90, 25));
    expect(value('footprint_diameter', 'cm')).toBeCloseTo(50, 9);
    expect(value('edge_fraction', '1')).toBeCloseTo(2 ** -2.5, 9);
  });
  test('150 cm under footprints of 50 cm that overlap by a fifth: 2.5 steps of 40 cm, so four, 33.3 cm apart', () => {
    const { value } = worked(lightSpread, beam(90, 25, { length: [150, 'cm'] }));
    expect(value('count', '1')).toBe(4);
    expect(value('spacing', 'cm')).toBeCloseTo(100 / 3, 9);
    expect(value('overlap_real', '1')).toBeCloseTo(1 / 3, 9);
  });
  test('130 cm is two steps of 40 cm exactly: three and no fourth', () => {
    expect(worked(lightSpread, beam(90, 25, { length: [130, 'cm'] })).value('count', '1')).toBe(3);
  });
  // Snell for seawater of 1.34: sin 60°/1.34 = 0.6463, 40.26°, tangent 0.8469.
  test('120° from 20 cm, 40 cm down: 69.3 + 2·40·0.8469 = 137 cm', () => {
    const { value } = worked(lightSpread, beam(120, 20, { depth: [40, 'cm'] }));
    expect(value('footprint_at_depth', 'cm')).toBeCloseTo(69.282 + 67.754, 2);
  });
});

test('in water the beam is narrower than in air and never wider than 2·tan(asin(1/1.34)) of the depth', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 160, noNaN: true }),
      fc.double({ min: 1, max: 200, noNaN: true }),
      (angle, z) => {
        const { value } = worked(lightSpread, beam(angle, 20, { depth: [z, 'cm'] }));
        const widened = value('footprint_at_depth', 'cm') - value('footprint_diameter', 'cm');
        expect(widened).toBeGreaterThan(0);
        expect(widened).toBeLessThan(2 * z * Math.tan((angle * Math.PI) / 360));
        expect(widened).toBeLessThan(2 * z * Math.tan(Math.asin(1 / 1.34)));
      },
    ),
  );
});

test('the row covers the tank end to end with at least the overlap asked for, and one lamp fewer would not', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 40, max: 120, noNaN: true }),
      fc.double({ min: 30, max: 400, noNaN: true }),
      fc.double({ min: 0, max: 0.7, noNaN: true }),
      (angle, length, overlap) => {
        const said = beam(angle, 25, { length: [length, 'cm'], overlap: [overlap, 'fraction'] });
        const { value } = worked(lightSpread, said);
        const [n, D] = [value('count', '1'), value('footprint_at_depth', 'cm')];
        const reach = (lamps: number) => D + (lamps - 1) * D * (1 - overlap);
        expect(reach(n)).toBeGreaterThanOrEqual(length - 1e-5);
        if (n > 1) {
          expect(reach(n - 1)).toBeLessThan(length);
          expect(value('overlap_real', '1')).toBeGreaterThanOrEqual(overlap - 1e-6);
          expect((n - 1) * value('spacing', 'cm') + D).toBeCloseTo(length, 6);
        }
      },
    ),
  );
});

test('a guessed overlap gives a range of counts', () => {
  const { low, high } = worked(lightSpread, beam(90, 25, { length: [150, 'cm'] }));
  expect([low('count', '1'), high('count', '1')]).toEqual([4, 5]);
});

test('rows and lamps altogether', () => {
  const said = beam(90, 25, { length: [150, 'cm'], width: [80, 'cm'] });
  const { value } = worked(lightSpread, said);
  expect([value('rows', '1'), value('total', '1')]).toEqual([2, 8]);
});

test('asks for the angle and the height', () => {
  expect(told(outcomeOf(lightSpread, {}))).toEqual(['beam_angle', 'height']);
});

test.each([
  [beam(180, 25), /no edge/],
  [beam(90, 1), /2 cm|0\.02 to 3 m|2 to 300 cm/],
  [beam(90, 25, { length: [100, 'cm'], overlap: [0.9, 'fraction'] }), /0 to 0\.8|80%/],
] as [Said, RegExp][])('%j is refused', (said, because) => {
  const outcome = outcomeOf(lightSpread, said);
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(because);
});
