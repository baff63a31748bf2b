import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lightEnergy } from '../../src/core/calculations/light-energy.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const lamp = (watts: number, hours: number, more: Said = {}): Said => ({
  power: [watts, 'W'],
  hours_per_day: [hours, 'h'],
  ...more,
});

describe('worked by hand', () => {
  test('100 W for 10 h is 1 kWh a day; a month is 30.4375 days', () => {
    const { value } = worked(lightEnergy, lamp(100, 10, { price_per_kwh: [0.2, 'currency/kWh'] }));
    expect(value('energy_per_day', 'kWh/day')).toBeCloseTo(1, 9);
    expect(value('energy_per_month', 'kWh/month')).toBeCloseTo(30.4375, 9);
    expect(value('cost_per_month', 'currency/month')).toBeCloseTo(6.0875, 9);
  });
  test('60 W for 11 h and 120 W for 8 h at 0.28: 1.62 kWh, 13.81 a month, 36 to 90 W into the water', () => {
    const said: Said = { channels: '60 W 11 h, 120 W 8 h', price_per_kwh: [28, 'cents/kWh'] };
    const { value } = worked(lightEnergy, said);
    expect(value('energy_per_day', 'kWh/day')).toBeCloseTo(1.62, 9);
    expect(value('cost_per_month', 'currency/month')).toBeCloseTo(1.62 * 30.4375 * 0.28, 6);
    expect(value('heat_to_water_low', 'W')).toBeCloseTo(36, 9);
    expect(value('heat_to_water_high', 'W')).toBeCloseTo(90, 9);
  });
  test('all of it is heat: 180 W for 12 h is 90 W all day', () => {
    expect(worked(lightEnergy, lamp(180, 12)).value('heat_mean', 'W')).toBeCloseTo(90, 9);
  });
});

test('a list of channels reads the same as text and as pairs', () => {
  const day = (channels: string) => worked(lightEnergy, { channels }).value('energy_per_day', 'kWh/day');
  for (const text of [
    '60W 11h, 120W 8h',
    'blue 60 watts for 11 hours and white 120 watts for 8 hours',
    '[[60,11],[120,8]]',
  ])
    expect(day(text)).toBeCloseTo(1.62, 9);
});

test('channels of equal hours are one lamp of their sum', () => {
  const watts = fc.integer({ min: 1, max: 400 });
  fc.assert(
    fc.property(watts, watts, watts, fc.integer({ min: 1, max: 24 }), (a, b, c, hours) => {
      const pairs = JSON.stringify([a, b, c].map((power) => [power, hours]));
      const many = worked(lightEnergy, { channels: pairs });
      const one = worked(lightEnergy, lamp(a + b + c, hours));
      for (const id of ['heat_mean', 'power_peak', 'heat_to_water_high'])
        expect(many.value(id, 'W')).toBeCloseTo(one.value(id, 'W'), 9);
    }),
  );
});

describe('the price', () => {
  const cost = (said: Said) => worked(lightEnergy, said).value('cost_per_month', 'currency/month');
  test('without one there is no cost, and a word about it', () => {
    const { outcome } = worked(lightEnergy, lamp(100, 10));
    expect(outcome.results.some(({ id }) => id === 'cost_per_month')).toBe(false);
    expect(outcome.cautions.some(({ text }) => /price/.test(text))).toBe(true);
  });
  test('28 is asked about: cents, or money of small units', () => {
    const said = lamp(100, 10, { price_per_kwh: [28, 'currency/kWh'] });
    expect(told(outcomeOf(lightEnergy, said))).toEqual(['price_in']);
    expect(cost({ ...said, price_in: 'cents' })).toBeCloseTo(30.4375 * 0.28, 6);
    expect(cost({ ...said, price_in: 'whole' })).toBeCloseTo(30.4375 * 28, 6);
  });
  test('cents that were said are not divided twice', () => {
    const said = lamp(100, 10, { price_per_kwh: [30, 'cents/kWh'], price_in: 'cents' });
    expect(cost(said)).toBeCloseTo(30.4375 * 0.3, 6);
  });
});

test.each([
  [lamp(100, 26), /0 to 24 h/],
  [lamp(-5, 10), /0 to 5000 W/],
  [{ channels: '60 W 30 h, 120 W 8 h' }, /0 to 24 h/],
  [{ channels: 'blue and white' }, /no channel/],
  [{ channels: '9000 W 3 h' }, /5000 W/],
  [lamp(100, 10, { water_share_low: [0.6, 'fraction'] }), /swapped/],
] as [Said, RegExp][])('%j is refused', (said, because) => {
  const outcome = outcomeOf(lightEnergy, said);
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(because);
});
