import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calcificationRatio } from '../../src/core/calculations/calcification-ratio.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

describe('stoichiometry by hand', () => {
  test('2 meq/L is 1 mmol/L of CaCO3: 40.08 mg/L of calcium; 2 mmol/L of NaCl: 116.88 mg/L', () => {
    const { value } = worked(calcificationRatio, { alkalinity_used: [2, 'meq/L'] });
    expect(value('calcium_used', 'mg/L')).toBeCloseTo(40.08, 2);
    expect(value('sodium_chloride_left', 'mg/L')).toBeCloseTo(116.88, 2);
  });
  test('1 dKH takes 7.15 mg/L of calcium and leaves 20.84 mg/L of salt', () => {
    const { value } = worked(calcificationRatio, { alkalinity_used: [1, 'dKH'] });
    expect(value('calcium_used', 'mg/L')).toBeCloseTo(7.147, 3);
    expect(value('sodium_chloride_left', 'mg/L')).toBeCloseTo(20.843, 3);
  });
  test('50 mg/L of alkalinity as CaCO3 is 20.02 mg/L of calcium: 40.078/100.086 of it', () => {
    const { value } = worked(calcificationRatio, { alkalinity_used: [50, 'mg/L CaCO3'] });
    expect(value('calcium_used', 'mg/L')).toBeCloseTo((50 * 40.078) / 100.086, 6);
  });
  test('1 dKH a day leaves 0.625 g/L in 30 days, as 30 dKH do', () => {
    const month = worked(calcificationRatio, { alkalinity_per_day: [1, 'dKH/day'] });
    expect(month.value('sodium_chloride_left', 'g/L')).toBeCloseTo(0.6253, 3);
    const week = worked(calcificationRatio, { alkalinity_per_day: [1, 'dKH/day'], days: [7, 'day'] });
    expect(week.value('calcium_used', 'mg/L')).toBeCloseTo(7 * 7.147, 2);
  });
});

test('twice the alkalinity takes twice of both', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 90, noNaN: true }), (dkh) => {
      const [one, two] = [dkh, 2 * dkh].map((used) => worked(calcificationRatio, { alkalinity_used: [used, 'dKH'] }));
      for (const id of ['calcium_used', 'sodium_chloride_left'])
        expect(two!.value(id, 'mg/L')).toBeCloseTo(2 * one!.value(id, 'mg/L'), 9);
    }),
  );
});

describe('what is said', () => {
  const with_ = (calcium: number): Said => ({ alkalinity_used: [1, 'dKH'], calcium_measured: [calcium, 'mg/L'] });
  test.each([
    [{ alkalinity_used: [1, 'dKH'] } as Said, /^1 dKH of alkalinity takes 7\.15 mg\/L/],
    [{ alkalinity_per_day: [1, 'dKH/day'] } as Said, /^30 dKH of alkalinity takes 214 mg\/L/],
    [with_(5), /^Less calcium went/],
    [with_(6), /^In proportion/],
    [with_(8), /^In proportion/],
    [with_(9), /^More calcium went/],
  ])('%j', (said, expected) => {
    expect(spoken(calcificationRatio, said).headline).toMatch(expected);
  });
  test('warns of salt from half a gram a litre on', () => {
    const cautions = (dkh: number) => spoken(calcificationRatio, { alkalinity_used: [dkh, 'dKH'] }).cautions.join();
    expect(cautions(23)).not.toMatch(/half a ppt/);
    expect(cautions(25)).toMatch(/half a ppt/);
  });
});

test('asks for the alkalinity used', () => {
  expect(told(outcomeOf(calcificationRatio, {}))).toEqual(['alkalinity_used']);
  expect(told(outcomeOf(calcificationRatio, { alkalinity_used: [0, 'dKH'] })).join()).toMatch(/above 0/);
});
