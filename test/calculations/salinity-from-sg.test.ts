import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { salinityFromSg } from '../../src/core/calculations/salinity-from-sg.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

describe('worked examples', () => {
  // The densities that UNESCO 44 prints (temperatures IPTS-68), turned round.
  test.each([
    [1023.34306 / 997.04796, 25, 25],
    [1027.67547 / 999.96675, 5, 5],
    [1027.67547 / 997.04796, 5, 25],
  ])('%d at %d over %d °C is 35', (SG, sample68, water68) => {
    const { value } = worked(salinityFromSg, {
      specific_gravity: [SG, '1'],
      temperature: [sample68 / 1.00024, 'degC'],
      reference_temperature: [water68 / 1.00024, 'degC'],
    });
    expect(value('salinity', 'g/kg')).toBeCloseTo(35, 4);
  });
});

test('without a convention 1.025 is 33.2, between what 60/60 °F and 20/4 make of the same digits', () => {
  const { value, low, high, outcome } = worked(salinityFromSg, { specific_gravity: [1.025, '1'] });
  expect(value('salinity', 'g/kg')).toBeCloseTo(33.2, 1);
  expect(low('salinity', 'g/kg')).toBeCloseTo(32.6, 1);
  expect(high('salinity', 'g/kg')).toBeCloseTo(35.3, 1);
  const other = (scale: string) => worked(salinityFromSg, { specific_gravity: [1.025, '1'], scale });
  expect(low('salinity', 'g/kg')).toBeCloseTo(other('60/60 F').value('salinity', 'g/kg'), 9);
  expect(high('salinity', 'g/kg')).toBeCloseTo(other('20/4').value('salinity', 'g/kg'), 9);
  const defaults = outcome.inputs.filter(({ from }) => from === 'default').map(({ id }) => id);
  expect(defaults).toEqual(['temperature', 'reference_temperature']);
});

test('a convention that was named leaves no spread', () => {
  expect(() =>
    worked(salinityFromSg, { specific_gravity: [1.025, '1'], scale: '20/4' }).low('salinity', 'g/kg'),
  ).toThrow();
});

test('one thousandth is 1.2 to 1.5 ppt, and the assumed scale lies between the other two', () => {
  fc.assert(
    fc.property(fc.double({ min: 1.001, max: 1.029, noNaN: true }), (SG) => {
      const at = (reading: number) => worked(salinityFromSg, { specific_gravity: [reading, '1'] });
      const here = at(SG);
      const step = at(SG + 0.001).value('salinity', 'g/kg') - here.value('salinity', 'g/kg');
      expect(step).toBeGreaterThan(1.2);
      expect(step).toBeLessThan(1.5);
      expect(here.low('salinity', 'g/kg')).toBeLessThan(here.value('salinity', 'g/kg'));
      expect(here.high('salinity', 'g/kg')).toBeGreaterThan(here.value('salinity', 'g/kg'));
    }),
  );
});

describe('asks and refusals', () => {
  test('asks for the reading', () => {
    expect(told(outcomeOf(salinityFromSg, {}))).toEqual(['specific_gravity']);
  });

  test.each([
    [{ specific_gravity: [1.26, '1'] }, /1\.026/],
    [{ specific_gravity: [1.25, '1'] }, /1\.025/],
    [{ specific_gravity: [1025, '1'] }, /density/],
    [{ specific_gravity: [35, '1'] }, /salinity/],
    [{ specific_gravity: [0.995, '1'] }, /lighter than fresh water/],
    [{ specific_gravity: [1.035, '1'] }, /above 42 ppt/],
    [{ specific_gravity: [1.04, '1'], temperature: [40, 'degC'], reference_temperature: [4, 'degC'] }, /above 42 ppt/],
  ] as [Said, RegExp][])('%j is refused', (said, because) => {
    const outcome = outcomeOf(salinityFromSg, said);
    expect(outcome.kind).toBe('refusal');
    expect(told(outcome).join(' ')).toMatch(because);
  });
});
