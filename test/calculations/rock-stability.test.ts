import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rockStability } from '../../src/core/calculations/rock-stability.js';
import { spoken } from './spoken.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const piece = (kg: number, z: number, b: number, push: number): Said => ({
  mass: [kg, 'kg'],
  centre_height: [z, 'cm'],
  edge_distance: [b, 'cm'],
  push_height: [push, 'cm'],
});
const G = 9.80665;

describe('by hand', () => {
  test.each([
    [20, 20, 45],
    [30, Math.sqrt(3) * 10, 30],
    [10, Math.sqrt(3) * 10, 60],
  ])('centre %d cm up, edge %d cm off: %d°', (z, b, degrees) => {
    expect(worked(rockStability, piece(10, z, b, 50)).value('overturning_angle', 'deg')).toBeCloseTo(degrees, 9);
  });

  test('27 kg of rock of 2700 kg/m³ is 10 L and loses 10.25 kg under water', () => {
    const { value } = worked(rockStability, { ...piece(27, 30, 12, 50), rock_density: [2700, 'kg/m3'] });
    expect(value('submerged_weight', 'N')).toBeCloseTo((27 - 10.25) * G, 9);
    expect(value('push_to_topple', 'N')).toBeCloseTo(((27 - 10.25) * G * 12) / 50, 9);
  });

  test('three parts: the mean of where they are, weighed by their mass', () => {
    const parts = '12 kg 20 cm 14 cm, 6 kg 45 cm 8 cm, 5 kg 1 cm 15 cm';
    const { value } = worked(rockStability, { parts, push_height: [60, 'cm'] });
    const [b, z] = [(12 * 14 + 6 * 8 + 5 * 15) / 23, (12 * 20 + 6 * 45 + 5) / 23];
    expect(value('overturning_angle', 'deg')).toBeCloseTo((Math.atan(b / z) * 180) / Math.PI, 9);
    expect(value('submerged_weight', 'N')).toBeCloseTo(23 * G * (1 - 1025 / 2700), 9);
  });
});

test('the base named is just enough for both, 25° and 50 N', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 2, max: 100, noNaN: true }),
      fc.double({ min: 5, max: 80, noNaN: true }),
      fc.double({ min: 10, max: 120, noNaN: true }),
      (kg, z, push) => {
        const wanted = worked(rockStability, piece(kg, z, 10, push)).value('edge_distance_wanted', 'cm');
        fc.pre(wanted < 140);
        const { value } = worked(rockStability, piece(kg, z, wanted, push));
        expect(Math.min(value('overturning_angle', 'deg') / 25, value('push_to_topple', 'N') / 50)).toBeCloseTo(1, 9);
      },
    ),
  );
});

test('one part is the piece itself; a plate glued under it never makes it worse', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 2, max: 40, noNaN: true }),
      fc.integer({ min: 10, max: 60 }),
      fc.integer({ min: 1, max: 20 }),
      fc.double({ min: 0.5, max: 20, noNaN: true }),
      (kg, z, b, plate) => {
        const alone = worked(rockStability, piece(kg, z, b, 60));
        const listed = worked(rockStability, { parts: `[[${kg}, ${z}, ${b}]]`, push_height: [60, 'cm'] });
        expect(listed.value('push_to_topple', 'N')).toBeCloseTo(alone.value('push_to_topple', 'N'), 6);
        const glued = worked(rockStability, {
          parts: `[[${kg}, ${z}, ${b}], [${plate}, 1, ${b}]]`,
          push_height: [60, 'cm'],
        });
        expect(glued.value('overturning_angle', 'deg')).toBeGreaterThan(alone.value('overturning_angle', 'deg'));
        expect(glued.value('push_to_topple', 'N')).toBeGreaterThan(alone.value('push_to_topple', 'N'));
      },
    ),
  );
});

describe('the first line and the cautions', () => {
  test.each([
    ['stands', piece(40, 20, 20, 40), /^Within this check/, false, false],
    ['leans and is pushed', piece(25, 30, 12, 55), /^Too easy to topple/, true, true],
    ['is pushed', piece(10, 20, 15, 40), /^Too easy to push over/, false, true],
    ['leans', piece(200, 60, 20, 60), /^It leans only/, false, true],
    ['falls', piece(10, 20, 0, 40), /^It falls over by itself/, true, true],
    ['falls outward', piece(10, 20, -5, 40), /^It falls over by itself/, true, true],
  ] as [string, Said, RegExp, boolean, boolean][])('%s', (_, said, first, stop, glue) => {
    const { headline, cautions } = spoken(rockStability, { ...said, rock_density: [2700, 'kg/m3'] });
    expect(headline).toMatch(first);
    expect(/^stop: /m.test(cautions)).toBe(stop);
    expect(/Gluing it to a plate/.test(cautions)).toBe(glue);
    expect(cautions).toMatch(/Glue and mortar/);
  });

  test('no push is named for what falls by itself', () => {
    const { outcome } = worked(rockStability, piece(10, 20, -5, 40));
    expect(outcome.results.some(({ id }) => id === 'push_to_topple')).toBe(false);
  });
});

test('asks for the piece or its parts, and refuses a part that is none', () => {
  expect(told(outcomeOf(rockStability, {}))).toEqual(['mass', 'centre_height', 'edge_distance', 'push_height']);
  expect(told(outcomeOf(rockStability, { parts: '12 kg 20 cm 14 cm' }))).toEqual(['push_height']);
  expect(told(outcomeOf(rockStability, { ...piece(10, 20, 5, 40), parts: '12 kg 900 cm 14 cm' })).join()).toMatch(
    /outside/,
  );
  expect(told(outcomeOf(rockStability, piece(10, 0, 5, 40))).join()).toMatch(/above 0/);
});
