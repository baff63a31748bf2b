import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roRejection } from '../../src/core/calculations/ro-rejection.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

const tds = (feed: number, product: number, resin?: number): Said => ({
  feed_tds: [feed, 'mg/L'],
  product_tds: [product, 'mg/L'],
  ...(resin === undefined ? {} : { after_resin_tds: [resin, 'mg/L'] }),
});
const labelOf = (id: string, said: Said) =>
  worked(roRejection, said).outcome.results.find((result) => result.id === id)?.value;

describe('by hand', () => {
  test.each([
    [200, 4, 0.98],
    [400, 10, 0.975],
    [250, 25, 0.9],
    [120, 0, 1],
  ])('%d in and %d out is %d', (feed, product, rejection) => {
    expect(worked(roRejection, tds(feed, product)).value('rejection', 'fraction')).toBeCloseTo(rejection, 9);
  });

  // 0.7 L times 20 g/L is 14 g of solids; at 7 mg/L that is 2000 L, at 10 L a day 200 days.
  test('0.7 L of resin behind 7 mg/L lasts 2000 L: 200 days at 10 L a day, 100 to 270 by its spread', () => {
    const { value, low, high } = worked(roRejection, {
      ...tds(300, 7),
      resin_volume: [0.7, 'L'],
      product_per_day: [10, 'L/day'],
    });
    expect(value('resin_life', 'L')).toBeCloseTo(2000, 6);
    expect(value('resin_days', 'day')).toBeCloseTo(200, 6);
    expect(low('resin_days', 'day')).toBeCloseTo(100, 6);
    expect(high('resin_days', 'day')).toBeCloseTo(270, 6);
  });

  test('from 98 to 96 % halves the life of the resin', () => {
    const life = (product: number) => worked(roRejection, tds(300, product)).value('resin_life_ratio', '1');
    expect(life(6)).toBeCloseTo(1, 9);
    expect(life(12)).toBeCloseTo(0.5, 9);
  });
});

test('what passes and what is held back make the whole; one meter’s scale cancels; resin lives as one over what it is fed', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 10, max: 2000, noNaN: true }),
      fc.double({ min: 0.001, max: 1, noNaN: true }),
      fc.double({ min: 0.5, max: 2, noNaN: true }),
      (feed, share, scale) => {
        const said = (by: number): Said => ({ ...tds(feed * by, feed * share * by), resin_volume: [1, 'L'] });
        const [here, scaled] = [worked(roRejection, said(1)), worked(roRejection, said(scale))];
        expect(here.value('rejection', 'fraction') + here.value('passage', 'fraction')).toBeCloseTo(1, 12);
        expect(scaled.value('rejection', 'fraction')).toBeCloseTo(1 - share, 9);
        expect(here.value('resin_life', 'L') / scaled.value('resin_life', 'L')).toBeCloseTo(scale, 6);
      },
    ),
  );
});

describe('limits, on both sides', () => {
  test.each([
    [15, 'good'],
    [15.1, 'watch'],
    [30, 'watch'],
    [30.1, 'replace'],
  ])('300 in, %d out: %s', (product, verdict) => {
    expect(labelOf('membrane', tds(300, product))).toBe(verdict);
  });

  test.each([
    [0, 'good'],
    [1, 'good'],
    [1.1, 'watch'],
    [2, 'watch'],
    [2.1, 'replace'],
  ])('%d after the resin: %s', (resin, verdict) => {
    expect(labelOf('resin', tds(300, 9, resin))).toBe(verdict);
  });

  test('a resin that was not read gets no verdict', () => {
    expect(labelOf('resin', tds(300, 9))).toBeUndefined();
  });
});

describe('the first line', () => {
  test.each([
    [tds(210, 28, 3), /^Change the membrane first, then the resin: .* only 86\.7% ?/],
    [tds(210, 28, 0), /^Change the membrane: .* The resin still works, but wears out fast/],
    [tds(210, 28), /^Change the membrane: it holds back only 86\.7%\.$/],
    [tds(300, 9, 4), /^Change the resin: 4 mg\/L .* The membrane is good/],
    [tds(300, 20, 4), /^Change the resin: 4 mg\/L .* watch it/],
    [tds(300, 9, 1.5), /^The resin is near its end/],
    [tds(300, 9, 0), /^Both are good/],
    [tds(300, 9), /^The membrane is good/],
    [tds(300, 20), /^Watch the membrane/],
    [tds(300, 20, 0), /^Watch the membrane/],
  ] as [Said, RegExp][])('%o', (said, expected) => {
    expect(spoken(roRejection, said).headline).toMatch(expected);
  });
});

test('cautions fit what was found', () => {
  const says = (said: Said) => spoken(roRejection, said).cautions.join('\n');
  expect(says(tds(300, 20))).toMatch(/Before you buy one/);
  expect(says(tds(300, 20))).toMatch(/lasts 0\.3 times/);
  expect(says(tds(300, 9))).not.toMatch(/Before you buy one|half the life/);
  expect(says(tds(300, 9, 3))).toMatch(/carbon dioxide/);
  expect(says(tds(300, 9, 1))).not.toMatch(/carbon dioxide/);
  expect(says(tds(300, 40, 3))).not.toMatch(/carbon dioxide/);
  expect(says(tds(300, 9))).toMatch(/does not see chlorine/);
});

test('asks for both readings; refuses them swapped, a tap of nothing, and a resin that gives out more than it gets', () => {
  expect(told(outcomeOf(roRejection, {}))).toEqual(['feed_tds', 'product_tds']);
  expect(told(outcomeOf(roRejection, tds(12, 240))).join()).toMatch(/swapped, or the membrane leaks/);
  expect(told(outcomeOf(roRejection, tds(0, 0))).join()).toMatch(/above 0/);
  expect(told(outcomeOf(roRejection, tds(300, 9, 15))).join()).toMatch(/gives out more than goes in/);
  expect(told(outcomeOf(roRejection, tds(300, 9, 13)))).toEqual([]);
});

test('a reading of nothing after the membrane leaves nothing for the resin to do', () => {
  const { outcome } = worked(roRejection, { ...tds(300, 0, 0), resin_volume: [1, 'L'] });
  const ids = outcome.results.map(({ id }) => id);
  expect(ids).not.toContain('resin_removal');
  expect(ids).not.toContain('resin_life');
});
