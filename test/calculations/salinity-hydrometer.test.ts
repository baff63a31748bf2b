import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { salinityHydrometer } from '../../src/core/calculations/salinity-hydrometer.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

describe('worked examples', () => {
  test('by hand: 60/60 °F reads 1.0240 at 78 °F, 1.024*999.016/(1 + 25e-6*10) = 1022.74 kg/m³', () => {
    const { value } = worked(salinityHydrometer, {
      reading: [1.024, '1'],
      temperature: [78, 'degF'],
      scale: '60/60 F',
    });
    expect(value('density', 'kg/m3')).toBeCloseTo((1.024 * 999.016) / 1.00025, 2);
    expect(value('correction', '1')).toBeCloseTo(0.0024, 4);
  });

  test('UNESCO 44 densities: 20/4-like scale of 25 over 5 °C read at 25 °C needs no correction', () => {
    const { value } = worked(salinityHydrometer, {
      reading: [1023.34306 / 999.96675, '1'],
      temperature: [25 / 1.00024, 'degC'],
      calibration_temperature: [25 / 1.00024, 'degC'],
      reference_temperature: [5 / 1.00024, 'degC'],
    });
    expect(value('salinity', 'g/kg')).toBeCloseTo(35, 4);
    expect(value('correction', '1')).toBeCloseTo(0, 9);
  });

  test('glass matters 0.34 ppt in 10 degrees, plastic eight times as much', () => {
    const salinityWith = (said: Said) =>
      worked(salinityHydrometer, { reading: [1.0246, '1'], temperature: [25, 'degC'], scale: '15/15', ...said }).value(
        'salinity',
        'g/kg',
      );
    const rigid = salinityWith({ expansion: [0, '1/K'] });
    const glass = rigid - salinityWith({ body: 'glass' });
    expect(glass).toBeCloseTo(0.34, 2);
    expect((rigid - salinityWith({ body: 'plastic' })) / glass).toBeCloseTo(8, 1);
  });
});

test('warm water makes it read low, cold water high', () => {
  const degrees = fc.double({ min: 10, max: 35, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 1.012, max: 1.026, noNaN: true }), degrees, degrees, (reading, t, made) => {
      fc.pre(Math.abs(t - made) > 0.01);
      const { value } = worked(salinityHydrometer, {
        reading: [reading, '1'],
        temperature: [t, 'degC'],
        calibration_temperature: [made, 'degC'],
      });
      expect(Math.sign(value('correction', '1'))).toBe(Math.sign(t - made));
    }),
  );
});

test('the glass is a guess: the answer carries a spread around it, gone when the body is named', () => {
  const said: Said = { reading: [1.024, '1'], temperature: [78, 'degF'], scale: '60/60 F' };
  const guessed = worked(salinityHydrometer, said);
  expect(guessed.low('salinity', 'g/kg')).toBeLessThan(guessed.value('salinity', 'g/kg'));
  expect(guessed.high('salinity', 'g/kg')).toBeGreaterThan(guessed.value('salinity', 'g/kg'));
  expect(() => worked(salinityHydrometer, { ...said, body: 'glass' }).low('salinity', 'g/kg')).toThrow();
});

describe('asks and refusals', () => {
  test('asks for the temperature in the stem and that of the water', () => {
    expect(told(outcomeOf(salinityHydrometer, { reading: [1.024, '1'] }))).toEqual([
      'calibration_temperature',
      'temperature',
    ]);
  });

  test.each([
    [{ reading: [1.024, '1'], temperature: [25, 'degC'], calibration_temperature: [77, 'degC'] }, /77 °F/],
    [{ reading: [1.24, '1'], temperature: [25, 'degC'], scale: '60/60' }, /zero is probably missing/],
    [{ reading: [1.04, '1'], temperature: [30, 'degC'], scale: '60/60' }, /above 42 ppt/],
    [{ reading: [1.024, '1'], temperature: [25, 'degC'], scale: '60/60', body: 'swing arm' }, /standard/],
  ] as [Said, RegExp][])('%j is refused', (said, because) => {
    const outcome = outcomeOf(salinityHydrometer, said);
    expect(outcome.kind).toBe('refusal');
    expect(told(outcome).join(' ')).toMatch(because);
  });
});
