import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { volumeSump } from '../../src/core/calculations/volume-sump.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const one: Said = { chamber_1_area: [0.2, 'm2'], chamber_1_level: [25, 'cm'], height: [40, 'cm'] };

describe('worked by hand', () => {
  test('0.2 m² at 25 cm runs with 50 L; to 3 cm below 40 cm it takes 74 L, 24 L more', () => {
    const { value } = worked(volumeSump, one);
    expect(value('running_volume', 'L')).toBeCloseTo(50, 9);
    expect(value('capacity_to_safe_line', 'L')).toBeCloseTo(74, 9);
    expect(value('free_volume', 'L')).toBeCloseTo(24, 9);
  });
  test('30 and 20 cm long chambers in a sump 40 cm wide: 0.12·0.25 + 0.08·0.2 m³ = 46 L', () => {
    const { value } = worked(volumeSump, {
      chamber_1_length: [30, 'cm'],
      chamber_1_level: [25, 'cm'],
      chamber_2_length: [20, 'cm'],
      chamber_2_level: [20, 'cm'],
      width: [40, 'cm'],
      height: [40, 'cm'],
      freeboard: [5, 'cm'],
    });
    expect(value('running_volume', 'L')).toBeCloseTo(46, 9);
    expect(value('free_volume', 'L')).toBeCloseTo(0.2 * 350 - 46, 9);
  });
  test('eight chambers of 0.05 m² at 10, 11 … 17 cm: 0.05·108 cm = 54 L', () => {
    const chambers = Object.fromEntries(
      Array.from({ length: 8 }, (_, i) => [
        [`chamber_${i + 1}_area`, [0.05, 'm2']],
        [`chamber_${i + 1}_level`, [10 + i, 'cm']],
      ]).flat(),
    ) as Said;
    expect(worked(volumeSump, { ...chambers, height: [40, 'cm'] }).value('running_volume', 'L')).toBeCloseTo(54, 9);
  });
});

test('running water and free room make up the capacity, and a higher level takes from the room what it adds to the water', () => {
  const level = fc.double({ min: 0, max: 30, noNaN: true });
  fc.assert(
    fc.property(level, level, fc.double({ min: 0.1, max: 5, noNaN: true }), (z1, z2, more) => {
      const at = (z: number) =>
        worked(volumeSump, {
          ...one,
          chamber_1_level: [z1, 'cm'],
          chamber_2_area: [0.1, 'm2'],
          chamber_2_level: [z, 'cm'],
        });
      const [before, after] = [at(z2), at(z2 + more)];
      expect(before.value('running_volume', 'L') + before.value('free_volume', 'L')).toBeCloseTo(
        before.value('capacity_to_safe_line', 'L'),
        9,
      );
      expect(after.value('running_volume', 'L') - before.value('running_volume', 'L')).toBeCloseTo(more, 6);
    }),
  );
});

describe('asks and refusals', () => {
  test('asks for the first chamber’s area, or for the width when its length is known', () => {
    expect(told(outcomeOf(volumeSump, { height: [40, 'cm'] }))).toEqual(['chamber_1_area', 'chamber_1_level']);
    const long: Said = { chamber_1_length: [30, 'cm'], chamber_1_level: [20, 'cm'], height: [40, 'cm'] };
    expect(told(outcomeOf(volumeSump, long))).toEqual(['width']);
  });
  test('asks for the other half of a further chamber', () => {
    expect(told(outcomeOf(volumeSump, { ...one, chamber_2_area: [0.1, 'm2'] }))).toEqual(['chamber_2_level']);
    expect(told(outcomeOf(volumeSump, { ...one, chamber_7_level: [20, 'cm'] }))).toEqual(['chamber_7_area']);
  });
  test('refuses a level above the rim', () => {
    const outcome = outcomeOf(volumeSump, { ...one, chamber_1_level: [41, 'cm'] });
    expect(told(outcome).join(' ')).toMatch(/chamber 1 would stand above the rim/);
  });
  test('warns when the running level is above the safe line', () => {
    const { outcome } = worked(volumeSump, { ...one, chamber_1_level: [39, 'cm'] });
    expect(outcome.cautions.some(({ level }) => level === 'stop')).toBe(true);
    expect(worked(volumeSump, one).outcome.cautions.some(({ level }) => level === 'stop')).toBe(false);
  });
});
