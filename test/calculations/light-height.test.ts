import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lightHeight } from '../../src/core/calculations/light-height.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const moved = (ppfd: number, from: number, to: number, panel?: readonly [number, number]): Said => ({
  ppfd_1: [ppfd, 'umol/m2/s'],
  distance_1: [from, 'cm'],
  distance_2: [to, 'cm'],
  ...(panel ? { panel_length: [panel[0], 'cm'], panel_width: [panel[1], 'cm'] } : {}),
});
const ppfdAfter = (said: Said, source: string) => worked(lightHeight, said).value(`ppfd_2_${source}`, 'umol/m2/s');

/** Light under the middle of an even panel, summed over its patches; up to a factor that the ratio of two distances drops. */
function patches(L: number, W: number, d: number): number {
  const n = 200;
  let sum = 0;
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j < n; j += 1) {
      const [x, y] = [((i + 0.5) / n - 0.5) * L, ((j + 0.5) / n - 0.5) * W];
      sum += (d * d) / (x * x + y * y + d * d) ** 2 / n ** 2;
    }
  return sum * L * W;
}

describe('worked by hand', () => {
  test('twice as far: a quarter of a point, half of a long row', () => {
    expect(ppfdAfter(moved(200, 25, 50), 'point')).toBeCloseTo(50, 9);
    expect(ppfdAfter(moved(200, 25, 50), 'line')).toBeCloseTo(100, 9);
  });
  test('200 at 25 cm, to 40 cm: 200·(25/40)² = 78.1 and 200·25/40 = 125', () => {
    expect(ppfdAfter(moved(200, 25, 40), 'point')).toBeCloseTo(78.125, 9);
    expect(ppfdAfter(moved(200, 25, 40), 'line')).toBeCloseTo(125, 9);
  });
  test('a start at a half: the point hangs sqrt(2) times as far, the row twice', () => {
    const { value } = worked(lightHeight, { final_distance: [30, 'cm'], start_fraction: [0.5, 'fraction'] });
    expect(value('start_distance_point_source', 'cm')).toBeCloseTo(30 * Math.SQRT2, 9);
    expect(value('start_distance_line_source', 'cm')).toBeCloseTo(60, 9);
  });
});

const side = fc.double({ min: 5, max: 150, noNaN: true });
const distance = fc.double({ min: 10, max: 150, noNaN: true });

test('a panel agrees with the sum over its patches', () => {
  fc.assert(
    fc.property(side, side, distance, distance, (L, W, from, to) => {
      const expected = (100 * patches(L, W, to)) / patches(L, W, from);
      expect(ppfdAfter(moved(100, from, to, [L, W]), 'panel') / expected).toBeCloseTo(1, 2);
    }),
    { numRuns: 25 },
  );
});

test('a small panel far away is a point; further is never brighter; the answer spans all of them', () => {
  expect(ppfdAfter(moved(100, 100, 200, [1, 1]), 'panel')).toBeCloseTo(25, 2);
  fc.assert(
    fc.property(side, side, distance, fc.double({ min: 1, max: 100, noNaN: true }), (L, W, from, more) => {
      const said = moved(100, from, from + more, [L, W]);
      for (const source of ['point', 'line', 'panel']) {
        expect(ppfdAfter(said, source)).toBeLessThan(100);
        expect(ppfdAfter(said, source)).toBeGreaterThanOrEqual(ppfdAfter(said, 'low') - 1e-9);
        expect(ppfdAfter(said, source)).toBeLessThanOrEqual(ppfdAfter(said, 'high') + 1e-9);
      }
    }),
  );
});

test('lowered from the start distance of a panel to the end, the light rises to the whole', () => {
  fc.assert(
    fc.property(side, side, distance, fc.double({ min: 0.2, max: 1, noNaN: true }), (L, W, end, share) => {
      const start = worked(lightHeight, {
        final_distance: [end, 'cm'],
        start_fraction: [share, 'fraction'],
        panel_length: [L, 'cm'],
        panel_width: [W, 'cm'],
      }).value('start_distance_panel', 'cm');
      fc.pre(start <= 300);
      expect(ppfdAfter(moved(share * 100, start, end, [L, W]), 'panel')).toBeCloseTo(100, 6);
    }),
  );
});

test('a move in one phrase is read as its two distances', () => {
  const low = (move: string) => ppfdAfter({ ppfd_1: [200, 'umol/m2/s'], move }, 'low');
  expect(low('from 25 cm to 50 cm')).toBeCloseTo(50, 9);
  expect(low('10 to 20 inches')).toBeCloseTo(50, 9);
  expect(low('10" up to 20"')).toBeCloseTo(50, 9);
  expect(told(outcomeOf(lightHeight, { ppfd_1: [200, 'umol/m2/s'], move: 'a bit higher' })).join(' ')).toMatch(
    /two distances/,
  );
});

test('lowering a lamp is warned about, raising it is not', () => {
  const warned = (said: Said) =>
    worked(lightHeight, said).outcome.cautions.some(({ text }) => /Lowering a lamp/.test(text));
  expect(warned(moved(100, 40, 30))).toBe(true);
  expect(warned(moved(100, 30, 40))).toBe(false);
});

test('asks for what is missing, the panel’s other side too', () => {
  expect(told(outcomeOf(lightHeight, { ppfd_1: [200, 'umol/m2/s'], distance_1: [25, 'cm'] }))).toEqual(['distance_2']);
  const half: Said = { ...moved(200, 25, 50), panel_length: [100, 'cm'] };
  expect(told(outcomeOf(lightHeight, half))).toEqual(['panel_width']);
});

test.each([
  [moved(200, 0, 40), /5 cm/],
  [moved(200, 25, 400), /0\.05 to 3 m|5 to 300 cm/],
  [moved(8000, 25, 40), /lux/],
] as [Said, RegExp][])('%j is refused', (said, because) => {
  const outcome = outcomeOf(lightHeight, said);
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(because);
});
