import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ammoniaFreeFraction } from '../../src/core/calculations/ammonia-free-fraction.js';
import { freeShareTotalScale } from '../../src/core/models/ammonia.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

const water = (ph: number, degrees: number, salinity = 35): Said => ({
  ph: [ph, 'pH'],
  temperature: [degrees, 'degC'],
  salinity: [salinity, 'g/kg'],
});
const share = (...at: [number, number, number?]) =>
  worked(ammoniaFreeFraction, water(...at)).value('free_fraction', 'fraction');

describe('published values', () => {
  // EPA 440/5-88-004: total ammonia that holds 0.233 mg/L of NH3 at salinity 30 and pH 7; printed to three figures.
  test.each([
    [0, 312],
    [10, 148],
    [15, 102],
  ])('the acute criterion of the table at %d °C, %d mg/L', (degrees, total) => {
    expect(Math.abs(0.233 / share(7, degrees, 30) / total - 1)).toBeLessThan(0.02);
  });

  // Manual of a public R package, after Clegg and Whitfield 1995.
  test.each([
    [8, 10, 0, 0.0183],
    [8, 25, 0, 0.0539],
    [8, 25, 35, 0.0556],
  ])('total scale: pH %d, %d °C, S %d: %d', (ph, degrees, salinity, expected) => {
    expect(freeShareTotalScale(ph, degrees + 273.15, salinity)).toBeCloseTo(expected, 4);
  });

  // Bell and others 2007 by hand at 20 °C, S 30: pK = 10.0423 − 0.631072 + 0.09213 = 9.503358.
  test('the low end at 20 °C and S 30, pH 8', () => {
    const { value } = worked(ammoniaFreeFraction, water(8, 20, 30));
    expect(value('free_fraction_low', 'fraction')).toBeCloseTo(1 / (1 + 10 ** 1.503358), 6);
  });
});

const pH = fc.double({ min: 6.5, max: 8.9, noNaN: true });
const degrees = fc.double({ min: 0, max: 34, noNaN: true });
const salinity = fc.double({ min: 0, max: 39, noNaN: true });

test('rises with pH and warmth, falls with salt, and lies between its ends', () => {
  fc.assert(
    fc.property(pH, degrees, salinity, (ph, t, s) => {
      const here = share(ph, t, s);
      expect(share(ph + 0.1, t, s)).toBeGreaterThan(here);
      expect(share(ph, t + 1, s)).toBeGreaterThan(here);
      expect(share(ph, t, s + 1)).toBeLessThan(here);
      const { value } = worked(ammoniaFreeFraction, water(ph, t, s));
      expect(value('free_fraction_low', 'fraction')).toBeLessThanOrEqual(here);
      expect(value('free_fraction_high', 'fraction')).toBeGreaterThanOrEqual(here);
    }),
  );
});

test('a pH unit is a factor of ten in free against bound ammonia', () => {
  fc.assert(
    fc.property(fc.double({ min: 6.5, max: 8, noNaN: true }), degrees, (ph, t) => {
      const odds = (p: number) => share(p, t) / (1 - share(p, t));
      expect(odds(ph + 1) / odds(ph)).toBeCloseTo(10, 6);
    }),
  );
});

test('the totals named hold 0.02 and 0.1 mg/L free', () => {
  const { value } = worked(ammoniaFreeFraction, water(8.1, 25));
  expect(value('total_to_look_into', 'mg/L') * value('free_fraction', 'fraction')).toBeCloseTo(0.02, 9);
  expect(value('total_to_act_on', 'mg/L') * value('free_fraction', 'fraction')).toBeCloseTo(0.1, 9);
  expect(value('free_fraction_ph_up', 'fraction') / value('free_fraction', 'fraction')).toBeCloseTo(1.53, 2);
});

describe('first line and cautions, on both sides', () => {
  const says = (said: Said) => spoken(ammoniaFreeFraction, said).cautions.join('\n');

  test('more than a tenth is said', () => {
    expect(spoken(ammoniaFreeFraction, water(8.5, 28)).headline).toMatch(/more than a tenth/);
    const line = spoken(ammoniaFreeFraction, water(8.1, 25)).headline;
    expect(line).toMatch(/is 5\.6%.*likely 5\.2 to 6\.9: look into it from 0\.36 mg\/L/);
    expect(line).not.toMatch(/tenth/);
  });

  test('raising the pH is warned of where much is free', () => {
    expect(says(water(8.1, 25))).toMatch(/Do not raise the pH/);
    expect(says(water(7.2, 25))).not.toMatch(/Do not raise the pH/);
  });

  test('fresh water is out of place, and an assumed salinity is named', () => {
    expect(says(water(8, 25, 2))).toMatch(/Below 5 ppt/);
    expect(says(water(8, 25, 30))).not.toMatch(/Below 5 ppt|was not given/);
    expect(says({ ph: [8, 'pH'], temperature: [25, 'degC'] })).toMatch(/taken as 35 ppt/);
  });
});

test('asks for pH and temperature; refuses what no tank has', () => {
  expect(told(outcomeOf(ammoniaFreeFraction, {}))).toEqual(['ph', 'temperature']);
  expect(told(outcomeOf(ammoniaFreeFraction, water(15, 25))).join()).toMatch(/6\.5 to 9/);
  expect(told(outcomeOf(ammoniaFreeFraction, water(9.5, 25))).join()).toMatch(/test again/);
  expect(told(outcomeOf(ammoniaFreeFraction, water(82, 25))).join()).toMatch(/8\.2/);
  expect(told(outcomeOf(ammoniaFreeFraction, water(8.2, 78))).join()).toMatch(/78 °F/);
  expect(told(outcomeOf(ammoniaFreeFraction, water(8.2, 25, 41))).join()).toMatch(/0 to 40/);
});
