import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerIn } from '../../src/core/answer.js';
import { moveDoorway } from '../../src/core/calculations/move-doorway.js';
import { METRIC } from '../../src/core/show-value.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const box = (L: number, W: number, H: number, more: Said = {}): Said => ({
  length: [L, 'cm'],
  width: [W, 'cm'],
  height: [H, 'cm'],
  ...more,
});
const door = (w: number, h: number): Said => ({ door_width: [w, 'cm'], door_height: [h, 'cm'] });
const flagOf = (given: Said) =>
  worked(moveDoorway, given).outcome.results.find((r) => r.id === 'passes_straight')!.value;
const said = (given: Said) => {
  const { outcome } = worked(moveDoorway, given);
  const { headline, cautions } = answerIn(outcome, METRIC);
  return { headline, cautions: cautions.map(({ text }) => text).join('\n') };
};

describe('worked by hand', () => {
  test.each([
    ['150 × 60 × 65 through 73 × 198: 13 cm beside 60', box(150, 60, 65, door(73, 198)), true, 13],
    ['150 × 70 × 71 through 73 × 198: 3 cm beside 70', box(150, 70, 71, door(73, 198)), true, 3],
    ['a 100 cm cube through 73 × 198: 27 cm lacking', box(100, 100, 100, door(73, 198)), false, -27],
    ['120 × 60 × 190 cabinet: 13 cm beside 60, 78 above 120', box(120, 60, 190, door(73, 198)), true, 13],
    ['90 × 60 × 55 through a hatch of 80 × 60: 5 cm', box(90, 60, 55, door(80, 60)), true, 5],
  ] as [string, Said, boolean, number][])('%s', (_, given, passes, gap) => {
    expect(flagOf(given)).toBe(passes);
    expect(worked(moveDoorway, given).value('tightest_gap', 'cm')).toBeCloseTo(gap, 9);
  });

  test('the clearance counts on both sides: 71 cm through 73 cm with 1 cm a side, not with 1.1', () => {
    const given = box(150, 71, 80, door(73, 198));
    expect(flagOf(given)).toBe(true);
    expect(flagOf({ ...given, clearance: [1.1, 'cm'] })).toBe(false);
    expect(worked(moveDoorway, given).value('narrowest_opening', 'cm')).toBeCloseTo(73, 9);
  });
});

const side = fc.integer({ min: 10, max: 250 });
test('however sizes are named, and whichever side of the opening is the width, the answer is one', () => {
  fc.assert(
    fc.property(
      side,
      side,
      side,
      fc.integer({ min: 30, max: 250 }),
      fc.integer({ min: 30, max: 250 }),
      (L, W, H, w, h) => {
        const gap = (given: Said) => worked(moveDoorway, given).value('tightest_gap', 'cm');
        const here = gap(box(L, W, H, door(w, h)));
        expect(gap(box(H, L, W, door(w, h)))).toBeCloseTo(here, 9);
        expect(gap(box(W, H, L, door(h, w)))).toBeCloseTo(here, 9);
        const [a, b] = [L, W, H].sort((x, y) => x - y) as [number, number];
        const [p, q] = [w, h].sort((x, y) => x - y) as [number, number];
        expect(here).toBeCloseTo(Math.min(p - a, q - b), 9);
      },
    ),
  );
});

test('what passes a door passes a larger one', () => {
  fc.assert(
    fc.property(
      side,
      side,
      side,
      fc.integer({ min: 30, max: 200 }),
      fc.integer({ min: 30, max: 200 }),
      (L, W, H, w, h) => {
        if (flagOf(box(L, W, H, door(w, h))) === true) expect(flagOf(box(L, W, H, door(w + 10, h + 10)))).toBe(true);
      },
    ),
  );
});

describe('the first line and the way round', () => {
  const way = (given: Said) => worked(moveDoorway, given).outcome.results.find((r) => r.id === 'way_round')?.value;
  test.each([
    [box(150, 60, 65, door(73, 198)), /^Yes, it goes through upright.* 13 cm/, 'upright'],
    [box(150, 90, 60, door(73, 198)), /^Yes, but only turned/, 'turned'],
    [box(150, 72, 80, door(73, 198)), /^Only bare/, undefined],
    [box(150, 90, 80, door(73, 198)), /^No, .* 9 cm is lacking/, undefined],
  ] as [Said, RegExp, string | undefined][])('%j', (given, expected, label) => {
    expect(said(given).headline).toMatch(expected);
    expect(way(given)).toBe(label);
  });
});

describe('cautions on both sides of where they begin', () => {
  const MEASURE = /Neither door size was measured/;
  const HINGES = /off its hinges/;
  const CORRIDOR = /structure corner/;
  const PAD = /on foam over a board/;
  test.each([
    [box(150, 60, 60), [MEASURE, CORRIDOR], [PAD, HINGES]],
    [box(150, 60, 60, { door_width: [76, 'cm'] }), [], [MEASURE]],
    [box(150, 66, 70, door(73, 198)), [HINGES], []],
    [box(150, 64, 70, door(73, 198)), [], [HINGES]],
    [box(150, 90, 60, door(73, 198)), [PAD, CORRIDOR], []],
    [box(150, 90, 80, door(73, 198)), [HINGES], [PAD, CORRIDOR]],
  ] as [Said, RegExp[], RegExp[]][])('%j', (given, some, none) => {
    const { cautions } = said(given);
    for (const text of some) expect(cautions).toMatch(text);
    for (const text of none) expect(cautions).not.toMatch(text);
  });
});

test('a guessed door that could be too narrow is said', () => {
  expect(said(box(150, 72, 80)).cautions).toMatch(/comes out otherwise/);
  expect(said(box(150, 50, 60)).cautions).not.toMatch(/comes out otherwise/);
});

test('both sizes of the door in one', () => {
  for (const door_sizes of ['73 x 198 cm doorway', 'door is 73cm by 198cm', 'opening 730 x 1980 mm'])
    expect(worked(moveDoorway, box(150, 60, 65, { door_sizes })).value('tightest_gap', 'cm')).toBeCloseTo(13, 9);
  expect(told(outcomeOf(moveDoorway, box(150, 60, 65, { door_sizes: 'wide' }))).join()).toMatch(
    /73 x 198 cm door would do/,
  );
});

test('asks for the three sizes, and takes a common door', () => {
  expect(told(outcomeOf(moveDoorway, {}))).toEqual(['length', 'width', 'height']);
});

test.each([
  [box(0, 60, 60), /tank length as 0/],
  [box(150, 60, 60, { door_width: [762, 'in'] }), /check|works from/],
  [box(150, 60, 60, { clearance: [40, 'cm'] }), /0 to 30 cm/],
] as [Said, RegExp][])('%j is refused', (given, because) => {
  const outcome = outcomeOf(moveDoorway, given);
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(because);
});
