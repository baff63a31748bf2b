import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sandMass } from '../../src/core/calculations/sand-mass.js';
import { spoken } from './spoken.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const bed = (length: number, width: number, depth: number): Said => ({
  length: [length, 'cm'],
  width: [width, 'cm'],
  depth: [depth, 'cm'],
});
const mass = (said: Said) => worked(sandMass, said).value('sand_mass', 'kg');

describe('by hand', () => {
  test.each([
    [100, 50, 2, 10 * 1.55],
    [120, 60, 5, 36 * 1.55],
  ])('%d × %d × %d cm', (length, width, depth, kg) => {
    expect(mass(bed(length, width, depth))).toBeCloseTo(kg, 9);
  });

  test('silica, and a density of one’s own', () => {
    expect(mass({ ...bed(100, 50, 2), sand_kind: 'silica' })).toBeCloseTo(16, 9);
    expect(mass({ ...bed(100, 50, 2), bulk_density: [1700, 'kg/m3'] })).toBeCloseTo(17, 9);
  });

  // Length × width × depth / 20, in inches and pounds, is a rule of the trade: 1384 kg/m³.
  test('the copied rule lies a tenth below', () => {
    const said: Said = { length: [72, 'in'], width: [18, 'in'], depth: [1, 'in'] };
    const rule = (72 * 18 * 1) / 20;
    expect(rule / worked(sandMass, said).value('sand_mass', 'lb')).toBeCloseTo(0.893, 3);
    const same = worked(sandMass, { ...said, bulk_density: [1384, 'kg/m3'] });
    expect(same.value('sand_mass', 'lb')).toBeCloseTo(rule, 1);
  });

  test('panes take their share: 147.6 × 57.6 cm inside 150 × 60 in 12 mm', () => {
    expect(mass({ ...bed(150, 60, 4), glass_thickness: [12, 'mm'] })).toBeCloseTo(147.6 * 57.6 * 4 * 1.55e-3, 9);
  });

  test('15.5 kg in bags of 5 kg are 4 bags, 15 kg exactly 3, at 2 a kilogram 31', () => {
    const said: Said = { ...bed(100, 50, 2), bag_mass: [5, 'kg'], price: [2, 'currency/kg'] };
    const { value } = worked(sandMass, said);
    expect(value('bags', 'count')).toBe(4);
    expect(value('cost', 'currency')).toBeCloseTo(31, 9);
    expect(worked(sandMass, { ...said, bulk_density: [1500, 'kg/m3'] }).value('bags', 'count')).toBe(3);
  });

  test('with 10 kg there only the rest is bought', () => {
    const { value } = worked(sandMass, {
      ...bed(100, 50, 2),
      sand_on_hand: [10, 'kg'],
      bag_mass: [5, 'kg'],
      price: [2, 'currency/kg'],
    });
    expect(value('sand_to_buy', 'kg')).toBeCloseTo(5.5, 9);
    expect(value('bags', 'count')).toBe(2);
    expect(value('cost', 'currency')).toBeCloseTo(11, 9);
    expect(value('depth_reached', 'cm')).toBeCloseTo((2 * 10) / 15.5, 9);
  });
});

test('the depth that the sand for a bed reaches is the depth of that bed', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 20, max: 300, noNaN: true }),
      fc.double({ min: 20, max: 100, noNaN: true }),
      fc.double({ min: 0.5, max: 20, noNaN: true }),
      (length, width, depth) => {
        const kg = mass(bed(length, width, depth));
        const { depth: _, ...area } = bed(length, width, depth);
        expect(worked(sandMass, { ...area, sand_on_hand: [kg, 'kg'] }).value('depth_reached', 'cm')).toBeCloseTo(
          depth,
          9,
        );
        expect(mass(bed(length, width, 1.2 * depth)) / kg).toBeCloseTo(1.2, 9);
      },
    ),
  );
});

describe('the first line', () => {
  test.each([
    [bed(100, 50, 2), /^The dry sand for the bed weighs 15\.5 kg .*, likely 14 to 16\.5\.$/],
    [{ ...bed(100, 50, 2), bag_mass: [5, 'kg'] }, /: 4 bags/],
    [{ ...bed(100, 50, 2), sand_on_hand: [10, 'kg'] }, /^Not enough/],
    [{ ...bed(100, 50, 2), sand_on_hand: [20, 'kg'] }, /^Enough/],
    [{ length: [100, 'cm'], width: [50, 'cm'], sand_on_hand: [20, 'kg'] }, /^Your sand reaches/],
  ] as [Said, RegExp][])('%o', (said, expected) => {
    expect(spoken(sandMass, said).headline).toMatch(expected);
  });
});

test('cautions: sizes taken as inside sizes while no pane is known; the copied rule where a bed is planned', () => {
  expect(spoken(sandMass, bed(100, 50, 2)).cautions).toMatch(/count as inside sizes/);
  expect(spoken(sandMass, { ...bed(100, 50, 2), glass_thickness: [10, 'mm'] }).cautions).not.toMatch(/inside sizes/);
  expect(spoken(sandMass, bed(100, 50, 2)).cautions).toMatch(/1384/);
  const given: Said = { length: [100, 'cm'], width: [50, 'cm'], sand_on_hand: [20, 'kg'] };
  expect(spoken(sandMass, given).cautions).not.toMatch(/1384|Buy a little/);
});

test('asks for the area and the depth, and refuses what is no sand', () => {
  expect(told(outcomeOf(sandMass, {}))).toEqual(['length', 'width', 'depth']);
  expect(told(outcomeOf(sandMass, { sand_area: [0.8, 'm2'] }))).toEqual(['depth']);
  expect(told(outcomeOf(sandMass, { ...bed(100, 50, 2), bulk_density: [2700, 'kg/m3'] })).join()).toMatch(
    /1200 to 1900/,
  );
  expect(told(outcomeOf(sandMass, bed(100, 50, 40))).join()).toMatch(/0\.3 m|30 cm/);
  expect(told(outcomeOf(sandMass, { ...bed(100, 50, 2), glass_thickness: [250, 'mm'] })).join()).toMatch(
    /No inside is left/,
  );
});
