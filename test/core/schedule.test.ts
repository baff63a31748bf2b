import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildSteps } from '../../data/build-steps.js';
import { dateAfter, daysBetween, shownDate } from '../../src/core/quantity/date-text.js';
import {
  type Build,
  besides,
  inOrder,
  type StepState,
  schedule,
  stepsBefore,
  tooEarly,
} from '../../src/core/schedule.js';

const START = '2027-03-01';
const build = (more: Partial<Build> = {}): Build => ({
  start: START,
  seeded: false,
  steps: buildSteps,
  said: {},
  today: START,
  ...more,
});
const dated = (of: Build, id: string) => schedule(of).find(({ step }) => step.id === id)!;

describe('a chain worked by hand', () => {
  // a takes 2 days, b and c wait for a and take 1 and 4, d waits for both: the longer way decides.
  const chain = [
    { id: 'a', name: 'a', short: 'x', words: [], days: [2, 3], after: [] },
    { id: 'b', name: 'b', short: 'x', words: [], days: [1, 1], after: [['a', 'b needs a']] },
    { id: 'c', name: 'c', short: 'x', words: [], days: [4, 6], after: [['a', 'c needs a']], waits: true },
    {
      id: 'd',
      name: 'd',
      short: 'x',
      words: [],
      days: [1, 2],
      after: [
        ['b', ''],
        ['c', 'd needs c'],
      ],
    },
  ] as const;
  const of = (more: Partial<Build> = {}) => build({ steps: chain, ...more });

  test('each begins the day after the last it waits for', () => {
    expect(schedule(of()).map(({ step, start, end }) => [step.id, start, end])).toEqual([
      ['a', '2027-03-01', '2027-03-02'],
      ['b', '2027-03-03', '2027-03-03'],
      ['c', '2027-03-03', '2027-03-06'],
      ['d', '2027-03-07', '2027-03-07'],
    ]);
  });
  test('at the longest of every step: 3 + 6 + 2 days', () => {
    expect(dated(of(), 'd').endAtLongest).toBe('2027-03-11');
  });
  test('done sooner pulls the rest forward, done later pushes it', () => {
    expect(dated(of({ said: { a: { done: '2027-03-01' } } }), 'd').end).toBe('2027-03-06');
    expect(dated(of({ said: { a: { done: '2027-03-05' } }, today: '2027-03-05' }), 'd').end).toBe('2027-03-10');
  });
  test('what is overdue ends today at the earliest, and the rest follows', () => {
    const late = of({ today: '2027-03-20' });
    expect(dated(late, 'a').end).toBe('2027-03-20');
    expect(dated(late, 'd').end).toBe('2027-03-25');
  });
  test('moved to a later day, the rest follows; another branch does not', () => {
    const moved = of({ said: { c: { from: '2027-03-10' } } });
    expect(dated(moved, 'c').start).toBe('2027-03-10');
    expect(dated(moved, 'd').start).toBe('2027-03-14');
    expect(dated(moved, 'b').start).toBe('2027-03-03');
  });
  test('a step left out hands its waiting on', () => {
    const without = of({ said: { c: { skipped: true } } });
    expect(schedule(without).map(({ step }) => step.id)).toEqual(['a', 'b', 'd']);
    expect(dated(without, 'd').waitsFor).toEqual(['b', 'a']);
    expect(dated(without, 'd').start).toBe('2027-03-04');
  });
  test('b and c may overlap, a and d with nothing', () => {
    const all = schedule(of());
    const beside = (id: string) =>
      besides(all.find(({ step }) => step.id === id)!, all, of()).map(({ step }) => step.id);
    expect(beside('b')).toEqual(['c']);
    expect(beside('a')).toEqual([]);
    expect(beside('d')).toEqual([]);
  });
  test('states: ready, waiting, running by itself, done', () => {
    const states = (more: Partial<Build>) =>
      Object.fromEntries(schedule(of(more)).map(({ step, state }) => [step.id, state]));
    expect(states({})).toEqual({ a: 'ready', b: 'waits', c: 'waits', d: 'waits' });
    expect(states({ said: { a: { done: '2027-03-02' } }, today: '2027-03-03' })).toEqual({
      a: 'done',
      b: 'ready',
      c: 'now',
      d: 'waits',
    });
    expect(states({ today: '2027-02-01' }).a).toBe('waits');
  });
  test('a day that is too early names what it waits for and the first day that will do', () => {
    expect(tooEarly('d', '2027-03-05', of())).toMatchObject({ earliest: '2027-03-07', why: 'd needs c' });
    expect(tooEarly('d', '2027-03-07', of())).toBeUndefined();
    expect(tooEarly('a', '2027-03-01', of())).toBeUndefined();
  });
  test('steps that wait for each other are an error', () => {
    const circle = [
      { id: 'a', name: 'a', short: 'x', words: [], days: [1, 1] as const, after: [['b', ''] as const] },
      { id: 'b', name: 'b', short: 'x', words: [], days: [1, 1] as const, after: [['a', ''] as const] },
    ];
    expect(() => inOrder(circle)).toThrow(/a, b/);
  });
});

