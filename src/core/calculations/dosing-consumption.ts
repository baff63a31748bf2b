import { type Condition, caution, quantity, result, step } from '../calculation.js';
import { day } from '../constants.js';
import { calculation } from '../define.js';
import { alkalinity } from '../inputs/alkalinity.js';
import { systemVolume } from '../inputs/system-water.js';
import { MOLAR_MASS_SOURCE, sodiumBicarbonate } from '../molar-masses.js';

const ofAlkalinity: Condition = { all: [{ given: 'first_reading' }, { given: 'second_reading' }] };
const ofDissolved: Condition = { not: ofAlkalinity };
const RISES = 'r < 0';
const RISES_DISSOLVED = 'r_C < 0';
const UNSURE = 'abs(r) < u';
const UNSURE_DISSOLVED = 'abs(r_C) < u_C';
const unsure: Condition = { any: [UNSURE, UNSURE_DISSOLVED] };

const FIRST = [
  'from',
  'first',
  'started at',
  'was',
  'monday',
  'before',
  'went from',
  'dropped from',
  'dropped',
  'fell',
  'alk',
  'alkalinity',
  'kh',
  'start',
];
const SECOND = ['to', 'second', 'now', 'is now', 'down to', 'ended at', 'today', 'after', 'then'];
const DOSED = ['dosed', 'dosing', 'added', 'doser', 'dose', 'in between', 'between'];

const dissolvedReading = {
  range: [0, 2500, 'mg/L'],
  usual: [250, 1600, 'mg/L'],
} as const;

