import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stockingTanFromFeed } from '../../src/core/calculations/stocking-tan-from-feed.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

const feed = (grams: number, more: Said = {}): Said => ({ feed_per_day: [grams, 'g/day'], ...more });
const protein = (share: number): Said => ({ protein_fraction: [share, 'fraction'] });
const ammonia = (said: Said) => worked(stockingTanFromFeed, said).value('tan_per_day', 'g/day');

describe('F·PC·0.092 (aquaculture handbook)', () => {
  test.each([
    [10, 0.45, 0.414],
    [5, 0.5, 0.23],
    [100, 0.35, 3.22],
    [1, 0.4, 0.0368],
  ])('%d g a day of %d protein: %d g', (grams, share, expected) => {
    expect(ammonia(feed(grams, protein(share)))).toBeCloseTo(expected, 9);
  });
  test('the factor is 0.16·0.8·0.8·0.9 to a fifth of a per cent', () => {
    expect(ammonia(feed(1, protein(0.5))) / 0.5 / (0.16 * 0.8 * 0.8 * 0.9)).toBeCloseTo(1, 2);
  });
  test('a fifth of frozen food is dry', () => {
    expect(ammonia(feed(10, { ...protein(0.45), food: 'frozen' }))).toBeCloseTo(0.414 / 5, 9);
  });
  test('200 g of fish eat 2 % of it: 4 g; between 1 and 4 % when nobody says', () => {
    const fish: Said = { fish_mass: [200, 'g'], ...protein(0.45) };
    const { value, low, high } = worked(stockingTanFromFeed, fish);
    expect(value('tan_per_day', 'g/day')).toBeCloseTo(0.1656, 9);
    expect(low('tan_per_day', 'g/day')).toBeCloseTo(0.1656 / 2, 9);
    expect(high('tan_per_day', 'g/day')).toBeCloseTo(0.1656 * 2, 9);
  });
  test('4.83 g in 400 L: half a milligram a day, 2.2 of nitrate', () => {
    const { value } = worked(stockingTanFromFeed, feed(4.83, { ...protein(0.45), water_volume: [400, 'L'] }));
    expect(value('tan_rate', 'mg/L/day')).toBeCloseTo(0.5, 3);
    expect(value('nitrate_rate', 'mg/L/day')).toBeCloseTo(2.21, 2);
  });
});

test('in proportion to food and protein, and against water', () => {
  const share = fc.double({ min: 0.2, max: 0.7, noNaN: true });
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 500, noNaN: true }),
      share,
      fc.double({ min: 20, max: 4000, noNaN: true }),
      (grams, PC, litres) => {
        const { value } = worked(stockingTanFromFeed, feed(grams, { ...protein(PC), water_volume: [litres, 'L'] }));
        expect(value('tan_per_day', 'g/day') / grams / PC).toBeCloseTo(0.092, 9);
        expect((value('tan_rate', 'mg/L/day') * litres) / 1000).toBeCloseTo(value('tan_per_day', 'g/day'), 9);
      },
    ),
  );
});

test('says what the water gets where its volume is known, and warns of a heavy load', () => {
  expect(spoken(stockingTanFromFeed, feed(10)).headline).toBe(
    '10 g a day of dry food gives off 0.414 g a day of ammonia (as nitrogen).',
  );
  const heavy = feed(10, { water_volume: [400, 'L'] });
  expect(spoken(stockingTanFromFeed, heavy).headline).toMatch(
    /1\.03 mg\/L a day in 400 L, which ends as 4\.58 mg\/L a day of nitrate/,
  );
  expect(spoken(stockingTanFromFeed, heavy).cautions.join()).toMatch(/heavy load/);
  expect(spoken(stockingTanFromFeed, feed(9, { water_volume: [400, 'L'] })).cautions.join()).not.toMatch(/heavy load/);
});

test('asks for the food, and knows 45 for a share', () => {
  expect(told(outcomeOf(stockingTanFromFeed, {}))).toEqual(['feed_per_day']);
  expect(told(outcomeOf(stockingTanFromFeed, feed(5, protein(45)))).join()).toMatch(/45 %/);
  expect(told(outcomeOf(stockingTanFromFeed, feed(0))).join()).toMatch(/above 0/);
});
