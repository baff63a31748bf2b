import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { volumeSystem } from '../../src/core/calculations/volume-system.js';
import { weightSystem } from '../../src/core/calculations/weight-system.js';
import { weightTank } from '../../src/core/calculations/weight-tank.js';
import { US } from '../../src/core/show-value.js';
import { spoken } from './spoken.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const tank: Said = {
  length: [150, 'cm'],
  width: [60, 'cm'],
  height: [55, 'cm'],
  glass_thickness: [12, 'mm'],
  freeboard: [4, 'cm'],
};
const total = (said: Said) => worked(weightSystem, said).value('total_mass', 'kg');

describe('from the sizes alone', () => {
  test('is the water of the whole system, at its density, and the panes', () => {
    const said: Said = {
      ...tank,
      sump_length: [90, 'cm'],
      sump_width: [45, 'cm'],
      sump_water_height: [25, 'cm'],
      sump_glass_thickness: [10, 'mm'],
      rock_mass: [60, 'kg'],
      sand_depth: [3, 'cm'],
    };
    const { value } = worked(weightSystem, said);
    const water = worked(volumeSystem, said).value('system_volume', 'L') * 1.023343;
    const panes = worked(weightTank, tank).value;
    expect(value('water_mass', 'kg')).toBeCloseTo(water, 2);
    expect(value('sand', 'kg')).toBeCloseTo(147.6 * 57.6 * 3 * 1.55e-3, 6);
    expect(value('total_mass', 'kg')).toBeCloseTo(water + panes('tank_mass', 'kg') + 60 + value('sand', 'kg'), 2);
  });

  test('by hand: 147.6 × 57.6 × 49.8 cm of water, 37.6 L of glass', () => {
    const { value } = worked(weightSystem, tank);
    const water = 147.6 * 57.6 * 49.8e-3;
    const glass = 150 * 60 * 55e-3 - 147.6 * 57.6 * 53.8e-3;
    expect(value('total_mass', 'kg')).toBeCloseTo(water * 1.023343 + glass * 2.5, 2);
    expect(value('floor_pressure', 'Pa')).toBeCloseTo((value('total_mass', 'kg') * 9.80665) / 0.9, 6);
  });

  test('sand in place of a depth, a tank in place of its panes', () => {
    const said: Said = { ...tank, sand_mass: [40, 'kg'], tank_mass: [100, 'kg'] };
    const { value } = worked(weightSystem, said);
    expect(value('total_mass', 'kg') - value('water_mass', 'kg')).toBeCloseTo(140, 9);
  });

  test('panes that nobody measured give a range', () => {
    const { glass_thickness: _, ...bare } = tank;
    const { low, value, high } = worked(weightSystem, bare);
    expect(low('total_mass', 'kg')).toBeLessThan(value('total_mass', 'kg'));
    expect(high('empty_tank', 'kg')).toBeGreaterThan(value('empty_tank', 'kg') * 1.4);
  });
});

// A US gallon of seawater weighs 8.54 lb, of fresh water 8.32 lb at 25 °C.
test.each([
  [35, 8.54],
  [0, 8.32],
])('a hundred US gallons at %d ppt weigh %d hundred pounds', (ppt, pounds) => {
  const said: Said = { water_volume: [100, 'gal_US'], salinity: [ppt, 'g/kg'] };
  expect(worked(weightSystem, said).value('water_mass', 'lb') / 100).toBeCloseTo(pounds, 2);
});

test('everything that is put on adds its own weight, and rock takes the water away where it stands', () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 80, noNaN: true }), (kg) => {
      for (const part of ['stand_mass', 'equipment_mass', 'sand_mass'])
        expect(total({ ...tank, [part]: [kg, 'kg'] }) - total(tank)).toBeCloseTo(kg, 6);
      expect(total({ ...tank, rock_mass: [kg, 'kg'] }) - total(tank)).toBeCloseTo(kg * (1 - 1023.343 / 2700), 3);
    }),
  );
});

