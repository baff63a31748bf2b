import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerIn } from '../../src/core/answer.js';
import { hangLight } from '../../src/core/calculations/hang-light.js';
import { METRIC } from '../../src/core/show-value.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const light = (kg: number, wires: number, deg: number, more: Said = {}): Said => ({
  mass: [kg, 'kg'],
  wires: [wires, 'count'],
  angle: [deg, 'deg'],
  ...more,
});
const said = (given: Said) => {
  const { outcome } = worked(hangLight, given);
  const { headline, cautions } = answerIn(outcome, METRIC);
  return { headline, cautions: cautions.map(({ level, text }) => `${level}: ${text}`).join('\n') };
};
const flagOf = (given: Said) => worked(hangLight, given).outcome.results.find((r) => r.id === 'rating_holds')?.value;

describe('worked by hand', () => {
  test.each([
    ['10 kg on two straight wires: half each, 49.03 N', light(10, 2, 0), 49.03325],
    ['10 kg on two wires at 60°: the whole weight each, 98.07 N', light(10, 2, 60), 98.0665],
    ['10 kg on two wires at 45°: 98.07/sqrt(2) = 69.34 N', light(10, 2, 45), 69.3435],
    ['9 kg on three wires at 30°: 29.42/0.8660 = 33.97 N', light(9, 3, 30), 33.9712],
  ] as [string, Said, number][])('%s', (_, given, pull) => {
    expect(worked(hangLight, given).value('wire_tension', 'N')).toBeCloseTo(pull, 3);
    expect(worked(hangLight, given).value('working_load_needed', 'N')).toBeCloseTo(5 * pull, 2);
  });

  test('hooks 30 cm to the side, 40 cm up: a 3-4-5 triangle, 10 kg on two wires pull 49.03·5/4 and 49.03·3/4 sideways', () => {
    const { angle: _, ...rest } = light(10, 2, 0, { sideways: [30, 'cm'], drop: [40, 'cm'] });
    expect(worked(hangLight, rest).value('wire_tension', 'N')).toBeCloseTo(61.2916, 3);
    expect(worked(hangLight, rest).value('sideways_pull', 'N')).toBeCloseTo(36.775, 3);
  });

  test('12 kg on four: 3 kg each, rated for 15 kg; 6 kg each if two carry', () => {
    const { value } = worked(hangLight, light(12, 4, 0));
    expect(value('working_load_as_mass', 'kg')).toBeCloseTo(15, 9);
    expect(value('tension_if_two_carry', 'N')).toBeCloseTo(58.8399, 4);
  });
});

test('pulls add up to the weight, and lean, weight and safety only raise the load', () => {
  const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(number(0.1, 90), fc.integer({ min: 1, max: 12 }), number(0, 55), number(1, 10), (kg, n, deg, f) => {
      const needed = (mass: number, lean: number, safety: number) =>
        worked(hangLight, light(mass, n, lean, { safety: [safety, '1'] })).value('working_load_needed', 'N');
      const pull = worked(hangLight, light(kg, n, deg)).value('wire_tension', 'N');
      expect((n * pull * Math.cos((deg * Math.PI) / 180)) / (kg * 9.80665)).toBeCloseTo(1, 9);
      expect(needed(kg, deg + 5, f)).toBeGreaterThan(needed(kg, deg, f));
      expect(needed(2 * kg, deg, f) / needed(kg, deg, f)).toBeCloseTo(2, 9);
      expect(needed(kg, deg, f)).toBeCloseTo(f * pull, 6);
    }),
  );
});

test('10 kg on two straight wires takes a rating of 25 kg each', () => {
  expect(flagOf(light(10, 2, 0, { wire_rating: [25.1, 'kg'] }))).toBe(true);
  expect(flagOf(light(10, 2, 0, { wire_rating: [24.9, 'kg'] }))).toBe(false);
  expect(flagOf(light(10, 2, 0))).toBeUndefined();
  for (const kg of [1.1, 3.3, 6, 7.7, 12.3])
    expect(flagOf(light(kg, 2, 0, { wire_rating: [2.5 * kg, 'kg'] }))).toBe(true);
});

describe('the first line', () => {
  test.each([
    [light(10, 2, 0, { wire_rating: [30, 'kg'] }), /^Within this check: .* 30 kg is good for 6 times/],
    [light(10, 2, 0, { wire_rating: [20, 'kg'] }), /^Too weak by this check: .* good for 4 times .* 25 kg/],
    [light(10, 2, 0), /^Each wire, gripper and hook should be rated for 25 kg/],
  ] as [Said, RegExp][])('%j', (given, expected) => expect(said(given).headline).toMatch(expected));
});

describe('cautions on both sides of where they begin', () => {
  const STOP = /stop: Even its share/;
  const TWO = /two wires can end up/;
  const ONE = /On one wire/;
  const LEAN = /pull the hooks sideways/;
  const JOIST = /into joists/;
  const TETHER = /second tether/;
  test.each([
    [light(10, 2, 0, { wire_rating: [4.9, 'kg'] }), [STOP, JOIST, TETHER], [TWO, ONE, LEAN]],
    [light(10, 2, 0, { wire_rating: [5.1, 'kg'] }), [], [STOP]],
    [light(10, 3, 0), [TWO], [ONE]],
    [light(10, 1, 0), [ONE], [TWO]],
    [light(10, 2, 25), [LEAN], []],
    [light(10, 2, 20), [], [LEAN]],
  ] as [Said, RegExp[], RegExp[]][])('%j', (given, some, none) => {
    const { cautions } = said(given);
    for (const text of some) expect(cautions).toMatch(text);
    for (const text of none) expect(cautions).not.toMatch(text);
  });
});

test('“straight down” is no lean', () => {
  const { angle: _, ...rest } = light(10, 2, 0);
  expect(worked(hangLight, { ...rest, lean: 'wires straight down' }).value('wire_tension', 'N')).toBeCloseTo(
    49.03325,
    9,
  );
  expect(told(outcomeOf(hangLight, { ...rest, lean: 'somehow' })).join()).toMatch(/straight down would do/);
});

test('asks for the angle unless hook and drop give it', () => {
  expect(told(outcomeOf(hangLight, {}))).toEqual(['mass', 'wires', 'angle']);
  const { angle: _, ...rest } = light(10, 2, 0);
  expect(told(outcomeOf(hangLight, { ...rest, sideways: [20, 'cm'] }))).toContain('drop');
  expect(outcomeOf(hangLight, { ...rest, sideways: [20, 'cm'], drop: [1, 'm'] }).kind).toBe('answer');
});

test.each([
  [light(10, 0, 0), /At least one wire/],
  [light(0, 2, 0), /above 0/],
  [light(10, 2, 75), /hang it steeper/],
  [light(10, 2, 0, { safety: [0.5, '1'] }), /1 to 15/],
] as [Said, RegExp][])('%j is refused', (given, because) => {
  const outcome = outcomeOf(hangLight, given);
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(because);
});
