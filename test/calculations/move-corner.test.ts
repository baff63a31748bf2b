import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerIn } from '../../src/core/answer.js';
import { moveCorner } from '../../src/core/calculations/move-corner.js';
import { METRIC } from '../../src/core/show-value.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const way = (L: number, W: number, a: number, b: number, more: Said = {}): Said => ({
  length: [L, 'cm'],
  width: [W, 'cm'],
  corridor_1: [a, 'cm'],
  corridor_2: [b, 'cm'],
  ...more,
});
const tall = (H: number): Said => ({ height: [H, 'cm'] });
const flagOf = (given: Said, id = 'passes') =>
  worked(moveCorner, given).outcome.results.find((r) => r.id === id)?.value;
const said = (given: Said) => {
  const { outcome } = worked(moveCorner, given);
  const { headline, cautions } = answerIn(outcome, METRIC);
  return { headline, cautions: cautions.map(({ text }) => text).join('\n') };
};

describe('worked by hand: in equal corridors the tightest angle is 45°, room is a·sqrt(2) − L/2 − w', () => {
  test.each([
    [way(160, 50, 100, 100), 141.4214 - 80 - 50],
    [way(200, 50, 100, 100), 141.4214 - 100 - 50],
    [way(180, 60, 120, 120), 169.7056 - 90 - 60],
  ] as [Said, number][])('%j', (given, room) => {
    expect(worked(moveCorner, given).value('corner_clearance', 'cm')).toBeCloseTo(room, 3);
    expect(flagOf(given)).toBe(room >= 0);
  });

  test('at 50 cm wide two corridors of 1 m turn 2·(141.4 − 50) = 182.8 cm', () => {
    expect(worked(moveCorner, way(160, 50, 100, 100)).value('longest_that_turns', 'cm')).toBeCloseTo(182.8427, 3);
  });
});

test('slides sideways where it cannot turn: 200 × 60 cm between 60.1 cm and 200 cm', () => {
  // At 80°: 60.1·0.9848 + 200·0.1736 − 200·0.1710 = 59.7 cm beside 60.
  expect(worked(moveCorner, way(200, 60, 60.1, 200)).value('corner_clearance', 'cm')).toBeLessThan(-0.28);
  expect(flagOf(way(200, 60, 60.1, 200))).toBe(true);
  expect(flagOf(way(200, 60, 200, 60.1))).toBe(true);
  expect(flagOf(way(200, 60, 60.1, 199))).toBe(false);
});

const cm = (low: number, high: number) => fc.integer({ min: low, max: high });
test('wider corridors never stop what passed, a longer box never passes where a shorter stuck, and names do not matter', () => {
  fc.assert(
    fc.property(cm(40, 300), cm(20, 100), cm(50, 200), cm(50, 200), (L, W, a, b) => {
      const passes = flagOf(way(L, W, a, b));
      if (passes === true) expect(flagOf(way(L, W, a + 5, b + 5))).toBe(true);
      else expect(flagOf(way(L + 5, W + 5, a, b))).toBe(false);
      expect(flagOf(way(W, L, b, a))).toBe(passes);
      expect(worked(moveCorner, way(W, L, b, a)).value('corner_clearance', 'cm')).toBeCloseTo(
        worked(moveCorner, way(L, W, a, b)).value('corner_clearance', 'cm'),
        6,
      );
    }),
  );
});

test('the longest that turns is just where turning ends', () => {
  fc.assert(
    fc.property(cm(20, 60), cm(70, 200), cm(70, 200), (W, a, b) => {
      const longest = worked(moveCorner, way(200, W, a, b)).value('longest_that_turns', 'cm');
      const room = (L: number) => worked(moveCorner, way(L, W, a, b)).value('corner_clearance', 'cm');
      expect(room(longest - 0.1)).toBeGreaterThan(0);
      expect(room(longest + 0.1)).toBeLessThan(0);
    }),
  );
});

describe('the first line', () => {
  test.each([
    [way(160, 50, 100, 100), /^Yes, it turns the corner with 11\.4 cm/],
    [way(176, 50, 100, 100), /^Only just: it turns with 3\.42 cm/],
    [way(200, 60, 60.1, 200), /^Yes without turning/],
    [way(200, 80, 100, 100, tall(40)), /^Not upright, but/],
    [way(200, 80, 100, 100, tall(70)), /^No: it is 38\.6 cm too wide .* 1\.23 m/],
    [way(300, 110, 100, 140), /^No: at 110 cm it is wider than the narrower corridor/],
  ])('%j', (given, expected) => expect(said(given).headline).toMatch(expected));
});

describe('cautions on both sides of where they begin', () => {
  const HEIGHT = /Give me its height/;
  const END = /Stood on end it turns/;
  const PAD = /on foam over a board/;
  const LITTLE = /Less than 5 cm/;
  test.each([
    [way(200, 80, 100, 100), [HEIGHT], [END, PAD, LITTLE]],
    [way(200, 80, 100, 100, tall(70)), [END], [HEIGHT, PAD]],
    [way(200, 80, 100, 100, tall(40)), [PAD], [HEIGHT, END]],
    [way(176, 50, 100, 100), [LITTLE], [HEIGHT, END, PAD]],
    [way(160, 50, 100, 100), [], [LITTLE, HEIGHT, END, PAD]],
  ] as [Said, RegExp[], RegExp[]][])('%j', (given, some, none) => {
    const { cautions } = said(given);
    for (const text of some) expect(cautions).toMatch(text);
    for (const text of none) expect(cautions).not.toMatch(text);
  });
});

test('with no height nothing is said of its side; wider than a corridor there is no longest', () => {
  expect(flagOf(way(160, 50, 100, 100), 'passes_on_its_side')).toBeUndefined();
  expect(flagOf(way(160, 50, 100, 100, tall(60)), 'passes_on_its_side')).toBe(true);
  expect(flagOf(way(300, 110, 100, 140), 'longest_that_turns')).toBeUndefined();
});

test('without a length it says how long it may be: 60 cm wide in corridors of 1 m, 2·(141.4 − 60) = 162.8 cm', () => {
  const { length: _, ...rest } = way(0, 60, 100, 100);
  expect(worked(moveCorner, rest).value('longest_that_turns', 'cm')).toBeCloseTo(162.8427, 3);
  expect(said(rest).headline).toMatch(/^At 60 cm wide, up to 1\.63 m/);
  expect(flagOf(rest)).toBeUndefined();
  expect(said({ ...rest, width: [110, 'cm'] }).headline).toMatch(/^No: at 110 cm it is wider/);
});

test('two corridors of one width are said in one', () => {
  const { corridor_1: _, corridor_2: __, ...rest } = way(160, 50, 0, 0);
  for (const corridors of ['two 1 m corridors', 'hallways are both 100 cm', 'both hallways 1000 mm'])
    expect(worked(moveCorner, { ...rest, corridors }).value('corner_clearance', 'cm')).toBeCloseTo(11.4214, 3);
  expect(told(outcomeOf(moveCorner, { ...rest, corridors: 'wide ones' })).join()).toMatch(
    /two 36 in corridors would do/,
  );
});

test('asks for both sizes and both corridors', () => {
  expect(told(outcomeOf(moveCorner, {}))).toEqual(['length', 'width', 'corridor_1', 'corridor_2']);
});

test.each([
  [way(160, 50, 0, 100), /corridor before the corner as 0/],
  [way(1800, 50, 100, 100), /longer than a room/],
] as [Said, RegExp][])('%j is refused', (given, because) => {
  const outcome = outcomeOf(moveCorner, given);
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(because);
});
