import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lightLux } from '../../src/core/calculations/light-lux.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const daylight = (lux: number): Said => ({ illuminance: [lux, 'lx'], lamp: 'daylight' });

// Thimijan and Heins 1983: 54 lx for each µmol/m²/s of daylight; full sun of about 108,000 lx is 2000 µmol/m²/s.
describe('published factor', () => {
  test.each([
    [108_000, 2000],
    [10_800, 200],
    [5400, 100],
  ])('%d lx of daylight is %d µmol/m²/s', (lux, ppfd) => {
    expect(worked(lightLux, daylight(lux)).value('ppfd', 'umol/m2/s')).toBeCloseTo(ppfd, 9);
  });
  test('the value that CIE tables integrate to lies inside the margin', () => {
    // CIE D65 over 400 to 700 nm with the CIE 1924 curve gives 55.1 lx for each µmol/m²/s.
    const { low, high } = worked(lightLux, daylight(10_000));
    expect(10_000 / 55.1).toBeGreaterThan(low('ppfd', 'umol/m2/s'));
    expect(10_000 / 55.1).toBeLessThan(high('ppfd', 'umol/m2/s'));
  });
});

test('is proportional, and the range holds the value', () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 70_000, noNaN: true }), (lux) => {
      const { value, low, high } = worked(lightLux, daylight(lux));
      const twice = worked(lightLux, daylight(2 * lux)).value('ppfd', 'umol/m2/s');
      expect(twice / value('ppfd', 'umol/m2/s')).toBeCloseTo(2, 9);
      expect(low('ppfd', 'umol/m2/s')).toBeLessThan(value('ppfd', 'umol/m2/s'));
      expect(high('ppfd', 'umol/m2/s')).toBeGreaterThan(value('ppfd', 'umol/m2/s'));
    }),
  );
});

test('asks which light it was', () => {
  expect(told(outcomeOf(lightLux, { illuminance: [8000, 'lx'] }))).toEqual(['lamp']);
});

test.each(['blue_led', 'white_led', 'other'])('lux under a %s is refused, with the span of the factor', (lamp) => {
  const outcome = outcomeOf(lightLux, { illuminance: [8000, 'lx'], lamp });
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(/54 lx.*7 lx/);
});

test('more than the sun is refused', () => {
  expect(told(outcomeOf(lightLux, daylight(400_000))).join(' ')).toMatch(/Full sun/);
});
