import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { glassBottom } from '../../src/core/calculations/glass-bottom.js';
import { spoken } from './spoken.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const bottom = (length: number, width: number, water: number, glass?: number): Said => ({
  length: [length, 'cm'],
  width: [width, 'cm'],
  water_height: [water, 'cm'],
  ...(glass === undefined ? {} : { glass_thickness: [glass, 'mm'] as const }),
});

// Roark, Table 11.4 case 1a: the published coefficients at whole ratios.
test.each([
  [60, 60, 0.2874],
  [84, 60, 0.453],
  [180, 60, 0.7134],
  [240, 60, 0.741],
  [300, 60, 0.7476],
])('%d × %d cm under 50 cm of water in 15 mm', (length, width, beta) => {
  const { value } = worked(glassBottom, bottom(length, width, 50, 15));
  expect(value('bending_stress', 'Pa')).toBeCloseTo(beta * 1025 * 9.80665 * 0.5 * 40 ** 2, 3);
  expect(value('bottom_pressure', 'Pa')).toBeCloseTo(5025.908, 3);
});

test('length and width may be swapped; glass of the thickness named has a factor of 3.8', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 40, max: 150, noNaN: true }),
      fc.double({ min: 40, max: 80, noNaN: true }),
      fc.double({ min: 20, max: 80, noNaN: true }),
      (length, width, water) => {
        const { value } = worked(glassBottom, bottom(length, width, water));
        const needed = value('thickness_for_3_8', 'mm');
        fc.pre(needed >= 4 && needed <= 40);
        const turned = worked(glassBottom, bottom(width, length, water, needed));
        expect(turned.value('safety_factor', '1')).toBeCloseTo(3.8, 9);
        const deeper = worked(glassBottom, bottom(length, width, water * 1.1));
        expect(deeper.value('thickness_for_3_8', 'mm') / needed).toBeCloseTo(Math.sqrt(1.1), 9);
      },
    ),
  );
});

test('a bottom that nobody measured is as thick as the sides', () => {
  const said: Said = { ...bottom(100, 50, 45), pane_thickness: [12, 'mm'] };
  expect(worked(glassBottom, said).value('safety_factor', '1')).toBeCloseTo(
    worked(glassBottom, bottom(100, 50, 45, 12)).value('safety_factor', '1'),
    12,
  );
});

describe('the first line', () => {
  test.each([
    [bottom(100, 50, 45, 12), /^Within this check: .* bottom of 12 mm/],
    [bottom(120, 50, 48, 12), /^Outside this check: .* 3\.4/],
    [bottom(120, 50, 48), /takes 12\.6 mm of glass .*: 15 mm is the next/],
    [bottom(300, 100, 80), /more than plain sheets come in/],
  ] as [Said, RegExp][])('%o', (said, expected) => {
    expect(spoken(glassBottom, said).headline).toMatch(expected);
  });
});

test('a stop above 7.25 MPa only; when it does not apply, and that rock is not in it, always', () => {
  expect(spoken(glassBottom, bottom(120, 50, 48, 10)).cautions).toMatch(/^stop: /);
  const fair = spoken(glassBottom, bottom(120, 50, 48, 11)).cautions;
  expect(fair).not.toMatch(/stop: /);
  expect(fair).toMatch(/foam sheet/);
  expect(fair).toMatch(/Rock is not in this/);
});

test('asks for the sizes and the water; refuses acrylic and a strip', () => {
  expect(told(outcomeOf(glassBottom, {}))).toEqual(['length', 'width', 'water_height']);
  expect(told(outcomeOf(glassBottom, { ...bottom(100, 50, 45, 12), material: 'acrylic' })).join()).toMatch(/creeps/);
  expect(told(outcomeOf(glassBottom, bottom(300, 50, 45, 12))).join()).toMatch(/five times/);
  expect(told(outcomeOf(glassBottom, bottom(100, 50, 95, 12))).join()).toMatch(/90 cm|0\.9 m/);
});
