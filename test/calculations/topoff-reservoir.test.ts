import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { topoffReservoir } from '../../src/core/calculations/topoff-reservoir.js';
import { topoffRoRate } from '../../src/core/calculations/topoff-ro-rate.js';
import { read, warns } from './said-first.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

describe('topoff.reservoir by hand', () => {
  test.each([
    [20, 4, 5],
    [30, 6, 5],
    [45, 1.5, 30],
    [10, 10, 1],
  ])('%d L at %d L a day last %d days', (litres, daily, days) => {
    const said: Said = { usable_volume: [litres, 'L'], evaporation: [daily, 'L/day'] };
    expect(worked(topoffReservoir, said).value('days', 'day')).toBeCloseTo(days, 9);
  });

  test('14 days at 5 L take 70 L; 20 L at once into 380 make 33.25 of 35', () => {
    const { value } = worked(topoffReservoir, { evaporation: [5, 'L/day'], days_wanted: [14, 'day'] });
    expect(value('volume_for_days', 'L')).toBeCloseTo(70, 9);
    const full = worked(topoffReservoir, {
      evaporation: [5, 'L/day'],
      usable_volume: [20, 'L'],
      system_volume: [380, 'L'],
    });
    expect(full.value('salinity_if_emptied', 'g/kg')).toBeCloseTo(33.25, 9);
  });

  test('what the days take lasts the days', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        fc.double({ min: 0.5, max: 90, noNaN: true }),
        (daily, days) => {
          const said: Said = { evaporation: [daily, 'L/day'] };
          const litres = worked(topoffReservoir, { ...said, days_wanted: [days, 'day'] }).value('volume_for_days', 'L');
          expect(
            worked(topoffReservoir, { ...said, usable_volume: [litres, 'L'] }).value('days', 'day') / days,
          ).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test('first lines, warnings, questions', () => {
    const at = (more: Said): Said => ({ evaporation: [5, 'L/day'], ...more });
    const litres: Said = { usable_volume: [20, 'L'] };
    expect(read(topoffReservoir, at({ ...litres, days_wanted: [3, 'day'] })).headline).toMatch(
      /^Yes: it lasts about 4/,
    );
    expect(read(topoffReservoir, at({ ...litres, days_wanted: [7, 'day'] })).headline).toMatch(/^No: .* takes 35 L/);
    expect(read(topoffReservoir, at(litres)).headline).toMatch(/^It lasts about 4/);
    expect(read(topoffReservoir, at({ days_wanted: [7, 'day'] })).headline).toMatch(/takes a reservoir with 35 L/);
    const falls = (system: number) =>
      warns(topoffReservoir, at({ ...litres, system_volume: [system, 'L'] }), /more than 2 ppt/);
    expect([falls(200), falls(400)]).toEqual([true, false]);
    expect(warns(topoffReservoir, at(litres), /Tell me the water in the system/)).toBe(true);
    expect(warns(topoffReservoir, at({ ...litres, system_volume: [400, 'L'] }), /Tell me the water/)).toBe(false);
    expect(told(outcomeOf(topoffReservoir, {}))).toEqual(['usable_volume', 'evaporation']);
    expect(told(outcomeOf(topoffReservoir, { days_wanted: [7, 'day'] }))).toEqual(['evaporation']);
    expect(outcomeOf(topoffReservoir, at({ usable_volume: [0, 'L'] })).kind).toBe('refusal');
  });
});

describe('topoff.ro_rate', () => {
  const membrane = (rated: number, at: number, pressure: number, celsius: number): Said => ({
    rated_flow: [rated, 'gal_US/day'],
    rated_pressure: [at, 'psi'],
    pressure: [pressure, 'psi'],
    temperature: [celsius, 'degC'],
  });

  test('at its rating it gives its rating; half the pressure half of it; a degree down is 3 %', () => {
    const flow = (...said: Parameters<typeof membrane>) =>
      worked(topoffRoRate, membrane(...said)).value('flow', 'gal_US/day');
    expect(flow(75, 60, 60, 25)).toBeCloseTo(75, 9);
    expect(flow(75, 60, 30, 25)).toBeCloseTo(37.5, 9);
    expect(flow(75, 60, 60, 24)).toBeCloseTo(75 / 1.03, 9);
    // 75 · 0.75 · 1.03^-10 = 41.86 gal/day = 6.6 L/h
    expect(worked(topoffRoRate, membrane(75, 60, 45, 15)).value('flow', 'L/h')).toBeCloseTo(6.6, 1);
  });

  test.each([
    [5, 0.55, 0.48],
    [10, 0.64, 0.58],
    [15, 0.74, 0.7],
    [20, 0.86, 0.84],
    [30, 1.16, 1.16],
  ])('the two temperature factors at %d °C are %d and %d', (celsius, first, second) => {
    const { value } = worked(topoffRoRate, membrane(75, 60, 60, celsius));
    expect(value('temperature_factor', '1')).toBeCloseTo(first, 2);
    expect(value('temperature_factor_second', '1')).toBeCloseTo(second, 2);
  });

  test('warmer and harder pressed gives more, and the range holds both models', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 33, noNaN: true }),
        fc.double({ min: 20, max: 100, noNaN: true }),
        (celsius, psi) => {
          const at = (t: number, p: number) => worked(topoffRoRate, membrane(75, 60, p, t));
          const { value, low, high } = at(celsius, psi);
          expect(at(celsius + 1, psi).value('flow', 'L/h')).toBeGreaterThan(value('flow', 'L/h'));
          expect(at(celsius, psi + 1).value('flow', 'L/h')).toBeGreaterThan(value('flow', 'L/h'));
          const second =
            (value('flow', 'L/h') / value('temperature_factor', '1')) * value('temperature_factor_second', '1');
          expect(low('flow', 'L/h')).toBeLessThanOrEqual(second + 1e-9);
          expect(high('flow', 'L/h')).toBeGreaterThanOrEqual(second - 1e-9);
        },
      ),
    );
  });

  test('first line, warnings on both sides, refusals', () => {
    expect(read(topoffRoRate, membrane(75, 60, 45, 15)).headline).toMatch(/^It gives about .*56% of its rating/);
    const weak = (psi: number) => warns(topoffRoRate, membrane(75, 60, psi, 15), /booster pump/);
    expect([weak(35), weak(60)]).toEqual([true, false]);
    const cold = (celsius: number) => warns(topoffRoRate, membrane(75, 60, 60, celsius), /Cold water is the usual/);
    expect([cold(10), cold(25)]).toEqual([true, false]);
    expect(told(outcomeOf(topoffRoRate, membrane(75, 60, 60, 50))).join()).toMatch(/hot tap/);
    expect(told(outcomeOf(topoffRoRate, { ...membrane(75, 60, 60, 15), rated_flow: [75, 'L/min'] })).join()).toMatch(
      /a day/,
    );
    expect(told(outcomeOf(topoffRoRate, {}))).toEqual(['rated_flow', 'rated_pressure', 'pressure', 'temperature']);
  });
});
