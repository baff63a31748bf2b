import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { volumeConvert } from '../../src/core/calculations/volume-convert.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const all = (volume: readonly [number, string]) => {
  const { value } = worked(volumeConvert, { volume } as Said);
  return [value('litres', '1'), value('us_gallons', '1'), value('imperial_gallons', '1')] as const;
};

// NIST SP 811, appendix B.8: gallon (US) 3.785412 L, gallon (Canadian and U.K. imperial) 4.54609 L.
describe('published factors', () => {
  test('a US gallon', () => expect(all([1, 'gal_US'])[0]).toBeCloseTo(3.785412, 6));
  test('an imperial gallon', () => expect(all([1, 'gal_imp'])[0]).toBeCloseTo(4.54609, 9));
  test('an imperial gallon holds 1.20095 US gallons', () => expect(all([1, 'gal_imp'])[1]).toBeCloseTo(1.20095, 5));
  test('a cubic foot is 7.48052 US gallons, 1728 in³ over 231 in³', () =>
    expect(all([1, 'ft3'])[1]).toBeCloseTo(1728 / 231, 9));
});

test('every way round comes back to the start', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 100_000, noNaN: true }), (litres) => {
      const [L, us, imperial] = all([litres, 'L']);
      expect(L).toBeCloseTo(litres, 6);
      expect(all([us, 'gal_US'])[0] / litres).toBeCloseTo(1, 9);
      expect(all([imperial, 'gal_imp'])[0] / litres).toBeCloseTo(1, 9);
    }),
  );
});

test('asks for a volume, refuses a negative one', () => {
  expect(told(outcomeOf(volumeConvert, {}))).toEqual(['volume']);
  expect(outcomeOf(volumeConvert, { volume: [-5, 'L'] }).kind).toBe('refusal');
});
