import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lightWindow } from '../../src/core/models/clock-window.js';
import { clockText } from '../../src/core/quantity/clock-text.js';

const read = (from: string, to: string): string => {
  const window = lightWindow(from, to);
  return window.kind === 'window' ? `${clockText(window.on)}-${clockText(window.off)}` : window.kind;
};

describe('the words as people say them', () => {
  test.each([
    ['10', '8', '10:00-20:00'],
    ['5', '11', '17:00-23:00'],
    ['2pm', '1', '14:00-01:00'],
    ['4 pm', '2 am', '16:00-02:00'],
    ['noon', '11', '12:00-23:00'],
    ['12', '8', '12:00-20:00'],
    ['9', '9', '09:00-21:00'],
    ['13:30', '22:00', '13:30-22:00'],
    ['08:00', '18', '08:00-18:00'],
    ['10:30', '7.30', '10:30-19:30'],
    ['11', 'midnight', '11:00-00:00'],
  ])('%s to %s is %s', (from, to, window) => expect(read(from, to)).toBe(window));
});

describe('not settled by the words', () => {
  test.each([
    ['6', '6'],
    ['6', '10'],
    ['4 pm', '8'],
  ])('%s to %s is asked about', (from, to) => {
    const window = lightWindow(from, to);
    expect(window.kind).toBe('ask');
    expect(window.kind === 'ask' && window.windows.length).toBeGreaterThan(1);
  });
  test.each([
    ['10am', '11am'],
    ['06:00', '23:00'],
    ['soon', '8'],
    ['10', 'late'],
  ])('%s to %s is no lit day', (from, to) => expect(read(from, to)).toBe('none'));
});

test('whatever is read lasts 4 to 16 hours, and a time with its half of the day is kept', () => {
  const hour = fc.integer({ min: 1, max: 12 });
  const half = fc.constantFrom('', ' am', ' pm');
  fc.assert(
    fc.property(hour, half, hour, half, (from, fromHalf, to, toHalf) => {
      const window = lightWindow(`${from}${fromHalf}`, `${to}${toHalf}`);
      if (window.kind === 'none') return;
      const all = window.kind === 'window' ? [window] : window.windows;
      for (const { on, off, hours } of all) {
        expect(hours).toBeGreaterThanOrEqual(4 * 3600);
        expect(hours).toBeLessThanOrEqual(16 * 3600);
        expect((on + hours) % 86_400).toBe(off);
        if (fromHalf !== '') expect(on >= 43_200).toBe(fromHalf === ' pm');
        if (toHalf !== '') expect(off >= 43_200).toBe(toHalf === ' pm');
      }
    }),
  );
});
