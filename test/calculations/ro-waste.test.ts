import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roWaste } from '../../src/core/calculations/ro-waste.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

const plain: Said = { product_volume: [100, 'L'], waste_ratio: [4, '1'] };

describe('by hand', () => {
  test.each([
    [1, 100, 0.5],
    [2, 200, 1 / 3],
    [3, 300, 0.25],
  ])('at %d to one, 100 L of product leave %d L of waste: recovery %d', (ratio, waste, recovery) => {
    const { value } = worked(roWaste, { ...plain, waste_ratio: [ratio, '1'] });
    expect(value('waste_volume', 'L')).toBeCloseTo(waste, 9);
    expect(value('recovery', 'fraction')).toBeCloseTo(recovery, 9);
  });

  // 400 L of tap at 300 hold 120 g; 100 L of product at 6 take 0.6 g; the other 119.4 g are in 300 L.
  test('300 mg/L at 3 to one and 98 % leave 398 mg/L in the waste and 6 in the product', () => {
    const { value } = worked(roWaste, {
      ...plain,
      waste_ratio: [3, '1'],
      feed_tds: [300, 'mg/L'],
      rejection: [98, '%'],
    });
    expect(value('waste_tds', 'mg/L')).toBeCloseTo(119_400 / 300, 9);
    expect(value('product_tds', 'mg/L')).toBeCloseTo(6, 9);
  });

  test('half a cubic metre at 3.20 costs 1.60, and a cubic metre of product 16', () => {
    const { value } = worked(roWaste, { ...plain, water_price: [3.2, 'currency/m3'] });
    expect(value('cost', 'currency')).toBeCloseTo(1.6, 9);
    expect(value('product_price', 'currency/m3')).toBeCloseTo(16, 9);
  });
});

describe('how a ratio is said', () => {
  const wasteOf = (said: Said) => worked(roWaste, { product_volume: [100, 'L'], ...said }).value('waste_volume', 'L');

  test.each(['4:1', '4 to 1', '4/1', '8 : 2', '4.0:1'])('%s is four of waste to one', (ratio) => {
    expect(wasteOf({ ratio })).toBeCloseTo(400, 9);
  });

  test('1:4 may be either, so it is asked', () => {
    expect(told(outcomeOf(roWaste, { product_volume: [100, 'L'], ratio: '1:4' }))).toEqual(['ratio_order']);
    expect(wasteOf({ ratio: '1:4', ratio_order: 'product_first' })).toBeCloseTo(400, 9);
    expect(
      told(outcomeOf(roWaste, { product_volume: [100, 'L'], ratio: '1:4', ratio_order: 'waste_first' })).join(),
    ).toMatch(/0\.25/);
  });

  test('two jugs in the same minute: 800 mL and 200 mL', () => {
    expect(wasteOf({ measured_waste: [800, 'mL'], measured_product: [200, 'mL'] })).toBeCloseTo(400, 9);
    expect(told(outcomeOf(roWaste, { product_volume: [100, 'L'], measured_waste: [800, 'mL'] }))).toEqual([
      'measured_product',
    ]);
  });

  test('what is no ratio is said to be none', () => {
    expect(told(outcomeOf(roWaste, { product_volume: [100, 'L'], ratio: 'a lot' })).join()).toMatch(/no ratio/);
    expect(told(outcomeOf(roWaste, { product_volume: [100, 'L'], ratio: '0:1' })).join()).toMatch(/no ratio/);
  });
});

test('what goes in comes out, water and salt, and less rejection leaves the waste cleaner', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 5000, noNaN: true }),
      fc.double({ min: 0.3, max: 20, noNaN: true }),
      fc.double({ min: 1, max: 5000, noNaN: true }),
      fc.double({ min: 0.01, max: 1, noNaN: true }),
      (litres, ratio, tds, rejection) => {
        const said: Said = {
          product_volume: [litres, 'L'],
          waste_ratio: [ratio, '1'],
          feed_tds: [tds, 'mg/L'],
          rejection: [rejection, 'fraction'],
        };
        const { value } = worked(roWaste, said);
        const [waste, feed] = [value('waste_volume', 'L'), value('feed_volume', 'L')];
        expect((waste + litres) / feed).toBeCloseTo(1, 9);
        const out = waste * value('waste_tds', 'mg/L') + litres * value('product_tds', 'mg/L');
        expect(out / (feed * tds)).toBeCloseTo(1, 9);
        const worse = worked(roWaste, { ...said, rejection: [rejection / 2, 'fraction'] });
        expect(worse.value('waste_tds', 'mg/L')).toBeLessThan(value('waste_tds', 'mg/L'));
      },
    ),
  );
});

describe('the first line and the cautions', () => {
  const price: Said = { water_price: [3, 'currency/m3'] };
  test.each([
    [{ waste_ratio: [4, '1'] }, /sends 400 L down the drain: 500 L of tap water in all\.$/, /The label’s ratio/],
    [{ waste_ratio: [4, '1'], ...price }, /500 L of tap water costs 1\.50\.$/, /laundry/],
    [{ waste_ratio: [1, '1'] }, /in all\. That is too little waste for hard water\.$/, /leaves scale/],
    [{ waste_ratio: [1, '1'], ...price }, /costs 0\.60\. That is too little waste/, /leaves scale/],
    [{ waste_ratio: [8, '1'] }, /in all\. That is more waste than most/, /open flush valve/],
    [{ waste_ratio: [8, '1'], ...price }, /costs 2\.70\. That is more waste than most/, /open flush valve/],
    [{ ratio: '3:1' }, /sends 300 L/, /Read as 3 parts of waste/],
  ] as [Said, RegExp, RegExp][])('%o', (said, line, expected) => {
    const { headline, cautions } = spoken(roWaste, { product_volume: [100, 'L'], ...said });
    expect(headline).toMatch(line);
    expect(cautions.join('\n')).toMatch(expected);
  });

  test('a usual ratio, measured, draws none of them', () => {
    const { cautions } = spoken(roWaste, {
      product_volume: [100, 'L'],
      measured_waste: [3, 'L'],
      measured_product: [1, 'L'],
    });
    expect(cautions.join('\n')).not.toMatch(/leaves scale|open flush|Read as|The label’s/);
  });
});

test('asks for volume and ratio, refuses a ratio turned round or without a restrictor', () => {
  expect(told(outcomeOf(roWaste, {}))).toEqual(['product_volume', 'waste_ratio']);
  const refused = (more: Said) => told(outcomeOf(roWaste, { ...plain, ...more })).join();
  expect(refused({ waste_ratio: [0.1, '1'] })).toMatch(/turned round/);
  expect(refused({ waste_ratio: [50, '1'] })).toMatch(/restrictor is missing/);
  expect(refused({ feed_tds: [0, 'mg/L'] })).toMatch(/above 0/);
});
