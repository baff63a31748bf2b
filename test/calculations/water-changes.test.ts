import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerIn } from '../../src/core/answer.js';
import type { Calculation } from '../../src/core/calculation.js';
import { topoffDrift } from '../../src/core/calculations/topoff-drift.js';
import { waterChangeContinuous } from '../../src/core/calculations/water-change-continuous.js';
import { waterChangeSeries } from '../../src/core/calculations/water-change-series.js';
import { waterChangeSingle } from '../../src/core/calculations/water-change-single.js';
import { waterChangeToTarget } from '../../src/core/calculations/water-change-to-target.js';
import { METRIC } from '../../src/core/show-value.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const headline = (calculation: Calculation, said: Said) => answerIn(worked(calculation, said).outcome, METRIC).headline;
const warns = (calculation: Calculation, said: Said, words: RegExp) =>
  worked(calculation, said).outcome.cautions.some(({ text }) => words.test(text));
const refusal = (calculation: Calculation, said: Said) => told(outcomeOf(calculation, said)).join();

const reading = fc.double({ min: 1, max: 200, noNaN: true });
const share = fc.double({ min: 0.02, max: 0.9, noNaN: true });

/** Buckets: what is in the tank [mg], change by change, with no formula of the program. */
function inBuckets(before: number, share: number, changes: number, rise = 0, fresh = 0): number {
  let milligrams = before * 100;
  for (let i = 0; i < changes; i += 1) {
    if (i > 0) milligrams += rise * 100;
    milligrams = milligrams - milligrams * share + fresh * 100 * share;
  }
  return milligrams / 100;
}

const single = (before: number, more: Said) => ({ before: [before, 'mg/L'] as const, ...more });
const series = (before: number, f: number, n: number, more: Said = {}): Said => ({
  before: [before, 'mg/L'],
  fraction: [f, 'fraction'],
  changes: [n, 'count'],
  ...more,
});

describe('one water change', () => {
  test('half the water halves the reading; a share by volume is the same share', () => {
    const by = (said: Said) => worked(waterChangeSingle, single(40, said)).value('after', 'mg/L');
    expect(by({ fraction: [50, '%'] })).toBeCloseTo(20, 12);
    expect(by({ change_volume: [50, 'L'], volume: [200, 'L'] })).toBeCloseTo(30, 12);
  });
  test('the nitrate that is gone is what the bucket held, less what came in', () => {
    fc.assert(
      fc.property(reading, share, fc.double({ min: 0, max: 1, noNaN: true }), (before, f, fresh) => {
        const { value } = worked(
          waterChangeSingle,
          single(before, { fraction: [f, 'fraction'], new_water: [fresh, 'mg/L'] }),
        );
        expect(value('after', 'mg/L')).toBeCloseTo(inBuckets(before, f, 1, 0, fresh), 9);
        expect(value('change', 'mg/L')).toBeCloseTo(-f * (before - fresh), 9);
      }),
    );
  });
  test('a large change is pointed out, a small one is not; the water it takes is said when the volume is known', () => {
    expect(warns(waterChangeSingle, single(40, { fraction: [31, '%'] }), /More than 30 %/)).toBe(true);
    expect(warns(waterChangeSingle, single(40, { fraction: [30, '%'] }), /More than 30 %/)).toBe(false);
    expect(headline(waterChangeSingle, single(40, { fraction: [20, '%'], volume: [400, 'L'] }))).toMatch(
      /to 32 mg\/L, using 80 L/,
    );
    expect(headline(waterChangeSingle, single(40, { fraction: [20, '%'] }))).toBe(
      'A change of 20% takes it from 40 mg/L to 32 mg/L.',
    );
  });
  test('asks for the share, or for the volume where litres were said; refuses what cannot be', () => {
    expect(told(outcomeOf(waterChangeSingle, { before: [40, 'mg/L'] }))).toEqual(['fraction']);
    expect(told(outcomeOf(waterChangeSingle, single(40, { change_volume: [40, 'L'] })))).toEqual(['volume']);
    expect(refusal(waterChangeSingle, single(40, { change_volume: [90, 'L'], volume: [80, 'L'] }))).toMatch(/swapped/);
    expect(refusal(waterChangeSingle, single(4, { fraction: [20, '%'], new_water: [8, 'mg/L'] }))).toMatch(
      /Test the new water/,
    );
    expect(refusal(waterChangeSingle, single(40, { fraction: [20, 'fraction'] }))).toMatch(/20%/);
  });
});

