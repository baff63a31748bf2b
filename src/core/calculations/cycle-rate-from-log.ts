import { caution, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { cycleLog, logLists } from '../inputs/cycle-log.js';
import { ammoniaForm, kitZero } from '../inputs/nitrogen.js';

const { days, dose_after_reading, total_ammonia_nitrogen } = logLists;
/** Without a zero in it, so that logarithms exist, and low enough to bend. */
const LOW = 'a_top <= 0.001 and a_least > 0';

export const cycleRateFromLog = calculation({
  id: 'cycle.rate_from_log',
  slash: 'cycle rate-from-log',
  title: 'How fast ammonia is used, from a log',
  question: 'How fast do the bacteria use ammonia, by several readings since the last dose?',
  part: 'cycle',
  cues: [
    'by this log',
    'from this log',
    'ammonia rate from my log',
    'rate from my log',
    'rate from day',
    'oxidation rate from day',
    'ammonia rate from day',
    'rate by my log',
    'how fast by my log',
    'rate from these',
    'rate from log',
    'rate from the log',
    'ammonia log',
    'fit a line',
    'from these readings',
    'from my readings',
    'ammonia rate',
    'rate per day from',
    'oxidation rate from',
    'slope of my ammonia',
    'slope of ammonia',
  ],
  inputs: {
    log: cycleLog({ withNitrite: false }),
    days,
    total_ammonia_nitrogen,
    dose_after_reading,
    ammonia_form: ammoniaForm,
  },
  oneOf: [['log'], ['days', 'total_ammonia_nitrogen']],
  rules: [
    {
      refuse: 'k_least < k_most',
      because: 'The lists are not of one length: each ammonia reading needs its day.',
      about: 'days',
    },
    { refuse: 'gap <= 0', because: 'The days do not rise from reading to reading: put them in order.', about: 'days' },
    {
      refuse: 'm < 2',
      because:
        'Fewer than two readings stand behind the last dose, and a line across a dose means nothing: test again.',
      about: 'log',
    },
    {
      refuse: 'r < 0',
      because:
        'The ammonia rises over these readings: was something dosed that the log does not say, or did something die?',
      about: 'log',
    },
  ],
  steps: [
    step('k_most', 'max(count(list_i(d_i)), count(list_i(a_i)))', 'count', 'readings in the longer list'),
    step('k_least', 'min(count(list_i(d_i)), count(list_i(a_i)))', 'count', 'readings in the shorter list'),
    step('gap', 'shortest_step(list_i(d_i))', 'time', 'shortest time between two readings', 'k_least >= 2'),
    step('m', 'readings_since_dose(list_i(u_i))', 'count', 'readings since the last dose'),
    step('m', 'count(list_i(a_i))', 'count', 'readings'),
    step(
      's',
      'slope_since_dose(list_i(d_i, u_i, f_a*a_i))',
      'dissolved rate',
      'slope of ammonia since the dose',
      'm >= 2',
    ),
    step('s', 'slope(list_i(d_i, f_a*a_i))', 'dissolved rate', 'slope of ammonia, least squares', 'm >= 2'),
    step('r', '-s', 'dissolved rate', 'ammonia used'),
    step('a_top', 'max(list_i(f_a*a_i))', 'dissolved', 'highest ammonia reading'),
    step('a_least', 'min(list_i(f_a*a_i))', 'dissolved', 'lowest ammonia reading'),
    step('U', 'sum_i(u_i)', 'dissolved', 'dosed altogether'),
    step('k', '-slope(list_i(d_i, ln(f_a*a_i/c_0)))', 'rate constant', 'share used, in proportion to what is there', {
      all: [LOW, { not: 'U > 0' }],
    }),
    step('h', 'ln(2)/k', 'time', 'time in which it halves', 'k > 0'),
  ],
  constants: { c_0: { value: 0.001, unit: 'kg/m^3', name: 'a milligram a litre, to take logarithms of a number' } },
  results: {
    rate_zero_order: result('r', 'dissolved rate', 'ammonia used a day'),
    readings_used: result('m', 'count', 'readings used'),
    rate_constant_first_order: result('k', 'rate constant', 'share used, rate constant'),
    half_life: result('h', 'time', 'time in which it halves'),
  },
  headline: [
    { text: 'No fall in these readings: the bacteria use nothing that the kit can tell.', when: 'r <= 0' },
    {
      text: 'At this low level the ammonia halves every {half_life}; as a straight line it is {rate_zero_order}.',
      when: 'h > 0',
    },
    {
      text: 'At least {rate_zero_order} of ammonia: the readings at zero only mean less than the lowest step of the kit.',
      when: 'a_least <= 0',
    },
    { text: 'The bacteria use {rate_zero_order} of ammonia, by {readings_used} readings since the last dose.' },
  ],
  cautions: [
    caution('caution', 'Only readings after the last dose count, and no water change or feeding may lie between them.'),
    caution('note', 'Two readings make a line of any two errors: take at least four.', 'm < 4'),
    caution(
      'note',
      'A straight line fits above about 1 mg/L, where bacteria work at full pace; below it the fall slows of itself.',
      'a_least < 0.001',
    ),
    { ...kitZero, when: 'a_least <= 0' },
    caution('note', 'Counted as nitrogen: a kit that prints NH₃ reads 1.22 times as much, NH₄ 1.29 times.', {
      assumed: 'ammonia_form',
    }),
  ],
  sources: ['straight line at saturation: common practice'],
  examples: [
    'ammonia rate from my log: day 0 ammonia 2.0, day 1 ammonia 1.8, day 2 ammonia 1.45, day 3 ammonia 1.2, day 4 ammonia 0.9',
    'oxidation rate from day 10 ammonia 0.1 dosed 2, day 11 ammonia 1.9, day 12 ammonia 1.4, day 13 ammonia 0.8',
    'slope of my ammonia log: day 1 2 ppm ammonia, day 3 1.5 ppm ammonia, day 5 1.1 ppm ammonia',
  ],
});
