import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { alkalinityNaturalLevels } from '../../src/core/calculations/alkalinity-natural-levels.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

const at = (salinity: number, more: Said = {}): Said => ({ salinity: [salinity, 'g/kg'], ...more });
const read = (salinity: number, calcium: number, magnesium: number, dkh: number): Said =>
  at(salinity, {
    calcium_reading: [calcium, 'mg/L'],
    magnesium_reading: [magnesium, 'mg/L'],
    alkalinity_reading: [dkh, 'dKH'],
  });

describe('natural water', () => {
  // Reference composition times the density of UNESCO 44: 1.02334 kg/L at 35, 1.02183 at 33, both at 25 °C.
  test.each([
    [35, 412.1 * 1.02334, 1283.7 * 1.02334, 2.304 * 1.02334],
    [33, 412.1 * (33 / 35) * 1.02183, 1283.7 * (33 / 35) * 1.02183, 2.304 * (33 / 35) * 1.02183],
  ])('of %d: calcium %d, magnesium %d mg/L, alkalinity %d meq/L', (S, calcium, magnesium, alkalinity) => {
    const { value } = worked(alkalinityNaturalLevels, at(S));
    expect(value('calcium', 'mg/L')).toBeCloseTo(calcium, 1);
    expect(value('magnesium', 'mg/L')).toBeCloseTo(magnesium, 1);
    expect(value('alkalinity', 'meq/L')).toBeCloseTo(alkalinity, 3);
  });
  test('handbooks give 10.3 mmol/kg of calcium and 52.8 of magnesium at 35', () => {
    const { value } = worked(alkalinityNaturalLevels, at(35));
    expect(value('calcium', 'mg/L') / 1.02334 / 40.078).toBeCloseTo(10.28, 1);
    expect(value('magnesium', 'mg/L') / 1.02334 / 24.305).toBeCloseTo(52.82, 1);
  });
});

test('calcium and magnesium keep one ratio, and rise with salinity', () => {
  const S = fc.double({ min: 20, max: 41.9, noNaN: true });
  fc.assert(
    fc.property(S, S, (a, b) => {
      const [one, two] = [a, b].map((s) => worked(alkalinityNaturalLevels, at(s)));
      expect(one!.value('magnesium', 'mg/L') / one!.value('calcium', 'mg/L')).toBeCloseTo(1283.7 / 412.1, 9);
      if (b > a + 1e-6) expect(two!.value('calcium', 'mg/L')).toBeGreaterThan(one!.value('calcium', 'mg/L'));
    }),
  );
});

describe('what is said of readings', () => {
  test.each([
    [at(35), /^Natural seawater of 35 ppt has 422 mg\/L calcium, 1314 mg\/L magnesium and 6\.6 dKH/],
    [read(31.5, 379, 1181, 5.95), /^All three are low by one share/],
    [read(35, 430, 1300, 8.5), /^In proportion/],
    [read(35, 430, 1100, 8.5), /^Out of proportion/],
    [read(35, 330, 1300, 8.5), /^Out of proportion/],
    [at(35, { calcium_reading: [400, 'mg/L'] }), /your calcium stands at 94\.8%/],
    [at(35, { magnesium_reading: [1314, 'mg/L'] }), /your magnesium stands at 100%/],
    [at(35, { alkalinity_reading: [8, 'dKH'] }), /your alkalinity stands at 121%/],
  ])('%j', (said, expected) => {
    expect(spoken(alkalinityNaturalLevels, said).headline).toMatch(expected);
  });

  const cautions = (said: Said) => spoken(alkalinityNaturalLevels, said).cautions.join('\n');
  test('low magnesium under high calcium and alkalinity', () => {
    expect(cautions(read(35, 460, 1100, 10))).toMatch(/Raise the magnesium first/);
    expect(cautions(read(35, 460, 1200, 10))).not.toMatch(/Raise the magnesium first/);
    expect(cautions(read(35, 420, 1100, 10))).not.toMatch(/Raise the magnesium first/);
  });
  test('salinity first, where it is off', () => {
    expect(cautions(at(33))).toMatch(/off 35/);
    expect(cautions(at(37))).toMatch(/off 35/);
    expect(cautions(at(35))).not.toMatch(/off 35/);
  });
  test('mg/kg or mg/L without readings, a second test with them', () => {
    expect(cautions(at(35))).toMatch(/mg\/kg/);
    expect(cautions(read(35, 420, 1300, 8))).not.toMatch(/mg\/kg/);
    expect(cautions(read(35, 420, 1300, 8))).toMatch(/kit error/);
    expect(cautions(at(35))).not.toMatch(/kit error/);
  });
});

test('asks for the salinity and refuses brackish water', () => {
  expect(told(outcomeOf(alkalinityNaturalLevels, {}))).toEqual(['salinity']);
  expect(told(outcomeOf(alkalinityNaturalLevels, at(12))).join()).toMatch(/20 to 42/);
});

test('an alkalinity far from any reef’s is not called in proportion', () => {
  const first = (dkh: number) =>
    spoken(alkalinityNaturalLevels, {
      salinity: [35, 'g/kg'],
      calcium_reading: [420, 'mg/L'],
      magnesium_reading: [1300, 'mg/L'],
      alkalinity_reading: [dkh, 'dKH'],
    }).headline;
  expect(first(2)).toMatch(/^Alkalinity is low/);
  expect(first(14)).toMatch(/^Alkalinity is high/);
  expect(first(8)).toMatch(/^In proportion/);
});
