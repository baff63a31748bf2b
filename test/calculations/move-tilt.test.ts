import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerIn } from '../../src/core/answer.js';
import { moveTilt } from '../../src/core/calculations/move-tilt.js';
import { METRIC } from '../../src/core/show-value.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const tank = (L: number, H: number, ceiling: number, more: Said = {}): Said => ({
  length: [L, 'cm'],
  height: [H, 'cm'],
  ceiling: [ceiling, 'cm'],
  ...more,
});
const corner = (W: number, a: number, b?: number): Said => ({
  width: [W, 'cm'],
  corridor_1: [a, 'cm'],
  ...(b === undefined ? {} : { corridor_2: [b, 'cm'] as [number, string] }),
});
const flagOf = (given: Said, id: string) => worked(moveTilt, given).outcome.results.find((r) => r.id === id)?.value;
const said = (given: Said) => {
  const { outcome } = worked(moveTilt, given);
  const { headline, cautions } = answerIn(outcome, METRIC);
  return { headline, cautions: cautions.map(({ text }) => text).join('\n') };
};

describe('worked by hand', () => {
  test('a 3-4-5 tank, 200 × 150 cm, has a diagonal of 250 cm', () => {
    expect(worked(moveTilt, tank(200, 150, 250)).value('diagonal', 'cm')).toBeCloseTo(250, 9);
    expect(flagOf(tank(200, 150, 250), 'can_stand_on_end')).toBe(true);
    expect(flagOf(tank(200, 150, 249), 'can_stand_on_end')).toBe(false);
  });
  test('a square of 100 cm under 136.603 cm tilts to 30°: sin 75° of its diagonal; in plan cos 30° + sin 30°', () => {
    const { value } = worked(moveTilt, tank(100, 100, 136.6025404));
    expect(value('largest_tilt', 'deg')).toBeCloseTo(30, 5);
    expect(value('plan_length_at_tilt', 'cm')).toBeCloseTo(136.6025, 3);
  });
  test('180 × 60 cm under 185 cm: asin(185/189.737) − atan(60/180) = 77.17 − 18.43 = 58.74°', () => {
    const { value } = worked(moveTilt, tank(180, 60, 185));
    expect(value('largest_tilt', 'deg')).toBeCloseTo(58.7, 1);
    expect(value('plan_length_at_tilt', 'cm')).toBeCloseTo(144.7, 1);
  });
});

const cm = (low: number, high: number) => fc.integer({ min: low, max: high });
test('at the tilt found the upper corner touches the ceiling, and a higher ceiling never tilts less', () => {
  fc.assert(
    fc.property(cm(50, 300), cm(30, 100), fc.double({ min: 0.01, max: 0.99, noNaN: true }), (L, H, share) => {
      const ceiling = H + share * (Math.hypot(L, H) - H);
      if (ceiling < 50) return;
      const tilt = worked(moveTilt, tank(L, H, ceiling)).value('largest_tilt', 'rad');
      expect(L * Math.sin(tilt) + H * Math.cos(tilt)).toBeCloseTo(ceiling, 6);
      expect(worked(moveTilt, tank(L, H, ceiling + 5)).value('largest_tilt', 'rad')).toBeGreaterThanOrEqual(tilt);
    }),
  );
});

test('on end it is as long in plan as it was high', () => {
  fc.assert(
    fc.property(cm(50, 250), cm(30, 100), (L, H) => {
      const { value } = worked(moveTilt, tank(L, H, Math.ceil(Math.hypot(L, H)) + 1));
      expect(value('plan_length_at_tilt', 'cm')).toBeCloseTo(H, 9);
      expect(value('largest_tilt', 'deg')).toBeCloseTo(90, 9);
    }),
  );
});

test('on end, 60 × 60 cm in plan, it has 40 cm beside it in corridors of 1 m', () => {
  const given = tank(200, 60, 240, corner(60, 100));
  expect(worked(moveTilt, given).value('corner_clearance', 'cm')).toBeCloseTo(40, 6);
  expect(flagOf(given, 'turns_corner')).toBe(true);
  expect(flagOf(tank(240, 80, 240, corner(70, 80, 80)), 'turns_corner')).toBe(false);
  expect(flagOf(tank(200, 60, 240), 'turns_corner')).toBeUndefined();
});

test('where tilting makes it longer, it turns the corner level: 100 × 80 cm is 100 cm', () => {
  const given = tank(100, 80, 90, corner(40, 90));
  expect(worked(moveTilt, given).value('plan_length_at_tilt', 'cm')).toBeGreaterThan(100);
  expect(worked(moveTilt, given).value('corner_clearance', 'cm')).toBeCloseTo(Math.SQRT2 * 90 - 50 - 40, 6);
});

describe('the first line', () => {
  test.each([
    [tank(180, 60, 240), /^Yes, it can be stood on end: .* 1\.9 m .* leaves 50\.3 cm under .* 60 cm/],
    [tank(240, 80, 240), /^No, .* tilted as far as it goes, 53°, it is 208 cm/],
    [tank(100, 80, 90), /^No, .* no shorter in plan/],
  ])('%j', (given, expected) => expect(said(given).headline).toMatch(expected));
});

describe('cautions on both sides of where they begin', () => {
  const TOPPLES = /topples easily/;
  const GIVE = /Give me its width/;
  const TURNS = /^Like that it turns the corner/m;
  const STICKS = /Even like that it does not/;
  const LITTLE = /Less than 5 cm/;
  test.each([
    [tank(180, 60, 240), [GIVE, TOPPLES], [TURNS, STICKS, LITTLE]],
    [tank(180, 60, 194), [LITTLE], []],
    [tank(180, 60, 195), [], [LITTLE]],
    [tank(180, 60, 189), [], [LITTLE, TOPPLES]],
    [tank(200, 60, 240, corner(60, 100)), [TURNS], [GIVE, STICKS]],
    [tank(240, 80, 240, corner(70, 80, 80)), [STICKS], [GIVE, TURNS]],
  ] as [Said, RegExp[], RegExp[]][])('%j', (given, some, none) => {
    const { cautions } = said(given);
    for (const text of some) expect(cautions).toMatch(text);
    for (const text of none) expect(cautions).not.toMatch(text);
  });
});

test('asks for its sizes and the ceiling, and for the width only where there is a corner', () => {
  expect(told(outcomeOf(moveTilt, {}))).toEqual(['length', 'height', 'ceiling']);
  expect(told(outcomeOf(moveTilt, { ...tank(180, 60, 240), corridor_1: [90, 'cm'] }))).toEqual(['width']);
});

test('refuses a tank higher than the ceiling, but not one just as high', () => {
  expect(told(outcomeOf(moveTilt, tank(180, 60, 59))).join()).toMatch(/higher than the ceiling/);
  expect(outcomeOf(moveTilt, tank(180, 60, 60)).kind).toBe('answer');
});
