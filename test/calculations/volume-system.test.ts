import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { volumeSystem } from '../../src/core/calculations/volume-system.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const display: Said = { length: [100, 'cm'], width: [50, 'cm'], height: [50, 'cm'] };
const litres = (said: Said) => worked(volumeSystem, said).value('system_volume', 'L');

describe('worked by hand', () => {
  test('a 100 x 50 x 50 cm display and 60 L in the sump: 310 L', () => {
    expect(litres({ ...display, sump_volume: [60, 'L'] })).toBeCloseTo(310, 6);
  });
  test('27 kg of rock take 10 L, 2 cm of sand on 0.5 m² take 5.6 L: 294.4 L', () => {
    const said: Said = { ...display, sump_volume: [60, 'L'], rock_mass: [27, 'kg'], sand_depth: [2, 'cm'] };
    expect(litres(said)).toBeCloseTo(294.4, 6);
  });
  test('12 mm glass, 4 cm below the rim, 150 x 60 x 55 cm: 423.39 L; 80 L sump, 12 L box, 3 L of pipes', () => {
    const said: Said = {
      length: [150, 'cm'],
      width: [60, 'cm'],
      height: [55, 'cm'],
      glass_thickness: [12, 'mm'],
      freeboard: [4, 'cm'],
      sump_volume: [80, 'L'],
      overflow_box_volume: [12, 'L'],
      pipe_volume: [3, 'L'],
    };
    expect(litres(said)).toBeCloseTo(147.6 * 57.6 * 49.8 * 1e-3 + 95, 6);
  });
  test('a sump of 90 x 45 cm outside in 6 mm, 22 cm of water: 88.8·43.8·22 cm³ = 85.57 L', () => {
    const said: Said = {
      display_volume: [300, 'L'],
      sump_length: [90, 'cm'],
      sump_width: [45, 'cm'],
      sump_glass_thickness: [6, 'mm'],
      sump_water_height: [22, 'cm'],
    };
    expect(worked(volumeSystem, said).value('sump_water', 'L')).toBeCloseTo(85.57, 2);
    expect(litres(said)).toBeCloseTo(385.57, 2);
  });
});

test('every part counts once: the whole is the sum of the parts less what rock displaces', () => {
  const part = fc.double({ min: 0, max: 80, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 100, max: 900, noNaN: true }), part, part, part, part, (d, s, b, p, rock) => {
      const said: Said = {
        display_volume: [d, 'L'],
        sump_volume: [s, 'L'],
        overflow_box_volume: [b, 'L'],
        pipe_volume: [p, 'L'],
        rock_mass: [rock, 'kg'],
      };
      const { value } = worked(volumeSystem, said);
      expect(value('system_volume', 'L') + value('displacement', 'L')).toBeCloseTo(d + s + b + p, 6);
    }),
  );
});

test('a spread of the rock’s density carries over to the system', () => {
  const { low, high } = worked(volumeSystem, {
    display_volume: [300, 'L'],
    sump_volume: [50, 'L'],
    rock_mass: [60, 'kg'],
  });
  expect(low('system_volume', 'L')).toBeCloseTo(350 - 60 / 2.4, 6);
  expect(high('system_volume', 'L')).toBeCloseTo(350 - 60 / 2.9, 6);
});

describe('asks and refusals', () => {
  test('asks for the display first, then for the sump', () => {
    expect(told(outcomeOf(volumeSystem, {}))).toEqual(['length', 'width', 'height', 'sump_volume']);
    expect(told(outcomeOf(volumeSystem, { display_volume: [300, 'L'] }))).toEqual(['sump_volume']);
    expect(told(outcomeOf(volumeSystem, { ...display, sump_length: [90, 'cm'] }))).toEqual([
      'sump_width',
      'sump_water_height',
    ]);
  });
  test('a known display with the sump’s sizes takes those as inside sizes: 80 x 40 x 20 cm, 64 L', () => {
    const said: Said = {
      display_volume: [300, 'L'],
      sump_length: [80, 'cm'],
      sump_width: [40, 'cm'],
      sump_water_height: [20, 'cm'],
    };
    expect(litres(said)).toBeCloseTo(364, 6);
  });
  test('refuses more rock than water', () => {
    const said: Said = { display_volume: [100, 'L'], sump_volume: [0, 'L'], rock_mass: [400, 'kg'] };
    expect(told(outcomeOf(volumeSystem, said)).join(' ')).toMatch(/more room/);
  });
  test('says that no rock was counted, and does not when it was', () => {
    const notes = (said: Said) => worked(volumeSystem, said).outcome.cautions.map(({ text }) => text);
    const said: Said = { display_volume: [300, 'L'], sump_volume: [0, 'L'] };
    expect(notes(said).some((text) => text.startsWith('No rock'))).toBe(true);
    expect(notes({ ...said, rock_mass: [20, 'kg'] }).some((text) => text.startsWith('No rock'))).toBe(false);
  });
});
