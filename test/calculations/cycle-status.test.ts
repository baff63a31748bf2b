import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cycleStatus } from '../../src/core/calculations/cycle-status.js';
import { outcomeOf, type Said, spoken, told, worked } from './worked.js';

/** Rows of day, ammonia, nitrite and dose just after, as the lists of a kept log. */
type Log = readonly (readonly [day: number, ammonia: number, nitrite: number, dose: number])[];
const lists = (log: Log): Said => ({
  days: JSON.stringify(log.map(([day]) => day)),
  total_ammonia_nitrogen: JSON.stringify(log.map(([, ammonia]) => ammonia)),
  nitrite_nitrogen: JSON.stringify(log.map(([, , nitrite]) => nitrite)),
  dose_after_reading: JSON.stringify(log.map(([, , , dose]) => dose)),
});
const stageOf = (said: Said) =>
  worked(cycleStatus, said).outcome.results.find(({ id }) => id === 'stage')!.value as string;
const stage = (log: Log) => stageOf(lists(log));

/** Logs invented for the rule they stand beside. */
const logs: readonly (readonly [why: string, stage: string, line: RegExp, log: Log])[] = [
  [
    'two doses gone a day later',
    'ready',
    /^Ready/,
    [
      [30, 0, 0.05, 2],
      [31, 0, 0.05, 2],
      [32, 0.1, 0.05, 0],
    ],
  ],
  [
    'the same with a reading at half a day',
    'ready',
    /^Ready/,
    [
      [30, 0, 0, 2],
      [30.5, 1, 0.2, 0],
      [31, 0, 0, 2],
      [31.5, 0.9, 0.2, 0],
      [32, 0, 0, 0],
    ],
  ],
  [
    'a failure before two that passed',
    'ready',
    /^Ready/,
    [
      [27, 0.2, 0, 2],
      [28, 0.2, 0.8, 0],
      [30, 0, 0, 2],
      [31, 0.1, 0.1, 2],
      [32, 0.25, 0.1, 0],
    ],
  ],
  [
    'one dose gone',
    'nearly_ready',
    /^Nearly ready/,
    [
      [28, 0.1, 0.05, 2],
      [29, 0.1, 0.08, 0],
    ],
  ],
  [
    'a failure between two that passed',
    'nearly_ready',
    /^Nearly/,
    [
      [28, 0, 0, 2],
      [29, 0, 0, 2],
      [30, 0.2, 0.5, 2],
      [31, 0.1, 0.1, 0],
    ],
  ],
  [
    'a second dose that two days had not cleared',
    'nearly_ready',
    /^Nearly/,
    [
      [28, 0, 0, 2],
      [29, 0, 0, 2],
      [31, 0.5, 0.3, 0],
      [33, 0, 0, 2],
      [34, 0, 0, 0],
    ],
  ],
  [
    'ammonia gone in a day, nitrite high',
    'nitrite_peak',
    /goes within a day, but nitrite/,
    [
      [18, 0.1, 3, 2],
      [19, 0.2, 4.5, 0],
    ],
  ],
  [
    'ammonia gone in a day, nitrite nearly',
    'nitrite_lagging',
    /goes within a day and nitrite is down/,
    [
      [24, 0, 1.2, 2],
      [25, 0.2, 0.6, 0],
    ],
  ],
  [
    'never dosed, all zero',
    'not_proven',
    /nothing was dosed/,
    [
      [1, 0, 0, 0],
      [4, 0.1, 0, 0],
      [8, 0, 0.1, 0],
    ],
  ],
  [
    'dosed too little',
    'not_proven',
    /no dose of at least 1\.5 mg\/L/,
    [
      [20, 0, 0, 1],
      [21, 0, 0, 1],
      [22, 0, 0, 0],
    ],
  ],
  [
    'gone after three days, which proves no day',
    'not_proven',
    /tested a day later/,
    [
      [20, 0, 0, 2],
      [23, 0, 0, 0],
    ],
  ],
  [
    'ammonia flat for nine days',
    'stalled',
    /^Stalled: ammonia has stood near 2 mg\/L/,
    [
      [10, 0.2, 0, 2],
      [12, 2, 0.3, 0],
      [16, 2.05, 0.3, 0],
      [21, 2, 0.3, 0],
    ],
  ],
  [
    'nitrite flat for three weeks',
    'stalled',
    /^Stalled at nitrite: .* 21 days/,
    [
      [20, 0, 3, 0],
      [27, 0, 3, 0],
      [34, 0, 3.1, 0],
      [41, 0, 3, 0],
    ],
  ],
  [
    'ammonia gone for days, nitrite high',
    'nitrite_peak',
    /ammonia is gone, nitrite stands/,
    [
      [12, 0.3, 1, 2],
      [15, 0, 3, 0],
      [17, 0, 3.1, 0],
    ],
  ],
  [
    'nitrite falling from its peak after day 28',
    'nitrite_peak',
    /ammonia is gone, nitrite stands/,
    [
      [20, 0, 9, 0],
      [27, 0, 7, 0],
      [34, 0, 4, 0],
      [41, 0, 2, 0],
    ],
  ],
  [
    'ammonia gone for days, nitrite nearly',
    'nitrite_lagging',
    /ammonia is gone and nitrite is down/,
    [
      [20, 0.2, 1, 2],
      [24, 0, 0.5, 0],
    ],
  ],
  [
    'nothing happens on day 5',
    'lag',
    /^Nothing has begun/,
    [
      [0, 0, 0, 2],
      [2, 2, 0, 0],
      [5, 1.95, 0, 0],
    ],
  ],
  [
    'ammonia falls, nitrite climbs',
    'ammonia_oxidation',
    /^The first step works: ammonia falls by 0\.2/,
    [
      [0, 0, 0, 2],
      [8, 1.6, 0.2, 0],
      [10, 1.2, 0.6, 0],
      [12, 0.8, 0.9, 0],
    ],
  ],
  [
    'one reading since the dose',
    'undecided',
    /too few readings/,
    [
      [10, 0.3, 0.5, 2],
      [12, 1.5, 0.5, 0],
    ],
  ],
  [
    'both fall',
    'undecided',
    /without a clear direction/,
    [
      [10, 0, 0.5, 2],
      [12, 1.5, 0.6, 0],
      [14, 1.2, 0.4, 0],
    ],
  ],
];

