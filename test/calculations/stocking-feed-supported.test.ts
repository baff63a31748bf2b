import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stockingFeedSupported } from '../../src/core/calculations/stocking-feed-supported.js';
import { stockingTanFromFeed } from '../../src/core/calculations/stocking-tan-from-feed.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

const tank = (litres: number, rate: number, more: Said = {}): Said => ({
  water_volume: [litres, 'L'],
  proven_rate: [rate, 'mg/L/day'],
  protein_fraction: [0.45, 'fraction'],
  ...more,
});

describe('by hand', () => {
  test.each([
    [400, 2, 0.45, 0.25, 19.32, 4.83],
    [200, 1.5, 0.5, 0.5, 6.522, 3.261],
    [100, 1, 0.4, 0.1, 2.717, 0.2717],
    [1000, 2, 0.45, 0.25, 48.31, 12.08],
  ])('%d L, %d mg/L a day, %d protein, %d of it: %d and %d g', (litres, rate, protein, share, ceiling, start) => {
    const said = tank(litres, rate, { protein_fraction: [protein, 'fraction'], share_used: [share, 'fraction'] });
    const { value } = worked(stockingFeedSupported, said);
    expect(value('feed_per_day_ceiling', 'g/day')).toBeCloseTo(ceiling, 2);
    expect(value('feed_per_day_start', 'g/day')).toBeCloseTo(start, 2);
  });
  test('a quarter grows to the whole in 7 weeks: 1.25^6 = 3.81, 1.25^7 = 4.77', () => {
    const { value, outcome } = worked(stockingFeedSupported, tank(400, 2));
    expect(value('time_to_ceiling', 'week')).toBeCloseTo(7, 9);
    const weekly = outcome.results.find(({ id }) => id === 'feed_by_week')!.value as number[];
    expect(weekly).toHaveLength(8);
    expect(weekly[1]! / weekly[0]!).toBeCloseTo(1.25, 9);
    expect(weekly[7]! / weekly[0]!).toBeCloseTo(4, 9);
  });
  test('4.83 g a day feed 242 g of fish at 2 %, and end as 2.2 mg/L of nitrate a day', () => {
    const { value } = worked(stockingFeedSupported, tank(400, 2));
    expect(value('fish_mass_start', 'g')).toBeCloseTo(241.5, 1);
    expect(value('nitrate_rate', 'mg/L/day')).toBeCloseTo(2.21, 2);
  });
  test('of frozen food five times as much', () => {
    const { value } = worked(stockingFeedSupported, tank(400, 2, { food: 'frozen' }));
    expect(value('feed_per_day_start', 'g/day')).toBeCloseTo(5 * 4.831, 2);
    expect(value('fish_mass_start', 'g')).toBeCloseTo(241.5, 1);
  });
});

test('the ceiling gives off just the ammonia that was proven', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 20, max: 4000, noNaN: true }),
      fc.double({ min: 0.1, max: 6, noNaN: true }),
      (litres, rate) => {
        const ceiling = worked(stockingFeedSupported, tank(litres, rate)).value('feed_per_day_ceiling', 'g/day');
        const back = worked(stockingTanFromFeed, {
          feed_per_day: [ceiling, 'g/day'],
          protein_fraction: [0.45, 'fraction'],
          water_volume: [litres, 'L'],
        });
        expect(back.value('tan_rate', 'mg/L/day')).toBeCloseTo(rate, 9);
      },
    ),
  );
});

describe('what is said', () => {
  const plan = (grams: number) => tank(400, 2, { feed_planned: [grams, 'g/day'] });
  test.each([
    [tank(400, 2), /^Start with 4\.83 g a day of dry food, about 242 g of fish/],
    [plan(4), /^4 g a day is within the 4\.83 g a day to start with/],
    [plan(6), /^Not at once: .* 6 g a day is reached after 1 week\.$/],
    [plan(19), /is reached after 7 weeks/],
    [plan(20), /^More than this tank has proven/],
  ])('%j', (said, expected) => {
    expect(spoken(stockingFeedSupported, said).headline).toMatch(expected);
  });
  test('beyond the ceiling no time is promised', () => {
    const { outcome } = worked(stockingFeedSupported, plan(20));
    expect(outcome.results.some(({ id }) => id === 'time_to_planned')).toBe(false);
  });
  test('warns of a bold start', () => {
    const cautions = (share: number) =>
      spoken(stockingFeedSupported, tank(400, 2, { share_used: [share, 'fraction'] })).cautions.join('\n');
    expect(cautions(0.3)).toMatch(/Start lower/);
    expect(cautions(0.25)).not.toMatch(/Start lower/);
    expect(cautions(0.25)).toMatch(/keep dosing until the day before/);
  });
});

test('asks for water and pace, refuses a pace that no tank has', () => {
  expect(told(outcomeOf(stockingFeedSupported, {}))).toEqual(['water_volume', 'proven_rate']);
  expect(told(outcomeOf(stockingFeedSupported, tank(400, 50))).join()).toMatch(/1 to 4 mg\/L a day is usual/);
  expect(told(outcomeOf(stockingFeedSupported, tank(400, 2, { protein_fraction: [45, 'fraction'] }))).join()).toMatch(
    /45 %/,
  );
});
