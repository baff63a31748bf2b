import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { topoffClogFlood } from '../../src/core/calculations/topoff-clog-flood.js';
import { read, warns } from './said-first.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const base: Said = {
  usable_volume: [12, 'L'],
  display_free_volume: [24, 'L'],
  flow: [3600, 'L/h'],
  topoff_rate: [12, 'L/h'],
  salinity: [35, 'g/kg'],
  system_volume: [400, 'L'],
};
const clog = (more: Said = {}) => worked(topoffClogFlood, { ...base, ...more });
const holds = (id: string, more: Said = {}) => clog(more).outcome.results.find((entry) => entry.id === id)?.value;

describe('by hand', () => {
  test('12 L at a litre a second are gone in 12 s; the 12 L left fill at 12 L/h in an hour', () => {
    const { value } = clog();
    expect(value('time_to_dry', 's')).toBeCloseTo(12, 9);
    expect(value('time_to_flood', 's')).toBeCloseTo(3612, 6);
    expect(value('fresh_water_added', 'L')).toBeCloseTo(12.04, 6);
    expect(value('salinity_at_flood', 'g/kg')).toBeCloseTo((35 * 400) / 412.04, 6);
    expect(value('longest_run_time', 'h')).toBeCloseTo(1, 9);
  });

  test('in 12 hours 11 less 12 s are spilled, at 12 L/h: 131.96 L; ten hours of it make 119.96', () => {
    expect(clog().value('spilled', 'L')).toBeCloseTo(131.96, 6);
    expect(clog({ time: [11, 'h'] }).value('spilled', 'L')).toBeCloseTo(119.96, 6);
    expect(clog({ time: [30, 'min'] }).value('spilled', 'L')).toBeCloseTo(0, 9);
  });

  test('half of the rate evaporating doubles the hour', () => {
    expect(clog({ evaporation: [144, 'L/day'] }).value('time_to_flood', 's')).toBeCloseTo(7212, 6);
  });

  test('chains from sizes: 24 × 50 cm drawn from 17 to 7 cm is 12 L, 152 × 62 cm in 10 mm panes with 3 cm free is 27 L', () => {
    const { usable_volume: _, display_free_volume: __, ...rest } = base;
    const sizes: Said = {
      ...rest,
      chamber_length: [24, 'cm'],
      chamber_width: [50, 'cm'],
      running_level: [17, 'cm'],
      pump_inlet: [5, 'cm'],
      length: [152, 'cm'],
      width: [62, 'cm'],
      glass_thickness: [10, 'mm'],
      freeboard: [3, 'cm'],
    };
    expect(worked(topoffClogFlood, sizes).value('room_left', 'L')).toBeCloseTo(15, 9);
  });

  test('step by step in seconds it floods when the formula says', () => {
    let [display, chamber, t] = [0, 12, 0];
    while (display < 24 && t < 1e5) {
      const pumped = Math.min(1, chamber + 12 / 3600);
      chamber += 12 / 3600 - pumped;
      display += pumped;
      t += 1;
    }
    // The pump keeps up with the trickle, so what runs in meanwhile is in the display as well.
    expect(Math.abs(t / clog().value('time_to_flood', 's') - 1)).toBeLessThan(0.01);
  });
});

describe('what bounds it', () => {
  test.each([
    ['a reservoir that fits', { reservoir_volume: [11, 'L'] }, false],
    ['a reservoir that does not', { reservoir_volume: [13, 'L'] }, true],
    ['a run-time limit that fits', { run_time_limit: [55, 'min'] }, false],
    ['a run-time limit that does not', { run_time_limit: [65, 'min'] }, true],
    ['the smaller of the two', { reservoir_volume: [100, 'L'], run_time_limit: [30, 'min'] }, false],
  ] as const)('%s', (_, more, floods) => {
    expect(holds('floods', more as Said)).toBe(floods);
  });

  test('13 L of reservoir with room for 12 spill one litre, however long nobody looks', () => {
    expect(clog({ reservoir_volume: [13, 'L'], time: [3, 'day'] }).value('spilled', 'L')).toBeCloseTo(1, 6);
  });

  test('a reservoir whose pump nobody knows still gets its verdict', () => {
    const { topoff_rate: _, ...rest } = base;
    expect(
      worked(topoffClogFlood, { ...rest, reservoir_volume: [11, 'L'] }).outcome.results.find(
        ({ id }) => id === 'floods',
      )!.value,
    ).toBe(false);
  });
});

test('a faster top-off floods sooner, more room later; water is neither lost nor made', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 2, max: 500, noNaN: true }),
      fc.double({ min: 13, max: 200, noNaN: true }),
      (rate, room) => {
        const at = (q: number, V: number) =>
          clog({ topoff_rate: [q, 'L/h'], display_free_volume: [V, 'L'], time: [20, 'day'] });
        const { value } = at(rate, room);
        expect(at(rate * 1.1, room).value('time_to_flood', 'h')).toBeLessThan(value('time_to_flood', 'h'));
        expect(at(rate, room + 1).value('time_to_flood', 'h')).toBeGreaterThan(value('time_to_flood', 'h'));
        // All that ran in by then is either in the room that was left, in the trickle of the first seconds, or over the rim.
        const first = (rate / 3600) * value('time_to_dry', 's');
        expect(value('spilled', 'L') + (room - 12) + first).toBeCloseTo(rate * 480, 3);
      },
    ),
  );
});