describe('the steps of a build', () => {
  const allBefore = (id: string): Set<string> => {
    const step = buildSteps.find((candidate) => candidate.id === id)!;
    const direct = stepsBefore(step, build());
    return new Set([...direct, ...direct.flatMap((earlier) => [...allBefore(earlier)])]);
  };
  test.each([
    ['glue', 'dry_fit'],
    ['rinse', 'glue_cure'],
    ['leak_test', 'electrics'],
    ['mix', 'leak_test'],
    ['heat', 'mix'],
    ['cycle', 'heat'],
    ['first_animals', 'proof'],
    ['first_animals', 'lid'],
    ['carry', 'drill'],
  ])('%s comes after %s', (step, earlier) => {
    expect(allBefore(step)).toContain(earlier);
  });
  test('unseeded rock takes two months and more to the first animals, seeded rock weeks less', () => {
    const days = (seeded: boolean) => daysBetween(START, dated(build({ seeded }), 'first_animals').start);
    expect(days(false)).toBeGreaterThan(60);
    expect(days(false) - days(true)).toBe(25);
  });
});

describe('whatever was said', () => {
  const day = fc.integer({ min: -10, max: 120 }).map((n) => dateAfter(START, n));
  const said = fc.dictionary(
    fc.constantFrom(...buildSteps.map(({ id }) => id)),
    fc.record({ done: day, from: day, skipped: fc.boolean() }, { requiredKeys: [] }) as fc.Arbitrary<StepState>,
  );
  test('nothing that is not done begins before all it waits for is over, and nothing ends before it begins', () => {
    fc.assert(
      fc.property(said, day, fc.boolean(), (state, today, seeded) => {
        const of = build({ said: state, today, seeded });
        const all = schedule(of);
        for (const entry of all) {
          expect(entry.end <= entry.endAtLongest).toBe(true);
          if (entry.state === 'done') continue;
          expect(entry.start <= entry.end && entry.end >= today).toBe(true);
          for (const id of stepsBefore(entry.step, of))
            expect(all.find(({ step }) => step.id === id)!.end < entry.start, `${id} before ${entry.step.id}`).toBe(
              true,
            );
        }
      }),
    );
  });
  test('to finish something later never brings anything forward', () => {
    fc.assert(
      fc.property(fc.constantFrom(...buildSteps.map(({ id }) => id)), fc.nat(60), fc.nat(30), (id, first, more) => {
        const ends = (done: number) =>
          schedule(build({ said: { [id]: { done: dateAfter(START, done) } } })).map(({ end }) => end);
        const later = ends(first + more);
        for (const [i, end] of ends(first).entries()) expect(end <= later[i]!).toBe(true);
      }),
    );
  });
});

test('days are counted and shown', () => {
  expect(dateAfter('2028-02-28', 2)).toBe('2028-03-01');
  expect(daysBetween('2027-12-31', '2028-01-02')).toBe(2);
  expect(shownDate('2026-12-01')).toBe('Tue 1 Dec');
  expect(() => dateAfter('2027-02-30', 1)).toThrow(/2027-02-30/);
});