test('a given volume is already without rock', () => {
  const said: Said = { water_volume: [400, 'L'] };
  expect(total({ ...said, rock_mass: [60, 'kg'] }) - total(said)).toBeCloseTo(60, 9);
});

test('half the footprint is twice the pressure; feet share what there is', () => {
  const said: Said = { water_volume: [400, 'L'], foot_length: [1, 'm'], foot_width: [1, 'm'], feet: [4, 'count'] };
  const { value } = worked(weightSystem, said);
  const half = worked(weightSystem, { ...said, foot_width: [0.5, 'm'] });
  expect(half.value('floor_pressure', 'Pa')).toBeCloseTo(2 * value('floor_pressure', 'Pa'), 6);
  expect(value('mass_per_foot', 'kg') * 4).toBeCloseTo(value('total_mass', 'kg'), 9);
  expect(value('line_load', 'N/m') * 2).toBeCloseTo(value('total_mass', 'kg') * 9.80665, 6);
});

describe('what it says', () => {
  test('water alone is not called the whole', () => {
    const { headline, cautions } = spoken(weightSystem, { water_volume: [90, 'gal_US'] }, US);
    expect(headline).toMatch(/^The water alone weighs 769 lb/);
    expect(cautions).toMatch(/Left out .* the empty tank/);
    expect(cautions).not.toMatch(/40 psf/);
  });

  test('without a footprint no pressure', () => {
    expect(spoken(weightSystem, { water_volume: [90, 'L'], stand_mass: [20, 'kg'] }).headline).toMatch(
      /^Filled it weighs 112 kg .*\)\.$/,
    );
  });

  test('a footprint brings the pressure, and that it proves nothing', () => {
    const { headline, cautions } = spoken(weightSystem, tank);
    expect(headline).toMatch(/kN\/m² over its footprint/);
    expect(cautions).toMatch(/proves nothing either/);
    expect(cautions).not.toMatch(/Left out/);
    expect(cautions).toMatch(/The stand counts as nothing/);
    expect(spoken(weightSystem, { ...tank, stand_mass: [70, 'kg'] }).cautions).not.toMatch(/The stand counts/);
  });

  test('over 500 kg an engineer, below it the joists', () => {
    const at = (kg: number) =>
      spoken(weightSystem, { water_volume: [100, 'L'], tank_mass: [kg - 102.3343, 'kg'] }).cautions;
    expect(at(501)).toMatch(/ask a structural engineer before it stands on a suspended floor/);
    expect(at(501)).not.toMatch(/Size and grade of the joists/);
    expect(at(499)).toMatch(/Size and grade of the joists/);
    expect(at(499)).not.toMatch(/before it stands on/);
  });

  test('feet and rock bring their own traps', () => {
    expect(spoken(weightSystem, { ...tank, feet: [4, 'count'] }).cautions).toMatch(/Feet never share alike/);
    expect(spoken(weightSystem, { ...tank, rock_mass: [60, 'kg'] }).cautions).toMatch(/Count rock dry/);
    expect(spoken(weightSystem, tank).cautions).not.toMatch(/Count rock dry|Feet never/);
  });
});

test('asks for the water or the sizes, and refuses what cannot be', () => {
  expect(told(outcomeOf(weightSystem, {}))).toEqual(['water_volume']);
  expect(told(outcomeOf(weightSystem, { length: [150, 'cm'] }))).toEqual(['width', 'height']);
  expect(told(outcomeOf(weightSystem, { water_volume: [400, 'L'], salinity: [350, 'g/kg'] })).join()).toMatch(
    /decimal point/,
  );
  expect(told(outcomeOf(weightSystem, { ...tank, rock_mass: [2000, 'kg'] })).join()).toMatch(/more room than/);
  expect(told(outcomeOf(weightSystem, { ...tank, freeboard: [30, 'cm'], height: [20, 'cm'] })).join()).toMatch(
    /No water is left/,
  );
});
