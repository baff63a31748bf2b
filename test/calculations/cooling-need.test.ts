import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerIn } from '../../src/core/answer.js';
import { coolingNeed } from '../../src/core/calculations/cooling-need.js';
import { heatLoss } from '../../src/core/calculations/heat-loss.js';
import { METRIC } from '../../src/core/show-value.js';
import { longTank } from './tanks.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const cool = (room: number, gains: number, more: Said = {}) =>
  worked(coolingNeed, {
    ...longTank,
    target: [26, 'degC'],
    room_temperature: [room, 'degC'],
    gains: [gains, 'W'],
    ...more,
  });
const lossAt = (water: number, room: number) =>
  worked(heatLoss, { ...longTank, water_temperature: [water, 'degC'], room_temperature: [room, 'degC'] }).value(
    'total_loss',
    'W',
  );

describe('worked the other way', () => {
  test('what is taken out and what the room takes are the heat that comes in', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 26, max: 36, noNaN: true }),
        fc.double({ min: 250, max: 900, noNaN: true }),
        (room, gains) => {
          expect(cool(room, gains).value('cooling_needed', 'W')).toBeCloseTo(gains - lossAt(26, room), 6);
        },
      ),
    );
  });

  test('left alone it settles where the room takes all of it', () => {
    const end = cool(28, 150).value('passive_temperature', 'degC');
    expect(lossAt(end, 28)).toBeCloseTo(150, 4);
  });

  test('a litre a day carries 2.44 MJ a day away: 28.2 W (latent heat at 26 °C, steam tables 2439 kJ/kg)', () => {
    const { value } = cool(30, 300);
    expect(
      Math.abs(value('cooling_needed', 'W') / value('extra_evaporation', 'L/day') / (2.439e6 / 86_400) - 1),
    ).toBeLessThan(0.002);
  });
});

test('a hotter room, a damper one and more lights need more', () => {
  const usual = cool(29, 250).value('cooling_needed', 'W');
  expect(cool(30, 250).value('cooling_needed', 'W')).toBeGreaterThan(usual);
  expect(cool(29, 250, { humidity: [0.6, 'fraction'] }).value('cooling_needed', 'W')).toBeGreaterThan(usual);
  expect(cool(29, 260).value('cooling_needed', 'W')).toBeCloseTo(usual + 10, 9);
});

test('nothing in a cool room, never less than nothing', () => {
  const { value } = cool(20, 100);
  expect([value('cooling_needed', 'W'), value('extra_evaporation', 'L/day')]).toEqual([0, 0]);
});

test('asks for the heat that comes in, refuses °F given as °C', () => {
  const said: Said = { ...longTank, target: [26, 'degC'], room_temperature: [30, 'degC'] };
  expect(told(outcomeOf(coolingNeed, said))).toEqual(['gains']);
  expect(told(outcomeOf(coolingNeed, { ...said, gains: [200, 'W'], room_temperature: [86, 'degC'] })).join()).toMatch(
    /86 °F/,
  );
});

test('in air too damp to evaporate into, fans are not offered', () => {
  const { outcome } = cool(32, 250, { humidity: [0.95, 'fraction'] });
  expect(outcome.results.map(({ id }) => id)).not.toContain('extra_evaporation');
  expect(answerIn(outcome, METRIC).headline).toMatch(/fans cannot do it/);
});
