import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lightAttenuation } from '../../src/core/calculations/light-attenuation.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const readings = (p1: number, z1: number, p2: number, z2: number): Said => ({
  ppfd_1: [p1, 'umol/m2/s'],
  depth_1: [z1, 'cm'],
  ppfd_2: [p2, 'umol/m2/s'],
  depth_2: [z2, 'cm'],
});

describe('worked by hand', () => {
  test('half the light in ln 2 attenuation lengths: 0.5 per m halves in 138.63 cm', () => {
    const { value } = worked(lightAttenuation, { depth: [138.629436, 'cm'] });
    expect(value('fraction_low', '1')).toBeCloseTo(0.5, 6);
  });
  test('45 cm, 300 at the top: 300·e^−0.225 to 300·e^−0.045', () => {
    const { value } = worked(lightAttenuation, { depth: [45, 'cm'], ppfd_surface: [300, 'umol/m2/s'] });
    expect(value('ppfd_low', 'umol/m2/s')).toBeCloseTo(239.555, 2);
    expect(value('ppfd_high', 'umol/m2/s')).toBeCloseTo(286.799, 2);
  });
  test('310 at 5 cm and 190 at 40 cm: ln(310/190)/0.35 = 1.399 per m', () => {
    const { value } = worked(lightAttenuation, readings(310, 5, 190, 40));
    expect(value('attenuation_coefficient', '1/m')).toBeCloseTo(1.3987, 4);
  });
  // Pope and Fry 1997: pure water takes 0.62 per m at 700 nm (from memory), so 1 m leaves 53.8 %.
  test('red light in pure water', () => {
    const said: Said = { depth: [1, 'm'], attenuation_low: [0.62, '1/m'], attenuation_high: [0.62, '1/m'] };
    expect(worked(lightAttenuation, said).value('fraction_low', '1')).toBeCloseTo(0.538, 3);
  });
});

test('depths add: what is left after two layers is the product of what each leaves', () => {
  const depth = fc.double({ min: 0, max: 1.5, noNaN: true });
  fc.assert(
    fc.property(depth, depth, (a, b) => {
      const left = (z: number) => worked(lightAttenuation, { depth: [z, 'm'] }).value('fraction_high', '1');
      expect(left(a + b)).toBeCloseTo(left(a) * left(b), 12);
    }),
  );
});

test('two readings give back the attenuation that made them', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 4, noNaN: true }),
      fc.double({ min: 0, max: 50, noNaN: true }),
      fc.double({ min: 5, max: 100, noNaN: true }),
      (k, z, more) => {
        const said = readings(500, z, 500 * Math.exp((-k * more) / 100), z + more);
        expect(worked(lightAttenuation, said).value('attenuation_coefficient', '1/m')).toBeCloseTo(k, 6);
      },
    ),
  );
});

test('two readings need no band of clear and cloudy water', () => {
  const { outcome } = worked(lightAttenuation, readings(310, 5, 190, 40));
  expect(outcome.inputs.some(({ id }) => id.startsWith('attenuation'))).toBe(false);
});

test('asks for the depth, or for the rest of two readings', () => {
  expect(told(outcomeOf(lightAttenuation, {}))).toEqual(['depth']);
  const half: Said = { ppfd_1: [310, 'umol/m2/s'], depth_1: [5, 'cm'], ppfd_2: [190, 'umol/m2/s'] };
  expect(told(outcomeOf(lightAttenuation, half))).toEqual(['depth_2']);
});

test.each([
  [readings(150, 5, 190, 40), /swapped/],
  [readings(310, 40, 190, 40), /not below/],
  [{ depth: [30, 'cm'], attenuation_low: [1, '1/m'] }, /swapped/],
  [{ depth: [5, 'm'] }, /0 to 3 m/],
] as [Said, RegExp][])('%j is refused', (said, because) => {
  const outcome = outcomeOf(lightAttenuation, said);
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(because);
});
