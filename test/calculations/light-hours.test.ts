import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lightHours } from '../../src/core/calculations/light-hours.js';
import { lightIntegral } from '../../src/core/calculations/light-integral.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const wanted = (mol: number, ppfd: number, ramp = 0): Said => ({
  daily_light_integral_wanted: [mol, 'mol/m2/day'],
  ppfd: [ppfd, 'umol/m2/s'],
  ramp_hours_each: [ramp, 'h'],
});
const flag = (said: Said, id: string) =>
  worked(lightHours, said).outcome.results.find((entry) => entry.id === id)?.value;

describe('worked by hand', () => {
  test('7.2 mol at 200: 7.2e6/200 s = 36,000 s, ten hours', () => {
    const { value } = worked(lightHours, wanted(7.2, 200));
    expect(value('hours', 'h')).toBeCloseTo(10, 9);
    expect(value('ppfd_for_10_h', 'umol/m2/s')).toBeCloseTo(200, 9);
  });
  test('a ramp at each end adds one ramp: 9.26 h become 10.26 h', () => {
    expect(worked(lightHours, wanted(7, 210, 1)).value('hours', 'h')).toBeCloseTo(7e6 / 210 / 3600 + 1, 9);
  });
  test('9 mol in 10 h with ramps of 1 h: 9e6/32,400 = 277.8', () => {
    const said: Said = {
      daily_light_integral_wanted: [9, 'mol/m2/day'],
      hours: [10, 'h'],
      ramp_hours_each: [1, 'h'],
    };
    expect(worked(lightHours, said).value('ppfd_needed', 'umol/m2/s')).toBeCloseTo(9e6 / 32_400, 6);
  });
  test('mixed corals, 6 to 12 mol, in 10 h: 167 to 333, 250 in the middle', () => {
    const { value, low, high } = worked(lightHours, { corals: 'mixed', hours: [10, 'h'] });
    expect(low('ppfd_needed', 'umol/m2/s')).toBeCloseTo(166.67, 2);
    expect(value('ppfd_needed', 'umol/m2/s')).toBeCloseTo(250, 6);
    expect(high('ppfd_needed', 'umol/m2/s')).toBeCloseTo(333.33, 2);
  });
});

test('the hours give back the light that was wanted', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 2, max: 20, noNaN: true }),
      fc.double({ min: 250, max: 1500, noNaN: true }),
      fc.double({ min: 0, max: 0.25, noNaN: true }),
      (mol, ppfd, ramp) => {
        const said = wanted(mol, ppfd, ramp);
        const hours = worked(lightHours, said).value('hours', 'h');
        const back: Said = { ppfd: [ppfd, 'umol/m2/s'], hours: [hours, 'h'], ramp_hours_each: [ramp, 'h'] };
        expect(worked(lightIntegral, back).value('daily_light_integral', 'mol/m2/day')).toBeCloseTo(mol, 9);
      },
    ),
  );
});

test('flags a long and a short day', () => {
  expect(flag(wanted(14, 260), 'long_day')).toBe(true);
  expect(flag(wanted(7, 210), 'long_day')).toBe(false);
  expect(flag(wanted(7, 400), 'short_day')).toBe(true);
});

test('hours for the high end that do not fit into a day are left out, not shown as 25 h', () => {
  const { outcome, value } = worked(lightHours, { corals: 'mixed', ppfd: [130, 'umol/m2/s'] });
  expect(value('hours_low', 'h')).toBeCloseTo(6e6 / 130 / 3600, 9);
  expect(outcome.results.some(({ id }) => id === 'hours_high')).toBe(false);
});

test('asks for a strength when only the wanted light is known', () => {
  expect(told(outcomeOf(lightHours, { daily_light_integral_wanted: [8, 'mol/m2/day'] }))).toEqual(['ppfd']);
});

test.each([
  [wanted(12, 100), /24 hours/],
  [{ corals: 'stony', ppfd: [100, 'umol/m2/s'] }, /24 hours/],
  [wanted(800, 200), /PPFD/],
  [wanted(2, 1500, 2), /shorten the ramps/],
] as [Said, RegExp][])('%j is refused', (said, because) => {
  const outcome = outcomeOf(lightHours, said);
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(because);
});
