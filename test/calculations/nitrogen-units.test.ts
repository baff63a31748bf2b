import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nitrogenUnits } from '../../src/core/calculations/nitrogen-units.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

const said = (milligrams: number, species: string, form: string): Said => ({
  concentration: [milligrams, 'mg/L'],
  species,
  form,
});

describe('handbook ratios', () => {
  test.each([
    ['nitrate', 'as_ion', 4.4268],
    ['nitrite', 'as_ion', 3.2845],
    ['ammonia', 'as_ion', 1.2879],
    ['ammonia', 'as_nh3', 1.2159],
  ])('1 mg/L of %s nitrogen, %s: %d', (species, id, ratio) => {
    expect(worked(nitrogenUnits, said(1, species, 'nitrogen')).value(id, 'mg/L')).toBeCloseTo(ratio, 3);
  });

  // 1000 over 62.004, 46.005, 18.039 and 17.031 g/mol.
  test.each([
    ['nitrate', 'ion', 16.128],
    ['nitrite', 'ion', 21.737],
    ['ammonia', 'nh4', 55.436],
    ['ammonia', 'nh3', 58.716],
    ['ammonia', 'ion', 55.436],
    ['nitrate', 'nitrogen', 71.393],
  ])('1 mg/L of %s as %s is %d µmol/L', (species, form, micromoles) => {
    expect(worked(nitrogenUnits, said(1, species, form)).value('micromolar', 'umol/L')).toBeCloseTo(micromoles, 2);
  });

  test('a paper’s 1 µmol/L of nitrate is 0.062 mg/L of NO3', () => {
    const { value } = worked(nitrogenUnits, { concentration_molar: [1, 'umol/L'], species: 'nitrate' });
    expect(value('as_ion', 'mg/L')).toBeCloseTo(0.062004, 6);
    expect(value('as_nitrogen', 'mg/L')).toBeCloseTo(0.014007, 6);
  });
});

test('there and back gives the same, and twice as much is twice as much', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 100, noNaN: true }),
      fc.constantFrom('nitrate', 'nitrite', 'ammonia'),
      (milligrams, species) => {
        const there = worked(nitrogenUnits, said(milligrams, species, 'nitrogen'));
        const ion = there.value('as_ion', 'mg/L');
        const back = worked(nitrogenUnits, said(ion, species, species === 'ammonia' ? 'nh4' : 'ion'));
        expect(back.value('as_nitrogen', 'mg/L')).toBeCloseTo(milligrams, 9);
        const moles = worked(nitrogenUnits, {
          concentration_molar: [there.value('micromolar', 'umol/L'), 'umol/L'],
          species,
        });
        expect(moles.value('as_ion', 'mg/L')).toBeCloseTo(ion, 9);
        expect(worked(nitrogenUnits, said(2 * milligrams, species, 'nitrogen')).value('as_ion', 'mg/L')).toBeCloseTo(
          2 * ion,
          9,
        );
      },
    ),
  );
});

describe('first line and cautions', () => {
  test.each([
    [
      said(10, 'nitrate', 'ion'),
      /^Nitrate: 2\.26 mg\/L as nitrogen is 10 mg\/L as NO₃, or 161 µmol\/L/,
      /leaflet/,
      /3\.28/,
    ],
    [
      said(1, 'nitrite', 'ion'),
      /^Nitrite: 0\.304 mg\/L as nitrogen is 1 mg\/L as NO₂/,
      /3\.28/,
      /leaflet|total ammonia/,
    ],
    [
      said(2, 'ammonia', 'nh4'),
      /^Ammonia: 1\.55 mg\/L as nitrogen is 1\.89 mg\/L as NH₃, 2 mg\/L as NH₄/,
      /total ammonia/,
      /leaflet/,
    ],
  ] as [Said, RegExp, RegExp, RegExp][])('%o', (given, line, says, not) => {
    const { headline, cautions } = spoken(nitrogenUnits, given);
    expect(headline).toMatch(line);
    expect(cautions.join('\n')).toMatch(says);
    expect(cautions.join('\n')).not.toMatch(not);
  });

  test('mg/kg is spoken of where a mass was given', () => {
    expect(spoken(nitrogenUnits, said(1, 'nitrate', 'ion')).cautions.join('\n')).toMatch(/2\.3 % less/);
    const moles: Said = { concentration_molar: [1, 'umol/L'], species: 'nitrate' };
    expect(spoken(nitrogenUnits, moles).cautions.join('\n')).not.toMatch(/2\.3 % less/);
  });
});

test('asks how the kit counts, what was measured, and refuses nitrate as NH4', () => {
  expect(told(outcomeOf(nitrogenUnits, { concentration: [20, 'mg/L'], species: 'nitrate' }))).toEqual(['form']);
  expect(told(outcomeOf(nitrogenUnits, { concentration_molar: [20, 'umol/L'] }))).toEqual(['species']);
  expect(told(outcomeOf(nitrogenUnits, {}))).toEqual(['concentration', 'species', 'form']);
  expect(told(outcomeOf(nitrogenUnits, said(20, 'nitrate', 'nh4'))).join()).toMatch(/ways to count ammonia/);
  expect(told(outcomeOf(nitrogenUnits, said(600, 'nitrate', 'ion'))).join()).toMatch(/0 to 500/);
});