describe('invented logs, each for one rule', () => {
  test.each(logs)('%s: %s', (_, expected, line, log) => {
    expect(stage(log)).toBe(expected);
    expect(spoken(cycleStatus, lists(log)).headline).toMatch(line);
  });
  test.each(logs)(
    '%s: ready is said where the stage is, and animals are warned of everywhere else',
    (_, expected, __, log) => {
      const { outcome } = worked(cycleStatus, lists(log));
      expect(outcome.results.find(({ id }) => id === 'ready')!.value).toBe(expected === 'ready');
      const { cautions } = spoken(cycleStatus, lists(log));
      expect(cautions.some((text) => text.startsWith('stop: No animals yet'))).toBe(expected !== 'ready');
      expect(cautions.some((text) => /not for a full tank/.test(text))).toBe(expected === 'ready');
      expect(cautions.some((text) => /in this order: pH/.test(text))).toBe(expected === 'stalled');
      expect(cautions.some((text) => /Usual until ammonia/.test(text))).toBe(expected === 'lag');
      expect(cautions.some((text) => /zero means “less than its lowest step”/.test(text))).toBe(true);
      expect(cautions.length).toBeLessThanOrEqual(5);
    },
  );
});

describe('each limit from both sides', () => {
  test.each<[string, Log, string, Log, string]>([
    [
      'a day is 18 h at least',
      [
        [20, 0, 0, 2],
        [20.75, 0, 0, 0],
      ],
      'nearly_ready',
      [
        [20, 0, 0, 2],
        [20.7, 0, 0, 0],
      ],
      'not_proven',
    ],
    [
      'and 30 h at most',
      [
        [20, 0, 0, 2],
        [21.25, 0, 0, 0],
      ],
      'nearly_ready',
      [
        [20, 0, 0, 2],
        [21.3, 0, 0, 0],
      ],
      'not_proven',
    ],
    [
      'a dose of 1.5',
      [
        [20, 0, 0, 1.5],
        [21, 0, 0, 0],
      ],
      'nearly_ready',
      [
        [20, 0, 0, 1.4],
        [21, 0, 0, 0],
      ],
      'not_proven',
    ],
    [
      'ammonia up to 0.25',
      [
        [20, 0, 0, 2],
        [21, 0.25, 0, 0],
      ],
      'nearly_ready',
      [
        [20, 0, 0, 2],
        [21, 0.3, 0, 0],
      ],
      'undecided',
    ],
    [
      'nitrite up to 0.1',
      [
        [20, 0, 0, 2],
        [21, 0, 0.1, 0],
      ],
      'nearly_ready',
      [
        [20, 0, 0, 2],
        [21, 0, 0.11, 0],
      ],
      'nitrite_lagging',
    ],
    [
      'a peak from 1 on',
      [
        [20, 0, 0, 2],
        [21, 0, 1, 0],
      ],
      'nitrite_peak',
      [
        [20, 0, 0, 2],
        [21, 0, 0.99, 0],
      ],
      'nitrite_lagging',
    ],
    [
      'ready only while the last reading is the day after',
      [
        [30, 0, 0, 2],
        [31, 0, 0, 2],
        [32, 0, 0, 0],
      ],
      'ready',
      [
        [30, 0, 0, 2],
        [31, 0, 0, 2],
        [32, 0, 0, 0],
        [36, 0, 0, 0],
      ],
      'not_proven',
    ],
    [
      'no stall before day 14',
      [
        [5, 0, 0, 2],
        [7, 2, 0.3, 0],
        [11, 2, 0.3, 0],
        [15, 2, 0.3, 0],
      ],
      'stalled',
      [
        [4, 0, 0, 2],
        [6, 2, 0.3, 0],
        [10, 2, 0.3, 0],
        [14, 2, 0.3, 0],
      ],
      'undecided',
    ],
    [
      'nor within a week',
      [
        [10, 0, 0, 2],
        [14, 2, 0.3, 0],
        [17, 2, 0.3, 0],
        [21, 2, 0.3, 0],
      ],
      'stalled',
      [
        [10, 0, 0, 2],
        [15, 2, 0.3, 0],
        [17, 2, 0.3, 0],
        [21, 2, 0.3, 0],
      ],
      'undecided',
    ],
    [
      'nor by two readings',
      [
        [10, 0, 0, 2],
        [14, 2, 0.3, 0],
        [18, 2, 0.3, 0],
        [24, 2, 0.3, 0],
      ],
      'stalled',
      [
        [10, 0, 0, 2],
        [14, 2, 0.3, 0],
        [24, 2, 0.3, 0],
      ],
      'undecided',
    ],
    [
      'nor while ammonia falls by more than 0.03 a day',
      [
        [10, 0, 0, 2],
        [14, 2, 0.3, 0],
        [19, 1.9, 0.3, 0],
        [24, 1.8, 0.3, 0],
      ],
      'stalled',
      [
        [10, 0, 0, 2],
        [14, 2, 0.3, 0],
        [19, 1.8, 0.3, 0],
        [24, 1.6, 0.3, 0],
      ],
      'undecided',
    ],
    [
      'nor while nitrite climbs',
      [
        [10, 0, 0, 2],
        [14, 2, 0.3, 0],
        [19, 2, 0.4, 0],
        [24, 1.9, 0.5, 0],
      ],
      'stalled',
      [
        [10, 0, 0, 2],
        [14, 2, 0.3, 0],
        [19, 2, 0.6, 0],
        [24, 1.9, 0.9, 0],
      ],
      'ammonia_oxidation',
    ],
    [
      'nor at half a milligram',
      [
        [10, 0, 0, 2],
        [14, 0.6, 0.3, 0],
        [19, 0.6, 0.3, 0],
        [24, 0.6, 0.3, 0],
      ],
      'stalled',
      [
        [10, 0, 0, 2],
        [14, 0.5, 0.3, 0],
        [19, 0.5, 0.3, 0],
        [24, 0.5, 0.3, 0],
      ],
      'undecided',
    ],
    [
      'nitrite cannot stall before day 28',
      [
        [14, 0, 3, 0],
        [22, 0, 3, 0],
        [29, 0, 3, 0],
      ],
      'stalled',
      [
        [13, 0, 3, 0],
        [21, 0, 3, 0],
        [28, 0, 3, 0],
      ],
      'nitrite_peak',
    ],
    [
      'nor within two weeks',
      [
        [26, 0, 3, 0],
        [33, 0, 3, 0],
        [40, 0, 3, 0],
      ],
      'stalled',
      [
        [27, 0, 3, 0],
        [33, 0, 3, 0],
        [40, 0, 3, 0],
      ],
      'nitrite_peak',
    ],
    [
      'nor with a break below 1',
      [
        [20, 0, 3, 0],
        [30, 0, 1, 0],
        [40, 0, 3, 0],
      ],
      'stalled',
      [
        [20, 0, 3, 0],
        [30, 0, 0.9, 0],
        [40, 0, 3, 0],
      ],
      'nitrite_peak',
    ],
    [
      'nothing has begun at 80 %',
      [
        [0, 0, 0, 2],
        [3, 1.6, 0, 0],
      ],
      'lag',
      [
        [0, 0, 0, 2],
        [3, 1.5, 0, 0],
      ],
      'undecided',
    ],
    [
      'nor with nitrite',
      [
        [0, 0, 0, 2],
        [3, 2, 0.09, 0],
      ],
      'lag',
      [
        [0, 0, 0, 2],
        [3, 2, 0.1, 0],
      ],
      'undecided',
    ],
  ])('%s', (_, one, stageOne, other, stageOther) => {
    expect(stage(one)).toBe(stageOne);
    expect(stage(other)).toBe(stageOther);
  });

  test('limits can be moved', () => {
    const log = lists([
      [20, 0, 0, 1],
      [21, 0.4, 0.2, 0],
    ]);
    expect(stageOf(log)).toBe('undecided');
    const moved: Said = { ammonia_gone: [0.5, 'mg/L'], nitrite_gone: [0.2, 'mg/L'], least_dose: [1, 'mg/L'] };
    expect(stageOf({ ...log, ...moved })).toBe('nearly_ready');
  });

  test('ammonia over 5 and nitrite over 10 are said to hold the bacteria back', () => {
    const cautions = (ammonia: number, nitrite: number) =>
      spoken(cycleStatus, lists([[10, ammonia, nitrite, 0]])).cautions.join('\n');
    expect(cautions(5.1, 0)).toMatch(/over 5 mg\/L/);
    expect(cautions(5, 0)).not.toMatch(/over 5 mg\/L can/);
    expect(cautions(0, 10.1)).toMatch(/over 10 mg\/L can/);
    expect(cautions(0, 10)).not.toMatch(/over 10 mg\/L can/);
  });
});

