import { type Condition, caution, flag, quantity, result, step } from '../calculation.js';
import { drainAndBackflow, floodsStartHere } from '../cautions/reverse-osmosis.js';
import { calculation } from '../define.js';
import {
  backPressure,
  FREE_OUTLET,
  membraneFlowSteps,
  membraneInputs,
  membraneRules,
  membranes,
  REVERSE_OSMOSIS_FORM,
  ratedFlow,
} from '../inputs/reverse-osmosis.js';

const measured: Condition = { given: 'measured_flow' };
const rated: Condition = { not: measured };
const READY: Condition = { any: ['t_high <= t_a', { all: [measured, 't <= t_a'] }] };
const LATE: Condition = { any: ['t_low > t_a', { all: [measured, 't > t_a'] }] };
const byRating = ['rated_flow', 'rated_pressure', 'pressure', 'temperature'];

export const roTime = calculation({
  id: 'ro.time',
  slash: 'topoff ro-time',
  title: 'Time to make reverse-osmosis water',
  question: 'How long does the membrane take for a volume of water, at the pressure and temperature of this tap?',
  part: 'reverse osmosis',
  cues: [
    'how long to make',
    'how long to fill',
    'how long will it take to make',
    'how long will my ro take',
    'long does my ro',
    'ro overnight',
    '~overnight',
    '~how long to',
    '~how long for',
    '~how long does',
    '~how long until',
    'make ro water',
    'make rodi',
    'fill a barrel',
    'fill my barrel',
    'ro time',
    'make overnight',
    'gallons of rodi',
    'litres of ro',
    'gallons of ro',
    '~rodi',
    '~ro',
    '~membrane',
    '~gpd',
    '~reverse osmosis',
  ],
  inputs: {
    volume: quantity('volume', {
      symbol: 'V',
      name: 'water to be made',
      words: [
        'make',
        'fill',
        'barrel',
        'need',
        'of ro',
        'of rodi',
        'of water',
        'batch',
        'container',
        'brute',
        'reservoir',
      ],
      range: [0, 100_000, 'L'],
      aboveLow: true,
      usual: [5, 1000, 'L'],
      needed: { not: { given: 'available_time' } },
      ask: 'How much water do you want to make?',
      example: '100 L or 30 gal',
    }),
    available_time: quantity('time', {
      symbol: 't_a',
      name: 'time that you have for it',
      words: ['in', 'overnight', 'within', 'over', 'leave it for', 'have', 'only have'],
      range: [0, 720, 'h'],
      aboveLow: true,
      usual: [1, 72, 'h'],
      needed: false,
      ask: 'How long can it run?',
      example: '8 h',
    }),
    measured_flow: quantity('flow', {
      ...ratedFlow,
      symbol: 'Q_m',
      name: 'product flow that you measured',
      words: ['measured', 'i measured', 'actually makes', 'really makes', 'i get', 'collected', 'produces', 'timed'],
      slips: [],
      needed: false,
      ask: 'What product flow did you measure with a jug and a watch?',
      example: '130 mL a minute: 7.8 L/h',
      profile: 'ro.measured_flow',
    }),
    ...membraneInputs,
    membranes: quantity('count', { ...membranes, needed: false, default: { value: 1, unit: 'count', when: rated } }),
    back_pressure: quantity('pressure', { ...backPressure, needed: false, default: { ...FREE_OUTLET, when: rated } }),
  },
  oneOf: [
    ['volume', ...byRating],
    ['volume', 'measured_flow'],
    ['available_time', ...byRating],
    ['available_time', 'measured_flow'],
  ],
  rules: membraneRules,
  steps: [
    step('q', 'Q_m', 'flow', 'flow that was measured'),
    ...membraneFlowSteps,
    step('t', 'V/q', 'time', 'time'),
    step('t_low', 't/1.2', 'time', 'time if it makes a fifth more', rated),
    step('t_high', 't/0.8', 'time', 'time if it makes a fifth less', rated),
    step('V_m', 'q*t_a', 'volume', 'water made in the time that you have'),
    step('V_low', '0.8*V_m', 'volume', 'a fifth less', rated),
    step('V_high', '1.2*V_m', 'volume', 'a fifth more', rated),
    step(
      't_e',
      't*F/ro_factor_exp(T)',
      'time',
      'time by the exponential form, which falls faster in the cold',
      'T < celsius(15)',
    ),
  ],
  results: {
    time: result('t', 'time', 'time', { low: 't_low', high: 't_high', figures: 2 }),
    time_low: result('t_low', 'time', 'time, at the shortest', { figures: 2 }),
    time_high: result('t_high', 'time', 'time, at the longest', { figures: 2 }),
    in_time: flag('ready in the time that you have', 't <= t_a', {
      all: [{ given: 'volume' }, { given: 'available_time' }],
    }),
    made_in_time: result('V_m', 'volume', 'water made in the time that you have', { low: 'V_low', high: 'V_high' }),
    flow: result('q', 'flow', 'flow of product'),
    flow_per_day: result('q', 'water a day', 'product in a day and a night', { figures: 3 }),
  },
  headline: [
    { text: '{volume} is ready in {time:range}: within the {available_time} that you have.', when: READY },
    {
      text: '{volume} is not ready in {available_time}: it takes {time:range}, and {made_in_time} is made by then.',
      when: LATE,
    },
    {
      text: '{volume} may just be ready in {available_time}: it takes {time:range}.',
      when: { all: [{ given: 'volume' }, { given: 'available_time' }] },
    },
    { text: 'In {available_time} it makes {made_in_time:range}.', when: { given: 'available_time' } },
    { text: '{volume} takes {time} at the {measured_flow} that you measured.', when: measured },
    {
      text: '{volume} takes about {time:range}: on this tap the membrane makes {flow_per_day}, less than half of its rating.',
      when: 'q < 0.5*n*Q_r',
    },
    {
      text: '{volume} takes about {time:range}: on this tap the membrane makes {flow_per_day}, less than its rating.',
      when: 'q < 0.95*n*Q_r',
    },
    {
      text: '{volume} takes about {time:range}: on this tap the membrane makes {flow_per_day}, its rating or more.',
    },
  ],
  cautions: [
    floodsStartHere,
    caution(
      'caution',
      'Warm tap water, yes; the hot tap, never: above 35 °C a membrane is ruined, and hot pipes add metals.',
      'T > 301.15',
    ),
    caution(
      'caution',
      'Below about 275 kPa (40 psi) a membrane holds back less as well as making less: a booster pump is the usual cure (common practice).',
      'p - p_b < 275000',
    ),
    caution(
      'caution',
      'Above about 550 kPa (80 psi) look at what housings and tubes are rated for, and fit a pressure regulator (common practice).',
      'p > 552000',
    ),
    caution(
      'caution',
      'That is a very large membrane for a home: is its rating by the day rather than by the hour?',
      'Q_r > 0.0000278',
    ),
    caution(
      'note',
      'In the cold makers’ own curves fall faster than 3 % a degree: by one of them it takes {t_e}.',
      't_e > t',
    ),
    caution(
      'note',
      'Read the pressure while it runs, behind the prefilters: standing pressure is higher. A pressurised tank or a container higher up pushes back: tell me by how much.',
      { all: [rated, { assumed: 'back_pressure' }] },
    ),
    caution('note', 'Read the pressure while it runs, behind the prefilters: standing pressure is higher.', {
      all: [rated, { not: { assumed: 'back_pressure' } }],
    }),
    drainAndBackflow,
  ],
  sources: [
    REVERSE_OSMOSIS_FORM,
    'osmotic pressure of tap water, about 0.07 kPa for each mg/L (common practice), lies within the fifth up to 700 mg/L',
  ],
  examples: [
    'how long to make 100 L with a 75 gpd membrane rated at 60 psi, running at 45 psi, tap water 15 C',
    'how long to fill a 30 gallon barrel, two 100 gpd membranes rated 50 psi, pressure 60 psi, tap water 65F',
    'how much rodi water overnight in 8 hours, I measured 6 L/h',
  ],
});
