import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { volumeDisplacement } from '../../src/core/calculations/volume-displacement.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

describe('worked by hand', () => {
  test('27 kg of rock at 2700 kg/m³ is 10 L; between 27/2900 and 27/2400 m³', () => {
    const { value, low, high } = worked(volumeDisplacement, { rock_mass: [27, 'kg'] });
    expect(value('rock_displacement', 'L')).toBeCloseTo(10, 9);
    expect(low('rock_displacement', 'L')).toBeCloseTo(27 / 2.9, 6);
    expect(high('rock_displacement', 'L')).toBeCloseTo(27 / 2.4, 6);
  });
  test('5 cm of sand on 1 m² is 50 L, of which 44 % is water: 28 L of grains', () => {
    const { value, low, high } = worked(volumeDisplacement, { sand_area: [1, 'm2'], sand_depth: [5, 'cm'] });
    expect(value('sand_displacement', 'L')).toBeCloseTo(28, 9);
    expect([low('sand_displacement', 'L'), high('sand_displacement', 'L')]).toEqual([
      expect.closeTo(25, 6),
      expect.closeTo(30, 6),
    ]);
  });
  test('the sand bed of a 102 x 52 cm tank in 10 mm glass covers 1 x 0.5 m: 4 cm of it displace 11.2 L', () => {
    const said: Said = {
      length: [102, 'cm'],
      width: [52, 'cm'],
      glass_thickness: [10, 'mm'],
      sand_depth: [4, 'cm'],
    };
    expect(worked(volumeDisplacement, said).value('displacement', 'L')).toBeCloseTo(11.2, 6);
  });
  test('60 kg of rock and 3 cm on 0.81 m² in 436 L: 22.22 + 13.61 L, 400.17 L left', () => {
    const said: Said = {
      rock_mass: [60, 'kg'],
      sand_area: [0.81, 'm2'],
      sand_depth: [3, 'cm'],
      gross_volume: [436, 'L'],
    };
    expect(worked(volumeDisplacement, said).value('actual_volume', 'L')).toBeCloseTo(400.17, 2);
  });
});

test('what is displaced and what is left make up the whole', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 300, noNaN: true }),
      fc.double({ min: 0, max: 15, noNaN: true }),
      (rock, depth) => {
        const { value } = worked(volumeDisplacement, {
          rock_mass: [rock, 'kg'],
          sand_area: [0.8, 'm2'],
          sand_depth: [depth, 'cm'],
          gross_volume: [600, 'L'],
        });
        expect(value('displacement', 'L') + value('actual_volume', 'L')).toBeCloseTo(600, 9);
        expect(value('rock_displacement', 'L') + value('sand_displacement', 'L')).toBeCloseTo(
          value('displacement', 'L'),
          9,
        );
      },
    ),
  );
});

describe('asks and refusals', () => {
  test('asks for rock when nothing is given, and for the area when only the depth of sand is', () => {
    expect(told(outcomeOf(volumeDisplacement, {}))).toEqual(['rock_mass']);
    expect(told(outcomeOf(volumeDisplacement, { sand_depth: [3, 'cm'] }))).toEqual(['sand_area']);
    expect(told(outcomeOf(volumeDisplacement, { rock_mass: [30, 'kg'], sand_depth: [3, 'cm'] }))).toEqual([
      'sand_area',
    ]);
  });
  test.each([
    [{ sand_area: [0.5, 'm2'], sand_depth: [4, 'cm'], sand_porosity: [1.4, 'fraction'] }, /between 0 and 1/],
    [{ rock_mass: [500, 'kg'], gross_volume: [100, 'L'] }, /more room/],
    [{ rock_mass: [50, 'kg'], rock_density: [1000, 'kg/m3'] }, /1500 to 3000/],
  ] as [Said, RegExp][])('%j is refused', (said, because) => {
    const outcome = outcomeOf(volumeDisplacement, said);
    expect(outcome.kind).toBe('refusal');
    expect(told(outcome).join(' ')).toMatch(because);
  });
});
