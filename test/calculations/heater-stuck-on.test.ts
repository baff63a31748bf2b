import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerIn } from '../../src/core/answer.js';
import { heatLoss } from '../../src/core/calculations/heat-loss.js';
import { heaterStuckOn } from '../../src/core/calculations/heater-stuck-on.js';
import { heaterWarmUp } from '../../src/core/calculations/heater-warm-up.js';
import { METRIC } from '../../src/core/show-value.js';
import { longTank } from './tanks.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const room: Said = { ...longTank, room_temperature: [22, 'degC'] };
const stuck = (watts: number, more: Said = {}) =>
  worked(heaterStuckOn, {
    ...room,
    volume: [400, 'L'],
    start_temperature: [25.5, 'degC'],
    heater_power: [watts, 'W'],
    ...more,
  });

describe('worked the other way', () => {
  test('where it ends up, the loss is the heater’s power and the steady heat', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 150, max: 600, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        (watts, gains) => {
          const end = stuck(watts, { gains: [gains, 'W'] }).value('equilibrium_temperature', 'degC');
          fc.pre(end <= 35);
          expect(worked(heatLoss, { ...room, water_temperature: [end, 'degC'] }).value('total_loss', 'W')).toBeCloseTo(
            watts + gains,
            4,
          );
        },
      ),
    );
  });

  test('the time to a limit is the time to warm up to it', () => {
    const limit: Said = { limit_1: [29, 'degC'], limit_2: [34, 'degC'] };
    const warm = worked(heaterWarmUp, {
      ...room,
      volume: [400, 'L'],
      start_temperature: [25.5, 'degC'],
      target: [29, 'degC'],
      heater_power: [800, 'W'],
    });
    expect(stuck(800, limit).value('time_to_limit_1', 'h')).toBeCloseTo(warm.value('time', 'h'), 9);
  });

  test('9 kW on 400 L: C·ΔT/P = 1 637 280 · 3.39 / 9000 = 617 s to 84 °F (28.89 °C)', () => {
    const time = stuck(9000).value('time_to_limit_1', 's');
    expect(time).toBeGreaterThan(615);
    expect(time).toBeLessThan(640);
  });
});

test('a stronger heater and a warmer room end hotter and sooner', () => {
  fc.assert(
    fc.property(fc.double({ min: 500, max: 1500, noNaN: true }), (watts) => {
      const usual = stuck(watts);
      const warmer = stuck(watts, { room_temperature: [25, 'degC'] });
      const stronger = stuck(watts + 50);
      for (const other of [warmer, stronger]) {
        expect(other.value('equilibrium_temperature', 'K')).toBeGreaterThan(
          usual.value('equilibrium_temperature', 'K'),
        );
        expect(other.value('time_to_limit_1', 'h')).toBeLessThan(usual.value('time_to_limit_1', 'h'));
      }
      expect(usual.value('time_to_limit_2', 'h')).toBeGreaterThan(usual.value('time_to_limit_1', 'h'));
    }),
  );
});

test('a limit that is never reached has no time, and the answer says so', () => {
  const { outcome } = stuck(250);
  expect(outcome.results.find(({ id }) => id === 'time_to_limit_1')!.value).toBeNull();
  expect(outcome.results.find(({ id }) => id === 'reaches_limit_1')!.value).toBe(false);
  expect(answerIn(outcome, METRIC).headline).toMatch(/takes the water only to/);
  expect(answerIn(stuck(30).outcome, METRIC).headline).toMatch(/nobody would notice/);
});

test('the stop comes only with a heater that passes the second limit', () => {
  const stops = (watts: number) => stuck(watts).outcome.cautions.filter(({ level }) => level === 'stop').length;
  expect([stops(250), stops(1500)]).toEqual([0, 1]);
});

test('refuses a limit that is already passed, asks for the heater', () => {
  const said: Said = { ...room, start_temperature: [30, 'degC'], heater_power: [300, 'W'] };
  expect(told(outcomeOf(heaterStuckOn, said)).join()).toMatch(/first limit must lie above/);
  expect(told(outcomeOf(heaterStuckOn, { ...room, start_temperature: [25, 'degC'] }))).toEqual(['heater_power']);
});

test('only a volume: the water may end either side of a limit, and both are said', () => {
  const { outcome, high } = worked(heaterStuckOn, {
    heater_power: [300, 'W'],
    start_temperature: [79, 'degF'],
    room_temperature: [72, 'degF'],
    volume: [125, 'gal_US'],
  });
  expect(high('equilibrium_temperature', 'degF')).toBeGreaterThan(84);
  const { headline, cautions } = answerIn(outcome, METRIC);
  expect(headline).toMatch(/short of/);
  expect(cautions.some(({ text }) => /comes out otherwise: .*: past .* in /.test(text))).toBe(true);
});
