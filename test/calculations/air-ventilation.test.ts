import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerIn } from '../../src/core/answer.js';
import { airVentilation } from '../../src/core/calculations/air-ventilation.js';
import { METRIC } from '../../src/core/show-value.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const said: Said = {
  evaporation: [5, 'L/day'],
  room_temperature: [20, 'degC'],
  room_humidity: [0.6, 'fraction'],
  outside_temperature: [5, 'degC'],
  outside_humidity: [0.8, 'fraction'],
};
const vent = (more: Said = {}) => worked(airVentilation, { ...said, ...more });

describe('worked examples', () => {
  // ASHRAE Fundamentals, moist air at 101.325 kPa (from memory): saturated 14.758 g/kg at 20 °C, 5.424 at 5 °C, 20.170 at 25 °C.
  test.each([
    [20, 0.014758],
    [5, 0.005424],
    [25, 0.02017],
  ])('saturated air at %d °C', (degrees, ratio) => {
    const { value } = vent({
      room_temperature: [degrees, 'degC'],
      room_humidity: [1, 'fraction'],
      outside_temperature: [0, 'degC'],
    });
    expect(Math.abs(value('humidity_ratio_room', '1') / ratio - 1)).toBeLessThan(0.008);
  });

  test('5 L a day between 60 % at 20 °C and 80 % at 5 °C, by hand', () => {
    // 1.4015 and 0.6979 kPa: 8.724 and 4.314 g/kg; dry air (101.325 − 1.401)/(0.287055·293.15) = 1.1875 kg/m³
    // 5 kg a day / (1.1875 · 4.410e-3 · 24) = 39.8 m³/h
    expect(Math.abs(vent().value('air_flow', 'm3/h') / 39.8 - 1)).toBeLessThan(0.01);
  });
});

test('air in proportion to the water, and all of the water in the air', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 50, noNaN: true }), (litres) => {
      const { value } = vent({ evaporation: [litres, 'L/day'] });
      expect(value('air_flow', 'm3/h')).toBeCloseTo((vent().value('air_flow', 'm3/h') * litres) / 5, 6);
    }),
  );
});

test('damper outside air and a drier room wanted take more', () => {
  const usual = vent().value('air_flow', 'm3/h');
  expect(vent({ outside_humidity: [0.95, 'fraction'] }).value('air_flow', 'm3/h')).toBeGreaterThan(usual);
  expect(vent({ room_humidity: [0.5, 'fraction'] }).value('air_flow', 'm3/h')).toBeGreaterThan(usual);
});

test('refuses when the outside is no drier, and frost; asks for the evaporation', () => {
  expect(told(outcomeOf(airVentilation, { ...said, outside_temperature: [28, 'degC'] })).join()).toMatch(
    /dehumidifier/,
  );
  expect(told(outcomeOf(airVentilation, { ...said, outside_temperature: [-5, 'degC'] })).join()).toMatch(
    /Below freezing/,
  );
  const { evaporation: _, ...rest } = said;
  expect(told(outcomeOf(airVentilation, rest))).toEqual(['evaporation']);
});

test('where the outside air might be too damp to dry the room, that is said, and no flow is negative', () => {
  const { outcome, low } = worked(airVentilation, {
    evaporation: [5.7, 'L/day'],
    room_temperature: [22, 'degC'],
    room_humidity: [0.5, 'fraction'],
    outside_temperature: [13, 'degC'],
  });
  expect(low('air_flow', 'm3/h')).toBeGreaterThan(0);
  expect(
    answerIn(outcome, METRIC)
      .cautions.map(({ text }) => text)
      .join(),
  ).toMatch(/comes out otherwise: .*dehumidifier/);
});
