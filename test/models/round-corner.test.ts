import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { longestRoundCorner, roomRoundCorner } from '../../src/core/models/round-corner.js';

const metres = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });

describe('the classical ladder', () => {
  // Textbook problem: corridors of 8 and 27 feet pass a ladder of 13·sqrt(13) feet, (4 + 9)^1.5.
  test('8 ft and 27 ft pass 46.87 ft', () => {
    expect(longestRoundCorner(8, 27, 0)).toBeCloseTo(13 * Math.sqrt(13), 6);
    expect(roomRoundCorner(8, 27, 13 * Math.sqrt(13))).toBeCloseTo(0, 6);
  });

  test('any two corridors: (a^(2/3) + b^(2/3))^1.5', () => {
    fc.assert(
      fc.property(metres(0.3, 5), metres(0.3, 5), (a, b) => {
        expect(longestRoundCorner(a, b, 0)).toBeCloseTo((a ** (2 / 3) + b ** (2 / 3)) ** 1.5, 6);
      }),
    );
  });
});

test('in equal corridors the tightest place is at 45°: longest 2·(sqrt(2)·a − w) while it is longer than the corridor', () => {
  fc.assert(
    fc.property(metres(0.5, 3), metres(0, 0.4), (a, share) => {
      const w = share * a;
      expect(longestRoundCorner(a, a, w)).toBeCloseTo(2 * (Math.SQRT2 * a - w), 6);
    }),
  );
});

test('a box of the longest length has no room left', () => {
  fc.assert(
    fc.property(metres(0.5, 3), metres(0.5, 3), metres(0.05, 0.95), (a, b, share) => {
      const w = share * Math.min(a, b);
      expect(roomRoundCorner(a, b, longestRoundCorner(a, b, w))).toBeCloseTo(w, 5);
    }),
  );
});

test('a box that no angle of a fine search lets through has no room, and the other way round', () => {
  fc.assert(
    fc.property(metres(0.5, 2), metres(0.5, 2), metres(0.3, 3), (a, b, L) => {
      let least = Number.POSITIVE_INFINITY;
      for (let i = 0; i <= 9000; i += 1) {
        const x = ((i / 100) * Math.PI) / 180;
        // Distance of the inner corner from the line through the two ends on the outer walls.
        const [p, q] = [L * Math.cos(x), L * Math.sin(x)];
        least = Math.min(least, (q * a + p * b - p * q) / L);
      }
      expect(roomRoundCorner(a, b, L)).toBeCloseTo(least, 6);
    }),
  );
});

test('neither corridor comes first', () => {
  fc.assert(
    fc.property(metres(0.3, 3), metres(0.3, 3), metres(0.1, 4), (a, b, L) => {
      expect(roomRoundCorner(b, a, L)).toBeCloseTo(roomRoundCorner(a, b, L), 8);
    }),
  );
});
