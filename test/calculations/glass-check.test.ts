import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { glassCheck } from '../../src/core/calculations/glass-check.js';
import { spoken } from './spoken.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const pane = (length: number, water: number, glass: number | undefined, top: 'top_free' | 'top_supported'): Said => ({
  length: [length, 'cm'],
  water_height: [water, 'cm'],
  top_edge: top,
  ...(glass === undefined ? {} : { glass_thickness: [glass, 'mm'] as const }),
});

describe('by hand', () => {
  test('how far a rimless 120 × 48 cm pane of 12 mm bows: 0.7101*4824.9*0.48^4/(70e9*0.012^3)', () => {
    const { value } = worked(glassCheck, pane(120, 48, 12, 'top_free'));
    expect(value('deflection', 'mm')).toBeCloseTo((0.7101 * 4824.87 * 0.48 ** 4 * 1000) / (70e9 * 0.012 ** 3), 4);
  });

  test('an end pane of 50 cm beside it: beta at 50/48 between 0.1977 and 0.2781', () => {
    const { value } = worked(glassCheck, { ...pane(120, 48, 12, 'top_free'), width: [50, 'cm'] });
    const beta = 0.1977 + ((50 / 48 - 1) / 0.25) * (0.2781 - 0.1977);
    expect(value('end_safety_factor', '1')).toBeCloseTo(19.2e6 / (beta * 4824.87 * 40 ** 2), 3);
    const braced = worked(glassCheck, { ...pane(120, 48, 12, 'top_supported'), width: [50, 'cm'] });
    expect(braced.value('end_safety_factor', '1')).toBeGreaterThan(value('end_safety_factor', '1'));
  });

  test('an end pane beyond the table has no factor', () => {
    const { outcome } = worked(glassCheck, { ...pane(80, 60, 12, 'top_free'), width: [25, 'cm'] });
    expect(outcome.results.some(({ id }) => id === 'end_safety_factor')).toBe(false);
  });

  test('the whole height of the tank counts as water, less a bottom as thick as the pane', () => {
    const { length, top_edge, glass_thickness } = pane(150, 0, 12, 'top_free');
    const said: Said = { length: length!, top_edge: top_edge!, height: [55, 'cm'] };
    const { value } = worked(glassCheck, { ...said, glass_thickness: glass_thickness! });
    expect(value('bottom_pressure', 'Pa')).toBeCloseTo(1025 * 9.80665 * 0.538, 6);
    expect(worked(glassCheck, said).value('bottom_pressure', 'Pa')).toBeCloseTo(1025 * 9.80665 * 0.55, 6);
  });
});

const panes = fc.record({
  length: fc.double({ min: 40, max: 160, noNaN: true }),
  water: fc.double({ min: 42, max: 78, noNaN: true }),
  glass: fc.double({ min: 5, max: 25, noNaN: true }),
  top: fc.constantFrom('top_free' as const, 'top_supported' as const),
});

test('glass of the thickness named has a factor of 3.8, and twice as thick a pane four times its factor', () => {
  fc.assert(
    fc.property(panes, ({ length, water, glass, top }) => {
      fc.pre(length / water >= 0.5 && length / water <= 4);
      const needed = worked(glassCheck, pane(length, water, undefined, top)).value('thickness_for_3_8', 'mm');
      fc.pre(needed >= 4 && needed <= 30);
      expect(worked(glassCheck, pane(length, water, needed, top)).value('safety_factor', '1')).toBeCloseTo(3.8, 9);
      const thin = worked(glassCheck, pane(length, water, glass / 2 + 2, top)).value('safety_factor', '1');
      const thick = worked(glassCheck, pane(length, water, glass + 4, top)).value('safety_factor', '1');
      expect(thick / thin).toBeCloseTo(4, 9);
    }),
  );
});