describe('several water changes', () => {
  test('the same as bucket by bucket, with a rise between them', () => {
    fc.assert(
      fc.property(
        reading,
        share,
        fc.integer({ min: 1, max: 60 }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (before, f, n, rise) => {
          const { value } = worked(waterChangeSeries, series(before, f, n, { rise_between: [rise, 'mg/L'] }));
          expect(value('after', 'mg/L')).toBeCloseTo(inBuckets(before, f, n, rise), 7);
        },
      ),
    );
  });
  test('in the long run it stands where the formula says, wherever it began', () => {
    const { value } = worked(waterChangeSeries, series(80, 0.2, 500, { rise_between: [6, 'mg/L'] }));
    expect(value('after', 'mg/L')).toBeCloseTo(value('settled_after', 'mg/L'), 6);
    expect(value('settled_before', 'mg/L') - value('settled_after', 'mg/L')).toBeCloseTo(6, 9);
  });
  test('one change of the equivalent share does the same', () => {
    const { value } = worked(waterChangeSeries, series(64, 0.25, 4));
    const once = worked(
      waterChangeSingle,
      single(64, { fraction: [value('equivalent_fraction', 'fraction'), 'fraction'] }),
    );
    expect(once.value('after', 'mg/L')).toBeCloseTo(value('after', 'mg/L'), 9);
  });
  test.each([
    [
      series(20, 0.1, 20, { rise_between: [5, 'mg/L'] }),
      /^The changes lose: it climbs from 20 mg\/L to 41\.4 mg\/L and settles at 45 mg\/L/,
    ],
    [
      series(80, 0.2, 4, { rise_between: [2, 'mg/L'] }),
      /^4 changes of 20% .* in the long run it settles at 8 mg\/L after and 10 mg\/L/,
    ],
    [series(40, 0.2, 4), /^4 changes of 20% take it from 40 mg\/L to 16\.4 mg\/L, as one of 59% would/],
  ] as const)('%j', (said, words) => {
    expect(headline(waterChangeSeries, said)).toMatch(words);
  });
  test('a rise in a time is the rise from one change to the next', () => {
    const weekly = worked(waterChangeSeries, series(20, 0.1, 20, { rise_rate: [5, 'mg/L/week'] }));
    expect(weekly.value('after', 'mg/L')).toBeCloseTo(41.3527, 4);
    const fortnightly = worked(
      waterChangeSeries,
      series(20, 0.1, 20, { rise_rate: [2.5, 'mg/L/week'], interval: [14, 'day'] }),
    );
    expect(fortnightly.value('after', 'mg/L')).toBeCloseTo(41.3527, 4);
  });
  test('with a rise and no number of changes: where it settles; without a rise the number is asked for', () => {
    const said: Said = { before: [20, 'mg/L'], fraction: [10, '%'] };
    expect(headline(waterChangeSeries, { ...said, rise_between: [5, 'mg/L'] })).toBe(
      'In the long run it settles at 45 mg/L after and 50 mg/L before each change.',
    );
    expect(told(outcomeOf(waterChangeSeries, said))).toEqual(['changes']);
    expect(warns(waterChangeSeries, { ...said, rise_between: [5, 'mg/L'] }, /To settle lower/)).toBe(true);
    expect(warns(waterChangeSeries, { ...said, rise_between: [1, 'mg/L'] }, /To settle lower/)).toBe(false);
    expect(warns(waterChangeSeries, series(20, 0.1, 3), /Nothing is assumed/)).toBe(true);
    expect(warns(waterChangeSeries, series(20, 0.1, 1), /do not add up/)).toBe(false);
  });
});

describe('a steady exchange', () => {
  const drip = (days: number, more: Said = {}): Said => ({
    before: [40, 'mg/L'],
    volume: [400, 'L'],
    exchange: [40, 'L/day'],
    time: [days, 'day'],
    ...more,
  });
  test('many tiny changes come to the same', () => {
    const { value } = worked(waterChangeContinuous, drip(7));
    expect(value('after', 'mg/L')).toBeCloseTo(inBuckets(40, (7 / 10) * 1e-4, 1e4), 2);
  });
  test('one whole volume leaves 1/e', () => {
    const { value } = worked(waterChangeContinuous, drip(10));
    expect(value('after', 'mg/L')).toBeCloseTo(40 / Math.E, 9);
    expect(value('equivalent_fraction', '%')).toBeCloseTo(63.212, 3);
  });
  test('longer is nearer to where it settles', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 100, noNaN: true }),
        fc.double({ min: 0, max: 8, noNaN: true }),
        (days, rise) => {
          const more: Said = { rise_per_day: [rise, 'mg/L/day'] };
          const off = (t: number) => {
            const { value } = worked(waterChangeContinuous, drip(t, more));
            return Math.abs(value('after', 'mg/L') - value('settled', 'mg/L'));
          };
          expect(off(days * 2)).toBeLessThanOrEqual(off(days) + 1e-9);
        },
      ),
    );
  });
  test.each([
    [drip(7), /^It falls from 40 mg\/L to 19\.9 mg\/L .* as one change of 50\.3% would/],
    [drip(7, { rise_per_day: [1, 'mg/L/day'] }), /^It falls .* settles at 10 mg\/L/],
    [drip(7, { rise_per_day: [8, 'mg/L/day'] }), /^It climbs: .* on the way to 80 mg\/L/],
  ] as const)('%j', (said, words) => {
    expect(headline(waterChangeContinuous, said)).toMatch(words);
  });
});

