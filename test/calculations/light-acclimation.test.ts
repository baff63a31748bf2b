import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lightAcclimation } from '../../src/core/calculations/light-acclimation.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const ramp = (start: number, weeks: number, more: Said = {}): Said => ({
  start_fraction: [start, 'fraction'],
  weeks: [weeks, 'week'],
  ...more,
});

describe('worked by hand', () => {
  test('50 to 100 % in 5 weeks, week 2: 70 %, of 240 that is 168; a first step of a fifth', () => {
    const said = ramp(0.5, 5, { week: [2, 'week'], ppfd_final: [240, 'umol/m2/s'] });
    const { value } = worked(lightAcclimation, said);
    expect(value('fraction_linear', '1')).toBeCloseTo(0.7, 9);
    expect(value('fraction_equal_ratio', '1')).toBeCloseTo(0.5 * 2 ** 0.4, 9);
    expect(value('ppfd_now', 'umol/m2/s')).toBeCloseTo(168, 6);
    expect(value('first_step', '1')).toBeCloseTo(0.2, 9);
  });
  test('day 10 of 4 weeks is 10/28 of the way', () => {
    const { value } = worked(lightAcclimation, ramp(0.6, 4, { day: [10, 'day'], hours_final: [9, 'h'] }));
    expect(value('fraction_linear', '1')).toBeCloseTo(0.6 + (0.4 * 10) / 28, 9);
    expect(value('hours_now', 'h')).toBeCloseTo(9 * (0.6 + (0.4 * 10) / 28), 9);
  });
  test('hours never go below 6, nor above a final day that is shorter still', () => {
    const hours = (final: number) =>
      worked(lightAcclimation, ramp(0.4, 6, { week: [0, 'week'], hours_final: [final, 'h'] })).value('hours_now', 'h');
    expect(hours(10)).toBeCloseTo(6, 9);
    expect(hours(5)).toBeCloseTo(5, 9);
  });
  test('mesh of 80 %: 0.8³ = 0.512 is still above a half, so four layers, 0.4096', () => {
    const { value } = worked(lightAcclimation, ramp(0.5, 4, { layer_transmission: [0.8, 'fraction'] }));
    expect(value('layers', '1')).toBe(4);
    expect(value('start_fraction_screens', '1')).toBeCloseTo(0.4096, 9);
    expect(value('days_per_layer', 'day')).toBeCloseTo(7, 9);
  });
  test('0.8² is 0.64 exactly: two layers and no third', () => {
    expect(
      worked(lightAcclimation, ramp(0.64, 4, { layer_transmission: [0.8, 'fraction'] })).value('layers', '1'),
    ).toBe(2);
  });
  test('the weekly list runs from the start to the end', () => {
    const { outcome } = worked(lightAcclimation, ramp(0.4, 6));
    const weekly = outcome.results.find(({ id }) => id === 'weekly')?.value as number[];
    expect(weekly.map((share) => Math.round(share * 1000))).toEqual([400, 500, 600, 700, 800, 900, 1000]);
  });
});

test('rises from start to end and stays there; equal relative steps never run ahead of equal steps', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 1, noNaN: true }),
      fc.integer({ min: 1, max: 26 }),
      fc.double({ min: 0, max: 60, noNaN: true }),
      (start, weeks, now) => {
        const at = (w: number) => worked(lightAcclimation, ramp(start, weeks, { week: [w, 'week'] }));
        const [before, after] = [at(now), at(now + 1)];
        const linear = before.value('fraction_linear', '1');
        expect(linear).toBeGreaterThanOrEqual(start - 1e-12);
        expect(linear).toBeLessThanOrEqual(1 + 1e-12);
        expect(after.value('fraction_linear', '1')).toBeGreaterThanOrEqual(linear - 1e-12);
        expect(before.value('fraction_equal_ratio', '1')).toBeLessThanOrEqual(linear + 1e-12);
        if (now >= weeks) expect(linear).toBeCloseTo(1, 12);
      },
    ),
  );
});

test('layers start at or below the wanted share, one fewer would not, and all are off at the end', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 0.95, noNaN: true }),
      fc.double({ min: 0.3, max: 0.95, noNaN: true }),
      fc.integer({ min: 1, max: 26 }),
      (start, t, weeks) => {
        const said = ramp(start, weeks, { layer_transmission: [t, 'fraction'] });
        const { value } = worked(lightAcclimation, said);
        const layers = value('layers', '1');
        expect(t ** layers).toBeLessThanOrEqual(start * (1 + 1e-6));
        expect(t ** (layers - 1)).toBeGreaterThan(start);
        const end = worked(lightAcclimation, { ...said, week: [weeks, 'week'] });
        expect(end.value('layers_left', '1')).toBeCloseTo(0, 12);
        expect(end.value('fraction_screens', '1')).toBeCloseTo(1, 12);
        const first = worked(lightAcclimation, { ...said, week: [0, 'week'] });
        expect(first.value('layers_left', '1')).toBe(layers);
      },
    ),
  );
});

test('a first step of more than a quarter is warned about', () => {
  const warned = (said: Said) =>
    worked(lightAcclimation, said).outcome.cautions.some(({ text }) => /more than a quarter/.test(text));
  expect(warned(ramp(0.3, 4))).toBe(true);
  expect(warned(ramp(0.5, 5))).toBe(false);
});

test('asks for the start and the weeks, not for the week', () => {
  expect(told(outcomeOf(lightAcclimation, {}))).toEqual(['start_fraction', 'weeks']);
  expect(outcomeOf(lightAcclimation, ramp(0.5, 6)).kind).toBe('answer');
});

test.each([
  [ramp(1.2, 4), /5% to|0\.05 to 1/],
  [ramp(0.8, 4, { final_fraction: [0.6, 'fraction'] }), /brighter than the end/],
  [ramp(0.5, 4, { layer_transmission: [1, 'fraction'] }), /0\.3 to 0\.95/],
  [ramp(0.5, 30), /26 weeks/],
] as [Said, RegExp][])('%j is refused', (said, because) => {
  const outcome = outcomeOf(lightAcclimation, said);
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(because);
});