test('the same pane scaled up is strained in proportion to its size, a brace helps, more water does not', () => {
  fc.assert(
    fc.property(panes, ({ length, water, glass, top }) => {
      fc.pre(length / water >= 0.55 && length / water <= 4);
      const stress = (k: number) =>
        worked(glassCheck, pane(length * k, water * k, glass * k, top)).value('bending_stress', 'MPa');
      expect(stress(1.1) / stress(1)).toBeCloseTo(1.1, 9);
      const free = worked(glassCheck, pane(length, water, glass, 'top_free')).value('safety_factor', '1');
      const held = worked(glassCheck, pane(length, water, glass, 'top_supported')).value('safety_factor', '1');
      expect(held).toBeGreaterThan(free);
      expect(worked(glassCheck, pane(length, water * 1.05, glass, top)).value('bending_stress', 'MPa')).toBeGreaterThan(
        stress(1),
      );
    }),
  );
});

describe('the first line', () => {
  test.each([
    [pane(120, 48, 12, 'top_free'), /^Within this check: 12 mm .* factor of 4\.5/],
    [pane(150, 55, 12, 'top_free'), /^Outside this check: 12 mm .* 3\.8 is usual and takes 14\.\d mm/],
    [pane(150, 55, undefined, 'top_free'), /takes 14\.\d mm of glass: 15 mm is the next/],
    [pane(340, 88, undefined, 'top_free'), /more than plain sheets come in/],
  ] as [Said, RegExp][])('%o', (said, expected) => {
    expect(spoken(glassCheck, said).headline).toMatch(expected);
  });
});

describe('cautions', () => {
  const said = (...args: Parameters<typeof pane>) => spoken(glassCheck, pane(...args)).cautions;
  test('a stop from 7.25 MPa on, below the usual factor a caution, above it neither', () => {
    expect(said(150, 55, 11, 'top_free')).toMatch(/^stop: /);
    expect(said(150, 55, 13, 'top_free')).not.toMatch(/stop: /);
    expect(said(150, 55, 13, 'top_free')).toMatch(/Below the usual factor/);
    expect(said(150, 55, 15, 'top_free')).not.toMatch(/Below the usual factor/);
  });
  test('long rimless panes twist at their corners', () => {
    expect(said(130, 50, 15, 'top_free')).toMatch(/where it twists/);
    expect(said(120, 50, 15, 'top_free')).not.toMatch(/where it twists/);
    expect(said(130, 50, 15, 'top_supported')).not.toMatch(/where it twists/);
  });
  test('what held means is said where it is held', () => {
    expect(said(130, 50, 15, 'top_supported')).toMatch(/Cross braces in places count as free/);
    expect(said(130, 50, 15, 'top_free')).not.toMatch(/Cross braces/);
  });
  test('a pane that bows more than half its thickness has left thin-plate theory', () => {
    expect(said(170, 55, 8, 'top_free')).toMatch(/beyond thin-plate theory/);
    expect(said(120, 48, 12, 'top_free')).not.toMatch(/beyond thin-plate theory/);
  });
  test('never a word of being safe', () => {
    expect(`${said(120, 48, 12, 'top_free')}${spoken(glassCheck, pane(120, 48, 12, 'top_free')).headline}`).not.toMatch(
      /\bsafe\b/,
    );
  });
});

test('asks for the pane, the water and the top edge; refuses acrylic, tall water and what the table does not reach', () => {
  expect(told(outcomeOf(glassCheck, {}))).toEqual(['length', 'water_height', 'top_edge']);
  const why = (said: Said) => told(outcomeOf(glassCheck, said)).join();
  expect(why({ ...pane(120, 50, 12, 'top_free'), material: 'acrylic' })).toMatch(/creeps/);
  expect(why(pane(120, 95, 12, 'top_free'))).toMatch(/tank builder/);
  expect(why(pane(220, 50, 12, 'top_free'))).toMatch(/more than four times/);
  expect(why(pane(20, 50, 12, 'top_free'))).toMatch(/less than half/);
  expect(why(pane(120, 50, 100, 'top_free'))).toMatch(/millimetres/);
  expect(why(pane(120, 50, 2, 'top_free'))).toMatch(/Thinner glass/);
  expect(why({ ...pane(60, 50, 10, 'top_free'), width: [90, 'cm'] })).toMatch(/swap the two/);
});