describe('changes until a reading', () => {
  const until = (before: number, target: number, f: number, more: Said = {}): Said => ({
    before: [before, 'mg/L'],
    target: [target, 'mg/L'],
    fraction: [f, 'fraction'],
    ...more,
  });
  test('so many are enough, and one fewer is not', () => {
    fc.assert(
      fc.property(
        reading,
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        share,
        fc.constantFrom(0, 0.1),
        (before, part, f, rise) => {
          const outcome = outcomeOf(
            waterChangeToTarget,
            until(before, before * part, f, { rise_between: [rise, 'mg/L'] }),
          );
          if (outcome.kind !== 'answer') return;
          const n = outcome.results.find(({ id }) => id === 'changes')!.value;
          if (typeof n !== 'number') {
            expect(inBuckets(before, f, 3000, rise)).toBeGreaterThan(before * part);
            return;
          }
          expect(inBuckets(before, f, n, rise)).toBeLessThanOrEqual(before * part * (1 + 1e-6));
          if (n > 1) expect(inBuckets(before, f, n - 1, rise)).toBeGreaterThan(before * part * (1 - 1e-6));
        },
      ),
    );
  });
  test.each([
    [until(40, 10, 0.2), /^7 changes of 20% take it from 40 mg\/L to 8\.39 mg\/L; or one of 75% at once/],
    [until(40, 36, 0.2), /^One change of 20% is enough/],
    [until(40, 10, 0.1, { rise_between: [2, 'mg/L'] }), /^Never: .* settle at 18 mg\/L/],
  ] as const)('%j', (said, words) => {
    expect(headline(waterChangeToTarget, said)).toMatch(words);
  });
  test('half the water twice is a quarter, exactly: no third change for a last bit', () => {
    expect(worked(waterChangeToTarget, until(40, 10, 0.5)).value('changes', 'count')).toBe(2);
    expect(worked(waterChangeToTarget, until(80, 51.2, 0.2)).value('changes', 'count')).toBe(2);
  });
  test('with a rise of 1 between, 10 % changes: 33 of them', () => {
    expect(
      worked(waterChangeToTarget, until(40, 10, 0.1, { rise_between: [1, 'mg/L'] })).value('changes', 'count'),
    ).toBe(33);
  });
  test('what need not or cannot be done is refused; a single large change is for an empty tank', () => {
    expect(refusal(waterChangeToTarget, until(10, 20, 0.2))).toMatch(/nothing to do/);
    expect(refusal(waterChangeToTarget, until(40, 5, 0.2, { new_water: [8, 'mg/L'] }))).toMatch(/never get there/);
    expect(warns(waterChangeToTarget, until(40, 10, 0.2), /empty tank/)).toBe(true);
    expect(warns(waterChangeToTarget, until(40, 25, 0.2), /empty tank/)).toBe(false);
  });
});