describe('what the kit counts as', () => {
  test('0.3 of NH3 is 0.247 of nitrogen, 0.3 of NO2 is 0.091: cleared, as it would not be as nitrogen', () => {
    const log = lists([
      [20, 0, 0, 2],
      [21, 0.3, 0.3, 0],
    ]);
    expect(stageOf(log)).toBe('undecided');
    expect(stageOf({ ...log, ammonia_form: 'as_nh3', nitrite_form: 'as_no2' })).toBe('nearly_ready');
    expect(stageOf({ ...log, ammonia_form: 'as_nh4', nitrite_form: 'as_no2' })).toBe('nearly_ready');
    expect(spoken(cycleStatus, log).cautions.join()).toMatch(/tell me which yours prints/);
    const known = spoken(cycleStatus, { ...log, ammonia_form: 'as_nitrogen', nitrite_form: 'as_nitrogen' });
    expect(known.cautions.join()).not.toMatch(/tell me which yours prints/);
  });
});

describe('a log in words', () => {
  const words = (log: Log) =>
    log
      .map(([day, a, n, dose]) => `day ${day}: ammonia ${a}, nitrite ${n}${dose > 0 ? `, dosed ${dose}` : ''}`)
      .join('; ');

  test.each(logs)('%s: the same stage as its lists', (_, expected, __, log) => {
    expect(stageOf({ log: words(log) })).toBe(expected);
  });

  test.each([
    ['Day 28 2 ppm ammonia .1 nitrite dosed 2', 'ammonia 2, nitrite 0.1, dosed 2'],
    ['day 28: NH3-N 0.25 mg/L; NO2-N 0.05 mg/L, no dose', 'ammonia 0.25, nitrite 0.05'],
    ['day 28 (8 am) tan 1, no2 0.5, nitrate 20, ph 8.1, added 2 ppm', 'ammonia 1, nitrite 0.5, dosed 2'],
    ['day 28 amm 0, nitrite 0, should I dose again?', 'ammonia 0, nitrite 0'],
  ])('%s', (text, reading) => {
    const { outcome } = worked(cycleStatus, { log: text });
    expect(outcome.inputs.find(({ id }) => id === 'log')!.text).toBe(`day 28: ${reading}`);
  });

  test('a first day with only a dose starts at nothing', () => {
    const { outcome } = worked(cycleStatus, { log: 'day 0 dosed 2, day 3 ammonia 2 nitrite 0' });
    expect(outcome.inputs.find(({ id }) => id === 'log')!.text).toMatch(/^day 0: ammonia 0, nitrite 0, dosed 2/);
  });

  test.each([
    ['ammonia 2, nitrite 0', /no days/],
    ['day 1 nitrite 0', /Day 1 has no ammonia/],
    ['day 1 ammonia 0', /Day 1 has no nitrite/],
    ['day 1 ammonia 0 nitrite 0 dosed', /not how much/],
    ['day 1 ammonia 80 nitrite 0', /80 is outside 0 to 50 mg\/L/],
    ['day 1 ammonia 1 nitrite 0, day 1 ammonia 1 nitrite 0', /days do not rise/],
    [Array.from({ length: 32 }, (_, i) => `day ${i} ammonia 1 nitrite 0`).join(' '), /last 31 readings/],
  ])('refuses “%s”', (log, because) => {
    expect(told(outcomeOf(cycleStatus, { log })).join()).toMatch(because);
  });
});

