import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { topoffRunaway } from '../../src/core/calculations/topoff-runaway.js';
import { read, warns } from './said-first.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const base: Said = {
  topoff_rate: [10, 'L/h'],
  sump_free_volume: [50, 'L'],
  system_volume: [450, 'L'],
  salinity: [35, 'g/kg'],
  time: [10, 'h'],
};
const open = (more: Said = {}) => worked(topoffRunaway, { ...base, ...more });

describe('by hand', () => {
  test('50 L at 10 L/h are full in 5 h at 35·450/500 = 31.5; in 10 h 50 L are spilled', () => {
    const { value } = open();
    expect(value('time_to_overflow', 'h')).toBeCloseTo(5, 9);
    expect(value('salinity_at_overflow', 'g/kg')).toBeCloseTo(31.5, 9);
    expect(value('spilled', 'L')).toBeCloseTo(50, 9);
    expect(value('salinity_then', 'g/kg')).toBeCloseTo(31.5 * Math.exp(-0.1), 9);
  });

  test('33 ppt is passed when 450·(35/33 − 1) = 27.27 L have run in: 2.73 h', () => {
    expect(open().value('time_to_33', 'h')).toBeCloseTo(2.7273, 4);
  });

  test('minute by minute the salt washes out as the formula says', () => {
    let [volume, salt] = [450, 450 * 35];
    for (let i = 0; i < 6000; i += 1) {
      volume += 1 / 60;
      if (volume > 500) {
        salt *= 500 / volume;
        volume = 500;
      }
    }
    const long = open({ time: [10, 'h'] }).value('salinity_then', 'g/kg');
    expect(Math.abs(salt / volume / long - 1)).toBeLessThan(0.001);
  });

  test('half evaporates: it takes twice as long', () => {
    expect(open({ evaporation: [120, 'L/day'] }).value('time_to_overflow', 'h')).toBeCloseTo(10, 9);
  });

  test('a sump by its sizes: 82 × 52 cm in 10 mm panes, 22.5 of 35 cm full, has room for 50 L', () => {
    const { sump_free_volume: _, ...rest } = base;
    const said: Said = {
      ...rest,
      sump_length: [82, 'cm'],
      sump_width: [52, 'cm'],
      sump_glass_thickness: [10, 'mm'],
      sump_rim: [35, 'cm'],
      sump_water_height: [22.5, 'cm'],
    };
    expect(worked(topoffRunaway, said).value('sump_free_volume', 'L')).toBeCloseTo(50, 9);
  });

  test('a reservoir of 60 L into 50 L of room spills 10 L, whenever somebody looks', () => {
    const { value } = open({ reservoir_volume: [60, 'L'], time: [5, 'day'] });
    expect(value('spilled', 'L')).toBeCloseTo(10, 9);
  });
});

test('the longer it runs the fresher it gets, and no water is made', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.5, max: 200, noNaN: true }),
      fc.double({ min: 1, max: 100, noNaN: true }),
      (hours, rate) => {
        const at = (t: number) => open({ time: [t, 'h'], topoff_rate: [rate, 'L/h'] });
        expect(at(hours + 1).value('salinity_then', 'g/kg')).toBeLessThan(at(hours).value('salinity_then', 'g/kg'));
        expect(at(hours).value('spilled', 'L')).toBeCloseTo(Math.max(0, rate * hours - 50), 6);
      },
    ),
  );
});

test('the first line of every kind', () => {
  const first = (more: Said) => read(topoffRunaway, { ...base, ...more }).headline;
  expect(first({})).toMatch(/^The sump runs over after 5 h; by 10 h 50 L .* is on the floor/);
  expect(first({ time: [3, 'h'] })).toMatch(/has not yet/);
  expect(first({ evaporation: [300, 'L/day'] })).toMatch(/^It never runs over/);
  expect(first({ reservoir_volume: [20, 'L'] })).toMatch(/^The sump holds it by this check: the top-off can add 20 L/);
});

test.each([
  [/Salt water on the floor/, {}, { reservoir_volume: [20, 'L'] }],
  [/more than 2 ppt in hours/, {}, { reservoir_volume: [10, 'L'] }],
  [/Then stack up/, {}, { reservoir_volume: [20, 'L'] }],
  [/If it has happened/, {}, { reservoir_volume: [5, 'L'] }],
  [/drain-back of a power cut/, { reservoir_volume: [20, 'L'] }, {}],
  [/local code/, {}, { run_time_limit: [20, 'min'] }],
  [/gallons a day, not an hour/, { topoff_rate: [100, 'gal_US/h'] }, {}],
] as const)('%s is said only where it holds', (text, said, unsaid) => {
  expect(warns(topoffRunaway, { ...base, ...(said as Said) }, text)).toBe(true);
  expect(warns(topoffRunaway, { ...base, ...(unsaid as Said) }, text)).toBe(false);
});

test('asks for what is missing, refuses what cannot be', () => {
  expect(told(outcomeOf(topoffRunaway, {}))).toEqual([
    'topoff_rate',
    'sump_length',
    'sump_width',
    'sump_rim',
    'sump_water_height',
    'system_volume',
  ]);
  expect(told(outcomeOf(topoffRunaway, { ...base, topoff_rate: [3000, 'L/h'] })).join()).toMatch(/garden tap/);
  expect(outcomeOf(topoffRunaway, { ...base, sump_free_volume: [0, 'L'] }).kind).toBe('refusal');
  const { sump_free_volume: _, ...rest } = base;
  const high: Said = { ...rest, sump_area: [0.4, 'm2'], sump_rim: [30, 'cm'], sump_water_height: [40, 'cm'] };
  expect(told(outcomeOf(topoffRunaway, high)).join()).toMatch(/above the rim of the sump/);
});
