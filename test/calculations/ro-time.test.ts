import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roTime } from '../../src/core/calculations/ro-time.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

const membrane: Said = {
  volume: [100, 'L'],
  rated_flow: [75, 'gal_US/day'],
  rated_pressure: [60, 'psi'],
  pressure: [60, 'psi'],
  temperature: [25, 'degC'],
};
const time = (more: Said = {}) => worked(roTime, { ...membrane, ...more }).value('time', 'h');

describe('by hand', () => {
  test('at its rating 75 US gallons (283.9 L) come in a day and a night', () => {
    expect(time({ volume: [283.9059, 'L'] })).toBeCloseTo(24, 4);
  });

  // Table of 1.03^(t − 25), to two figures.
  test.each([
    [5, 0.55],
    [10, 0.64],
    [15, 0.74],
    [20, 0.86],
    [30, 1.16],
  ])('at %d °C it makes %d of its rating', (degrees, factor) => {
    const { value } = worked(roTime, { ...membrane, temperature: [degrees, 'degC'] });
    expect(value('flow', 'gal_US/day') / 75).toBeCloseTo(factor, 2);
  });

  test('three quarters of the pressure take a third longer, and so does back pressure that leaves as much', () => {
    expect(time({ pressure: [45, 'psi'] }) / time()).toBeCloseTo(4 / 3, 9);
    expect(time({ back_pressure: [15, 'psi'] }) / time()).toBeCloseTo(4 / 3, 9);
  });

  test('130 mL a minute fill 100 L in 12 h 49 min, and make 62.4 L in 8 h', () => {
    const said: Said = { volume: [100, 'L'], measured_flow: [7.8, 'L/h'], available_time: [8, 'h'] };
    const { value } = worked(roTime, said);
    expect(value('time', 'min')).toBeCloseTo(12 * 60 + 49.23, 1);
    expect(value('made_in_time', 'L')).toBeCloseTo(62.4, 9);
    expect(() => worked(roTime, said).low('time', 'h')).toThrow();
  });
});

describe('whatever the membrane', () => {
  const degrees = fc.double({ min: 3, max: 34, noNaN: true });
  const kilopascals = fc.double({ min: 70, max: 990, noNaN: true });
  const litres = fc.double({ min: 1, max: 1000, noNaN: true });

  test('warmer, more pressure and more membranes are faster; twice the water takes twice as long', () => {
    fc.assert(
      fc.property(degrees, kilopascals, litres, (t, p, v) => {
        const said: Said = { temperature: [t, 'degC'], pressure: [p, 'kPa'], volume: [v, 'L'] };
        const here = time(said);
        expect(time({ ...said, temperature: [t + 1, 'degC'] })).toBeCloseTo(here / 1.03, 6);
        expect(time({ ...said, pressure: [p + 10, 'kPa'] })).toBeLessThan(here);
        expect(time({ ...said, membranes: [2, 'count'] })).toBeCloseTo(here / 2, 9);
        expect(time({ ...said, volume: [2 * v, 'L'] })).toBeCloseTo(2 * here, 6);
      }),
    );
  });

  test('what is made in the time that a volume takes is that volume', () => {
    fc.assert(
      fc.property(degrees, litres, (t, v) => {
        const said: Said = { temperature: [t, 'degC'], volume: [v, 'L'] };
        const { value } = worked(roTime, { ...membrane, ...said, available_time: [Math.min(720, time(said)), 'h'] });
        expect(value('made_in_time', 'L')).toBeCloseTo(time(said) <= 720 ? v : (v * 720) / time(said), 6);
      }),
    );
  });
});

describe('the first line', () => {
  const { volume: _, ...noVolume } = membrane;
  test.each([
    [membrane, /takes about 8\.5 h, likely 7 to 11: .* its rating or more/],
    [{ ...membrane, temperature: [15, 'degC'] }, /less than its rating/],
    [{ ...membrane, temperature: [5, 'degC'], pressure: [45, 'psi'] }, /less than half of its rating/],
    [{ ...membrane, available_time: [12, 'h'] }, /is ready in .* within the 12 h/],
    [{ ...membrane, available_time: [6, 'h'] }, /is not ready in 6 h: it takes .* and 71 L is made by then/],
    [{ ...membrane, available_time: [9, 'h'] }, /may just be ready in 9 h/],
    [{ ...noVolume, available_time: [8, 'h'] }, /^In 8 h it makes 94\.6 L .* likely 75\.7 to 114/],
    [{ volume: [100, 'L'], measured_flow: [8, 'L/h'] }, /takes 13 h at the 8 L\/h that you measured/],
    [{ volume: [100, 'L'], measured_flow: [8, 'L/h'], available_time: [13, 'h'] }, /is ready in/],
    [{ volume: [100, 'L'], measured_flow: [8, 'L/h'], available_time: [12, 'h'] }, /is not ready in/],
  ] as [Said, RegExp][])('%o', (said, expected) => {
    expect(spoken(roTime, said).headline).toMatch(expected);
  });
});

describe('cautions', () => {
  const says = (more: Said) => spoken(roTime, { ...membrane, ...more }).cautions.join('\n');
  test.each([
    [{ temperature: [30, 'degC'] }, { temperature: [25, 'degC'] }, /hot tap, never/],
    [{ pressure: [35, 'psi'] }, { pressure: [45, 'psi'] }, /booster pump/],
    [{ pressure: [90, 'psi'] }, { pressure: [75, 'psi'] }, /pressure regulator/],
    [{ rated_flow: [75, 'gal_US/h'] }, { rated_flow: [75, 'gal_US/day'] }, /by the day rather than by the hour/],
    [{ temperature: [10, 'degC'] }, { temperature: [20, 'degC'] }, /fall faster than 3 % a degree/],
    [{}, { back_pressure: [0, 'psi'] }, /pushes back: tell me/],
    [{}, { measured_flow: [8, 'L/h'] }, /Read the pressure while it runs/],
  ] as [Said, Said, RegExp][])('%o, but not %o', (with_, without, expected) => {
    expect(says(with_)).toMatch(expected);
    expect(says(without)).not.toMatch(expected);
  });

  test('floods come first', () => expect(says({})).toMatch(/^caution: Floods start here/));

  // 100 L at 10 °C: exp(3020·(1/298.15 − 1/283.15)) = 0.5847 of 11.83 L/h.
  test('the maker’s curve is worked out beside the rule', () => {
    expect(says({ temperature: [10, 'degC'] })).toMatch(/by one of them it takes 14\.5 h/);
  });
});

test('asks for what the label says, and refuses hot water, bar for kilopascals and a tank that pushes back as hard', () => {
  expect(told(outcomeOf(roTime, { volume: [100, 'L'] }))).toEqual([
    'rated_flow',
    'rated_pressure',
    'pressure',
    'temperature',
  ]);
  const refused = (more: Said) => told(outcomeOf(roTime, { ...membrane, ...more })).join();
  expect(refused({ temperature: [50, 'degC'] })).toMatch(/no hot water/);
  expect(refused({ temperature: [68, 'degC'] })).toMatch(/68 °F/);
  expect(refused({ pressure: [4, 'kPa'] })).toMatch(/4 bar is 400 kPa/);
  expect(refused({ rated_pressure: [60, 'kPa'] })).toMatch(/60 psi is 414 kPa/);
  expect(refused({ rated_flow: [5000, 'L/h'] })).toMatch(/rated by the day/);
  expect(refused({ back_pressure: [60, 'psi'] })).toMatch(/nothing flows/);
  expect(refused({ membranes: [1.5, 'count'] })).toMatch(/whole/);
});
