import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerIn } from '../../src/core/answer.js';
import { movePeople } from '../../src/core/calculations/move-people.js';
import { METRIC } from '../../src/core/show-value.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const best: Said = { hand_distance: [25, 'cm'], hand_height: [75, 'cm'], lift_distance: [25, 'cm'], grip: 'good' };
const load = (kg: number, more: Said = {}): Said => ({ mass: [kg, 'kg'], ...more });
const said = (given: Said) => {
  const { outcome } = worked(movePeople, given);
  const { headline, cautions } = answerIn(outcome, METRIC);
  return { headline, cautions: cautions.map(({ level, text }) => `${level}: ${text}`).join('\n') };
};
const recommended = (more: Said) => worked(movePeople, load(10, more)).value('recommended_weight', 'kg');

/** DHHS (NIOSH) 94-110: the multiplier tables 1 to 4 and 7, two decimals; the other multipliers at 1. */
describe('multipliers of the published tables, times 23 kg', () => {
  test.each([
    ['H 30 cm', { ...best, hand_distance: [30, 'cm'] }, 0.83],
    ['H 50 cm', { ...best, hand_distance: [50, 'cm'] }, 0.5],
    ['H 63 cm', { ...best, hand_distance: [63, 'cm'] }, 0.4],
    ['V 0 cm', { ...best, hand_height: [0, 'cm'] }, 0.78],
    ['V 150 cm', { ...best, hand_height: [150, 'cm'] }, 0.78],
    ['V 175 cm', { ...best, hand_height: [175, 'cm'] }, 0.7],
    ['D 40 cm', { ...best, lift_distance: [40, 'cm'] }, 0.93],
    ['D 100 cm', { ...best, lift_distance: [100, 'cm'] }, 0.87],
    ['D 10 cm, below the shortest', { ...best, lift_distance: [10, 'cm'] }, 1],
    ['twist 45°', { ...best, twist: [45, 'deg'] }, 0.86],
    ['twist 135°', { ...best, twist: [135, 'deg'] }, 0.57],
    ['poor grip', { ...best, grip: 'poor' }, 0.9],
    ['fair grip at 75 cm', { ...best, grip: 'fair' }, 1],
    ['frequency multiplier 0.75', { ...best, frequency_multiplier: [0.75, '1'] }, 0.75],
  ] as [string, Said, number][])('%s', (_, more, multiplier) => {
    expect(Math.abs(recommended(more) / 23 - multiplier)).toBeLessThan(0.006);
  });

  test('a fair grip below 75 cm is 0.95 on top of the height: 0.3 % a centimetre', () => {
    const low: Said = { ...best, hand_height: [50, 'cm'] };
    expect(recommended({ ...low, grip: 'fair' }) / recommended(low)).toBeCloseTo(0.95, 9);
    expect(recommended(low)).toBeCloseTo(23 * 0.925, 9);
  });

  test('the end of the lift by its own height: 75 cm up to 145 cm is 0.79 of the start', () => {
    const { value } = worked(movePeople, load(10, { ...best, lift_distance: [70, 'cm'] }));
    expect(value('recommended_weight_at_end', 'kg') / value('recommended_weight', 'kg')).toBeCloseTo(0.79, 9);
  });
});

test('two keep 2/3 of 46 kg, three half of 69 kg, four half of 92 kg in the best posture', () => {
  const team = (n: number) =>
    worked(movePeople, load(30, { ...best, people: [n, 'count'] })).value('team_capability', 'kg');
  expect([1, 2, 3, 4].map(team)).toEqual([23, 46 * (2 / 3), 34.5, 46].map((kg) => expect.closeTo(kg, 9)));
});

test('the smallest team whose capability reaches the load is the one named', () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 120, noNaN: true }), (kg) => {
      const { outcome } = worked(movePeople, load(kg, best));
      const named = outcome.results.find(({ id }) => id === 'people_by_team')?.value;
      const manages = (n: number) =>
        worked(movePeople, load(kg, { ...best, people: [n, 'count'] })).value('team_capability', 'kg') >= kg - 1e-6;
      expect(named).toBe([1, 2, 3, 4].find(manages));
    }),
  );
});

