import fc from 'fast-check';
import { expect, test } from 'vitest';
import { panelFactor } from '../../src/core/models/light.js';

// Tables of configuration factors (Hamilton and Morgan 1952): a patch under the corner of a square seen from its side, 0.1385.
test('a square seen from half its side is four corner squares of 0.1385', () => {
  expect(panelFactor(2, 2, 1)).toBeCloseTo(4 * 0.1385, 3);
});

test('an endless panel fills the sky, and a strip without end gives X/sqrt(1 + X²)', () => {
  expect(panelFactor(1e6, 1e6, 1)).toBeCloseTo(1, 5);
  expect(panelFactor(1e6, 2, 1)).toBeCloseTo(Math.SQRT1_2, 5);
});

test('falls with distance, and turning the panel changes nothing', () => {
  const side = fc.double({ min: 0.02, max: 3, noNaN: true });
  fc.assert(
    fc.property(side, side, side, (L, W, d) => {
      expect(panelFactor(L, W, d * 1.01)).toBeLessThan(panelFactor(L, W, d));
      expect(panelFactor(W, L, d)).toBeCloseTo(panelFactor(L, W, d), 12);
    }),
  );
});
