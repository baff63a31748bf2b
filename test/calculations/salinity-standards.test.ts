import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { salinityFromConductivity } from '../../src/core/calculations/salinity-from-conductivity.js';
import { salinityFromDensity } from '../../src/core/calculations/salinity-from-density.js';
import { salinityFromSg } from '../../src/core/calculations/salinity-from-sg.js';
import { salinityToConductivity } from '../../src/core/calculations/salinity-to-conductivity.js';
import { salinityToSg } from '../../src/core/calculations/salinity-to-sg.js';
import { salinityUnits } from '../../src/core/calculations/salinity-units.js';
import {
  practicalSalinity68,
  practicalSalinityAtPressure,
  practicalSalinityExtended,
  pureWaterDensity68,
  refractiveIndex,
  seawaterDensity68,
} from '../../src/core/models/seawater.js';
import { worked } from './worked.js';

const salinities = (low: number) => fc.double({ min: low, max: 42, noNaN: true });
const temperatures = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });

describe('UNESCO Technical Papers in Marine Science 44, printed check values', () => {
  test.each([
    [1, 15, 0, 35],
    [1.2, 20, 2000, 37.245628],
    [0.65, 5, 1500, 27.995347],
  ])('ratio %d at %d °C and %d dbar is salinity %d', (R, t, p, S) => {
    expect(practicalSalinityAtPressure(R, t, p)).toBeCloseTo(S, 6);
  });

  test.each([
    [1, 15, 35],
    [1.0568875, 20, 37.245628],
    [0.81705885, 5, 27.995347],
  ])('ratio %d against salinity 35 at the same %d °C is salinity %d', (Rt, t, S) => {
    expect(practicalSalinity68(Rt, t)).toBeCloseTo(S, 5);
  });

  test.each([
    [0, 5, 999.96675],
    [0, 25, 997.04796],
    [35, 5, 1027.67547],
    [35, 25, 1023.34306],
    [0, 0, 999.842594],
    [35, 0, 1028.106331],
    [35, 30, 1021.728639],
  ])('salinity %d at %d °C weighs %d kg/m³', (S, t, density) => {
    expect(seawaterDensity68(S, t)).toBeCloseTo(density, 5);
  });
});

test('pure water is densest near 4 °C at 999.975 kg/m³ (handbooks)', () => {
  const densest = Array.from({ length: 81 }, (_, i) => i / 10).reduce((a, b) =>
    pureWaterDensity68(b) > pureWaterDensity68(a) ? b : a,
  );
  expect(densest).toBeCloseTo(4, 1);
  expect(pureWaterDensity68(densest)).toBeCloseTo(999.975, 3);
});

test('refractive index at 20 °C and 589.3 nm (Quan and Fry 1995): 1.33300 fresh, 1.33941 at 35', () => {
  expect(refractiveIndex(0, 20, 589.3)).toBeCloseTo(1.333, 4);
  expect(refractiveIndex(35, 20, 589.3)).toBeCloseTo(1.33941, 4);
});

test('the extension for diluted seawater meets the scale itself at its lower end', () => {
  const reading = (S: number) =>
    worked(salinityToConductivity, { salinity: [S, 'g/kg'], temperature: [25, 'degC'] }).value('conductivity', 'mS/cm');
  expect(practicalSalinityExtended(reading(2), 25 * 1.00024)).toBeCloseTo(2, 2);
});

describe('there and back', () => {
  test('salinity to conductivity', () => {
    fc.assert(
      fc.property(salinities(2), temperatures(-2, 35), (S, t) => {
        const there = worked(salinityToConductivity, { salinity: [S, 'g/kg'], temperature: [t, 'degC'] });
        const C = there.value('conductivity', 'mS/cm');
        fc.pre(C >= 1 && C <= 80);
        const back = worked(salinityFromConductivity, {
          conductivity: [C, 'mS/cm'],
          temperature: [t, 'degC'],
          reading: 'actual',
        });
        expect(Math.abs(back.value('salinity', 'g/kg') - S)).toBeLessThan(1e-9);
        expect(back.value('conductivity_ratio', '1')).toBeCloseTo(there.value('conductivity_ratio', '1'), 12);
      }),
    );
  });

  test('salinity to the reading of a meter that corrects to 25 °C', () => {
    fc.assert(
      fc.property(salinities(2), temperatures(-2, 35), (S, t) => {
        const there = worked(salinityToConductivity, { salinity: [S, 'g/kg'], temperature: [t, 'degC'] });
        const C = there.value('conductivity_at_25', 'mS/cm');
        const back = worked(salinityFromConductivity, { conductivity: [C, 'mS/cm'], reading: 'compensated_25' });
        expect(Math.abs(back.value('salinity', 'g/kg') - S)).toBeLessThan(1e-9);
      }),
    );
  });

  test('salinity to specific gravity, whatever the two temperatures', () => {
    fc.assert(
      fc.property(salinities(0), temperatures(0, 40), temperatures(0, 40), (S, t, reference) => {
        const scale = { temperature: [t, 'degC'], reference_temperature: [reference, 'degC'] } as const;
        const there = worked(salinityToSg, { salinity: [S, 'g/kg'], ...scale });
        const SG = there.value('specific_gravity', '1');
        fc.pre(SG >= 0.99 && SG <= 1.04);
        const back = worked(salinityFromSg, { specific_gravity: [SG, '1'], ...scale });
        expect(Math.abs(back.value('salinity', 'g/kg') - S)).toBeLessThan(1e-9);
        expect(back.value('density', 'kg/m3')).toBeCloseTo(there.value('density', 'kg/m3'), 9);
      }),
    );
  });

  test('salinity to density', () => {
    fc.assert(
      fc.property(salinities(0), temperatures(0, 40), (S, t) => {
        const there = worked(salinityToSg, { salinity: [S, 'g/kg'], temperature: [t, 'degC'] });
        const density = there.value('density', 'kg/m3');
        const back = worked(salinityFromDensity, { density: [density, 'kg/m3'], temperature: [t, 'degC'] });
        expect(Math.abs(back.value('salinity', 'g/kg') - S)).toBeLessThan(1e-9);
      }),
    );
  });

  test('salinity to grams a litre', () => {
    fc.assert(
      fc.property(salinities(0), temperatures(0, 40), (S, t) => {
        const there = worked(salinityUnits, { salinity: [S, 'g/kg'], temperature: [t, 'degC'] });
        const back = worked(salinityUnits, {
          concentration: [there.value('concentration', 'g/L'), 'g/L'],
          temperature: [t, 'degC'],
        });
        expect(Math.abs(back.value('salinity', 'g/kg') - S)).toBeLessThan(1e-9);
      }),
    );
  });
});