test('heavier, farther out or more twisted never takes fewer people, and shares add up to the load', () => {
  const tenths = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
  fc.assert(
    fc.property(tenths(1, 400), tenths(25, 60), tenths(0, 120), fc.integer({ min: 1, max: 20 }), (kg, H, A, n) => {
      const people = (mass: number, hand: number, twist: number) =>
        worked(movePeople, load(mass, { hand_distance: [hand, 'cm'], twist: [twist, 'deg'] })).value(
          'people_by_posture',
          'count',
        );
      const here = people(kg, H, A);
      expect(people(kg * 1.1, H, A)).toBeGreaterThanOrEqual(here);
      expect(people(kg, H + 3, A)).toBeGreaterThanOrEqual(here);
      expect(people(kg, H, A + 15)).toBeGreaterThanOrEqual(here);
      const { value } = worked(movePeople, load(kg, { people: [n, 'count'] }));
      expect(value('share', 'kg') * n).toBeCloseTo(kg, 9);
      expect(here).toBeGreaterThanOrEqual(value('people_by_reference', 'count'));
    }),
    { numRuns: 40 },
  );
});

describe('the first line', () => {
  const by = (n: number): Said => ({ ...best, people: [n, 'count'] });
  test.each([
    [load(20, by(1)), /^One person lifting 20 kg is within this check/],
    [load(24, by(1)), /^One person should not lift 24 kg/],
    [load(30, by(2)), /^2 people lifting 30 kg are within this check: .* 30\.7 kg/],
    [load(31, by(2)), /^2 people are few for 31 kg/],
    [load(47, by(2)), /^Too heavy for 2 people by this check: 23\.5 kg each/],
    [load(22, best), /^One person can lift 22 kg/],
    [load(30, best), /^Not alone: 30 kg takes 2 people/],
    [load(46, best), /^Not alone: 46 kg takes 4 people/],
    [load(47, best), /^Not by hand alone: 47 kg takes at the very best 3 people/],
  ])('%j', (given, expected) => expect(said(given).headline).toMatch(expected));
});

describe('cautions on both sides of where they begin', () => {
  const STOP = /stop: More than three times/;
  const RAISED = /raised risk/;
  const WHEELS = /Teams over four rarely work/;
  const END = /end of the lift counts as well/;
  test.each([
    [load(70, { ...best, people: [1, 'count'] }), [STOP, WHEELS], [RAISED]],
    [load(50, { ...best, people: [1, 'count'] }), [RAISED], [STOP]],
    [load(23, { ...best, people: [1, 'count'] }), [], [STOP, RAISED, WHEELS]],
    [load(46, best), [], [WHEELS]],
    [load(47, best), [WHEELS], []],
    [load(20, { ...best, lift_distance: [60, 'cm'] }), [END], []],
    [load(20, { ...best, hand_height: [20, 'cm'], lift_distance: [60, 'cm'] }), [], [END]],
  ] as [Said, RegExp[], RegExp[]][])('%j', (given, some, none) => {
    const { cautions } = said(given);
    for (const text of some) expect(cautions).toMatch(text);
    for (const text of none) expect(cautions).not.toMatch(text);
  });
});

test('a guessed reach gives a range of people, a given one does not', () => {
  const guessed = worked(movePeople, load(101));
  expect(guessed.low('people_by_posture', 'count')).toBe(7);
  expect(guessed.high('people_by_posture', 'count')).toBe(11);
  const { outcome } = worked(movePeople, load(101, { hand_distance: [40, 'cm'] }));
  expect(outcome.results.find(({ id }) => id === 'people_by_posture')).toMatchObject({ value: 9 });
  expect(outcome.results.find(({ id }) => id === 'people_by_posture')).not.toHaveProperty('low');
});

test('asks for the weight alone', () => {
  expect(told(outcomeOf(movePeople, { people: [4, 'count'] }))).toEqual(['mass']);
});

test.each([
  [load(0), /above 0/],
  [load(50, { people: [0, 'count'] }), /1 to 20/],
  [load(50, { people: [2.5, 'count'] }), /whole number/],
  [load(50, { hand_distance: [70, 'cm'] }), /come closer/],
  [load(50, { hand_distance: [10, 'cm'] }), /body is in the way/],
  [load(50, { hand_height: [200, 'cm'] }), /check the unit/],
  [load(50, { twist: [180, 'deg'] }), /0 to 135/],
  [load(50, { coupling_multiplier: [0.5, '1'] }), /0\.9 to 1/],
] as [Said, RegExp][])('%j is refused', (given, because) => {
  const outcome = outcomeOf(movePeople, given);
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(because);
});
