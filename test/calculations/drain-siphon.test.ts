import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drainSiphon } from '../../src/core/calculations/drain-siphon.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const siphon = (bore: number, drop: number, loss: number, more: Said = {}) =>
  worked(drainSiphon, {
    inside_diameter: [bore, 'mm'],
    pipe_length: [1.2, 'm'],
    drop: [drop, 'm'],
    loss_coefficient: [loss, '1'],
    ...more,
  });

/** Flow [L/h] by the implicit Colebrook equation, the standard that explicit friction formulas are fitted to. */
function byColebrook(D: number, L: number, H: number, K: number): number {
  let f = 0.03;
  for (let i = 0; i < 100; i += 1) {
    const V = Math.sqrt((2 * 9.80665 * H) / ((f * L) / D + K));
    f = (-2 * Math.log10(1.5e-6 / D / 3.7 + 2.51 / (((V * D) / 9.4e-7) * Math.sqrt(f)))) ** -2;
  }
  return ((Math.PI * D ** 2) / 4) * Math.sqrt((2 * 9.80665 * H) / ((f * L) / D + K)) * 3.6e6;
}

describe('worked examples', () => {
  test.each([
    [20.4, 0.6, 3.5],
    [34, 1.02, 3.6],
    [77.9, 1.5, 2.5],
  ])('%d mm, drop %d m, loss %d: Colebrook gives the same within 0.2 %%', (bore, drop, loss) => {
    const flow = siphon(bore, drop, loss).value('flow', 'L/h');
    expect(Math.abs(flow / byColebrook(bore / 1000, 1.2, drop, loss) - 1)).toBeLessThan(0.002);
  });

  test('a pipe of no length obeys Torricelli: V = √(2·9.80665·0.8/4) = 1.9806 m/s', () => {
    expect(siphon(34, 0.8, 4, { pipe_length: [0, 'm'] }).value('velocity', 'm/s')).toBeCloseTo(1.9806, 4);
  });
});

test('trimmed with the loss it names, it carries just what it must', () => {
  fc.assert(
    fc.property(fc.double({ min: 500, max: 6000, noNaN: true }), (needed) => {
      const open = siphon(34, 1, 2, { required_flow: [needed, 'L/h'] });
      fc.pre(open.value('capacity_ratio', '1') > 1.01);
      const trim = 2 + open.value('valve_loss_to_trim', '1');
      fc.pre(trim <= 30);
      expect(siphon(34, 1, trim).value('flow', 'L/h') / needed).toBeCloseTo(1, 6);
    }),
  );
});

test('a larger drop and a wider bore carry more, more fittings less', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 12, max: 90, noNaN: true }),
      fc.double({ min: 0.2, max: 3, noNaN: true }),
      (bore, drop) => {
        const flow = siphon(bore, drop, 3).value('flow', 'L/h');
        expect(siphon(bore, drop * 1.1, 3).value('flow', 'L/h')).toBeGreaterThan(flow);
        expect(siphon(bore * 1.1, drop, 3).value('flow', 'L/h')).toBeGreaterThan(flow);
        expect(siphon(bore, drop, 3.3).value('flow', 'L/h')).toBeLessThan(flow);
      },
    ),
  );
});

test('stops a drain that cannot carry the return flow', () => {
  const stops = (litres: number) =>
    siphon(34, 1, 3, { required_flow: [litres, 'L/h'] }).outcome.cautions.filter(({ level }) => level === 'stop')
      .length;
  expect([stops(3000), stops(20_000)]).toEqual([0, 1]);
});

test('refuses water that would run uphill, asks for the line', () => {
  const said: Said = {
    inside_diameter: [34, 'mm'],
    pipe_length: [1, 'm'],
    drop: [-5, 'cm'],
    loss_coefficient: [3, '1'],
  };
  expect(told(outcomeOf(drainSiphon, said)).join()).toMatch(/lower water surface below the upper/);
  expect(told(outcomeOf(drainSiphon, {}))).toEqual(['inside_diameter', 'pipe_length', 'drop', 'loss_coefficient']);
});
