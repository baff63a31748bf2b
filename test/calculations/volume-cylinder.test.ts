import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { volumeCylinder } from '../../src/core/calculations/volume-cylinder.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const cylinder = (D: number, H: number, more: Said = {}): Said => ({ diameter: [D, 'cm'], height: [H, 'cm'], ...more });
const litres = (said: Said) => worked(volumeCylinder, said).value('water_volume', 'L');

describe('worked by hand', () => {
  test('20 cm across and 10 cm high is pi litres', () => {
    expect(litres(cylinder(20, 10))).toBeCloseTo(Math.PI, 9);
  });
  test('60 cm across in 10 mm: a circle of 58 cm, 55 cm of water: 145.3144 L', () => {
    expect(litres(cylinder(60, 60, { glass_thickness: [10, 'mm'], freeboard: [4, 'cm'] }))).toBeCloseTo(145.3144, 3);
  });
  test('a steel drum of 22.5 in by 34.4 in inside: 3.1416·22.5²/4·34.4 = 13,678 in³ = 59.2 US gal', () => {
    const said: Said = { diameter: [22.5, 'in'], height: [34.4, 'in'] };
    expect(worked(volumeCylinder, said).value('water_volume', 'gal_US')).toBeCloseTo(59.21, 1);
  });
});

test('grows with the square of its width and stays pi/4 of the box around it', () => {
  const size = fc.double({ min: 10, max: 250, noNaN: true });
  fc.assert(
    fc.property(size, size, (D, H) => {
      expect(litres(cylinder(2 * D, H)) / litres(cylinder(D, H))).toBeCloseTo(4, 9);
      expect(litres(cylinder(D, H)) / ((D * D * H) / 1000)).toBeCloseTo(Math.PI / 4, 9);
    }),
  );
});

test('asks for the diameter, refuses panes that meet in the middle', () => {
  expect(told(outcomeOf(volumeCylinder, { height: [60, 'cm'] }))).toEqual(['diameter']);
  const outcome = outcomeOf(volumeCylinder, cylinder(40, 60, { glass_thickness: [20, 'cm'] }));
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(/diameter/);
});
