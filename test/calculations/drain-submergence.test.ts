import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drainSubmergence } from '../../src/core/calculations/drain-submergence.js';
import { outcomeOf, told, worked } from './worked.js';

const intake = (bore: number, litres: number) =>
  worked(drainSubmergence, { inside_diameter: [bore, 'mm'], flow: [litres, 'L/h'] });
/** Litres an hour that run at a speed [m/s] through a bore [mm]. */
const atSpeed = (bore: number, speed: number) => ((Math.PI * (bore / 1000) ** 2) / 4) * speed * 3.6e6;

describe('worked by hand: S = D·(1 + 2.3·V/√(g·D))', () => {
  test.each([
    ['50 mm at 1 m/s: 0.05·(1 + 2.3·1.4281) = 21.4 cm', 50, 1, 21.42],
    ['25 mm at 0.5 m/s: 0.025·(1 + 2.3·1.0098) = 8.3 cm', 25, 0.5, 8.306],
    ['100 mm at 0.3 m/s: 0.1·(1 + 2.3·0.30294) = 17.0 cm', 100, 0.3, 16.97],
  ])('%s', (_, bore, speed, cm) => {
    expect(intake(bore, atSpeed(bore, speed)).value('submergence', 'cm')).toBeCloseTo(cm, 2);
  });
});

test('more flow needs more depth; a wider mouth at the same flow needs less while the flow is fast', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 20, max: 60, noNaN: true }),
      fc.double({ min: 1, max: 3, noNaN: true }),
      (bore, speed) => {
        const flow = atSpeed(bore, speed);
        const depth = intake(bore, flow).value('submergence', 'cm');
        expect(intake(bore, flow * 1.1).value('submergence', 'cm')).toBeGreaterThan(depth);
        expect(intake(bore * 1.2, flow).value('submergence', 'cm')).toBeLessThan(depth);
      },
    ),
  );
});

test('hardly any flow: one bore deep', () => {
  expect(intake(40, 0.01).value('submergence', 'cm')).toBeCloseTo(4, 4);
});

test('asks for the pipe and the flow, refuses a bore in the wrong unit', () => {
  expect(told(outcomeOf(drainSubmergence, {}))).toEqual(['inside_diameter', 'flow']);
  expect(told(outcomeOf(drainSubmergence, { inside_diameter: [34, 'cm'], flow: [3000, 'L/h'] })).join()).toMatch(
    /decimal point/,
  );
});
