import fc from 'fast-check';
import { expect, test } from 'vitest';
import { drainHoleLayout } from '../../src/core/calculations/drain-hole-layout.js';
import { outcomeOf, told, worked } from './worked.js';

const layout = (glass: number, hole: number) =>
  worked(drainHoleLayout, { glass_thickness: [glass, 'mm'], hole_diameter: [hole, 'mm'] });

test.each([
  // two thicknesses to an edge and between holes, six to a corner; a hole's diameter by common practice
  [10, 60, 20, 60, 60],
  [19, 44, 38, 114, 44],
  [15, 25, 30, 90, 30],
])('%d mm of glass, %d mm hole', (glass, hole, edge, corner, practice) => {
  const { value } = layout(glass, hole);
  expect(value('edge_distance_least', 'mm')).toBeCloseTo(edge, 9);
  expect(value('between_holes_least', 'mm')).toBeCloseTo(edge, 9);
  expect(value('corner_distance_least', 'mm')).toBeCloseTo(corner, 9);
  expect(value('edge_distance_common_practice', 'mm')).toBeCloseTo(practice, 9);
});

test('common practice never comes closer to the edge than the least distance', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 3, max: 40, noNaN: true }),
      fc.double({ min: 5, max: 200, noNaN: true }),
      (glass, hole) => {
        const { value } = layout(glass, hole);
        expect(value('edge_distance_common_practice', 'mm')).toBeGreaterThanOrEqual(value('edge_distance_least', 'mm'));
      },
    ),
  );
});

test('tempered glass is refused, unknown glass stopped, annealed neither', () => {
  const said = { glass_thickness: [12, 'mm'], hole_diameter: [50, 'mm'] } as const;
  expect(told(outcomeOf(drainHoleLayout, { ...said, glass_kind: 'tempered' })).join()).toMatch(/cannot be drilled/);
  const stops = (more: object) =>
    worked(drainHoleLayout, { ...said, ...more }).outcome.cautions.filter(({ level }) => level === 'stop');
  expect(stops({})).toHaveLength(1);
  expect(stops({ glass_kind: 'annealed' })).toHaveLength(0);
});

test('asks for the glass and for the maker’s hole', () => {
  expect(told(outcomeOf(drainHoleLayout, {}))).toEqual(['glass_thickness', 'hole_diameter']);
});
