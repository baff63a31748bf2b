import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { saltRaise } from '../../src/core/calculations/salt-raise.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const tank: Said = { volume: [400, 'L'], salinity: [32, 'g/kg'], target: [35, 'g/kg'] };

describe('worked examples', () => {
  // By hand: 400 L at 32 weigh 408.43 kg (1021.076 kg/m³).
  test.each([
    [0.9, (408.43 * 3) / (900 - 35)],
    [1, (408.43 * 3) / (1000 - 35)],
    [0.85, (408.43 * 3) / (850 - 35)],
  ])('400 L from 32 to 35 with a mix %d dry: %d kg', (f, mass) => {
    const { value } = worked(saltRaise, { ...tank, dry_fraction: [f, 'fraction'] });
    expect(value('salt_mass', 'kg')).toBeCloseTo(mass, 3);
  });

  test('in 20 L of tank water a day’s salt stands at 51.6: (20.42*32 + 0.9*472)/(20.42 + 0.472)', () => {
    const { value } = worked(saltRaise, { ...tank, bucket_volume: [20, 'L'] });
    expect(value('bucket_salinity', 'g/kg')).toBeCloseTo((20.4215 * 32 + 0.9 * 472.17) / (20.4215 + 0.47217), 2);
  });
});

test('the tank ends at the salinity wanted, and no day moves it by more than the limit', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 10, max: 5000, noNaN: true }),
      fc.double({ min: 1, max: 41, noNaN: true }),
      fc.double({ min: 0.01, max: 20, noNaN: true }),
      fc.double({ min: 0.6, max: 1, noNaN: true }),
      fc.double({ min: 0.1, max: 5, noNaN: true }),
      (V, S1, rise, f, limit) => {
        const S2 = Math.min(42, S1 + rise);
        const { value, outcome } = worked(saltRaise, {
          volume: [V, 'L'],
          salinity: [S1, 'g/kg'],
          target: [S2, 'g/kg'],
          dry_fraction: [f, 'fraction'],
          max_change: [limit, 'g/kg/day'],
        });
        const M = outcome.steps.find(({ step }) => step.symbol === 'M')!.si;
        const m = value('salt_mass', 'kg');
        expect((M * S1 + 1000 * f * m) / (M + m)).toBeCloseTo(S2, 9);
        expect(value('volume_gain', 'L')).toBeGreaterThan(0);
        const days = value('days', 'day');
        expect(Number.isInteger(days)).toBe(true);
        expect((S2 - S1) / days).toBeLessThanOrEqual(limit * 1.00001);
        expect((S2 - S1) / limit).toBeGreaterThan(days - 1);
        expect(value('salt_per_day', 'kg') * days).toBeCloseTo(m, 9);
      },
    ),
  );
});

test('whole days stay whole: 3 ppt at 1 a day is 3 days, at 0.3 a day 10', () => {
  expect(worked(saltRaise, tank).value('days', 'day')).toBe(3);
  expect(worked(saltRaise, { ...tank, max_change: [0.3, 'g/kg/day'] }).value('days', 'day')).toBe(10);
});

test('an empty system takes it at once, and is told so', () => {
  const { value, outcome } = worked(saltRaise, { ...tank, stocked: 'no' });
  expect(value('days', 'day')).toBe(1);
  expect(outcome.cautions.some(({ text }) => text.startsWith('Reckoned for a system without animals'))).toBe(true);
});

test('a label moves the mass as it does in a new batch', () => {
  const { value } = worked(saltRaise, {
    ...tank,
    label_rate: [38, 'g/L'],
    label_salinity: [35, 'g/kg'],
    basis: 'final',
  });
  expect(value('salt_mass', 'kg')).toBeCloseTo((408.43 * 3) / (942.55 - 35), 3);
});

test('asks for what is missing, and refuses a target that is not above', () => {
  expect(told(outcomeOf(saltRaise, {}))).toEqual(['volume', 'salinity', 'target']);
  expect(told(outcomeOf(saltRaise, { ...tank, target: [32, 'g/kg'] })).join()).toMatch(/salt lower/);
  expect(told(outcomeOf(saltRaise, { ...tank, bucket_volume: [400, 'L'] })).join()).toMatch(/bucket/);
  expect(told(outcomeOf(saltRaise, { ...tank, target: [43, 'g/kg'] })).join()).toMatch(/42/);
});