describe('the first line and the warnings', () => {
  const first = (more: Said) => read(topoffClogFlood, { ...base, ...more }).headline;
  test('every verdict', () => {
    expect(first({})).toMatch(/^Clogged drains flood the display in .* until somebody comes\.$/);
    expect(first({ reservoir_volume: [13, 'L'] })).toMatch(
      /^Clogged drains flood the display in .*top-off can add 13 L/,
    );
    expect(first({ reservoir_volume: [11, 'L'] })).toMatch(
      /^It does not flood by this check: the top-off can add 11 L at most/,
    );
    expect(first({ evaporation: [300, 'L/day'] })).toMatch(
      /^It does not flood by this check: the top-off adds no more/,
    );
    expect(first({ usable_volume: [30, 'L'] })).toMatch(/^It floods after 24 s, top-off or not/);
  });

  test.each([
    [/Salt water on the floor/, {}, { reservoir_volume: [11, 'L'] }],
    [/The clog alone floods/, { usable_volume: [30, 'L'] }, {}],
    [/finite reservoir: with less than 12 L/, {}, { reservoir_volume: [11, 'L'] }],
    [/shut the top-off after 60 min.*high float.*leak sensor.*low level/, {}, { reservoir_volume: [11, 'L'] }],
    [/while nobody tops the reservoir up/, { reservoir_volume: [11, 'L'] }, {}],
    [/sucks air burns out/, { reservoir_volume: [11, 'L'] }, {}],
    [/local code/, {}, { reservoir_volume: [13, 'L'] }],
    [/gallons a day, not an hour/, { topoff_rate: [75, 'gal_US/h'] }, {}],
  ] as const)('%s is said only where it holds', (text, said, unsaid) => {
    expect(warns(topoffClogFlood, { ...base, ...(said as Said) }, text)).toBe(true);
    expect(warns(topoffClogFlood, { ...base, ...(unsaid as Said) }, text)).toBe(false);
  });

  test('never more than six', () => {
    expect(read(topoffClogFlood, { ...base, topoff_rate: [75, 'gal_US/h'] }).cautions.length).toBeLessThanOrEqual(6);
  });
});

test('asks for the rate and the sizes, refuses what cannot be', () => {
  expect(told(outcomeOf(topoffClogFlood, {}))).toEqual([
    'topoff_rate',
    'chamber_length',
    'chamber_width',
    'running_level',
    'length',
    'width',
    'freeboard',
  ]);
  expect(told(outcomeOf(topoffClogFlood, { usable_volume: [12, 'L'], display_free_volume: [24, 'L'] }))).toEqual([
    'topoff_rate',
  ]);
  expect(told(outcomeOf(topoffClogFlood, { ...base, topoff_rate: [3000, 'L/h'] })).join()).toMatch(/garden tap/);
  const { usable_volume: _, ...rest } = base;
  const low: Said = { ...rest, return_area: [0.1, 'm2'], running_level: [5, 'cm'], dry_level: [7, 'cm'] };
  expect(told(outcomeOf(topoffClogFlood, low)).join()).toMatch(/below the level at which its pump sucks air/);
  const swapped: Said = { ...rest, return_area: [1, 'm2'], running_level: [20, 'cm'], display_area: [0.1, 'm2'] };
  expect(told(outcomeOf(topoffClogFlood, swapped)).join()).toMatch(/swapped/);
});

describe('a display too small for the return chamber, on a live line', () => {
  const small: Said = { ...base, usable_volume: [20, 'L'], display_free_volume: [10, 'L'], topoff_rate: [12, 'L/h'] };
  test('the clog floods, and the line goes on: both are stopped', () => {
    expect(warns(topoffClogFlood, small, /The clog alone floods/)).toBe(true);
    expect(warns(topoffClogFlood, small, /the top-off goes on after that/)).toBe(true);
    expect(warns(topoffClogFlood, { ...small, reservoir_volume: [5, 'L'] }, /the top-off goes on after that/)).toBe(
      false,
    );
  });
});

test('what has not spilled yet is no water on the floor', () => {
  const slow: Said = { ...base, usable_volume: [13, 'L'], display_free_volume: [28, 'L'], topoff_rate: [0.5, 'L/h'] };
  expect(warns(topoffClogFlood, slow, /Salt water on the floor/)).toBe(false);
  expect(warns(topoffClogFlood, slow, /Nothing spills within/)).toBe(true);
});

test('a run-time limit that starts again is warned of, a reservoir is not called a line', () => {
  const limit: Said = { ...base, usable_volume: [12, 'L'], display_free_volume: [20, 'L'], run_time_limit: [5, 'min'] };
  expect(warns(topoffClogFlood, limit, /starts again by itself/)).toBe(true);
  expect(warns(topoffClogFlood, limit, /nobody tops the reservoir up/)).toBe(false);
});
