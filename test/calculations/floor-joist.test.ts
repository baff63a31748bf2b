import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { floorJoist } from '../../src/core/calculations/floor-joist.js';
import { spoken } from './spoken.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const G = 9.80665;
const floor = (kg: number, n: number, l: number, a: number, c: number, more: Said = {}): Said => ({
  total_mass: [kg, 'kg'],
  joist_count: [n, 'count'],
  joist_span: [l, 'm'],
  wall_gap: [a, 'm'],
  load_depth: [c, 'm'],
  ...more,
});
const moment = (said: Said) => worked(floorJoist, said).value('joist_moment', 'Nm');

/** The largest moment of a strip load on a simple beam, by walking along it in small steps. */
function walked(F: number, l: number, a: number, c: number): number {
  let [largest, shear, sum] = [0, (F * (l - a - c / 2)) / l, 0];
  const STEPS = 40_000;
  const dx = l / STEPS;
  for (let i = 0; i < STEPS; i += 1) {
    const x = (i + 0.5) * dx;
    const load = x > a && x < a + c ? F / c : 0;
    sum += (shear - (load * dx) / 2) * dx;
    shear -= load * dx;
    largest = Math.max(largest, sum);
  }
  return largest;
}

describe('against the handbook', () => {
  // Every beam table: a load over the whole span bends with F*l/8, a point load in the middle with F*l/4.
  test('a load over the whole span: F l/8', () => {
    expect(moment(floor(500, 1, 4, 0, 4))).toBeCloseTo((500 * G * 4) / 8, 6);
  });
  test('a short load in the middle: nearly F l/4', () => {
    expect(moment(floor(500, 1, 4, 1.95, 0.1))).toBeCloseTo(500 * G * (4 / 4 - 0.1 / 8), 6);
  });
  test('the end carries half of a load in the middle', () => {
    expect(worked(floorJoist, floor(500, 1, 4, 1.5, 1)).value('end_load', 'N')).toBeCloseTo(250 * G, 6);
  });
  test('40 psf on joists 16 in apart over 12 ft: 53.33 lb/ft, 960 lb ft', () => {
    const { value } = worked(floorJoist, floor(500, 3, 12 * 0.3048, 0, 0.5));
    expect(value('design_live_moment', 'lbf ft')).toBeCloseTo(960, 6);
  });
  test('walking along the beam finds the same moment wherever the tank stands', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.5, max: 7, noNaN: true }),
        fc.double({ min: 0, max: 0.6, noNaN: true }),
        fc.double({ min: 0.3, max: 1, noNaN: true }),
        (l, share, c) => {
          const a = share * (l - c);
          const expected = walked((600 * G) / 4, l, a, c);
          expect(Math.abs(moment(floor(600, 4, l, a, c)) / expected - 1)).toBeLessThan(2e-3);
        },
      ),
      { numRuns: 30 },
    );
  });
});

test('the same from either wall, worst in the middle, twice the joists half the moment', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 3, noNaN: true }), (a) => {
      const here = worked(floorJoist, floor(600, 4, 4, a, 1));
      expect(moment(floor(600, 4, 4, 3 - a, 1))).toBeCloseTo(here.value('joist_moment', 'Nm'), 6);
      expect(here.value('joist_moment', 'Nm')).toBeLessThanOrEqual(moment(floor(600, 4, 4, 1.5, 1)) + 1e-9);
      expect(moment(floor(600, 8, 4, a, 1)) * 2).toBeCloseTo(here.value('joist_moment', 'Nm'), 6);
      expect(here.value('moment_ratio_mid_span', 'fraction')).toBeCloseTo(
        worked(floorJoist, floor(600, 4, 4, 1.5, 1)).value('moment_ratio', 'fraction'),
        9,
      );
    }),
  );
});

describe('joists that are counted from how they run', () => {
  const tank: Said = {
    total_mass: [700, 'kg'],
    length: [150, 'cm'],
    width: [60, 'cm'],
    joist_spacing: [40, 'cm'],
    joist_span: [3.6, 'm'],
    wall_gap: [5, 'cm'],
  };
  test('across: under 150 cm three at 40 cm for certain, each under the width of the tank', () => {
    expect(moment({ ...tank, joist_direction: 'across' })).toBeCloseTo(moment(floor(700, 3, 3.6, 0.05, 0.6)), 9);
  });
  test('along: under 60 cm one for certain, under the whole length, and that is said', () => {
    const said: Said = { ...tank, joist_direction: 'along' };
    expect(moment(said)).toBeCloseTo(moment(floor(700, 1, 3.6, 0.05, 1.5)), 9);
    expect(spoken(floorJoist, said).cautions).toMatch(/Along the joists one or two/);
    expect(spoken(floorJoist, { ...tank, joist_direction: 'across' }).cautions).not.toMatch(/Along the joists/);
  });
});

describe('the first line', () => {
  test.each([
    [floor(300, 5, 3.6, 0.05, 0.5), /^Within this check/],
    [floor(771, 5, 3.6576, 0.6, 0.4572), /^Ask a structural engineer: it bends/],
    [floor(900, 4, 4, 1.5, 0.6), /^Outside this check/],
    [floor(800, 4, 3.6, 0.02, 0.4), /^Ask a structural engineer: bending is .* the end of each joist/],
  ] as [Said, RegExp][])('%o', (said, expected) => {
    expect(spoken(floorJoist, said).headline).toMatch(expected);
  });
});

describe('cautions', () => {
  test('a stop only where the bending is more than the design', () => {
    expect(spoken(floorJoist, floor(900, 4, 4, 1.5, 0.6)).cautions).toMatch(/^stop: /);
    expect(spoken(floorJoist, floor(300, 5, 3.6, 0.05, 0.5)).cautions).not.toMatch(/stop: /);
  });
  test('the end of the joist, close to the wall', () => {
    const near = floor(700, 5, 3.6, 0.05, 0.5);
    expect(spoken(floorJoist, near).cautions).toMatch(/rests fully on sound wood/);
    expect(spoken(floorJoist, floor(300, 5, 3.6, 0.05, 0.5)).cautions).not.toMatch(/rests fully/);
  });
  test('the wall is the better place, for one that is not in mid-span already', () => {
    expect(spoken(floorJoist, floor(300, 5, 3.6, 0.05, 0.5)).cautions).toMatch(/in mid-span it would be/);
    expect(spoken(floorJoist, floor(300, 5, 3.6, 1.5, 0.5)).cautions).not.toMatch(/in mid-span/);
  });
  test('half a ton is an engineer’s question in the first line, whatever the ratios', () => {
    expect(spoken(floorJoist, floor(501, 12, 3, 0.05, 0.5)).headline).toMatch(/^Ask a structural engineer: at 501 kg/);
    expect(spoken(floorJoist, floor(499, 12, 3, 0.05, 0.5)).headline).toMatch(/^Within this check/);
  });
});

test('asks what it needs, and refuses a tank beyond the joists', () => {
  expect(told(outcomeOf(floorJoist, {}))).toEqual([
    'total_mass',
    'joist_count',
    'joist_span',
    'wall_gap',
    'load_depth',
  ]);
  expect(told(outcomeOf(floorJoist, { total_mass: [700, 'kg'], joist_direction: 'across' }))).toEqual([
    'length',
    'joist_span',
    'wall_gap',
    'load_depth',
  ]);
  expect(told(outcomeOf(floorJoist, floor(500, 3, 3, 2.8, 0.5))).join()).toMatch(/beyond the end of the joists/);
  expect(told(outcomeOf(floorJoist, floor(500, 2.5, 3, 0, 0.5))).join()).toMatch(/whole number/);
});
