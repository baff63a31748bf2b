import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drainbackSafeLevel } from '../../src/core/calculations/drainback-safe-level.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const sump: Said = {
  sump_area: [0.4, 'm2'],
  sump_rim: [40, 'cm'],
  freeboard: [4, 'cm'],
  drain_back: [40, 'L'],
  other_chambers_volume: [84, 'L'],
  return_area: [0.1, 'm2'],
  upstream_lip: [25, 'cm'],
};
const level = (more: Said = {}) => worked(drainbackSafeLevel, { ...sump, ...more });
const limit = (more: Said) => level(more).outcome.results.find(({ id }) => id === 'limited_by')!.value;

describe('worked by hand', () => {
  test('(0.4·0.36 − 0.040 − 0.084)/0.1 = 20 cm, below the lip', () => {
    expect(level().value('highest_running_level', 'cm')).toBeCloseTo(20, 9);
    expect(limit({})).toBe('drain_back');
  });

  test('30 L drains back: 30 cm by volume, so the lip at 25 cm decides', () => {
    expect(level({ drain_back: [30, 'L'] }).value('level_by_volume', 'cm')).toBeCloseTo(30, 9);
    expect(level({ drain_back: [30, 'L'] }).value('highest_running_level', 'cm')).toBeCloseTo(25, 9);
    expect(limit({ drain_back: [30, 'L'] })).toBe('upstream_lip');
  });

  test('a sump by outside sizes: 82 × 52 cm in 10 mm panes is 0.4 m²', () => {
    const { sump_area: _, ...rest } = sump;
    const sizes: Said = { ...rest, sump_length: [82, 'cm'], sump_width: [52, 'cm'], sump_glass_thickness: [10, 'mm'] };
    expect(worked(drainbackSafeLevel, sizes).value('highest_running_level', 'cm')).toBeCloseTo(20, 9);
  });
});

test('run at that level, what drains back ends at the reserve or below it', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 59, noNaN: true }),
      fc.double({ min: 5, max: 36, noNaN: true }),
      (back, lip) => {
        const highest = level({ drain_back: [back, 'L'], upstream_lip: [lip, 'cm'] }).value(
          'highest_running_level',
          'm',
        );
        const afterwards = (0.084 + 0.1 * highest + back / 1000) / 0.4;
        expect(afterwards).toBeLessThanOrEqual(0.36 + 1e-9);
        expect(highest).toBeLessThanOrEqual(lip / 100 + 1e-12);
      },
    ),
  );
});

test('refuses when no level works, and chambers larger than the sump', () => {
  expect(told(outcomeOf(drainbackSafeLevel, { ...sump, drain_back: [70, 'L'] })).join()).toMatch(
    /No running level works/,
  );
  expect(told(outcomeOf(drainbackSafeLevel, { ...sump, return_area: [0.5, 'm2'] })).join()).toMatch(
    /larger than the whole sump/,
  );
  expect(told(outcomeOf(drainbackSafeLevel, { ...sump, freeboard: [30, 'cm'], sump_rim: [25, 'cm'] })).join()).toMatch(
    /as high as the sump/,
  );
  const { drain_back: _, ...rest } = sump;
  expect(told(outcomeOf(drainbackSafeLevel, rest))).toEqual(['drain_back']);
});

test('a high baffle and little water coming back: the reserve below the rim is kept while it runs, too', () => {
  const { value, outcome } = level({
    drain_back: [0, 'L'],
    other_chambers_volume: [20, 'L'],
    upstream_lip: [38, 'cm'],
    sump_rim: [40, 'cm'],
    freeboard: [4, 'cm'],
  });
  expect(value('highest_running_level', 'cm')).toBeCloseTo(36, 9);
  expect(outcome.results.find(({ id }) => id === 'limited_by')!.value).toBe('reserve');
  expect(
    told(outcomeOf(drainbackSafeLevel, { ...sump, upstream_lip: [45, 'cm'], sump_rim: [40, 'cm'] })).join(),
  ).toMatch(/baffle is as high as the rim/);
});
