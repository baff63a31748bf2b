import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dosingMass } from '../../src/core/calculations/dosing-mass.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

const alk = (chemical: string, rise: number, more: Said = {}): Said => ({
  system_volume: [100, 'L'],
  chemical,
  rise_wanted: [rise, 'dKH'],
  ...more,
});
const metal = (chemical: string, rise: number, more: Said = {}): Said => ({
  system_volume: [100, 'L'],
  chemical,
  rise_dissolved: [rise, 'mg/L'],
  ...more,
});
const grams = (said: Said) => worked(dosingMass, said).value('dose_mass', 'g');

describe('by the share of the element in the compound, from chemical tables', () => {
  // CaCl2 is 36.11 % calcium, its dihydrate 27.26 %; MgCl2·6H2O is 11.96 % magnesium, MgSO4·7H2O 9.861 %.
  test.each([
    ['calcium_chloride_anhydrous', 20, 2 / 0.3611],
    ['calcium_chloride_dihydrate', 20, 2 / 0.2726],
    ['magnesium_chloride', 50, 5 / 0.1196],
    ['magnesium_sulfate', 50, 5 / 0.09861],
  ])('%s, +%d mg/L in 100 L: %d g', (chemical, rise, expected) => {
    expect(grams(metal(chemical, rise)) / expected).toBeCloseTo(1, 3);
  });
  test('bicarbonate 84 g and carbonate 53 g an equivalent: +1 dKH in 100 L takes 2.996 and 1.890 g', () => {
    expect(grams(alk('sodium_bicarbonate', 1))).toBeCloseTo(2.996, 3);
    expect(grams(alk('sodium_carbonate', 1))).toBeCloseTo(1.89, 3);
  });
  test('baked bicarbonate is carbonate at 0.631 of its mass', () => {
    expect(grams(alk('sodium_carbonate', 1)) / grams(alk('sodium_bicarbonate', 1))).toBeCloseTo(0.631, 3);
  });
  test('the mix holds 8 parts of chloride to 1 of sulfate, and the magnesium wanted', () => {
    const { value } = worked(dosingMass, metal('magnesium_mix', 50));
    const [chloride, sulfate] = [value('chloride_mass', 'g'), value('sulfate_mass', 'g')];
    expect(chloride / sulfate).toBeCloseTo(8, 9);
    expect(chloride * 0.11956 + sulfate * 0.098614).toBeCloseTo(5, 2);
    expect(spoken(dosingMass, metal('magnesium_mix', 50)).headline).toMatch(/of the chloride and .* of the sulfate/);
  });
});

test('levels now and wanted do for the rise: 7 to 8.5 dKH in 400 L is 17.98 g over 2 days', () => {
  const said: Said = {
    system_volume: [400, 'L'],
    chemical: 'sodium_bicarbonate',
    alkalinity_now: [7, 'dKH'],
    alkalinity_target: [8.5, 'dKH'],
  };
  const { value } = worked(dosingMass, said);
  expect(value('dose_mass', 'g')).toBeCloseTo(4 * 1.5 * 2.99609, 3);
  expect(value('days', 'day')).toBe(2);
  expect(spoken(dosingMass, said).headline).toMatch(/by 1\.5 dKH: 8\.99 g a day for 2 days/);
});

test('a mass that was dosed raises what a dose for that rise weighs', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('sodium_bicarbonate', 'sodium_carbonate'),
      fc.double({ min: 0.1, max: 5, noNaN: true }),
      fc.double({ min: 5, max: 5000, noNaN: true }),
      (chemical, rise, litres) => {
        const volume: Said = { system_volume: [litres, 'L'] };
        const mass = grams(alk(chemical, rise, volume));
        expect(mass / litres).toBeCloseTo(grams(alk(chemical, rise)) / 100, 9);
        const back = worked(dosingMass, { ...volume, chemical, mass_dosed: [mass, 'g'] });
        expect(back.value('rise_from_dose', 'dKH')).toBeCloseTo(rise, 9);
      },
    ),
  );
});

