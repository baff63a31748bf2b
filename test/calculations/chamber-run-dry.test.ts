import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chamberRunDry } from '../../src/core/calculations/chamber-run-dry.js';
import { read, warns } from './said-first.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const base: Said = {
  return_area: [0.1, 'm2'],
  running_level: [20, 'cm'],
  dry_level: [8, 'cm'],
  flow: [3600, 'L/h'],
  display_area: [0.8, 'm2'],
  freeboard: [3, 'cm'],
};
const dry = (more: Said = {}) => worked(chamberRunDry, { ...base, ...more });

describe('by hand', () => {
  test('0.1·(0.20 − 0.08) = 12 L are up in 12 s and lift 0.8 m² by 15 mm; 24 L have room', () => {
    const { value } = dry();
    expect(value('usable_volume', 'L')).toBeCloseTo(12, 9);
    expect(value('time_to_dry', 's')).toBeCloseTo(12, 9);
    expect(value('display_rise', 'mm')).toBeCloseTo(15, 9);
    expect(value('display_free_volume', 'L')).toBeCloseTo(24, 9);
    expect(value('highest_level_held', 'cm')).toBeCloseTo(32, 9);
  });
  test('a box of 0.2 m² shares the rise: 12 mm', () => {
    expect(dry({ box_area: [0.2, 'm2'] }).value('display_rise', 'mm')).toBeCloseTo(12, 9);
  });
  test('heads of 3 L add to it, the room of a box to the other side', () => {
    const { value } = dry({ upstream_heads_volume: [3, 'L'], box_free_volume: [2, 'L'] });
    expect(
      [value('usable_volume', 'L'), value('display_free_volume', 'L')].map((x) => Math.round(x * 1e6) / 1e6),
    ).toEqual([15, 26]);
  });
  test('40 L from a full chamber do not fit: over the rim after 24 s', () => {
    const { value, outcome } = dry({ running_level: [48, 'cm'] });
    expect(value('time_to_flood', 's')).toBeCloseTo(24, 9);
    expect(outcome.results.find(({ id }) => id === 'display_holds_it')!.value).toBe(false);
  });
  test('25 × 40 cm and an inlet at 6 cm are the same chamber', () => {
    const { return_area: _, dry_level: __, ...rest } = base;
    const said: Said = { ...rest, chamber_length: [25, 'cm'], chamber_width: [40, 'cm'], pump_inlet: [6, 'cm'] };
    expect(worked(chamberRunDry, said).value('usable_volume', 'L')).toBeCloseTo(12, 9);
  });
});

test('at the highest level it names the display is filled to the rim, no more', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.02, max: 0.3, noNaN: true }),
      fc.double({ min: 0.5, max: 12, noNaN: true }),
      (area, free) => {
        const at = (level: number) =>
          dry({ return_area: [area, 'm2'], freeboard: [free, 'cm'], running_level: [level, 'cm'] });
        const top = at(20).value('highest_level_held', 'cm');
        fc.pre(top < 149);
        const { value } = at(top);
        expect(value('usable_volume', 'L')).toBeCloseTo(value('display_free_volume', 'L'), 6);
      },
    ),
  );
});

test('the first line and the warnings on both sides', () => {
  expect(read(chamberRunDry, base).headline).toMatch(/^The display holds it: the pump sucks air after 12 s/);
  const full: Said = { ...base, running_level: [48, 'cm'] };
  expect(read(chamberRunDry, full).headline).toMatch(/^The display runs over after/);
  const both = (text: RegExp, holding: Said = base, flooding: Said = full) => [
    warns(chamberRunDry, holding, text),
    warns(chamberRunDry, flooding, text),
  ];
  expect(both(/Run the return chamber at 32 cm at most/)).toEqual([false, true]);
  expect(both(/no running level helps/, full, { ...full, upstream_heads_volume: [40, 'L'] })).toEqual([false, true]);
  expect(both(/It is close/, base, { ...base, running_level: [30, 'cm'] })).toEqual([false, true]);
  expect(both(/only while nothing adds water/)).toEqual([true, false]);
  const { dry_level: _, ...guessed } = base;
  expect(both(/is a guess/, base, guessed)).toEqual([false, true]);
});

test('asks for sizes, refuses a level below the inlet and a chamber larger than the display', () => {
  expect(told(outcomeOf(chamberRunDry, {}))).toEqual([
    'chamber_length',
    'chamber_width',
    'running_level',
    'flow',
    'length',
    'width',
    'freeboard',
  ]);
  expect(told(outcomeOf(chamberRunDry, { ...base, running_level: [5, 'cm'] })).join()).toMatch(/sucks air/);
  expect(told(outcomeOf(chamberRunDry, { ...base, return_area: [1, 'm2'] })).join()).toMatch(/swapped/);
});
