import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drainStack } from '../../src/core/calculations/drain-stack.js';
import { outcomeOf, told, worked } from './worked.js';

const stack = (bore: number, fill: number) =>
  worked(drainStack, { inside_diameter: [bore, 'mm'], fill: [fill, 'fraction'] });

describe('worked examples', () => {
  // Wyly and Eaton 1961 in their own units: 27.8 · r^(5/3) · d^(8/3) US gal/min, d in inches, and 3.0·(q/d)^0.4 ft/s.
  test.each([
    ['a quarter full, 2 in', 2, 1 / 4, 17.5],
    ['7/24 full, 3 in', 3, 7 / 24, 66.7],
    ['a third full, 4 in', 4, 1 / 3, 179],
  ])('%s', (_, inches, fill, gallons) => {
    const { value } = stack(inches * 25.4, fill);
    expect(Math.abs(value('flow', 'gal_US/min') / gallons - 1)).toBeLessThan(0.005);
    const speed = 3 * (value('flow', 'gal_US/min') / inches) ** 0.4;
    expect(Math.abs(value('terminal_velocity', 'ft/s') / speed - 1)).toBeLessThan(1e-5);
  });
});

test('a wider or a fuller pipe takes more and the water falls faster', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 10, max: 90, noNaN: true }),
      fc.double({ min: 0.2, max: 0.32, noNaN: true }),
      (bore, fill) => {
        const usual = stack(bore, fill);
        for (const other of [stack(bore * 1.1, fill), stack(bore, fill * 1.05)]) {
          expect(other.value('flow', 'L/h')).toBeGreaterThan(usual.value('flow', 'L/h'));
          expect(other.value('terminal_velocity', 'm/s')).toBeGreaterThan(usual.value('terminal_velocity', 'm/s'));
        }
      },
    ),
  );
});

test('the fill is a guess, and the range is what a quarter and a third full take', () => {
  const { low, high } = worked(drainStack, { inside_diameter: [34, 'mm'] });
  expect(low('flow', 'L/h')).toBeCloseTo(stack(34, 1 / 4).value('flow', 'L/h'), 9);
  expect(high('flow', 'L/h')).toBeCloseTo(stack(34, 1 / 3).value('flow', 'L/h'), 9);
});

test('refuses a pipe half full, asks for the pipe', () => {
  expect(told(outcomeOf(drainStack, { inside_diameter: [34, 'mm'], fill: [0.5, 'fraction'] })).join()).toMatch(/0\.34/);
  expect(told(outcomeOf(drainStack, {}))).toEqual(['inside_diameter']);
});
