import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drainOpen } from '../../src/core/calculations/drain-open.js';
import { outcomeOf, told, worked } from './worked.js';

const open = (bore: number, head: number) => worked(drainOpen, { inside_diameter: [bore, 'mm'], head: [head, 'mm'] });
const controlOf = (bore: number, head: number) =>
  open(bore, head).outcome.results.find(({ id }) => id === 'control')!.value;

describe('worked by hand', () => {
  test('50 mm bore, 10 mm over the rim: 1.84 · π · 0.05 · 0.01^1.5 = 0.28903 L/s', () => {
    expect(open(50, 10).value('inlet_capacity', 'L/h')).toBeCloseTo(0.28903 * 3600, 0);
  });

  test('50 mm bore, 50 mm over the mouth: 0.6 · 1.9635e-3 m² · √(2·9.80665·0.05) = 1.16665 L/s', () => {
    expect(open(50, 50).value('inlet_capacity', 'L/h')).toBeCloseTo(1.16665 * 3600, 0);
  });

  test('the two meet at h/D = 0.15·√(2g)/1.84 = 0.361', () => {
    const meets = (0.15 * Math.sqrt(2 * 9.80665)) / 1.84;
    expect(meets).toBeCloseTo(0.361, 3);
    expect(controlOf(40, 40 * meets * 0.999)).toBe('weir');
    expect(controlOf(40, 40 * meets * 1.001)).toBe('orifice');
  });
});

test('more water over it and a wider pipe take more, never more than either law', () => {
  const bore = fc.double({ min: 15, max: 100, noNaN: true });
  fc.assert(
    fc.property(bore, fc.double({ min: 1, max: 200, noNaN: true }), (mm, head) => {
      const { value } = open(mm, head);
      const flow = value('inlet_capacity', 'L/h');
      expect(flow).toBe(Math.min(value('weir_flow', 'L/h'), value('orifice_flow', 'L/h')));
      expect(open(mm, head * 1.1).value('inlet_capacity', 'L/h')).toBeGreaterThan(flow);
      expect(open(mm * 1.1, head).value('inlet_capacity', 'L/h')).toBeGreaterThan(flow);
    }),
  );
});

test('a pipe by its trade name has the bore of the table, not its name', () => {
  const { outcome, value } = worked(drainOpen, { pipe: '1-1/2 in schedule 40', head: [1, 'in'] });
  expect(outcome.inputs.find(({ id }) => id === 'inside_diameter')).toMatchObject({ from: 'table' });
  expect(value('inlet_capacity', 'L/h')).toBeCloseTo(open(1.59 * 25.4, 25.4).value('inlet_capacity', 'L/h'), -1);
});

test('asks for the pipe, refuses no water at all', () => {
  expect(told(outcomeOf(drainOpen, {}))).toEqual(['inside_diameter', 'head']);
  expect(told(outcomeOf(drainOpen, { inside_diameter: [34, 'mm'], head: [0, 'mm'] })).join()).toMatch(/above the rim/);
});
