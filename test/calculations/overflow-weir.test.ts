import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { overflowWeir } from '../../src/core/calculations/overflow-weir.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const weir = (litres: number, cm: number, more: Said = {}) =>
  worked(overflowWeir, { flow: [litres, 'L/h'], length: [cm, 'cm'], ...more });

describe('worked by hand', () => {
  test('1.84 · 0.4 m · (0.1 m)^1.5 = 23.27 L/s: ten centimetres', () => {
    expect(weir(1.84 * 0.4 * 0.1 ** 1.5 * 3.6e6, 40).value('head', 'mm')).toBeCloseTo(100, 9);
  });

  test('the trade rule of 65 US gal/h an inch: (6.835e-5 / (1.84 · 0.0254))^(2/3) = 12.9 mm', () => {
    expect(worked(overflowWeir, { flow: [650, 'gal_US/h'], length: [10, 'in'] }).value('head', 'mm')).toBeCloseTo(
      12.9,
      1,
    );
  });

  test('Kindsvater and Carter: 30 mm over a 50 cm edge on a 45 cm sill', () => {
    // (2/3)·√(2·9.80665)·(0.602 + 0.075·0.03/0.45)·0.499·0.031^1.5 = 4.881e-3 m³/s
    const flow = (2 / 3) * 4.42869 * 0.607 * 0.499 * 0.031 ** 1.5;
    expect(weir(flow * 3.6e6, 50).value('head_kindsvater_carter', 'mm')).toBeCloseTo(30, 3);
  });
});

const litres = fc.double({ min: 500, max: 12_000, noNaN: true });
const centimetres = fc.double({ min: 25, max: 150, noNaN: true });

test('twice the flow over twice the length stands as high; teeth act as a shorter edge', () => {
  fc.assert(
    fc.property(litres, centimetres, fc.double({ min: 0.4, max: 1, noNaN: true }), (flow, length, open) => {
      const head = weir(flow, length).value('head', 'mm');
      expect(weir(2 * flow, 2 * length).value('head', 'mm')).toBeCloseTo(head, 9);
      const teeth = weir(flow, length, { open_fraction: [open, 'fraction'] });
      expect(teeth.value('head', 'mm')).toBeCloseTo(head / open ** (2 / 3), 9);
    }),
  );
});

test('the second formula lies within the spread of the first', () => {
  fc.assert(
    fc.property(litres, centimetres, (flow, length) => {
      const { low, high, value } = weir(flow, length);
      expect(value('head_kindsvater_carter', 'mm')).toBeGreaterThanOrEqual(low('head', 'mm'));
      expect(value('head_kindsvater_carter', 'mm')).toBeLessThanOrEqual(high('head', 'mm'));
    }),
  );
});

test('more than an overflow can have over it is stopped, more than any tank has is refused', () => {
  expect(weir(20_000, 20).outcome.cautions.some(({ level }) => level === 'stop')).toBe(true);
  expect(told(outcomeOf(overflowWeir, { flow: [90_000, 'L/h'], length: [5, 'cm'] })).join()).toMatch(/1 mm to 30 cm/);
  expect(told(outcomeOf(overflowWeir, { flow: [10, 'L/h'], length: [2, 'm'] })).join()).toMatch(/breaks into drops/);
  expect(told(outcomeOf(overflowWeir, {}))).toEqual(['flow', 'length']);
  expect(told(outcomeOf(overflowWeir, { flow: [0, 'L/h'], length: [40, 'cm'] })).join()).toMatch(/return flow/);
});
