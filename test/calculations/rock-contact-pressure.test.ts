import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rockContactPressure } from '../../src/core/calculations/rock-contact-pressure.js';
import { spoken } from './spoken.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const on = (kg: number, cm2: number, water: number, density = 2700): Said => ({
  mass: [kg, 'kg'],
  contact_area: [cm2, 'cm2'],
  water_height: [water, 'cm'],
  rock_density: [density, 'kg/m3'],
});

describe('by hand', () => {
  // Archimedes: 27 kg of 2700 kg/m³ weigh 16.75 kg in water of 1025 kg/m³.
  test.each([
    [27, 10, 16.75],
    [54, 100, 33.5],
    [2.7, 1, 1.675],
  ])('%d kg on %d cm²', (kg, cm2, weighs) => {
    const { value } = worked(rockContactPressure, on(kg, cm2, 50));
    expect(value('submerged_weight', 'N')).toBeCloseTo(weighs * 9.80665, 9);
    expect(value('contact_pressure', 'Pa')).toBeCloseTo((weighs * 9.80665) / (cm2 * 1e-4), 6);
  });

  test('ten metres of sea are about one atmosphere: 1 m of it 10.05 kPa', () => {
    expect(worked(rockContactPressure, on(10, 10, 100)).value('water_pressure', 'kPa')).toBeCloseTo(10.052, 3);
  });

  test('lighter stone loses more of its weight: 2050 kg/m³ loses half', () => {
    const { value } = worked(rockContactPressure, on(20, 10, 50, 2050));
    expect(value('submerged_weight', 'N')).toBeCloseTo(10 * 9.80665, 9);
  });

  test('three points of 4 cm² are 12 cm²', () => {
    const { contact_area: _, ...rest } = on(25, 12, 50);
    const { value } = worked(rockContactPressure, { ...rest, points: [3, 'count'], point_area: [4, 'cm2'] });
    expect(value('contact_pressure', 'Pa')).toBeCloseTo(
      worked(rockContactPressure, on(25, 12, 50)).value('contact_pressure', 'Pa'),
      6,
    );
  });
});

test('spread over the area named it presses as the water does; twice the rock twice, twice the area half', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.5, max: 300, noNaN: true }),
      fc.double({ min: 1, max: 500, noNaN: true }),
      fc.double({ min: 10, max: 100, noNaN: true }),
      (kg, cm2, water) => {
        const { value } = worked(rockContactPressure, on(kg, cm2, water));
        const area = value('area_as_water', 'cm2');
        expect(worked(rockContactPressure, on(kg, area, water)).value('ratio', '1')).toBeCloseTo(1, 9);
        expect(worked(rockContactPressure, on(2 * kg, cm2, water)).value('ratio', '1')).toBeCloseTo(
          2 * value('ratio', '1'),
          6,
        );
        expect(worked(rockContactPressure, on(kg, 2 * cm2, water)).value('ratio', '1')).toBeCloseTo(
          value('ratio', '1') / 2,
          6,
        );
      },
    ),
  );
});

test('from twice the water on it says to spread it, and never that glass takes it', () => {
  const asWater = worked(rockContactPressure, on(25, 12, 50)).value('area_as_water', 'cm2');
  expect(spoken(rockContactPressure, on(25, asWater / 2.1, 50)).headline).toMatch(/spread it on a pad/);
  const wide = spoken(rockContactPressure, on(25, asWater / 1.9, 50));
  expect(wide.headline).toMatch(/which is little/);
  expect(wide.cautions).toMatch(/no verdict here/);
});

test('points share unevenly, where there are points', () => {
  const { contact_area: _, ...rest } = on(25, 12, 50);
  expect(spoken(rockContactPressure, { ...rest, points: [3, 'count'], point_area: [4, 'cm2'] }).cautions).toMatch(
    /one may carry nearly all of it, 152 N/,
  );
  expect(spoken(rockContactPressure, on(25, 12, 50)).cautions).not.toMatch(/one may carry/);
});

test('asks for the area or the points, and refuses no area', () => {
  expect(told(outcomeOf(rockContactPressure, {}))).toEqual(['mass', 'contact_area', 'water_height']);
  expect(told(outcomeOf(rockContactPressure, { points: [3, 'count'] }))).toEqual([
    'mass',
    'point_area',
    'water_height',
  ]);
  expect(told(outcomeOf(rockContactPressure, on(25, 0, 50))).join()).toMatch(/above 0/);
  expect(told(outcomeOf(rockContactPressure, on(25, 12, 50, 900))).join()).toMatch(/1500 to 3000/);
});
