import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pumpVelocity } from '../../src/core/calculations/pump-velocity.js';
import { read, warns } from './said-first.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const pipe = (flow: number, bore?: number): Said => ({
  flow: [flow, 'L/h'],
  ...(bore === undefined ? {} : { inside_diameter: [bore, 'mm'] as const }),
});

describe('by hand', () => {
  // A litre an hour through a square millimetre is 1e-3/3600/1e-6 = 0.27778 m/s.
  test.each([
    [1000, 0.27778 * (1000 / (Math.PI * 10 ** 2)), 20],
    [3000, 0.27778 * (3000 / (Math.PI * 15 ** 2)), 30],
    [5000, 0.27778 * (5000 / (Math.PI * 20 ** 2)), 40],
  ])('%d L/h runs at %d m/s in %d mm', (flow, speed, bore) => {
    expect(worked(pumpVelocity, pipe(flow, bore)).value('velocity', 'm/s')).toBeCloseTo(speed, 3);
  });

  test('the smallest quiet bore for 3484 L/h is 28.7 mm, and the flow that 27.2 mm carries quietly is 3138 L/h', () => {
    const { value } = worked(pumpVelocity, pipe(3484, 27.2));
    expect(value('smallest_diameter_for_1_5', 'mm')).toBeCloseTo(28.66, 2);
    expect(value('flow_at_1_5', 'L/h')).toBeCloseTo(3137.8, 0);
    expect(value('flow_at_2_4', 'L/h')).toBeCloseTo(3137.8 * 1.6, 0);
  });
});

test('in the smallest quiet bore it runs at 1.5 m/s', () => {
  fc.assert(
    fc.property(fc.double({ min: 400, max: 30_000, noNaN: true }), (flow) => {
      const bore = worked(pumpVelocity, pipe(flow)).value('smallest_diameter_for_1_5', 'mm');
      expect(worked(pumpVelocity, pipe(flow, bore)).value('velocity', 'm/s')).toBeCloseTo(1.5, 9);
    }),
  );
});

test('the first line and its warnings', () => {
  expect(read(pumpVelocity, pipe(1500, 27.2)).headline).toMatch(/^Quiet/);
  expect(read(pumpVelocity, pipe(4000, 27.2)).headline).toMatch(/^It may be heard/);
  expect(read(pumpVelocity, pipe(9000, 27.2)).headline).toMatch(/^Too small a pipe/);
  expect(read(pumpVelocity, pipe(4000)).headline).toMatch(/^Take a bore of/);
  const eats = (flow: number) => warns(pumpVelocity, pipe(flow, 27.2), /eat much of the pump/);
  expect([eats(4000), eats(9000)]).toEqual([false, true]);
  const settles = (flow: number) => warns(pumpVelocity, pipe(flow, 27.2), /settle in the line/);
  expect([settles(500), settles(1500)]).toEqual([true, false]);
  const names = (bore?: number) => warns(pumpVelocity, pipe(1500, bore), /Name a pipe/);
  expect([names(), names(27.2)]).toEqual([true, false]);
});

test('asks for the flow alone, refuses a bore beyond any pipe here', () => {
  expect(told(outcomeOf(pumpVelocity, {}))).toEqual(['flow']);
  expect(outcomeOf(pumpVelocity, pipe(1000, 300)).kind).toBe('refusal');
});