test('asks for the log, and for the lists that are missing', () => {
  expect(told(outcomeOf(cycleStatus, {}))).toEqual(['log']);
  expect(told(outcomeOf(cycleStatus, { days: '[1, 2]', total_ammonia_nitrogen: '[0, 0]' }))).toEqual([
    'dose_after_reading',
    'nitrite_nitrogen',
  ]);
});

test('refuses lists of different lengths, and days out of order', () => {
  const log = lists([
    [1, 0, 0, 2],
    [2, 1, 0, 0],
  ]);
  expect(told(outcomeOf(cycleStatus, { ...log, nitrite_nitrogen: '[0]' })).join()).toMatch(/not of one length/);
  expect(told(outcomeOf(cycleStatus, { ...log, days: '[1, 2, 3]' })).join()).toMatch(/not of one length/);
  expect(told(outcomeOf(cycleStatus, { ...log, days: '[2, 1]' })).join()).toMatch(/do not rise/);
});

test('every log has one stage, the same when all its days are moved, and never ready without two doses', () => {
  const level = fc.integer({ min: 0, max: 40 }).map((tenths) => tenths / 10);
  const row = fc.tuple(fc.integer({ min: 1, max: 8 }), level, level, fc.constantFrom(0, 0, 1, 1.5, 2));
  fc.assert(
    fc.property(fc.array(row, { minLength: 1, maxLength: 31 }), (drawn) => {
      let day = 30;
      const log = drawn.map(([gap, a, n, dose]): [number, number, number, number] => {
        day += gap / 4;
        return [day, a, n, dose];
      });
      const found = stage(log);
      // From day 30 on no rule looks at the day itself.
      expect(stage(log.map(([d, ...rest]) => [d + 7, ...rest]))).toBe(found);
      if (found === 'ready') expect(log.filter(([, , , dose]) => dose >= 1.5).length).toBeGreaterThanOrEqual(2);
      const [, ammonia, nitrite] = log.at(-1)!;
      if (found === 'ready' || found === 'nearly_ready') {
        expect(ammonia).toBeLessThanOrEqual(0.25);
        expect(nitrite).toBeLessThanOrEqual(0.1);
      }
    }),
    { numRuns: 200 },
  );
});
