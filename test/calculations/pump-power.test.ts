import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pumpPower } from '../../src/core/calculations/pump-power.js';
import { read, warns } from './said-first.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const pump = (flow: number, head: number, more: Said = {}): Said => ({
  flow: [flow, 'L/h'],
  head: [head, 'm'],
  ...more,
});

describe('by hand', () => {
  // A kilogram a second raised a metre takes 9.80665 W; sea water weighs 1.0233 kg a litre.
  test.each([
    [3600, 1, 9.80665 * 1.0233],
    [7200, 2, 4 * 9.80665 * 1.0233],
    [3500, 2.3, 22.44],
    [1800, 4, 2 * 9.80665 * 1.0233],
  ])('%d L/h at %d m takes %d W of water', (flow, head, watts) => {
    expect(worked(pumpPower, pump(flow, head)).value('hydraulic_power', 'W')).toBeCloseTo(watts, 2);
  });

  test('at 25 % that is four times as much at the plug, and 65 W in for 22.4 out is 35 %', () => {
    const guessed = worked(pumpPower, pump(3500, 2.3));
    expect(guessed.value('electric_power', 'W') / guessed.value('hydraulic_power', 'W')).toBeCloseTo(4, 9);
    expect(guessed.low('electric_power', 'W')).toBeCloseTo(22.44 / 0.45, 1);
    expect(guessed.high('electric_power', 'W')).toBeCloseTo(22.44 / 0.15, 1);
    const measured = worked(pumpPower, pump(3500, 2.3, { measured_power: [65, 'W'] }));
    expect(measured.value('efficiency_measured', '%')).toBeCloseTo(34.5, 1);
    expect(measured.value('energy_per_month', 'kWh/month')).toBeCloseTo((65 * 24 * 365.25) / 12 / 1000, 6);
  });

  test('in the water all of it warms the water, outside only what the water is given', () => {
    const heat = (placement: string) =>
      worked(pumpPower, pump(3500, 2.3, { measured_power: [65, 'W'], placement })).value('heat_to_water', 'W');
    expect(heat('submerged')).toBeCloseTo(65, 9);
    expect(heat('external')).toBeCloseTo(22.44, 2);
  });
});

test('what an efficiency predicts, the watts give back', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.05, max: 0.8, noNaN: true }), (eta) => {
      const watts = worked(pumpPower, pump(3000, 2, { efficiency: [eta, 'fraction'] })).value('electric_power', 'W');
      const back = worked(pumpPower, pump(3000, 2, { measured_power: [watts, 'W'] }));
      expect(back.value('efficiency_measured', 'fraction')).toBeCloseTo(eta, 9);
    }),
  );
});

test('the first line, and what is said of a guess and of a tired pump', () => {
  expect(read(pumpPower, pump(3500, 2.3)).headline).toMatch(/^Moving the water takes 22.4 W; at the plug/);
  const tired = pump(3500, 2.3, { measured_power: [200, 'W'] });
  expect(read(pumpPower, tired).headline).toMatch(/of the 200 W, so the pump is 11% efficient/);
  expect([warns(pumpPower, tired, /dirty or worn/), warns(pumpPower, pump(3500, 2.3), /dirty or worn/)]).toEqual([
    true,
    false,
  ]);
  expect([warns(pumpPower, tired, /is a guess/), warns(pumpPower, pump(3500, 2.3), /is a guess/)]).toEqual([
    false,
    true,
  ]);
});

test('refuses a pump that gives more than it takes; asks for flow and head', () => {
  expect(told(outcomeOf(pumpPower, pump(3500, 2.3, { measured_power: [20, 'W'] }))).join()).toMatch(
    /more than the pump draws/,
  );
  expect(told(outcomeOf(pumpPower, {}))).toEqual(['flow', 'head']);
});
