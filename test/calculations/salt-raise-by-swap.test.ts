import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { saltRaiseBySwap } from '../../src/core/calculations/salt-raise-by-swap.js';
import { afterSwap } from './after-swap.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const tank: Said = {
  volume: [300, 'L'],
  salinity: [33, 'g/kg'],
  target: [35, 'g/kg'],
  new_salinity: [40, 'g/kg'],
};

describe('worked examples', () => {
  // By hand at 25 °C: 1021.83 kg/m³ at 33, 1027.12 at 40, 1021.08 at 32.
  test('300 L from 33 to 35 with water of 40', () => {
    const { value } = worked(saltRaiseBySwap, tank);
    expect(value('swap_volume', 'L')).toBeCloseTo((300 * 1021.83 * 2) / (1027.12 * 5 + 1021.83 * 2), 2);
  });

  test('300 L from 32 to 35 with water of 40', () => {
    const { value } = worked(saltRaiseBySwap, { ...tank, salinity: [32, 'g/kg'] });
    expect(value('swap_volume', 'L')).toBeCloseTo((300 * 1021.08 * 3) / (1027.12 * 5 + 1021.08 * 3), 2);
  });

  test('the plain share of the volume, 2/7, is within 1 % here', () => {
    expect(worked(saltRaiseBySwap, tank).value('swap_volume', 'L') / ((300 * 2) / 7)).toBeCloseTo(1, 2);
  });
});

test('after the swap the tank stands at the salinity wanted; saltier water needs less', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 10, max: 5000, noNaN: true }),
      fc.double({ min: 5, max: 38, noNaN: true }),
      fc.double({ min: 0.1, max: 4, noNaN: true }),
      fc.double({ min: 0.5, max: 15, noNaN: true }),
      (V, S1, rise, above) => {
        const S2 = S1 + rise;
        const swap = (fresh: number) =>
          worked(saltRaiseBySwap, {
            volume: [V, 'L'],
            salinity: [S1, 'g/kg'],
            target: [S2, 'g/kg'],
            new_salinity: [fresh, 'g/kg'],
          });
        const { value } = swap(S2 + above);
        expect(afterSwap(V, S1, value('swap_volume', 'L'), S2 + above)).toBeCloseTo(S2, 9);
        expect(afterSwap(V, S1, value('swap_per_day', 'L'), S2 + above)).toBeCloseTo(
          S1 + rise / value('days', 'day'),
          9,
        );
        expect(swap(S2 + above + 1).value('swap_volume', 'L')).toBeLessThan(value('swap_volume', 'L'));
        expect(value('swap_volume', 'L')).toBeLessThan(V);
      },
    ),
  );
});

test('asks for what is missing, and refuses water that is not saltier than the target', () => {
  expect(told(outcomeOf(saltRaiseBySwap, { volume: [300, 'L'] }))).toEqual(['salinity', 'target', 'new_salinity']);
  expect(told(outcomeOf(saltRaiseBySwap, { ...tank, new_salinity: [35, 'g/kg'] })).join()).toMatch(/saltier/);
  expect(told(outcomeOf(saltRaiseBySwap, { ...tank, target: [32, 'g/kg'] })).join()).toMatch(/salt lower/);
  expect(told(outcomeOf(saltRaiseBySwap, { ...tank, new_salinity: [61, 'g/kg'] })).join()).toMatch(/60/);
});