export const dosingConsumption = calculation({
  id: 'dosing.consumption',
  slash: 'water consumption',
  title: 'Alkalinity, calcium or magnesium used a day',
  question: 'How much alkalinity, calcium or magnesium does the tank use in a day, and can two tests tell?',
  part: 'chemistry',
  cues: [
    'daily consumption',
    'consume a day',
    'consumes a day',
    'tank consume',
    'tank use a day',
    'tank uses',
    'alkalinity fell',
    'alk fell',
    'alkalinity drops',
    'fell from # dkh',
    'drops per day',
    'consumption',
    'alk consumption',
    'does my tank use',
    'use per day',
    'use a day',
    'uses per day',
    'daily alk',
    'daily use',
    'alk drops',
    'alk dropped',
    'alkalinity dropped',
    'alk went from',
    'alkalinity went from',
    'calcium went from',
    'calcium dropped',
    'magnesium dropped',
    'mag dropped',
    'mag went from',
    'magnesium went from',
    'alkalinity drop',
    'alk drop',
    '~demand',
    '~uptake',
    'corals use',
    '~days later',
    'alk was',
    'alkalinity was',
    'calcium was',
  ],
  inputs: {
    first_reading: quantity('alkalinity', {
      ...alkalinity,
      symbol: 'A_1',
      name: 'alkalinity at the first test',
      words: FIRST,
      ask: 'What did the first test read, and the second?',
      example: '8.6 dKH',
    }),
    second_reading: quantity('alkalinity', {
      ...alkalinity,
      symbol: 'A_2',
      name: 'alkalinity at the second test',
      words: SECOND,
      ask: 'What did the second test read?',
      example: '7.4 dKH',
    }),
    first_reading_dissolved: quantity('dissolved', {
      ...dissolvedReading,
      symbol: 'C_1',
      name: 'calcium or magnesium at the first test',
      words: [...FIRST, 'calcium', 'magnesium'],
      standsFor: 'first_reading',
      needed: false,
      ask: 'What did the first test read?',
      example: '430 ppm',
    }),
    second_reading_dissolved: quantity('dissolved', {
      ...dissolvedReading,
      symbol: 'C_2',
      name: 'calcium or magnesium at the second test',
      words: SECOND,
      standsFor: 'second_reading',
      needed: false,
      ask: 'What did the second test read?',
      example: '418 ppm',
    }),
    days: quantity('time', {
      symbol: 't',
      name: 'time between the tests',
      words: ['in', 'over', 'days later', 'apart', 'within'],
      range: [0.5, 60, 'day'],
      usual: [1, 14, 'day'],
      units: { metric: 'day', us: 'day' },
      ask: 'How many days lie between the two tests?',
      example: '3 days',
    }),
    rise_dosed_between: quantity('alkalinity', {
      symbol: 'D',
      name: 'alkalinity dosed in between',
      words: DOSED,
      range: [0, 60, 'dKH'],
      default: { value: 0, unit: 'dKH', why: 'no dose was named', when: ofAlkalinity },
      needed: false,
      ask: 'By how much would all doses in between have raised it?',
      example: '1.5 dKH, 0 if none',
    }),
    rise_dosed_between_dissolved: quantity('dissolved', {
      symbol: 'E',
      name: 'calcium or magnesium dosed in between',
      words: DOSED,
      range: [0, 1000, 'mg/L'],
      usual: [1, 100, 'mg/L'],
      standsFor: 'rise_dosed_between',
      default: { value: 0, unit: 'mg/L', why: 'no dose was named', when: ofDissolved },
      needed: false,
      ask: 'By how much would all doses in between have raised it?',
      example: '20 mg/L, 0 if none',
    }),
    kit_step: quantity('alkalinity', {
      symbol: 's',
      name: 'smallest step of the kit',
      words: ['kit step', 'resolution', 'steps of', 'accuracy', 'drop is', 'one drop'],
      range: [0.01, 3, 'dKH'],
      usual: [0.05, 1, 'dKH'],
      default: { value: 0.3, unit: 'dKH', why: 'half a drop of a usual kit; no source', when: ofAlkalinity },
      needed: false,
      ask: 'How finely does your kit read?',
      example: '0.3 dKH',
    }),
    kit_step_dissolved: quantity('dissolved', {
      symbol: 's_C',
      name: 'smallest step of the kit',
      words: ['kit step', 'resolution', 'steps of', 'accuracy', 'one drop'],
      range: [0.1, 100, 'mg/L'],
      usual: [1, 30, 'mg/L'],
      standsFor: 'kit_step',
      default: { value: 10, unit: 'mg/L', why: 'half a drop of a usual kit; no source', when: ofDissolved },
      needed: false,
      ask: 'How finely does your kit read?',
      example: '10 mg/L',
    }),
    system_volume: quantity('volume', { ...systemVolume, needed: false }),
  },
  oneOf: [
    ['first_reading', 'second_reading', 'days'],
    ['first_reading_dissolved', 'second_reading_dissolved', 'days'],
  ],
  constants: { day, M_b: sodiumBicarbonate },
  steps: [
    step('r', '(A_1 - A_2 + D)/t', 'alkalinity rate', 'alkalinity used'),
    step('u', 'sqrt(2)*s/t', 'alkalinity rate', 'what two readings of this kit can be off by', ofAlkalinity),
    step('t_2', '2*sqrt(2)*s/abs(r)', 'time', 'time after which the fall is twice that', 'abs(r) > 0'),
    step('r_C', '(C_1 - C_2 + E)/t', 'dissolved rate', 'calcium or magnesium used', ofDissolved),
    step('u_C', 'sqrt(2)*s_C/t', 'dissolved rate', 'what two readings of this kit can be off by', ofDissolved),
    step('t_2', '2*sqrt(2)*s_C/abs(r_C)', 'time', 'time after which the fall is twice that', 'abs(r_C) > 0'),
    step('m_b', 'V*r*day*M_b', 'mass', 'sodium bicarbonate that makes up for a day', 'r >= u'),
  ],
  results: {
    consumption_per_day: result('r', 'alkalinity rate', 'used a day'),
    consumption_per_day_dissolved: result('r_C', 'dissolved rate', 'used a day', {
      standsFor: 'consumption_per_day',
    }),
    uncertainty: result('u', 'alkalinity rate', 'what the kit can be off by', { figures: 2 }),
    uncertainty_dissolved: result('u_C', 'dissolved rate', 'what the kit can be off by', {
      standsFor: 'uncertainty',
      figures: 2,
    }),
    days_needed: result('t_2', 'time', 'days between tests that would tell', {
      units: { metric: 'day', us: 'day' },
      figures: 2,
    }),
    bicarbonate_per_day: result('m_b', 'mass', 'sodium bicarbonate that makes up for a day', {
      units: { metric: 'g', us: 'g' },
    }),
  },
  headline: [
    {
      text: 'Not measurable yet: {consumption_per_day} is less than the {uncertainty} that two tests with this kit can be off by. At this pace test again {days_needed} after the first.',
      when: { all: [unsure, 't_2 > 0'] },
    },
    { text: 'Not measurable yet: the two tests show no fall at all; test again after a longer time.', when: unsure },
    {
      text: 'It rises, by {consumption_per_day} the wrong way round: is a dose counted twice, or was water changed?',
      when: { any: [RISES, RISES_DISSOLVED] },
    },
    {
      text: 'The tank uses {consumption_per_day}, give or take {uncertainty}; {bicarbonate_per_day} of sodium bicarbonate a day makes up for it.',
      when: 'm_b > 0',
    },
    { text: 'The tank uses {consumption_per_day}, give or take {uncertainty}.' },
  ],
  cautions: [
    caution(
      'caution',
      'No water change between the tests, one kit, one person, and the same salinity: 1 ppt of drift alone moves every level by 3 %.',
    ),
    caution('note', 'Dose a first guess, test after some days, and correct by what the level really did.', {
      not: unsure,
    }),
    caution('note', 'The step of your kit was not given; tell me how finely it reads.', {
      any: [{ assumed: 'kit_step' }, { assumed: 'kit_step_dissolved' }],
    }),
  ],
  sources: [
    'mass balance; two readings that may each be off by one step add up to √2 of it',
    'step of a kit: common practice, no source',
    MOLAR_MASS_SOURCE,
  ],
  examples: [
    'how much alk does my tank use a day: 8.6 dKH to 7.4 dKH in 3 days, nothing dosed',
    'alk went from 8.2 to 8.0 dKH in 2 days with 1.5 dKH dosed',
    'calcium dropped from 430 to 400 ppm in 5 days, whats my consumption',
  ],
});