test('a metal as well, and half the purity takes twice the mass', () => {
  const mass = grams(metal('calcium_chloride_dihydrate', 20));
  const back = worked(dosingMass, {
    system_volume: [100, 'L'],
    chemical: 'calcium_chloride_dihydrate',
    mass_dosed: [mass, 'g'],
  });
  expect(back.value('rise_from_dose', 'mg/L')).toBeCloseTo(20, 9);
  expect(grams(metal('calcium_chloride_dihydrate', 20, { purity: [0.5, 'fraction'] }))).toBeCloseTo(2 * mass, 9);
  const magnesium = worked(dosingMass, {
    system_volume: [100, 'L'],
    chemical: 'magnesium_sulfate',
    mass_dosed: [50.7, 'g'],
  });
  expect(magnesium.value('rise_from_dose', 'mg/L')).toBeCloseTo(50, 1);
});

test('an unknown grade can only make the dose larger, by a twentieth', () => {
  const { value, low, high } = worked(dosingMass, alk('sodium_bicarbonate', 1));
  expect(low('dose_mass', 'g')).toBeCloseTo(value('dose_mass', 'g'), 9);
  expect(high('dose_mass', 'g')).toBeCloseTo(value('dose_mass', 'g') / 0.95, 9);
});

describe('days', () => {
  test.each([
    [alk('sodium_bicarbonate', 1), 1],
    [alk('sodium_bicarbonate', 1.01), 2],
    [alk('sodium_bicarbonate', 3, { daily_rise: [0.5, 'dKH/day'] }), 6],
    [metal('calcium_chloride_dihydrate', 20), 1],
    [metal('calcium_chloride_dihydrate', 60), 3],
    [metal('magnesium_chloride', 100), 2],
    [metal('magnesium_chloride', 100, { daily_rise_dissolved: [25, 'mg/L/day'] }), 4],
  ])('%j takes %d', (said, days) => {
    const { value } = worked(dosingMass, said);
    expect(value('days', 'day')).toBe(days);
    expect(value('dose_per_day', 'g') * days).toBeCloseTo(value('dose_mass', 'g'), 9);
  });
});

describe('what is said', () => {
  test.each([
    [alk('sodium_bicarbonate', 1), /within what one day may bring/],
    [alk('sodium_bicarbonate', 2), /a day for 2 days/],
    [metal('magnesium_chloride', 50), /raises 100 L by 50 mg\/L, within/],
    [metal('magnesium_chloride', 150), /a day for 3 days/],
    [
      { system_volume: [100, 'L'], chemical: 'sodium_bicarbonate', mass_dosed: [3, 'g'] } as Said,
      /3 g of sodium bicarbonate raises 100 L by 1 dKH/,
    ],
    [
      { system_volume: [100, 'L'], chemical: 'magnesium_chloride', mass_dosed: [42, 'g'] } as Said,
      /raises 100 L by 50\.2 mg\/L/,
    ],
  ])('%j', (said, expected) => {
    expect(spoken(dosingMass, said).headline).toMatch(expected);
  });

  const cases: [RegExp, Said, Said][] = [
    [/lifts the pH at once/, alk('sodium_carbonate', 1), alk('sodium_bicarbonate', 1)],
    [/lowers the pH slightly/, alk('sodium_bicarbonate', 1), alk('sodium_carbonate', 1)],
    [/heats up/, metal('calcium_chloride_dihydrate', 20), metal('magnesium_chloride', 20)],
    [/Sulfate alone/, metal('magnesium_sulfate', 20), metal('magnesium_mix', 20)],
    [/white cloud/, metal('calcium_chloride_dihydrate', 20), metal('magnesium_mix', 20)],
    [/sensitive stony/, alk('sodium_bicarbonate', 2), alk('sodium_bicarbonate', 1)],
    [
      /more than common practice lets a day/,
      { system_volume: [100, 'L'], chemical: 'sodium_bicarbonate', mass_dosed: [10, 'g'] },
      { system_volume: [100, 'L'], chemical: 'sodium_bicarbonate', mass_dosed: [2, 'g'] },
    ],
    [
      /more than common practice lets a day/,
      { system_volume: [100, 'L'], chemical: 'calcium_chloride_anhydrous', mass_dosed: [10, 'g'] },
      { system_volume: [100, 'L'], chemical: 'calcium_chloride_anhydrous', mass_dosed: [2, 'g'] },
    ],
  ];
  test.each(cases)('%s', (text, said, without) => {
    expect(spoken(dosingMass, said).cautions.join('\n')).toMatch(text);
    expect(spoken(dosingMass, without).cautions.join('\n')).not.toMatch(text);
  });
});

