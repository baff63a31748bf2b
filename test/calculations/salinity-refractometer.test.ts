import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { salinityRefractometer } from '../../src/core/calculations/salinity-refractometer.js';
import { bisect, refractiveIndex } from '../../src/core/models/seawater.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const salinityOf = (said: Said) => worked(salinityRefractometer, said).value('salinity', 'g/kg');
/** Seawater of the same refractive index at 20 °C in sodium light, by Quan and Fry 1995. */
const seawaterOfIndex = (index: number) => bisect((S) => refractiveIndex(S, 20, 589.3), index, 0, 60);

describe('worked examples', () => {
  // Sodium chloride solutions at 20 °C, CRC Handbook: 3.5 % by mass 1.3391, 4.5 % 1.3409. A last digit is 0.5 g/kg.
  test.each([
    [35, 1.3391],
    [45, 1.3409],
  ])('a brine scale shows %d where seawater has index %d', (reading, index) => {
    const S = salinityOf({ reading: [reading, 'g/kg'], scale: 'brine' });
    expect(Math.abs(S - seawaterOfIndex(index))).toBeLessThan(0.35);
  });

  test('36.5 g/kg of sodium chloride stands for 35', () => {
    const said: Said = { scale: 'seawater', calibrated_with: 'sodium_chloride_standard', standard: [36.5, 'g/kg'] };
    expect(salinityOf({ reading: [36.5, 'g/kg'], ...said })).toBeCloseTo(35, 1);
  });

  test('by hand: brine scale set to 35 in a seawater standard, shows 30: 35 + 0.96*(30 − 35) = 30.2', () => {
    const said: Said = { scale: 'brine', calibrated_with: 'seawater_standard', standard: [35, 'g/kg'] };
    expect(salinityOf({ reading: [30, 'g/kg'], ...said })).toBeCloseTo(30.2, 9);
  });
});

test('at the point it was set the scale does not matter, and the doubt is 1.5 either way', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 10, max: 45, noNaN: true }),
      fc.constantFrom('seawater', 'brine'),
      (standard, scale) => {
        const { value, low, high } = worked(salinityRefractometer, {
          reading: [standard, 'g/kg'],
          scale,
          calibrated_with: 'seawater_standard',
          standard: [standard, 'g/kg'],
        });
        expect(value('salinity', 'g/kg')).toBeCloseTo(standard, 9);
        expect(value('salinity_high', 'g/kg') - value('salinity_low', 'g/kg')).toBeCloseTo(3, 9);
        expect([low('salinity', 'g/kg'), high('salinity', 'g/kg')]).toEqual([
          value('salinity_low', 'g/kg'),
          value('salinity_high', 'g/kg'),
        ]);
      },
    ),
  );
});

test('asks for the kind of scale and, when set with a standard, for its strength', () => {
  expect(told(outcomeOf(salinityRefractometer, { reading: [36, 'g/kg'] }))).toEqual(['scale']);
  const set: Said = { reading: [36, 'g/kg'], scale: 'brine', calibrated_with: 'seawater_standard' };
  expect(told(outcomeOf(salinityRefractometer, set))).toEqual(['standard']);
});

test('refuses a standard of 350, and a result below nothing', () => {
  const set: Said = { reading: [35, 'g/kg'], scale: 'seawater', calibrated_with: 'seawater_standard' };
  expect(told(outcomeOf(salinityRefractometer, { ...set, standard: [350, 'g/kg'] })).join()).toMatch(/decimal point/);
  const negative = outcomeOf(salinityRefractometer, {
    reading: [0, 'g/kg'],
    scale: 'seawater',
    calibrated_with: 'sodium_chloride_standard',
    standard: [35, 'g/kg'],
  });
  expect(told(negative).join()).toMatch(/below nothing/);
});
