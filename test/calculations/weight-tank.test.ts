import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { weightTank } from '../../src/core/calculations/weight-tank.js';
import { spoken } from './spoken.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const size = (length: number, width: number, height: number, glass: number): Said => ({
  length: [length, 'cm'],
  width: [width, 'cm'],
  height: [height, 'cm'],
  glass_thickness: [glass, 'mm'],
});
const mass = (said: Said) => worked(weightTank, said).value('tank_mass', 'kg');

describe('worked by hand, pane by pane', () => {
  test('48 × 24 × 24 in of half-inch glass: bottom 576, long sides 1128, ends 540.5 in³', () => {
    const { value } = worked(weightTank, {
      length: [48, 'in'],
      width: [24, 'in'],
      height: [24, 'in'],
      glass_thickness: [0.5, 'in'],
    });
    expect(value('pane_volume', 'in3')).toBeCloseTo(576 + 1128 + 540.5, 6);
    expect(value('tank_mass', 'kg')).toBeCloseTo(2244.5 * 0.016387064 * 2.5, 6);
  });

  test('a bottom of 15 mm under 12 mm sides, 150 × 60 × 55 cm', () => {
    const bottom = 150 * 60 * 1.5;
    const sides = 2 * 150 * 53.5 * 1.2 + 2 * 57.6 * 53.5 * 1.2;
    expect(mass({ ...size(150, 60, 55, 12), bottom_thickness: [15, 'mm'] })).toBeCloseTo(
      ((bottom + sides) / 1000) * 2.5,
      6,
    );
  });

  test('strips of 6 cm round the rim of 120 × 50 × 50 in 10 mm: 118 × 48 less 106 × 36 cm, 1 cm thick', () => {
    const { value } = worked(weightTank, { ...size(120, 50, 50, 10), brace_width: [6, 'cm'] });
    expect(value('brace_volume', 'L')).toBeCloseTo((118 * 48 - 106 * 36) / 1000, 9);
    expect(value('tank_mass', 'kg')).toBeCloseTo(56.16 + 4.62, 6);
    const thin = worked(weightTank, {
      ...size(120, 50, 50, 10),
      brace_width: [6, 'cm'],
      brace_thickness: [5, 'mm'],
    });
    expect(thin.value('tank_mass', 'kg')).toBeCloseTo(56.16 + 2.31, 6);
  });

  // Handbooks: float glass weighs 2.5 kg for each square metre and millimetre.
  test('a thin-walled cube of 1 m has five panes of 1 m²: 2.5 kg for each millimetre, less the corners', () => {
    expect(mass(size(100, 100, 100, 3))).toBeGreaterThan(5 * 2.5 * 3 * 0.985);
    expect(mass(size(100, 100, 100, 3))).toBeLessThan(5 * 2.5 * 3);
  });
});

const sizes = fc.tuple(
  fc.double({ min: 30, max: 300, noNaN: true }),
  fc.double({ min: 30, max: 100, noNaN: true }),
  fc.double({ min: 30, max: 100, noNaN: true }),
  fc.double({ min: 4, max: 25, noNaN: true }),
);

test('what the panes and the inside fill is the box', () => {
  fc.assert(
    fc.property(sizes, ([L, W, H, t]) => {
      const panes = worked(weightTank, size(L, W, H, t)).value('pane_volume', 'L');
      const inside = ((L - t / 5) * (W - t / 5) * (H - t / 10)) / 1000;
      expect(panes + inside).toBeCloseTo((L * W * H) / 1000, 6);
    }),
  );
});

test('thicker glass is heavier, acrylic weighs 1190/2500 of glass, and a density that is given outranks both', () => {
  fc.assert(
    fc.property(sizes, ([L, W, H, t]) => {
      const said = size(L, W, H, t);
      expect(mass(size(L, W, H, t + 1))).toBeGreaterThan(mass(said));
      expect(mass({ ...said, material: 'acrylic' }) / mass(said)).toBeCloseTo(1190 / 2500, 9);
      expect(mass({ ...said, density: [2600, 'kg/m3'], material: 'acrylic' }) / mass(said)).toBeCloseTo(1.04, 9);
    }),
  );
});

test('the first line says when it is more than two people should carry', () => {
  const heavy = spoken(weightTank, size(120, 50, 50, 10));
  expect(heavy.headline).toMatch(/^Empty, the tank weighs 56.2 kg .* more than two people/);
  expect(heavy.cautions).toMatch(/46 kg/);
  const light = spoken(weightTank, size(60, 40, 40, 6));
  expect(light.headline).toMatch(/kg \(.* lb\)\.$/);
  expect(light.cautions).not.toMatch(/46 kg/);
});

test('says that the bottom counts as thick as the sides only while nobody gave it', () => {
  expect(spoken(weightTank, size(60, 40, 40, 6)).cautions).toMatch(/The bottom counts/);
  expect(spoken(weightTank, { ...size(60, 40, 40, 6), bottom_thickness: [8, 'mm'] }).cautions).not.toMatch(
    /The bottom counts/,
  );
});

test('asks for what is missing, and refuses what cannot be a tank', () => {
  expect(told(outcomeOf(weightTank, {}))).toEqual(['length', 'width', 'height', 'glass_thickness']);
  expect(told(outcomeOf(weightTank, size(60, 40, 40, 100))).join()).toMatch(/millimetres/);
  expect(told(outcomeOf(weightTank, size(60, 40, 40, 1))).join()).toMatch(/thinner than any pane/);
  expect(told(outcomeOf(weightTank, size(60, 6, 40, 35))).join()).toMatch(/No inside is left/);
  expect(told(outcomeOf(weightTank, { ...size(60, 40, 10, 10), bottom_thickness: [100, 'mm'] })).join()).toMatch(
    /bottom pane is as thick/,
  );
  expect(told(outcomeOf(weightTank, { ...size(60, 40, 40, 10), brace_width: [20, 'cm'] })).join()).toMatch(
    /wider than the opening/,
  );
});
