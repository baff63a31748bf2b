import { type Condition, caution, flag, label, quantity, result, step } from '../calculation.js';
import { day } from '../constants.js';
import { calculation } from '../define.js';
import { cycleLog, logLists } from '../inputs/cycle-log.js';
import { ammoniaForm, countedAsNitrogen, kitZero, nitriteForm } from '../inputs/nitrogen.js';

const mgPerLitre = (value: number) => value / 1000;
const perDay = (value: number) => mgPerLitre(value) / 86_400;

const AFTER_A_DAY = 'e == 1 and a_end <= a_ok';
const READY: Condition = 'w >= 2 and e == 1';
const FIRST_STALLED: Condition =
  'm >= 3 and span >= t_flat and t_end > t_first and a_end > a_left and abs(s_a) <= s_flat and s_n < s_flat';
const SECOND_STALLED: Condition = 't_end > t_second and n_run >= t_high and s_n > s_fall';
const STALLED: Condition = { any: [FIRST_STALLED, SECOND_STALLED] };

/** Stage, how it is shown, when it holds, and the first line: the first that holds stands. */
const STAGES: readonly (readonly [stage: string, shown: string, when: Condition | undefined, line: string])[] = [
  [
    'ready',
    'ready',
    READY,
    'Ready: two doses in a row were gone a day later, the last with ammonia at {a_end} and nitrite at {n_end}. Keep dosing until the day before the first animal.',
  ],
  [
    'nearly_ready',
    'nearly ready',
    `${AFTER_A_DAY} and n_end <= n_ok`,
    'Nearly ready: one dose was gone a day later. Dose 2 mg/L again now and test tomorrow; a second clear day in a row makes it ready.',
  ],
  [
    'nitrite_peak',
    'nitrite peak',
    `${AFTER_A_DAY} and n_end >= n_high`,
    'Not ready: ammonia goes within a day, but nitrite stands at {n_end}. The second step is still growing; test nitrite every 2 to 3 days.',
  ],
  [
    'nitrite_lagging',
    'nitrite lagging',
    AFTER_A_DAY,
    'Not ready, but close: ammonia goes within a day and nitrite is down to {n_end}; it must be at {n_ok} or less a day after a dose.',
  ],
  [
    'not_proven',
    'not proven',
    'U <= 0 and a_top <= a_ok and n_top <= n_ok',
    'Not proven: nothing was dosed, and a zero without a dose proves nothing. Dose 2 mg/L and test the next day.',
  ],
  [
    'stalled',
    'stalled',
    FIRST_STALLED,
    'Stalled: ammonia has stood near {a_end} for {span} since the last dose, and no nitrite comes of it. Check the points below in their order.',
  ],
  [
    'stalled',
    'stalled',
    SECOND_STALLED,
    'Stalled at nitrite: it has stood at {n_high} or more for {n_run} and does not fall. Check the points below in their order.',
  ],
  [
    'nitrite_peak',
    'nitrite peak',
    'a_end <= a_ok and n_end >= n_high',
    'Not ready: ammonia is gone, nitrite stands at {n_end}. The second step is still growing; test nitrite every 2 to 3 days.',
  ],
  [
    'nitrite_lagging',
    'nitrite lagging',
    'a_end <= a_ok and n_end > n_ok',
    'Not ready, but close: ammonia is gone and nitrite is down to {n_end}. Once it is at {n_ok} or less, dose 2 mg/L and test a day later.',
  ],
  [
    'not_proven',
    'not proven',
    'a_end <= a_ok',
    'Not proven: ammonia and nitrite are low, but the log shows no dose of at least {u_least} tested a day later. Dose 2 mg/L now and test tomorrow.',
  ],
  [
    'lag',
    'nothing has begun yet',
    'n_end < n_ok and u_last > 0 and a_end >= share*u_last',
    'Nothing has begun yet: {a_end} of the last {u_last} is still there, and no nitrite. Wait, keep it warm and aerated, and test ammonia every 2 days.',
  ],
  [
    'ammonia_oxidation',
    'ammonia is being used',
    's_a < 0 and s_n > 0',
    'The first step works: ammonia falls by {fall} and nitrite climbs by {s_n}. Not ready; test both every 2 to 3 days.',
  ],
  [
    'undecided',
    'cannot be told yet',
    'm < 2',
    'Cannot be told yet: since the last dose there are too few readings for a direction. Test ammonia and nitrite again in 2 days, with no dose before.',
  ],
  [
    'undecided',
    'cannot be told yet',
    undefined,
    'Cannot be told yet: ammonia is at {a_end} and nitrite at {n_end} without a clear direction. Test both again in 2 days, with no dose before, and repeat any odd one.',
  ],
];

