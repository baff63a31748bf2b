import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerIn } from '../../src/core/answer.js';
import { heaterWarmUp } from '../../src/core/calculations/heater-warm-up.js';
import { METRIC } from '../../src/core/show-value.js';
import { longTank } from './tanks.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const warm = (from: number, to: number, watts: number, more: Said = {}) =>
  worked(heaterWarmUp, {
    ...longTank,
    volume: [400, 'L'],
    start_temperature: [from, 'degC'],
    target: [to, 'degC'],
    room_temperature: [20, 'degC'],
    heater_power: [watts, 'W'],
    ...more,
  });

describe('worked by hand', () => {
  test('400 L and 50 kg of rock: 1023.3·4000·0.4 + 850·50 = 1 679 780 J/K', () => {
    expect(warm(20, 25, 500, { rock_mass: [50, 'kg'] }).value('heat_capacity', 'kJ/K')).toBeCloseTo(1679.78, 2);
  });

  test('with so much power that the loss is nothing, time is C·ΔT/P', () => {
    // 1 637 280 J/K · 5 K / 9000 W = 909.6 s, and less than 2 % more for what is lost on the way
    const time = warm(20, 25, 9000).value('time', 's');
    expect(time).toBeGreaterThan(909.6);
    expect(time).toBeLessThan(909.6 * 1.02);
  });

  test('two heaters of 250 W are one of 500 W', () => {
    expect(warm(20, 25, 250, { heaters: [2, 'count'] }).value('time', 'h')).toBeCloseTo(
      warm(20, 25, 500).value('time', 'h'),
      12,
    );
  });
});

test('the way in two legs takes as long as the way at once', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 15, max: 19, noNaN: true }),
      fc.double({ min: 20, max: 22, noNaN: true }),
      (start, middle) => {
        const legs = warm(start, middle, 600).value('time', 'h') + warm(middle, 25, 600).value('time', 'h');
        expect(legs).toBeCloseTo(warm(start, 25, 600).value('time', 'h'), 2);
      },
    ),
  );
});

test('more power is faster, more water slower', () => {
  const watts = fc.double({ min: 400, max: 2000, noNaN: true });
  fc.assert(
    fc.property(watts, (power) => {
      const time = warm(20, 25, power).value('time', 'h');
      expect(warm(20, 25, power + 50).value('time', 'h')).toBeLessThan(time);
      expect(warm(20, 25, power, { volume: [450, 'L'] }).value('time', 'h')).toBeGreaterThan(time);
    }),
  );
});

test('never, when the room takes all that the heater gives', () => {
  const { outcome } = warm(20, 26, 100);
  expect(outcome.results.find(({ id }) => id === 'time')!.value).toBeNull();
  expect(answerIn(outcome, METRIC).headline).toMatch(/never gets to 26 °C/);
});

test('starts at the room’s temperature unless told; refuses a target below the start', () => {
  const { outcome } = worked(heaterWarmUp, {
    ...longTank,
    target: [25, 'degC'],
    room_temperature: [19, 'degC'],
    heater_power: [500, 'W'],
  });
  expect(outcome.inputs.find(({ id }) => id === 'start_temperature')).toMatchObject({ si: 292.15, from: 'default' });
  expect(
    told(
      outcomeOf(heaterWarmUp, {
        ...longTank,
        start_temperature: [26, 'degC'],
        target: [25, 'degC'],
        room_temperature: [27, 'degC'],
        heater_power: [500, 'W'],
      }),
    ).join(),
  ).toMatch(/already at the target/);
  expect(told(outcomeOf(heaterWarmUp, longTank))).toEqual(['target', 'room_temperature', 'heater_power']);
});

test('a room warmer than the target and no word of the water: asks how warm the water is', () => {
  const said: Said = { ...longTank, target: [25, 'degC'], room_temperature: [27, 'degC'], heater_power: [500, 'W'] };
  expect(told(outcomeOf(heaterWarmUp, said)).join()).toMatch(/how warm is the water now/);
  expect(outcomeOf(heaterWarmUp, { ...said, start_temperature: [15, 'degC'] }).kind).toBe('answer');
});
