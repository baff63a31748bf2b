import { describe, expect, test } from 'vitest';
import { dayLength, declination } from '../../src/core/models/daylight.js';

const DEGREE = Math.PI / 180;

describe('declination', () => {
  // The obliquity of the ecliptic is 23.44°; equinoxes fall on about day 80 and day 266 (20 March, 23 September).
  test('is the obliquity at the solstices', () => {
    expect(declination(172) / DEGREE).toBeCloseTo(23.44, 1);
    expect(declination(355) / DEGREE).toBeCloseTo(-23.44, 1);
  });
  test('is near nothing at the equinoxes, and changes sign there', () => {
    expect(Math.abs(declination(80)) / DEGREE).toBeLessThan(0.5);
    expect(declination(78)).toBeLessThan(0);
    expect(declination(83)).toBeGreaterThan(0);
    expect(declination(264)).toBeGreaterThan(0);
    expect(declination(268)).toBeLessThan(0);
  });
  test('day 366 is day 1 again', () => expect(declination(366)).toBeCloseTo(declination(1), 12));
});

test('with the sun over the equator the day is 12 h and what 0.833° adds: 2·0.833°/15° per hour', () => {
  expect(dayLength(0, 0) / 3600).toBeCloseTo(12 + (2 * 0.833) / 15, 4);
});