export const cycleStatus = calculation({
  id: 'cycle.status',
  slash: 'cycle status',
  title: 'Stage of the fishless cycle',
  question: 'How far is the cycle by my log of ammonia, nitrite and doses, and is the tank ready for animals?',
  general: true,
  part: 'cycle',
  cues: [
    'cycle done',
    'is my cycle',
    'cycled',
    'is it cycled',
    'tank cycled',
    'cycle finished',
    'cycle over',
    'cycle stalled',
    'stalled',
    'stuck cycle',
    'cycle stuck',
    'cycle status',
    'cycle ready',
    'cycle log',
    'ready for fish',
    'ready for animals',
    'ready for livestock',
    'add fish yet',
    'fishless cycle',
    'where am i in the cycle',
    'how is my cycle',
    'hows my cycle',
    'is my tank ready',
    'day 0',
    '~cycle',
    '~cycling',
    '~nitrite',
    '~no2',
    '~nh3',
    '~dosed',
  ],
  inputs: {
    log: cycleLog({ withNitrite: true }),
    ...logLists,
    ammonia_form: ammoniaForm,
    nitrite_form: nitriteForm,
    ammonia_gone: quantity('dissolved', {
      symbol: 'a_ok',
      name: 'ammonia that counts as gone',
      range: [0.01, 0.5, 'mg/L'],
      default: { value: 0.25, unit: 'mg/L', why: 'common practice, the lowest step of many kits' },
      ask: 'Up to which ammonia reading does a dose count as gone?',
      example: '0.25 mg/L',
    }),
    nitrite_gone: quantity('dissolved', {
      symbol: 'n_ok',
      name: 'nitrite that counts as gone',
      range: [0.01, 0.5, 'mg/L'],
      default: { value: 0.1, unit: 'mg/L', why: 'common practice' },
      ask: 'Up to which nitrite reading does it count as gone?',
      example: '0.1 mg/L',
    }),
    least_dose: quantity('dissolved', {
      symbol: 'u_least',
      name: 'least dose that proves anything',
      range: [0.5, 4, 'mg/L'],
      default: { value: 1.5, unit: 'mg/L', why: 'common practice' },
      ask: 'Which dose is the least that counts as a test?',
      example: '1.5 mg/L',
    }),
  },
  oneOf: [['log'], ['days', 'dose_after_reading', 'total_ammonia_nitrogen', 'nitrite_nitrogen']],
  constants: {
    day,
    n_high: { value: mgPerLitre(1), unit: 'kg/m^3', name: 'nitrite that counts as a peak' },
    a_left: { value: mgPerLitre(0.5), unit: 'kg/m^3', name: 'ammonia that counts as left over' },
    share: { value: 0.8, unit: '1', name: 'share of the dose above which nothing has begun' },
    s_flat: { value: perDay(0.03), unit: 'kg/(m^3 s)', name: 'slope that counts as flat' },
    s_fall: { value: perDay(-0.02), unit: 'kg/(m^3 s)', name: 'slope from which on nitrite does not fall' },
    t_flat: { value: 7 * 86_400, unit: 's', name: 'time without change that counts as a stall' },
    t_first: { value: 14 * 86_400, unit: 's', name: 'day before which the first step cannot stall' },
    t_second: { value: 28 * 86_400, unit: 's', name: 'day before which the second step cannot stall' },
    t_high: { value: 14 * 86_400, unit: 's', name: 'time at a peak that counts as a stall' },
  },
  rules: [
    {
      refuse: 'k_least < k_most',
      because:
        'The lists are not of one length: each reading needs its day, its dose (0 for none), ammonia and nitrite.',
      about: 'days',
    },
    {
      refuse: 'gap <= 0',
      because:
        'The days do not rise from reading to reading: put them in order, and write a second test of one day as day 3.5.',
      about: 'days',
    },
  ],
  steps: [
    step(
      'k_most',
      'max(count(list_i(d_i)), count(list_i(u_i)), count(list_i(a_i)), count(list_i(n_i)))',
      'count',
      'readings in the longest list',
    ),
    step(
      'k_least',
      'min(count(list_i(d_i)), count(list_i(u_i)), count(list_i(a_i)), count(list_i(n_i)))',
      'count',
      'readings in the shortest list',
    ),
    step('gap', 'shortest_step(list_i(d_i))', 'time', 'shortest time between two readings', 'k_least >= 2'),
    step('t_end', 'last(list_i(d_i))', 'time', 'time of the last reading'),
    step('a_end', 'last(list_i(f_a*a_i))', 'dissolved', 'ammonia at the last reading, as nitrogen'),
    step('n_end', 'last(list_i(f_n*n_i))', 'dissolved', 'nitrite at the last reading, as nitrogen'),
    step('U', 'sum_i(f_a*u_i)', 'dissolved', 'dosed altogether'),
    step('a_top', 'max(list_i(f_a*a_i))', 'dissolved', 'highest ammonia of the log', 'U <= 0'),
    step('n_top', 'max(list_i(f_n*n_i))', 'dissolved', 'highest nitrite of the log', 'U <= 0'),
    step('u_last', 'last_dose(list_i(f_a*u_i))', 'dissolved', 'last dose'),
    step(
      'w',
      'cleared_in_a_row(u_least, a_ok, n_ok, list_i(d_i, f_a*u_i, f_a*a_i, f_n*n_i))',
      'count',
      'doses in a row that were gone a day later',
      'U > 0',
    ),
    step(
      'e',
      'ends_a_day(u_least, list_i(d_i, f_a*u_i))',
      'count',
      'the last reading ends such a day (1) or not (0)',
      'U > 0',
    ),
    step('m', 'readings_since_dose(list_i(u_i))', 'count', 'readings since the last dose'),
    step('span', 'span_since_dose(list_i(d_i, u_i))', 'time', 'time that they span', 'm >= 2'),
    step(
      's_a',
      'slope_since_dose(list_i(d_i, u_i, f_a*a_i))',
      'dissolved rate',
      'slope of ammonia since then',
      'm >= 2',
    ),
    step(
      's_n',
      'slope_since_dose(list_i(d_i, u_i, f_n*n_i))',
      'dissolved rate',
      'slope of nitrite since then',
      'm >= 2',
    ),
    step('fall', '-s_a', 'dissolved rate', 'fall of ammonia since then'),
    step(
      'n_run',
      'time_at_least(n_high, list_i(d_i, f_n*n_i))',
      'time',
      'time that nitrite has stood at a peak',
      'n_end >= n_high',
    ),
  ],
  results: {
    stage: label(
      'stage',
      STAGES.map(([stage, shown, when]): readonly [string, string, Condition?] =>
        when === undefined ? [stage, shown] : [stage, shown, when],
      ),
    ),
    ready: flag('ready for the first animals', READY),
    cleared_in_a_row: result('w', 'count', 'doses in a row that were gone a day later'),
    ammonia_slope: result('s_a', 'dissolved rate', 'slope of ammonia since the last dose', { figures: 2 }),
    nitrite_slope: result('s_n', 'dissolved rate', 'slope of nitrite since the last dose', { figures: 2 }),
  },
  headline: STAGES.map(([, , when, text]) => (when === undefined ? { text } : { text, when })),
  cautions: [
    caution('stop', 'No animals yet, not even hardy ones: ammonia and nitrite burn gills.', { not: READY }),
    caution(
      'caution',
      'What to check, in this order: pH under 7 or alkalinity under 4 dKH; water under 20 °C; ammonia over 5 or nitrite over 10 mg/L; chloramine or an antibiotic; air; a jump of salinity; a conditioner that binds ammonia; the kit, on a known standard.',
      STALLED,
    ),
    caution(
      'caution',
      'Ammonia over 5 mg/L can hold the bacteria back: dose no more until it is under 2.',
      'a_end > 0.005',
    ),
    caution(
      'caution',
      'Nitrite over 10 mg/L can hold the second step back: a water change is in order here, as otherwise only for spent alkalinity.',
      'n_end > 0.01',
    ),
    caution(
      'caution',
      'Ready for a few animals, not for a full tank: the test ran at 2 mg/L and animals live below 0.1. cycle feed works out how much food to start with.',
      READY,
    ),
    caution(
      'note',
      'Usual until ammonia begins to fall: 7 to 21 days on dry rock, 2 to 7 with live rock (common practice; slower in cool water).',
      'n_end < n_ok and u_last > 0 and a_end >= share*u_last and w < 1',
    ),
    kitZero,
    countedAsNitrogen,
  ],
  sources: [
    'stages and thresholds: common practice, no published source found; they were set on invented logs, not on measured tanks',
    'nitrification in salt water starts later and runs slower than in fresh: Nijhof and Bovendeur 1990, Aquaculture 85 (from memory)',
  ],
  examples: [
    'is my cycle done? day 30: ammonia 0, nitrite 0.05, dosed 2; day 31: ammonia 0, nitrite 0.05, dosed 2; day 32: ammonia 0.1, nitrite 0.05',
    'cycle stuck? day 10 ammonia 0.5 nitrite 0.2 dosed 2, day 12 ammonia 2.1 nitrite 0.3, day 16 ammonia 2.1 nitrite 0.3, day 20 ammonia 2.0 nitrite 0.3',
    'hows my cycle going: day 0 dosed 2 ppm, day 2 2 ppm ammonia and 0 nitrite, day 5 1.9 ammonia 0 nitrite',
  ],
});
