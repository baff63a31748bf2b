import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lightDayLength } from '../../src/core/calculations/light-day-length.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const at = (latitude: number, n: number): Said => ({ latitude: [latitude, 'deg'], day_of_year: [n, '1'] });
const hours = (said: Said) => worked(lightDayLength, said).value('day_length', 'h');
const state = (said: Said) => worked(lightDayLength, said).outcome.results.find(({ id }) => id === 'state')?.value;

// Sunrise to sunset from an astronomical library (astronomy-engine 2.1.19, sea level, refraction included), 2027 and 2028.
describe('against an almanac', () => {
  test.each([
    [24, '2027-06-21', 13.6201],
    [-18.3, '2027-06-21', 11.0303],
    [48, '2028-02-29', 11.0232],
  ])('latitude %d on %s: %d h', (latitude, date, expected) => {
    const { value, low, high } = worked(lightDayLength, { latitude: [latitude, 'deg'], date });
    expect(value('day_length', 'h')).toBeCloseTo(expected, 1);
    expect(Math.abs(value('day_length', 'h') - expected)).toBeLessThan(0.05);
    expect(low('day_length', 'h')).toBeLessThan(expected);
    expect(high('day_length', 'h')).toBeGreaterThan(expected);
  });
});

test('at the equator every day is 12 h and the few minutes of refraction and disc', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 365 }), (n) => {
      expect(hours(at(0, n))).toBeGreaterThan(12.1);
      expect(hours(at(0, n))).toBeLessThan(12.13);
    }),
  );
});

test('north and south are each other’s seasons: the two days add up to 24 h and what refraction adds', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 50, noNaN: true }), fc.integer({ min: 1, max: 365 }), (latitude, n) => {
      const sum = hours(at(latitude, n)) + hours(at(-latitude, n));
      expect(sum).toBeGreaterThan(24.2);
      expect(sum).toBeLessThan(24.5);
    }),
  );
});

test('in June the day grows towards the north, in December towards the south', () => {
  fc.assert(
    fc.property(fc.double({ min: -60, max: 59, noNaN: true }), (latitude) => {
      expect(hours(at(latitude + 1, 172))).toBeGreaterThan(hours(at(latitude, 172)));
      expect(hours(at(latitude + 1, 355))).toBeLessThan(hours(at(latitude, 355)));
    }),
  );
});

test('polar day and night, and a word where it is about to turn', () => {
  expect([state(at(70, 172)), hours(at(70, 172))]).toEqual(['polar_day', 24]);
  expect([state(at(72, 355)), hours(at(72, 355))]).toEqual(['polar_night', 0]);
  expect(state(at(60, 172))).toBe('normal');
  const turning = (said: Said) => worked(lightDayLength, said).outcome.cautions.some(({ text }) => /turn/.test(text));
  expect(turning(at(65.8, 172))).toBe(true);
  expect(turning(at(70, 172))).toBe(false);
});

describe('the latitude in words', () => {
  const june = { date: '2027-06-21' };
  test('18 S is −18, and so is 18 with the south named', () => {
    const minus = hours({ ...june, latitude: [-18, 'deg'] });
    expect(hours({ ...june, reef: '18 S' })).toBe(minus);
    expect(hours({ ...june, reef: '18° south' })).toBe(minus);
    expect(hours({ ...june, latitude: [18, 'deg'], hemisphere: 'south' })).toBe(minus);
    expect(hours({ ...june, reef: 'Great Barrier Reef' })).toBe(minus);
  });
  test('a latitude in the text counts as said, one of a region as looked up', () => {
    const from = (reef: string) =>
      worked(lightDayLength, { ...june, reef }).outcome.inputs.find(({ id }) => id === 'latitude')?.from;
    expect(from('24 N')).toBe('message');
    expect(from('Fiji')).toBe('table');
  });
});

test('asks for the place and the day', () => {
  expect(told(outcomeOf(lightDayLength, {}))).toEqual(['latitude', 'date']);
});

test.each([
  [at(124, 80), /longitude/],
  [at(-120, 80), /longitude/],
  [{ latitude: [20, 'deg'], date: '2027-02-30' }, /date/],
  [at(20, 367), /1 to 366/],
  [{ ...at(-20, 80), hemisphere: 'north' }, /south of the equator/],
  [{ ...at(20, 80), date: '2027-06-21' }, /not the same day/],
  [{ reef: 'my local reef', date: '2027-06-21' }, /no latitude/],
] as [Said, RegExp][])('%j is refused', (said, because) => {
  const outcome = outcomeOf(lightDayLength, said);
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(because);
});
