import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dosingConsumption } from '../../src/core/calculations/dosing-consumption.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

const alk = (first: number, second: number, days: number, more: Said = {}): Said => ({
  first_reading: [first, 'dKH'],
  second_reading: [second, 'dKH'],
  days: [days, 'day'],
  ...more,
});
const calcium = (first: number, second: number, days: number, more: Said = {}): Said => ({
  first_reading_dissolved: [first, 'mg/L'],
  second_reading_dissolved: [second, 'mg/L'],
  days: [days, 'day'],
  ...more,
});

describe('by hand', () => {
  test.each([
    [alk(8.6, 7.4, 3), 0.4],
    [alk(8.2, 8, 2, { rise_dosed_between: [1.5, 'dKH'] }), 0.85],
    [alk(9, 8, 0.5), 2],
  ])('%j: %d dKH a day', (said, rate) => {
    expect(worked(dosingConsumption, said).value('consumption_per_day', 'dKH/day')).toBeCloseTo(rate, 9);
  });
  test.each([
    [calcium(430, 418, 4), 3],
    [calcium(430, 430, 5, { rise_dosed_between_dissolved: [50, 'mg/L'] }), 10],
  ])('%j: %d mg/L a day', (said, rate) => {
    expect(worked(dosingConsumption, said).value('consumption_per_day', 'mg/L/day')).toBeCloseTo(rate, 9);
  });
  test('the kit is off by 1.414·0.3/3, and 0.4 a day shows twice its doubt after 2·1.414·0.3/0.4 days', () => {
    const { value } = worked(dosingConsumption, alk(8.6, 7.4, 3));
    expect(value('uncertainty', 'dKH/day')).toBeCloseTo(0.14142, 4);
    expect(value('days_needed', 'day')).toBeCloseTo(2.1213, 3);
  });
  test('0.4 dKH a day in 100 L takes 0.4·2.996 g of bicarbonate', () => {
    const { value } = worked(dosingConsumption, alk(8.6, 7.4, 3, { system_volume: [100, 'L'] }));
    expect(value('bicarbonate_per_day', 'g')).toBeCloseTo(0.4 * 2.99609, 4);
  });
});

test('what is used, dosed and left balances, whatever the numbers', () => {
  const level = fc.double({ min: 4, max: 15, noNaN: true });
  fc.assert(
    fc.property(
      level,
      level,
      fc.double({ min: 0, max: 20, noNaN: true }),
      fc.integer({ min: 1, max: 60 }),
      (a, b, dosed, days) => {
        const { value } = worked(dosingConsumption, alk(a, b, days, { rise_dosed_between: [dosed, 'dKH'] }));
        expect(a + dosed - value('consumption_per_day', 'dKH/day') * days).toBeCloseTo(b, 9);
      },
    ),
  );
});

describe('what is said', () => {
  test.each([
    [alk(8.6, 7.4, 3), /^The tank uses 0\.4 dKH a day, give or take 0\.14 dKH a day\.$/],
    [alk(8.6, 7.4, 3, { system_volume: [100, 'L'] }), /1\.2 g of sodium bicarbonate a day/],
    [alk(8.2, 8.1, 1), /^Not measurable yet: 0\.1 dKH a day is less than .* test again/],
    [alk(8.2, 8.2, 1), /^Not measurable yet: the two tests show no fall/],
    [alk(8, 9.5, 2), /^It rises/],
    [calcium(430, 400, 5), /^The tank uses 6 mg\/L a day, give or take 2\.8/],
    [calcium(430, 425, 5), /^Not measurable yet/],
    [calcium(400, 450, 5), /^It rises/],
  ])('%j', (said, expected) => {
    expect(spoken(dosingConsumption, said).headline).toMatch(expected);
  });
  test('a finer kit tells what a coarse one cannot', () => {
    expect(spoken(dosingConsumption, alk(8.2, 8.1, 1, { kit_step: [0.05, 'dKH'] })).headline).toMatch(/^The tank uses/);
    const fine = calcium(430, 425, 5, { kit_step_dissolved: [2, 'mg/L'] });
    expect(spoken(dosingConsumption, fine).headline).toMatch(/^The tank uses 1 mg/);
  });
  test('the first guess only where something was measured; the step of the kit only where it was assumed', () => {
    const cautions = (said: Said) => spoken(dosingConsumption, said).cautions.join('\n');
    expect(cautions(alk(8.6, 7.4, 3))).toMatch(/first guess[\s\S]*step of your kit/);
    expect(cautions(alk(8.2, 8.1, 1))).not.toMatch(/first guess/);
    expect(cautions(alk(8.6, 7.4, 3, { kit_step: [0.1, 'dKH'] }))).not.toMatch(/step of your kit/);
    expect(cautions(calcium(430, 400, 5))).toMatch(/step of your kit/);
  });
});

test('asks for both tests and the days, and refuses two tests within hours', () => {
  expect(told(outcomeOf(dosingConsumption, {}))).toEqual(['first_reading', 'second_reading', 'days']);
  expect(told(outcomeOf(dosingConsumption, { first_reading_dissolved: [430, 'mg/L'] }))).toEqual([
    'second_reading_dissolved',
    'days',
  ]);
  expect(told(outcomeOf(dosingConsumption, alk(8, 7.9, 0.1))).join()).toMatch(/0\.5 to 60/);
});
