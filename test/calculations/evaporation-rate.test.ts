import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaporationRate } from '../../src/core/calculations/evaporation-rate.js';
import { outcomeOf, told, worked } from './worked.js';

const poolAt = (water: number, air: number, humidity: number, activity: number) =>
  worked(evaporationRate, {
    area: [1, 'm2'],
    water_temperature: [water, 'degC'],
    air_temperature: [air, 'degC'],
    humidity: [humidity, 'fraction'],
    activity: [activity, '1'],
    salinity: [0, 'g/kg'],
  }).value('evaporation', 'L/day');

describe('worked examples', () => {
  // ASHRAE HVAC Applications, natatoriums: 4e-5 kg/(s m² kPa) · (p_w − p_a) · activity; saturation 3.169 kPa at 25 °C,
  // 3.567 kPa at 27 °C, 3.782 kPa at 28 °C (steam tables). The handbook rounds its coefficient to one figure.
  test.each([
    [25, 25, 0.5, 1, 3.169 - 0.5 * 3.169],
    [27, 28, 0.6, 0.5, 3.567 - 0.6 * 3.782],
    [28, 25, 0.5, 1, 3.782 - 0.5 * 3.169],
  ])('fresh water at %d °C, air at %d °C, humidity %d, activity %d', (water, air, humidity, activity, kPa) => {
    const handbook = 4e-5 * kPa * activity * 86_400;
    expect(Math.abs(poolAt(water, air, humidity, activity) / handbook - 1)).toBeLessThan(0.03);
  });

  test('outside sizes leave the panes out: 122 × 61 cm in 10 mm panes is 1.20 × 0.59 m of water', () => {
    const said = {
      water_temperature: [26, 'degC'],
      air_temperature: [22, 'degC'],
      humidity: [0.5, 'fraction'],
    } as const;
    const bySizes = worked(evaporationRate, {
      ...said,
      length: [122, 'cm'],
      width: [61, 'cm'],
      glass_thickness: [10, 'mm'],
    });
    const byArea = worked(evaporationRate, { ...said, area: [1.2 * 0.59, 'm2'] });
    expect(bySizes.value('evaporation', 'L/day')).toBeCloseTo(byArea.value('evaporation', 'L/day'), 9);
  });
});

test('the middle estimate lies between the two others, in still air and under a fan', () => {
  const share = fc.double({ min: 0.1, max: 0.6, noNaN: true });
  const speed = fc.double({ min: 0, max: 3, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 24, max: 29, noNaN: true }), share, speed, (water, humidity, v) => {
      const { value } = worked(evaporationRate, {
        area: [1, 'm2'],
        water_temperature: [water, 'degC'],
        air_temperature: [22, 'degC'],
        humidity: [humidity, 'fraction'],
        air_speed: [v, 'm/s'],
      });
      expect(value('evaporation_low', 'L/day')).toBeLessThanOrEqual(value('evaporation', 'L/day'));
      expect(value('evaporation_high', 'L/day')).toBeGreaterThanOrEqual(value('evaporation', 'L/day'));
    }),
  );
});

test('warmer water, drier air and a faster draught evaporate more; salt and a lid hold it back', () => {
  const base = {
    area: [1, 'm2'],
    water_temperature: [26, 'degC'],
    air_temperature: [22, 'degC'],
    humidity: [0.5, 'fraction'],
  } as const;
  const at = (change: object) => worked(evaporationRate, { ...base, ...change }).value('evaporation', 'L/day');
  const usual = at({});
  expect(at({ water_temperature: [27, 'degC'] })).toBeGreaterThan(usual);
  expect(at({ humidity: [0.4, 'fraction'] })).toBeGreaterThan(usual);
  expect(at({ air_speed: [1, 'm/s'] })).toBeGreaterThan(usual);
  expect(at({ salinity: [0, 'g/kg'] })).toBeGreaterThan(usual);
  expect(at({ cover: [0.2, 'fraction'] })).toBeCloseTo(0.2 * usual, 9);
});

test('refuses impossible humidity and air that would condense; asks for sizes when there is no area', () => {
  const base = { area: [1, 'm2'], water_temperature: [20, 'degC'], air_temperature: [30, 'degC'] } as const;
  expect(told(outcomeOf(evaporationRate, { ...base, humidity: [1.5, 'fraction'] })).join()).toMatch(/at most 100 %/);
  expect(told(outcomeOf(evaporationRate, { ...base, humidity: [0.9, 'fraction'] })).join()).toMatch(/condense/);
  expect(told(outcomeOf(evaporationRate, {}))).toEqual(['water_temperature', 'air_temperature', 'length', 'width']);
});
