import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lightRefugium } from '../../src/core/calculations/light-refugium.js';
import { clockText } from '../../src/core/quantity/clock-text.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const display = (on: string, hours: number, more: Said = {}): Said => ({
  display_on: on,
  display_hours: [hours, 'h'],
  ...more,
});
const window = (said: Said) => {
  const { outcome } = worked(lightRefugium, said);
  return ['refugium_on', 'refugium_off'].map((id) =>
    clockText(outcome.results.find((entry) => entry.id === id)?.value as number),
  );
};

describe('worked by hand', () => {
  test('display 10:00 to 20:00: an hour of overlap at each end gives 19:00 to 11:00', () => {
    expect(window(display('10:00', 10))).toEqual(['19:00', '11:00']);
  });
  test('no overlap: exactly the display’s night', () => {
    expect(window(display('10:00', 10, { overlap_each_end: [0, 'h'] }))).toEqual(['20:00', '10:00']);
  });
  test('10 h wanted in a night of 13: 1.5 h of dark at each end', () => {
    const said = display('12:00', 11, { refugium_hours: [10, 'h'] });
    expect(window(said)).toEqual(['00:30', '10:30']);
    expect(worked(lightRefugium, said).value('overlap_each_end', 'h')).toBeCloseTo(-1.5, 9);
  });
});

test('the light is centred in the display’s night, and light and dark make up the day', () => {
  fc.assert(
    fc.property(
      fc.nat(1439),
      fc.integer({ min: 4 * 60, max: 16 * 60 }),
      fc.integer({ min: 4 * 60, max: 22 * 60 }),
      (on, minutes, wanted) => {
        const said = display(clockText(on * 60), minutes / 60, { refugium_hours: [wanted / 60, 'h'] });
        const { value, outcome } = worked(lightRefugium, said);
        const start = (outcome.results.find(({ id }) => id === 'refugium_on')?.value as number) / 60;
        const middle = (start + wanted / 2) % 1440;
        const night = (on + minutes + (1440 - minutes) / 2) % 1440;
        const apart = Math.abs(middle - night);
        expect(Math.min(apart, 1440 - apart)).toBeLessThan(1e-6);
        expect(value('refugium_hours', 'min') + value('refugium_dark_hours', 'min')).toBeCloseTo(1440, 6);
      },
    ),
  );
});

test('asks for the display’s hours', () => {
  expect(told(outcomeOf(lightRefugium, { display_on: '10:00' }))).toEqual(['display_hours']);
});

test.each([
  [display('12:00', 10, { refugium_hours: [24, 'h'] }), /no timer/],
  [display('12:00', 4, { overlap_each_end: [2, 'h'] }), /more than 22 hours/],
  [display('12:00', 10, { refugium_hours: [12, 'h'], overlap_each_end: [1, 'h'] }), /one of the two/],
  [display('12:00', 20), /8 hours of dark/],
] as [Said, RegExp][])('%j is refused', (said, because) => {
  const outcome = outcomeOf(lightRefugium, said);
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(because);
});
