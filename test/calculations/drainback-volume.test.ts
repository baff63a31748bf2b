import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerIn } from '../../src/core/answer.js';
import { drainbackVolume } from '../../src/core/calculations/drainback-volume.js';
import { METRIC } from '../../src/core/show-value.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const tank: Said = {
  display_area: [0.9, 'm2'],
  display_drop: [2, 'cm'],
  box_area: [0.03, 'm2'],
  box_drop: [30, 'cm'],
  sump_area: [0.4, 'm2'],
  sump_rim: [40, 'cm'],
  sump_volume_now: [90, 'L'],
};
const back = (more: Said = {}) => worked(drainbackVolume, { ...tank, ...more });

describe('worked by hand', () => {
  test('0.9·0.02 + 0.03·0.30 = 27 L into 0.4·(0.40 − 0.03) − 0.090 = 58 L; level (90 + 27)/0.4 = 29.25 cm', () => {
    const { value } = back();
    expect(value('drain_back', 'L')).toBeCloseTo(27, 9);
    expect(value('sump_free_volume', 'L')).toBeCloseTo(58, 9);
    expect(value('margin', 'L')).toBeCloseTo(31, 9);
    expect(value('sump_level_after', 'cm')).toBeCloseTo(29.25, 9);
  });

  test('nozzles 15 cm under water on 0.9 m², no box: 135 L', () => {
    expect(back({ display_drop: [15, 'cm'], box_area: [0, 'm2'] }).value('drain_back', 'L')).toBeCloseTo(135, 9);
  });

  test('a display by its outside sizes: 152 × 62 cm in 10 mm panes is 1.5 · 0.6 = 0.9 m²', () => {
    const { display_area: _, ...rest } = tank;
    const sizes: Said = { ...rest, length: [152, 'cm'], width: [62, 'cm'], glass_thickness: [10, 'mm'] };
    expect(worked(drainbackVolume, sizes).value('drain_back', 'L')).toBeCloseTo(27, 9);
  });

  test('a sump by its sizes and its level: 82 × 52 cm in 10 mm panes, 22.5 cm of water is 90 L', () => {
    const { sump_area: _, sump_volume_now: __, ...rest } = tank;
    const sizes: Said = {
      ...rest,
      sump_length: [82, 'cm'],
      sump_width: [52, 'cm'],
      sump_glass_thickness: [10, 'mm'],
      sump_water_height: [22.5, 'cm'],
    };
    expect(worked(drainbackVolume, sizes).value('margin', 'L')).toBeCloseTo(31, 9);
  });
});

test('no water is lost or made, and it fits when something is left over', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 15, noNaN: true }),
      fc.double({ min: 0, max: 20, noNaN: true }),
      (drop, pipes) => {
        const { outcome, value } = back({ display_drop: [drop, 'cm'], pipe_volume: [pipes, 'L'] });
        expect(value('sump_level_after', 'm') * 400).toBeCloseTo(90 + value('drain_back', 'L'), 9);
        expect(outcome.results.find(({ id }) => id === 'fits')!.value).toBe(value('margin', 'L') >= 0);
      },
    ),
  );
});

describe('the first line and the stop', () => {
  test.each([
    [2, /^It fits/, 0],
    [6, /^It does not fit below the reserve/, 0],
    [10, /^The sump runs over/, 1],
  ])('the display falls %d cm', (drop, expected, stops) => {
    const { outcome } = back({ display_drop: [drop, 'cm'] });
    if (outcome.kind !== 'answer') throw new Error('no answer');
    expect(answerIn(outcome, METRIC).headline).toMatch(expected);
    expect(outcome.cautions.filter(({ level }) => level === 'stop')).toHaveLength(stops);
  });

  test('says how much is on the floor: 0.9·0.10 + 9 + 90 − 160 = 29 L', () => {
    const { outcome } = back({ display_drop: [10, 'cm'] });
    if (outcome.kind !== 'answer') throw new Error('no answer');
    expect(answerIn(outcome, METRIC).cautions[0]!.text).toMatch(/puts 29 L of salt water/);
  });
});

test('asks for sizes where there is no area, and for the fall of a box only when there is one', () => {
  expect(told(outcomeOf(drainbackVolume, {}))).toEqual([
    'display_drop',
    'length',
    'width',
    'box_area',
    'sump_rim',
    'sump_length',
    'sump_width',
    'sump_volume_now',
  ]);
  const { box_drop: _, ...rest } = tank;
  expect(told(outcomeOf(drainbackVolume, rest))).toEqual(['box_drop']);
  expect(outcomeOf(drainbackVolume, { ...rest, box_area: [0, 'm2'] }).kind).toBe('answer');
});

test('refuses a sump that holds more than its walls', () => {
  expect(told(outcomeOf(drainbackVolume, { ...tank, sump_volume_now: [900, 'L'] })).join()).toMatch(
    /cannot hold that much/,
  );
});

test('refuses panes that leave no inside', () => {
  const { display_area: _, ...rest } = tank as Said & { display_area: unknown };
  const thick: Said = { ...rest, length: [60, 'cm'], width: [20, 'cm'], glass_thickness: [12, 'cm'] };
  expect(told(outcomeOf(drainbackVolume, thick)).join()).toMatch(/No inside is left/);
});