test('asks for the rise in the unit of the chemical', () => {
  expect(told(outcomeOf(dosingMass, {}))).toEqual(['system_volume', 'chemical']);
  const volume: Said = { system_volume: [100, 'L'] };
  expect(told(outcomeOf(dosingMass, { ...volume, chemical: 'sodium_carbonate' }))).toEqual(['rise_wanted']);
  expect(told(outcomeOf(dosingMass, { ...volume, chemical: 'magnesium_mix' }))).toEqual(['rise_dissolved']);
});

describe('refuses', () => {
  const volume: Said = { system_volume: [100, 'L'] };
  test.each<[string, Said, RegExp]>([
    ['6 dKH at once', alk('sodium_bicarbonate', 6), /more than 5 dKH/],
    ['101 mg/L of calcium', metal('calcium_chloride_dihydrate', 101), /100 mg\/L of calcium/],
    ['301 mg/L of magnesium', metal('magnesium_chloride', 301), /300 mg\/L of magnesium/],
    [
      'dKH of calcium',
      { ...volume, chemical: 'calcium_chloride_dihydrate', rise_wanted: [1, 'dKH'] },
      /dKH measures alkalinity/,
    ],
    ['mg/L of bicarbonate', { ...volume, chemical: 'sodium_bicarbonate', rise_dissolved: [20, 'mg/L'] }, /17\.8 mg\/L/],
    [
      'above 14 dKH',
      { ...volume, chemical: 'sodium_bicarbonate', alkalinity_now: [12, 'dKH'], alkalinity_target: [14.5, 'dKH'] },
      /never aim above 14/,
    ],
    [
      'downward',
      { ...volume, chemical: 'sodium_bicarbonate', alkalinity_now: [9, 'dKH'], alkalinity_target: [8, 'dKH'] },
      /not above the present one/,
    ],
    [
      'calcium above 550',
      { ...volume, chemical: 'calcium_chloride_dihydrate', level_now: [500, 'mg/L'], level_target: [560, 'mg/L'] },
      /above 550/,
    ],
  ])('%s', (_, said, because) => {
    expect(told(outcomeOf(dosingMass, said)).join(' ')).toMatch(because);
  });
  test.each<[Said]>([
    [alk('sodium_bicarbonate', 5)],
    [metal('calcium_chloride_dihydrate', 100)],
    [metal('magnesium_chloride', 300)],
  ])('but not the limit itself: %j', (said) => {
    expect(outcomeOf(dosingMass, said).kind).toBe('answer');
  });
});

describe('a rise and a reading wanted', () => {
  const soda = { system_volume: [200, 'L'], chemical: 'sodium_bicarbonate' } as const;
  const refused = (more: Said) => told(outcomeOf(dosingMass, { ...soda, ...more })).join();
  test('leave open which is the reading now, or must agree with it', () => {
    expect(refused({ rise_wanted: [4, 'dKH'], alkalinity_target: [5, 'dKH'] })).toMatch(/from which reading to which/);
    const three: Said = { alkalinity_now: [7, 'dKH'], alkalinity_target: [8, 'dKH'] };
    expect(refused({ ...three, rise_wanted: [3, 'dKH'] })).toMatch(/not the difference/);
    expect(refused({ ...three, rise_wanted: [1, 'dKH'] })).toBe('');
  });
  test('a mass that was dosed beyond what animals stand is stopped, a small one is not', () => {
    const levels = (grams: number) =>
      worked(dosingMass, { ...soda, mass_dosed: [grams, 'g'] }).outcome.cautions.map(({ level }) => level);
    expect(levels(500)).toContain('stop');
    expect(levels(6)).not.toContain('stop');
  });
});
