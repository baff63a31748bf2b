import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { functions } from '../../src/core/functions.js';
import { heatLoss, saltVapourPressure, saturationPressure } from '../../src/core/models/heat.js';

const call = (name: string, ...args: number[]) => functions.get(name)!.apply(...args);

describe('published values', () => {
  // FAO Irrigation and Drainage Paper 56, annex 2: saturation pressure [kPa] and its slope [kPa/°C].
  test.each([
    [15, 1.705, 0.1098],
    [20, 2.338, 0.1447],
    [25, 3.168, 0.1888],
    [30, 4.243, 0.2434],
  ])('vapour pressure and slope at %d °C', (degrees, pressure, slope) => {
    const T = degrees + 273.15;
    expect(Math.abs(saturationPressure(T) / 1000 / pressure - 1)).toBeLessThan(0.004);
    expect(Math.abs(call('psat_slope', T) / 1000 / slope - 1)).toBeLessThan(0.006);
  });

  test('latent heat at 25 °C: 2441.7 kJ/kg (steam tables)', () => {
    expect(Math.abs(call('latent', 298.15) / 2_441_700 - 1)).toBeLessThan(2e-4);
  });

  test('sea water of 35 ppt has 1.9 % less vapour pressure than fresh (Robinson 1954: 1.87 %)', () => {
    expect(1 - saltVapourPressure(298.15, 0.035) / saturationPressure(298.15)).toBeCloseTo(0.0187, 3);
  });
});

const tank = [15, 0.65, 0.0726, 0.5, 0.035] as const;
const kelvin = (low: number, high: number) => fc.double({ min: low + 273.15, max: high + 273.15, noNaN: true });

test('the room and the water that are found lose just the power asked for', () => {
  fc.assert(
    fc.property(kelvin(20, 32), fc.double({ min: 20, max: 400, noNaN: true }), (T, power) => {
      const room = call('room_at_loss', power, ...tank, T);
      expect(heatLoss(...tank, T, room)).toBeCloseTo(power, 6);
      const water = call('water_at_loss', power, ...tank, T);
      expect(heatLoss(...tank, water, T)).toBeCloseTo(power, 6);
    }),
  );
});

test('beyond the ends of the search the end itself is given', () => {
  expect(call('room_at_loss', 1e5, ...tank, 298.15)).toBe(268.15);
  expect(call('water_at_loss', 1e6, ...tank, 298.15)).toBe(368.15);
});

test('Simpson over eight intervals agrees with ten thousand small steps', () => {
  const [C, P, T0, T1, Tr] = [1.6e6, 500, 293.15, 299.15, 291.15];
  const steps = 10_000;
  let seconds = 0;
  for (let i = 0; i < steps; i += 1) {
    const T = T0 + ((i + 0.5) / steps) * (T1 - T0);
    seconds += (C * (T1 - T0)) / steps / (P - heatLoss(...tank, T, Tr));
  }
  expect(call('time_to_reach', C, P, ...tank, T0, T1, Tr) / seconds).toBeCloseTo(1, 4);
});

// The published coefficient jumps from 35 to 40 where the air above hardly lifts any more: 14 % up, against 0.15 of humidity down.
test('evaporation in still air falls with humidity', () => {
  const at = (RH: number) => call('shah_evaporation', 298.15, 295.15, RH, 0.035);
  fc.assert(
    fc.property(fc.double({ min: 0.05, max: 0.8, noNaN: true }), (RH) => {
      expect(at(RH)).toBeGreaterThan(at(RH + 0.15));
    }),
  );
});
