import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerIn } from '../../src/core/answer.js';
import { heatLoss } from '../../src/core/calculations/heat-loss.js';
import { heaterSize } from '../../src/core/calculations/heater-size.js';
import { US } from '../../src/core/show-value.js';
import { longTank, sump } from './tanks.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const tank: Said = { ...longTank, ...sump };
const size = (room: number, more: Said = {}) =>
  worked(heaterSize, { ...tank, target: [25.5, 'degC'], room_temperature: [room, 'degC'], ...more });
const lossIn = (room: number, water = 25.5) =>
  worked(heatLoss, { ...tank, water_temperature: [water, 'degC'], room_temperature: [room, 'degC'] }).value(
    'total_loss',
    'W',
  );

describe('what the answer says holds when it is worked the other way', () => {
  const power = fc.double({ min: 150, max: 700, noNaN: true });

  test('in the coldest room held the loss is the heaters’ power', () => {
    fc.assert(
      fc.property(power, (watts) => {
        const coldest = size(18, { heater_power: [watts, 'W'] }).value('coldest_room_held', 'degC');
        expect(lossIn(coldest)).toBeCloseTo(watts, 4);
      }),
    );
  });

  test('with one dead the rest make up the loss of the room that is named', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 5 }), power, (n, watts) => {
        const said: Said = { heater_power: [watts / (n - 1), 'W'], heaters: [n, 'count'] };
        expect(lossIn(size(18, said).value('coldest_room_one_failed', 'degC'))).toBeCloseTo(watts, 4);
      }),
    );
  });

  test('heaters of the size recommended for a spare hold the room with any one dead, with the margin', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 6 }), fc.double({ min: 10, max: 22, noNaN: true }), (n, room) => {
        const each = size(room, { heaters: [n, 'count'] }).value('power_each', 'W');
        expect((n - 1) * each).toBeCloseTo(1.25 * lossIn(room), 6);
        const built = size(room, { heaters: [n, 'count'], heater_power: [each, 'W'] });
        expect(built.value('coldest_room_one_failed', 'degC')).toBeLessThan(room);
      }),
    );
  });

  test('one stuck on settles where the loss is its power', () => {
    const { value } = size(24, { heater_power: [400, 'W'] });
    expect(lossIn(24, value('stuck_on_temperature', 'degC'))).toBeCloseTo(400, 4);
  });

  test('a colder room takes more, and holding is the coldest room held against this room', () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 22, noNaN: true }), power, (room, watts) => {
        const here = size(room, { heater_power: [watts, 'W'] });
        expect(size(room - 1).value('power_needed', 'W')).toBeGreaterThan(here.value('power_needed', 'W'));
        const holds = here.outcome.results.find(({ id }) => id === 'holds')!.value;
        expect(holds).toBe(here.value('coldest_room_held', 'degC') <= room);
      }),
    );
  });
});

test('steady heat from equipment comes off watt for watt, then the margin', () => {
  expect(size(18).value('power_needed', 'W') - size(18, { gains: [60, 'W'] }).value('power_needed', 'W')).toBeCloseTo(
    75,
    9,
  );
});

describe('a volume alone', () => {
  const said: Said = {
    target: [78, 'degF'],
    room_temperature: [66, 'degF'],
    heater_power: [300, 'W'],
    volume: [90, 'gal_US'],
  };

  test('gets an answer with a range and says that the shape is a guess', () => {
    const { outcome, low, value, high } = worked(heaterSize, said);
    expect(low('coldest_room_held', 'degF')).toBeLessThan(value('coldest_room_held', 'degF') - 3);
    expect(high('coldest_room_held', 'degF')).toBeGreaterThan(value('coldest_room_held', 'degF') + 3);
    const { headline, cautions } = answerIn(outcome, US);
    expect(headline).toMatch(/300 W holds 78 °F .* likely/);
    expect(cautions.some(({ text }) => text.startsWith('Only a volume was given'))).toBe(true);
  });

  test('the range holds the true tank of that volume', () => {
    // 48 × 18 in inside, 24 in of water: 89.8 US gal
    const real = worked(heaterSize, {
      ...said,
      length: [48.8, 'in'],
      width: [18.8, 'in'],
      water_height: [24, 'in'],
      glass_thickness: [0.4, 'in'],
      humidity: [0.5, 'fraction'],
      activity: [0.75, '1'],
    });
    const guess = worked(heaterSize, said);
    expect(real.value('total_loss', 'W')).toBeGreaterThan(guess.low('total_loss', 'W'));
    expect(real.value('total_loss', 'W')).toBeLessThan(guess.high('total_loss', 'W'));
  });
});

describe('the first line', () => {
  const line = (room: number, more: Said) => answerIn(size(room, more).outcome, US).headline;
  test.each([
    [30, { humidity: [0.9, 'fraction'] }, /^No heater is needed/],
    [22, { heater_power: [500, 'W'] }, /^500 W holds .* with the margin in hand/],
    [12, { heater_power: [100, 'W'] }, /^100 W does not hold/],
    [20, { heater_power: [500, 'W'], heaters: [2, 'count'] }, /^2 × 500 W hold .* still do with one dead/],
    [20, { heater_power: [200, 'W'], heaters: [2, 'count'] }, /with one dead only down to/],
    [10, { heater_power: [100, 'W'], heaters: [2, 'count'] }, /^2 × 100 W do not hold/],
    [18, { heaters: [3, 'count'] }, /one of 3 heaters dead, the rest hold/],
    [18, {}, /^Holding .* takes/],
  ] as [number, Said, RegExp][])('room at %d °C, %o', (room, more, expected) => {
    expect(line(room, more)).toMatch(expected);
  });
});

test('a heater that could cook the tank is called out', () => {
  const strong = size(24, { heater_power: [1000, 'W'] }).outcome;
  expect(strong.cautions.some(({ level }) => level === 'stop')).toBe(true);
  const weak = size(24, { heater_power: [50, 'W'] }).outcome;
  expect(weak.cautions.some(({ level }) => level === 'stop')).toBe(false);
});

test('an endless heater holds even the coldest room asked about, and says no more than that', () => {
  const { outcome, value } = size(18, { heater_power: [9000, 'W'] });
  expect(value('coldest_room_held', 'degC')).toBeCloseTo(-5, 9);
  expect(outcome.cautions.some(({ text }) => text.includes('colder still'))).toBe(true);
});

test('asks for the target and the room first, refuses °F given as °C and half a heater', () => {
  expect(told(outcomeOf(heaterSize, tank))).toEqual(['target', 'room_temperature']);
  const said: Said = { ...tank, room_temperature: [20, 'degC'] };
  expect(told(outcomeOf(heaterSize, { ...said, target: [78, 'degC'] })).join()).toMatch(/78 °F/);
  expect(told(outcomeOf(heaterSize, { ...said, target: [25, 'degC'], heaters: [1.5, 'count'] })).join()).toMatch(
    /whole/,
  );
  expect(told(outcomeOf(heaterSize, { ...said, target: [25, 'degC'], volume: [50, 'L'] })).join()).toMatch(
    /sump alone/,
  );
});
