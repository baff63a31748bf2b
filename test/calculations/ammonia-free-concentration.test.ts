import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ammoniaFreeConcentration } from '../../src/core/calculations/ammonia-free-concentration.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

const water: Said = { ph: [8.1, 'pH'], temperature: [25, 'degC'], salinity: [35, 'g/kg'] };
const tan = (milligrams: number): Said => ({ ...water, total_ammonia_nitrogen: [milligrams, 'mg/L'] });
const kit = (milligrams: number, form: string): Said => ({ ...water, ammonia: [milligrams, 'mg/L'], form });
const free = (said: Said) => worked(ammoniaFreeConcentration, said).value('free_ammonia_nitrogen', 'mg/L');

describe('by hand, with 5.573 % free at pH 8.1, 25 °C, S 35', () => {
  test.each([
    [tan(0.5), 0.5],
    [kit(0.5, 'nitrogen'), 0.5],
    [kit(0.5, 'nh3'), 0.5 / 1.2159],
    [kit(0.5, 'nh4'), 0.5 / 1.2879],
  ])('%o', (said, nitrogen) => {
    expect(free(said)).toBeCloseTo(0.05573 * nitrogen, 5);
  });

  test('as NH3 it weighs 1.2159 times the nitrogen in it', () => {
    const { value } = worked(ammoniaFreeConcentration, tan(2));
    expect(value('free_ammonia', 'mg/L') / value('free_ammonia_nitrogen', 'mg/L')).toBeCloseTo(1.2159, 4);
  });

  test('a kit that reads free ammonia is not multiplied: 0.05 as NH3 is 0.0411 as nitrogen, of 0.738 in all', () => {
    const { value } = worked(ammoniaFreeConcentration, kit(0.05, 'free_only'));
    expect(value('free_ammonia', 'mg/L')).toBeCloseTo(0.05, 9);
    expect(value('free_ammonia_nitrogen', 'mg/L')).toBeCloseTo(0.05 / 1.2159, 5);
    expect(value('total_as_nitrogen', 'mg/L')).toBeCloseTo(0.05 / 1.2159 / 0.05573, 3);
  });
});

test('twice the ammonia is twice the free part, never more than all of it, and back from the free kit to the same total', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 10, noNaN: true }),
      fc.double({ min: 6.5, max: 9, noNaN: true }),
      fc.double({ min: 0, max: 35, noNaN: true }),
      (milligrams, ph, t) => {
        const at: Said = { ph: [ph, 'pH'], temperature: [t, 'degC'] };
        const { value } = worked(ammoniaFreeConcentration, { ...tan(milligrams), ...at });
        const nitrogen = value('free_ammonia_nitrogen', 'mg/L');
        expect(free({ ...tan(2 * milligrams), ...at })).toBeCloseTo(2 * nitrogen, 9);
        expect(nitrogen).toBeLessThan(milligrams);
        const back = worked(ammoniaFreeConcentration, { ...kit(value('free_ammonia', 'mg/L'), 'free_only'), ...at });
        expect(back.value('total_as_nitrogen', 'mg/L')).toBeCloseTo(milligrams, 9);
      },
    ),
  );
});

describe('the verdict, on both sides of 0.02 and 0.1 mg/L free', () => {
  // 0.02/0.05573 = 0.359 and 0.1/0.05573 = 1.794 mg/L of total ammonia nitrogen.
  test.each([
    [0, /^The kit finds no ammonia/, /zero means/, /stop:|Look for the cause|wear off/],
    [0.35, /within this check/, /The pH decides/, /stop:|Look for the cause|Do not raise/],
    [0.37, /above the 0\.02 .* below the 0\.1/, /Look for the cause/, /stop:|treat it as that/],
    [1.78, /above the 0\.02 .* below the 0\.1/, /high end of the range .* treat it as that/, /stop:/],
    [1.81, /^Act now: .* above the 0\.1/, /stop: Change water now/, /Look for the cause|treat it as that/],
  ] as const)('%d mg/L', (milligrams, line, says, not) => {
    const { headline, cautions } = spoken(ammoniaFreeConcentration, tan(milligrams));
    expect(headline).toMatch(line);
    expect(cautions.join('\n')).toMatch(says);
    expect(cautions.join('\n')).not.toMatch(not);
  });

  test('the pH is not to be raised with ammonia about', () => {
    expect(spoken(ammoniaFreeConcentration, tan(0.5)).cautions.join('\n')).toMatch(/Do not raise the pH/);
  });

  test('only a free-ammonia kit is said not to be multiplied', () => {
    expect(spoken(ammoniaFreeConcentration, kit(0.05, 'free_only')).cautions.join('\n')).toMatch(
      /not multiplied again/,
    );
    expect(spoken(ammoniaFreeConcentration, kit(0.05, 'nh3')).cautions.join('\n')).not.toMatch(/not multiplied again/);
  });
});

test('asks what the kit reports, and for the water; refuses pH 15 and 78 °C', () => {
  expect(told(outcomeOf(ammoniaFreeConcentration, { ...water, ammonia: [0.5, 'mg/L'] }))).toEqual(['form']);
  expect(told(outcomeOf(ammoniaFreeConcentration, {}))).toEqual(['ammonia', 'form', 'ph', 'temperature']);
  expect(told(outcomeOf(ammoniaFreeConcentration, { ...tan(1), ph: [15, 'pH'] })).join()).toMatch(/6\.5 to 9/);
  expect(told(outcomeOf(ammoniaFreeConcentration, { ...tan(1), temperature: [78, 'degC'] })).join()).toMatch(/78 °F/);
  expect(told(outcomeOf(ammoniaFreeConcentration, tan(25))).join()).toMatch(/0 to 20/);
});