describe('salinity after evaporation or overfilling', () => {
  const drift = (more: Said): Said => ({ volume: [400, 'L'], salinity: [35, 'g/kg'], ...more });
  const salinityAfter = (more: Said) => worked(topoffDrift, drift(more)).value('salinity_after', 'g/kg');
  test('the salt stays: what evaporated and is put back as fresh water changes nothing', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 40, noNaN: true }), (litres) => {
        expect(salinityAfter({ evaporated: [litres, 'L'], added: [litres, 'L'] })).toBeCloseTo(35, 9);
      }),
    );
  });
  test('water of the same salinity changes nothing; more evaporation is saltier', () => {
    expect(salinityAfter({ added: [30, 'L'], added_salinity: [35, 'g/kg'] })).toBeCloseTo(35, 9);
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 50, noNaN: true }), (litres) => {
        expect(salinityAfter({ evaporated: [litres + 1, 'L'] })).toBeGreaterThan(
          salinityAfter({ evaporated: [litres, 'L'] }),
        );
      }),
    );
  });
  test('100 L, 2 L evaporated: +0.7', () => {
    const { value } = worked(topoffDrift, { volume: [100, 'L'], salinity: [35, 'g/kg'], evaporated: [2, 'L'] });
    expect(value('change', 'g/kg')).toBeCloseTo(0.7, 1);
  });
  test('rising, falling and staying are told apart, and a jump is warned of', () => {
    expect(headline(topoffDrift, drift({ evaporated: [10, 'L'] }))).toMatch(/^The salinity rises/);
    expect(headline(topoffDrift, drift({ added: [10, 'L'] }))).toMatch(/^The salinity falls/);
    expect(headline(topoffDrift, drift({ evaporated: [10, 'L'], added: [10, 'L'] }))).toMatch(/^The salinity stays/);
    expect(warns(topoffDrift, drift({ evaporated: [40, 'L'] }), /jump/)).toBe(true);
    expect(warns(topoffDrift, drift({ evaporated: [10, 'L'] }), /jump/)).toBe(false);
    expect(
      warns(
        topoffDrift,
        drift({ evaporated: [10, 'L'], added: [10, 'L'], added_salinity: [35, 'g/kg'] }),
        /must be replaced with fresh/,
      ),
    ).toBe(true);
    expect(warns(topoffDrift, drift({ added: [10, 'L'] }), /reservoir/)).toBe(true);
  });
  test('asks what happened; refuses more than there is and more than the method covers', () => {
    expect(told(outcomeOf(topoffDrift, drift({})))).toContain('evaporated');
    expect(refusal(topoffDrift, drift({ evaporated: [400, 'L'] }))).toMatch(/swapped/);
    expect(refusal(topoffDrift, drift({ evaporated: [90, 'L'] }))).toMatch(/42 ppt/);
  });
});

describe('ammonia and nitrite with animals are an emergency', () => {
  const to: Said = { before: [2, 'mg/L'], target: [0.1, 'mg/L'], fraction: [20, '%'] };
  test.each(['ammonia', 'nitrite'])('%s: change now, and nobody is told to take it slowly', (diluted) => {
    expect(warns(waterChangeToTarget, { ...to, diluted }, /this is an emergency/)).toBe(true);
    expect(warns(waterChangeToTarget, { ...to, diluted }, /empty tank/)).toBe(false);
    const one: Said = { before: [2, 'mg/L'], fraction: [50, '%'], diluted };
    expect(warns(waterChangeSingle, one, /this is an emergency/)).toBe(true);
    expect(warns(waterChangeSingle, one, /starves corals/)).toBe(false);
  });
  test('nitrate is not', () => {
    expect(warns(waterChangeToTarget, { ...to, diluted: 'nitrate' }, /this is an emergency/)).toBe(false);
    expect(warns(waterChangeToTarget, to, /this is an emergency/)).toBe(false);
  });
});
