import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lightIntegral } from '../../src/core/calculations/light-integral.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const lit = (ppfd: number, hours: number, ramp = 0): Said => ({
  ppfd: [ppfd, 'umol/m2/s'],
  hours: [hours, 'h'],
  ramp_hours_each: [ramp, 'h'],
});
const channels = (blue: number, hoursBlue: number, white: number, hoursWhite: number): Said => ({
  ppfd_blue: [blue, 'umol/m2/s'],
  hours_blue: [hoursBlue, 'h'],
  ppfd_white: [white, 'umol/m2/s'],
  hours_white: [hoursWhite, 'h'],
});
const moles = (said: Said) => worked(lightIntegral, said).value('daily_light_integral', 'mol/m2/day');

/** Photons summed minute by minute, the ramps as straight lines from nothing and back. */
function summed(ppfd: number, hours: number, ramp: number): number {
  let total = 0;
  for (let minute = 0.5; minute < hours * 60; minute += 1) {
    const [since, left] = [minute / 60, hours - minute / 60];
    total += ppfd * Math.min(1, ramp === 0 ? 1 : since / ramp, ramp === 0 ? 1 : left / ramp) * 60;
  }
  return total / 1e6;
}

describe('worked by hand', () => {
  test('a million seconds of 1 µmol are a mole: 100 for 10 h is 100·36,000/1e6 = 3.6', () => {
    expect(moles(lit(100, 10))).toBeCloseTo(3.6, 9);
  });
  test('two ramps of 1.5 h lose one: 320 for 9.5 h of the 11 is 10.944', () => {
    expect(moles(lit(320, 11, 1.5))).toBeCloseTo(10.944, 9);
  });
  test('blue 90 for 11 h and white 140 for 7 h: 3.564 + 3.528, 230 while both run', () => {
    const { value } = worked(lightIntegral, channels(90, 11, 140, 7));
    expect(value('daily_light_integral_blue', 'mol/m2/day')).toBeCloseTo(3.564, 9);
    expect(value('daily_light_integral_white', 'mol/m2/day')).toBeCloseTo(3.528, 9);
    expect(value('daily_light_integral', 'mol/m2/day')).toBeCloseTo(7.092, 9);
    expect(value('ppfd_peak', 'umol/m2/s')).toBeCloseTo(230, 9);
  });
});

test('agrees with a sum over the minutes of the day, ramps included', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 2000 }), fc.integer({ min: 2, max: 24 }), fc.nat(12), (ppfd, hours, r) => {
      const ramp = Math.min(r, Math.floor(hours / 2));
      expect(moles(lit(ppfd, hours, ramp)) / summed(ppfd, hours, ramp)).toBeCloseTo(1, 6);
    }),
  );
});

test('two channels of equal hours are one lamp of their sum', () => {
  const level = fc.double({ min: 1, max: 900, noNaN: true });
  fc.assert(
    fc.property(level, level, fc.double({ min: 1, max: 24, noNaN: true }), (blue, white, hours) => {
      expect(moles(channels(blue, hours, white, hours))).toBeCloseTo(moles(lit(blue + white, hours)), 9);
    }),
  );
});

test('is set against what is common for the corals, ends included', () => {
  const judged = (said: Said) =>
    worked(lightIntegral, said).outcome.results.find(({ id }) => id === 'against_target')?.value;
  expect(judged({ ...lit(200, 10), corals: 'stony' })).toBe('below');
  expect(judged({ ...lit(200, 10), corals: 'mixed' })).toBe('within');
  expect(judged({ ...lit(200, 10), corals: 'soft' })).toBe('above');
  expect(judged(lit(200, 10))).toBeUndefined();
});

test('a short bright day is warned about', () => {
  const warned = (said: Said) =>
    worked(lightIntegral, said).outcome.cautions.some(({ text }) => /short bright/.test(text));
  expect(warned(lit(400, 5))).toBe(true);
  expect(warned(lit(400, 8))).toBe(false);
  expect(warned(channels(200, 5, 200, 4))).toBe(true);
});

test('asks for what completes the set that was begun', () => {
  expect(told(outcomeOf(lightIntegral, {}))).toEqual(['ppfd', 'hours']);
  expect(told(outcomeOf(lightIntegral, { ppfd: [200, 'umol/m2/s'] }))).toEqual(['hours']);
  const blue: Said = { ppfd_blue: [90, 'umol/m2/s'], hours_blue: [11, 'h'] };
  expect(told(outcomeOf(lightIntegral, blue))).toEqual(['ppfd_white', 'hours_white']);
});

test.each([
  [lit(12_000, 10), /lux/],
  [lit(0, 10), /nothing/],
  [lit(200, 25), /24 hours/],
  [lit(200, 5, 3), /do not fit/],
  [channels(80, 8, 100, 10), /swapped/],
  [{ ...channels(80, 8, 100, 7), ppfd: [180, 'umol/m2/s'] }, /either/],
  [{ ...channels(80, 8, 100, 2), ramp_hours_each: [1.5, 'h'] }, /do not fit/],
] as [Said, RegExp][])('%j is refused', (said, because) => {
  const outcome = outcomeOf(lightIntegral, said);
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(because);
});
