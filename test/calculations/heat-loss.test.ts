import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heatLoss } from '../../src/core/calculations/heat-loss.js';
import { heatLoss as lossFunction } from '../../src/core/models/heat.js';
import { longTank, sump } from './tanks.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const at = (water: number, room: number, more: Said = {}) =>
  worked(heatLoss, { ...longTank, ...more, water_temperature: [water, 'degC'], room_temperature: [room, 'degC'] });

describe('worked by hand', () => {
  test('walls: 12 mm of glass between ISO 6946 films', () => {
    // sides 1/(0.13 + 0.012 + 0.002) = 6.944 W/(m² K) over 2·(1.5 + 0.6)·0.5 = 2.1 m²: 14.583 W/K
    // bottom 1/(0.17 + 0.019/0.13 + 0.012 + 0.002) = 3.0282 W/(m² K) over 0.9 m²: 2.7254 W/K; 5 K: 86.54 W
    expect(at(26, 21).value('glass_loss', 'W')).toBeCloseTo(86.54, 1);
  });

  test('evaporation: steam-table pressures at 25 and 20 °C', () => {
    // 0.07261 W/(m² Pa) · (3169·(1 − 0.0188) − 0.5·2339) Pa · 1.476·0.576 m² = 119.8 W
    expect(Math.abs(at(25, 20).value('evaporation_loss', 'W') / 119.8 - 1)).toBeLessThan(0.01);
  });

  test('air over the surface and radiation', () => {
    // 0.850 m² · 0.072615 · 67.4 · 5 = 20.80 W; 0.850 · 0.96 · 5.670e-8 · (298.15⁴ − 293.15⁴) = 23.90 W
    expect(at(25, 20).value('convection_loss', 'W')).toBeCloseTo(0.850176 * 0.072615 * 67.4 * 5, 2);
    expect(Math.abs(at(25, 20).value('radiation_loss', 'W') / 23.9 - 1)).toBeLessThan(0.005);
  });
});

test('the parts shown add up to the function that solves for temperatures', () => {
  const degrees = fc.double({ min: 10, max: 35, noNaN: true });
  fc.assert(
    fc.property(degrees, degrees, fc.double({ min: 0.1, max: 1, noNaN: true }), (water, room, cover) => {
      const { outcome, value } = at(water, room, { ...sump, cover: [cover, 'fraction'] });
      if (outcome.kind !== 'answer') throw new Error('no answer');
      const { UA, A, e, RH, S } = outcome.at.values as Record<string, number>;
      const whole = lossFunction(UA!, A!, e!, RH!, S!, water + 273.15, room + 273.15);
      expect(value('total_loss', 'W')).toBeCloseTo(whole, 6);
    }),
  );
});

test('a warmer room loses less; a sump, a taller tank and an open top lose more', () => {
  fc.assert(
    fc.property(fc.double({ min: 12, max: 24, noNaN: true }), (room) => {
      const loss = (more: Said, by = 0) => at(25.5, room + by, more).value('total_loss', 'W');
      expect(loss({}, 1)).toBeLessThan(loss({}));
      expect(loss(sump)).toBeGreaterThan(loss({}));
      expect(loss({ water_height: [60, 'cm'] })).toBeGreaterThan(loss({}));
      expect(loss({ cover: [0.3, 'fraction'] })).toBeLessThan(loss({}));
      expect(loss({ material: 'acrylic' })).toBeLessThan(loss({}));
    }),
  );
});

describe('sizes that were not given', () => {
  test('height less bottom and freeboard, with a guess of the freeboard as a range', () => {
    const { water_height: _, ...rest } = longTank;
    const said: Said = {
      ...rest,
      height: [55, 'cm'],
      water_temperature: [25, 'degC'],
      room_temperature: [20, 'degC'],
      activity: [0.75, '1'],
    };
    const exact = worked(heatLoss, { ...said, freeboard: [3.8, 'cm'] });
    expect(exact.value('total_loss', 'W')).toBeCloseTo(at(25, 20).value('total_loss', 'W'), 9);
    const guessed = worked(heatLoss, said);
    expect(guessed.low('total_loss', 'W')).toBeLessThan(guessed.value('total_loss', 'W'));
  });

  test('a volume alone stands for a common shape, and the range holds a cube and a long tank of that volume', () => {
    const said: Said = {
      water_temperature: [25, 'degC'],
      room_temperature: [20, 'degC'],
      activity: [0.75, '1'],
      humidity: [0.5, 'fraction'],
      volume: [216, 'L'],
    };
    const guess = worked(heatLoss, said);
    const real = (length: number, width: number, water: number) =>
      worked(heatLoss, {
        ...said,
        length: [length + 2, 'cm'],
        width: [width + 2, 'cm'],
        water_height: [water, 'cm'],
        glass_thickness: [10, 'mm'],
      }).value('total_loss', 'W');
    for (const loss of [real(60, 60, 60), real(120, 45, 40), real(151, 37.8, 37.8)]) {
      expect(loss).toBeGreaterThanOrEqual(guess.low('total_loss', 'W') * 0.999);
      expect(loss).toBeLessThanOrEqual(guess.high('total_loss', 'W') * 1.001);
    }
  });

  test('what is guessed only for a volume is not listed when sizes are known', () => {
    const { outcome } = at(25, 20);
    expect(outcome.inputs.map(({ id }) => id)).not.toContain('length_to_height');
  });
});

test('asks for sizes, and refuses panes without an inside and °F given as °C', () => {
  const temperatures: Said = { water_temperature: [25, 'degC'], room_temperature: [20, 'degC'] };
  expect(told(outcomeOf(heatLoss, temperatures))).toEqual(['length', 'width', 'water_height']);
  expect(told(outcomeOf(heatLoss, { ...temperatures, ...longTank, sump_length: [90, 'cm'] }))).toEqual([
    'sump_width',
    'sump_water_height',
  ]);
  expect(told(outcomeOf(heatLoss, { ...temperatures, ...longTank, glass_thickness: [31, 'cm'] })).join()).toMatch(
    /No inside/,
  );
  expect(told(outcomeOf(heatLoss, { ...temperatures, ...longTank, water_temperature: [78, 'degC'] })).join()).toMatch(
    /78 °F/,
  );
});
