import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { saltLower } from '../../src/core/calculations/salt-lower.js';
import { afterSwap } from './after-swap.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const tank: Said = { volume: [400, 'L'], salinity: [38, 'g/kg'], target: [35, 'g/kg'] };

describe('worked examples', () => {
  test('by hand: 400 L at 38 (1025.61 kg/m³) to 35 with pure water (997.05)', () => {
    const { value } = worked(saltLower, tank);
    expect(value('swap_volume', 'L')).toBeCloseTo((400 * 1025.61 * 3) / (1025.61 * 3 + 997.05 * 35), 2);
    expect(value('swap_fraction', '%')).toBeCloseTo(8.1, 1);
  });

  test('day by day: 38 to 37, 37 to 36, 36 to 35, each by hand', () => {
    const day = (density: number, to: number) => (400 * density) / (density + 997.05 * to);
    const { value } = worked(saltLower, tank);
    expect(value('swap_per_day', 'L')).toBeCloseTo(day(1025.61, 37), 2);
    expect(value('swap_last_day', 'L')).toBeCloseTo(day(1024.1, 35), 2);
    expect(value('swap_total', 'L')).toBeCloseTo(day(1025.61, 37) + day(1024.85, 36) + day(1024.1, 35), 2);
  });

  test('the plain share of the volume, 1 − 35/38, is some 2.5 % short', () => {
    const plain = 400 * (1 - 35 / 38);
    expect(worked(saltLower, tank).value('swap_volume', 'L') / plain).toBeCloseTo(1.026, 3);
  });
});

test('after the swap the tank stands at the salinity wanted, at once or day by day', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 10, max: 5000, noNaN: true }),
      fc.double({ min: 10, max: 42, noNaN: true }),
      fc.double({ min: 0.1, max: 9, noNaN: true }),
      fc.double({ min: 0, max: 0.9, noNaN: true }),
      (V, S1, fall, share) => {
        const S2 = S1 - fall;
        const fresh = S2 * share;
        const { value } = worked(saltLower, {
          volume: [V, 'L'],
          salinity: [S1, 'g/kg'],
          target: [S2, 'g/kg'],
          fresh_salinity: [fresh, 'g/kg'],
        });
        expect(afterSwap(V, S1, value('swap_volume', 'L'), fresh)).toBeCloseTo(S2, 9);
        const days = value('days', 'day');
        expect(fall / days).toBeLessThan(1.00001);
        expect(afterSwap(V, S1, value('swap_per_day', 'L'), fresh)).toBeCloseTo(S1 - fall / days, 9);
        expect(value('swap_total', 'L')).toBeGreaterThanOrEqual(value('swap_volume', 'L') * (1 - 1e-12));
      },
    ),
  );
});

test('an empty system takes it in one swap', () => {
  const { value } = worked(saltLower, { ...tank, stocked: 'no' });
  expect(value('days', 'day')).toBe(1);
  expect(value('swap_total', 'L')).toBeCloseTo(value('swap_volume', 'L'), 9);
  expect(value('swap_per_day', 'L')).toBeCloseTo(value('swap_volume', 'L'), 9);
});

test('asks for what is missing, and refuses what leads nowhere', () => {
  expect(told(outcomeOf(saltLower, { volume: [400, 'L'] }))).toEqual(['salinity', 'target']);
  expect(told(outcomeOf(saltLower, { ...tank, target: [38, 'g/kg'] })).join()).toMatch(/salt raise/);
  expect(told(outcomeOf(saltLower, { ...tank, fresh_salinity: [35, 'g/kg'] })).join()).toMatch(/never gets there/);
  expect(told(outcomeOf(saltLower, { ...tank, volume: [0, 'L'] })).join()).toMatch(/above 0/);
});
