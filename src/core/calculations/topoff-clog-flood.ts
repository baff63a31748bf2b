import { type Condition, caution, flag, quantity, result, step } from '../calculation.js';
import { testTheCutOff, tooFastForMembrane, topoffIsPlumbing } from '../cautions/topoff.js';
import { calculation } from '../define.js';
import { chamberConstants, chamberRules, chamberSteps, displayRoom, returnChamber } from '../inputs/return-chamber.js';
import { returnFlow } from '../inputs/return-flow.js';
import { salinityKept } from '../inputs/salinity.js';
import { systemVolume } from '../inputs/system-water.js';
import { evaporationMeanwhile, runTimeLimit, topoffConstants, topoffSource } from '../inputs/topoff.js';

const limited: Condition = { any: [{ given: 'reservoir_volume' }, { given: 'run_time_limit' }] };
const endless: Condition = { not: limited };
/** Top-off or not, the display cannot take the return chamber. */
const tooSmall = 'V_s < 0';
const topoffFloods: Condition = { all: ['V_s >= 0 and j > 0', { any: [endless, 'N > V_s'] }] };
/** Diluted below what reef animals stand for long (common practice, no source). */
const FRESH = 'V_o > 0 and S_T < 0.028';
const floods: Condition = { any: [tooSmall, topoffFloods] };
const bounded: Condition = { all: [limited, 'V_s >= 0 and N <= V_s'] };

export const topoffClogFlood = calculation({
  id: 'topoff.clog_flood',
  slash: 'topoff clog-flood',
  title: 'Clogged drains and a top-off that never stops',
  question:
    'The drains clog, the return chamber runs dry, and the top-off keeps adding water: does the display run over, and when?',
  part: 'top-off',
  cues: [
    'clog flood',
    'drains clog',
    'drain is clogged',
    'drain gets clogged',
    'drain clogged and',
    'drain blocked',
    'drains blocked',
    'drains are blocked',
    'clog and my ato',
    'clog and the ato',
    'blocks the overflow',
    'blocks the drain',
    'ato does not stop',
    "ato doesn't stop",
    'top off does not stop',
    "top off doesn't stop",
    'overflow my display',
    'drain clogs',
    'drains clogged',
    'drain clogged',
    'both drains clog',
    'clogged drains',
    'clogged drain and',
    'drains block',
    'drains plug',
    'overflow clogs',
    'overflow clogged',
    'snail in the overflow',
    'snail in the drain',
    'top off keeps',
    'topoff keeps',
    'ato keeps',
    'top off keep running',
    'ato keep running',
    'keeps adding water',
    'keeps filling',
    'keeps running',
    'keep adding fresh water',
    'solenoid stays open',
    'top off during a clog',
    'ato flood the display',
    'ato flood my display',
    'ato flood',
    'ato overflow the display',
    'flood the display',
    'flood my display',
    'display flood',
    'display overflow',
    'tank overflows while',
    'return chamber low and ato',
  ],
  inputs: {
    ...topoffSource,
    usable_volume: quantity('volume', {
      symbol: 'V_u',
      name: 'water the pump can send up from the return chamber',
      words: [
        'usable',
        'usable volume',
        'usable water',
        'return chamber holds',
        'chamber holds',
        'from the return chamber',
      ],
      range: [0, 1000, 'L'],
      usual: [3, 120, 'L'],
      needed: false,
      ask: 'How much water can the pump send up before it sucks air?',
    }),
    ...returnChamber('usable_volume'),
    display_free_volume: quantity('volume', {
      symbol: 'V_f',
      name: 'room in the display up to its rim',
      words: [
        'display free',
        'free in the display',
        'room in the display',
        'display has room',
        'display can take',
        'room',
      ],
      range: [0, 2000, 'L'],
      usual: [5, 200, 'L'],
      needed: false,
      ask: 'How much more water can the display take up to its rim?',
    }),
    ...displayRoom('display_free_volume'),
    flow: quantity('flow', {
      ...returnFlow,
      default: {
        value: 3000,
        unit: 'L/h',
        low: 1000,
        high: 8000,
        why: 'a common return pump; it decides only the first seconds',
      },
    }),
    evaporation: evaporationMeanwhile,
    run_time_limit: runTimeLimit,
    time: quantity('time', {
      symbol: 'T_u',
      name: 'time until somebody looks',
      words: [
        'nobody',
        'away',
        'overnight',
        'at work',
        'gone for',
        'until somebody',
        'unattended',
        'before i notice',
        'after',
      ],
      range: [0, 30, 'day'],
      usual: [1, 100, 'h'],
      default: { value: 12, unit: 'h', why: 'a night, or a day at work' },
      ask: 'How long may it be until somebody looks?',
      example: '12 h',
    }),
    salinity: quantity('salinity', { ...salinityKept, default: { value: 35, unit: 'g/kg' } }),
    system_volume: quantity('volume', { ...systemVolume, needed: false }),
  },
  constants: {
    ...chamberConstants,
    ...topoffConstants,
    V_0: { value: 0, unit: 'm^3', name: 'nothing' },
  },
  rules: chamberRules,
  steps: [
    ...chamberSteps,
    step('t_d', 'V_u/Q_r', 'time', 'time until the return pump sucks air'),
    step('V_s', 'V_f - V_u', 'volume', 'room left once the display holds the return chamber'),
    step('j', 'q - E', 'flow', 'gain of water while the top-off is open'),
    step('R_x', 'min(R, q*t_l)', 'volume', 'most the top-off can add: reservoir or run time'),
    step('R_x', 'R', 'volume', 'most the top-off can add: its reservoir'),
    step('R_x', 'q*t_l', 'volume', 'most the top-off can add: its run-time limit'),
    step('N', 'R_x*j/q', 'volume', 'of which evaporation leaves'),
    step('t_f', 'V_f/Q_r', 'time', 'time until the display runs over', tooSmall),
    step('t_f', 't_d + V_s/j', 'time', 'time until the display runs over', topoffFloods),
    step('x_f', 'q*t_f', 'volume', 'fresh water added by then'),
    step('x_f', 'R_x', 'volume', 'fresh water added in all', bounded),
    step('G', 'j*t_f', 'volume', 'gain of the system by then'),
    step('G', 'N', 'volume', 'gain of the system in all', bounded),
    step('S_f', 'S*V/(V + G)', 'salinity', 'salinity of the whole system then'),
    step('t_on', 'min(T_u, t_d + R_x/q)', 'time', 'how long water is added until somebody looks'),
    step('t_on', 'T_u', 'time', 'how long water is added until somebody looks'),
    step('V_o', 'max(j*(t_on - t_f), V_0)', 'volume', 'water over the rim until somebody looks', topoffFloods),
    step('V_o', 'max(V_u - V_f + j*t_on, V_u - V_f)', 'volume', 'water over the rim until somebody looks', tooSmall),
    step('S_T', 'S_f*exp(-V_o/(V + G))', 'salinity', 'salinity by then, well mixed', topoffFloods),
    step('t_x', 'V_s/q', 'time', 'longest run time that the display still holds'),
  ],
  results: {
    floods: flag('the display runs over', floods),
    time_to_flood: result('t_f', 'time', 'time from the clog until the display runs over', { figures: 2 }),
    time_to_dry: result('t_d', 'time', 'time until the return pump sucks air', { figures: 2 }),
    fresh_water_added: result('x_f', 'volume', 'fresh water added by then', { when: 'V_s >= 0' }),
    salinity_at_flood: result('S_f', 'salinity', 'salinity by then'),
    spill_rate: result('j', 'flow', 'water over the rim from then on', { when: topoffFloods }),
    spilled: result('V_o', 'volume', 'water over the rim until somebody looks'),
    salinity_then: result('S_T', 'salinity', 'salinity when somebody looks, well mixed', { when: 'V_o > 0' }),
    room_left: result('V_s', 'volume', 'room left once the display holds the return chamber', { when: 'V_s >= 0' }),
    longest_run_time: result('t_x', 'time', 'longest run time that the display still holds', {
      when: 'V_s > 0',
      figures: 2,
    }),
  },
  headline: [
    {
      text: 'It floods after {time_to_flood}, top-off or not: the pump sends up {V_u} from the return chamber, and the display has room for {V_f}.',
      when: tooSmall,
    },
    {
      text: 'It does not flood by this check: the top-off adds no more than evaporates, and the display holds the return chamber.',
      when: 'j <= 0',
    },
    {
      text: 'It does not flood by this check: the top-off can add {R_x} at most, and the display has room for {room_left:range} once it holds the return chamber.',
      when: bounded,
    },
    {
      text: 'Clogged drains flood the display in {time_to_flood:range}: the top-off can add {R_x}, and the display has room for {room_left} once it holds the return chamber.',
      when: limited,
    },
    {
      text: 'Clogged drains flood the display in {time_to_flood:range}: the return chamber is dry in {time_to_dry}, the top-off never finds it full, and then {spill_rate} goes over the rim until somebody comes.',
    },
  ],
  cautions: [
    caution(
      'stop',
      'Salt water on the floor, near mains, with nobody there: {spilled} by the time somebody looks after {time}, and the tank at {salinity_then}, which most reef animals do not survive. A display that holds the return chamber is no protection while the top-off can go on.',
      { all: [topoffFloods, FRESH] },
    ),
    caution(
      'stop',
      'Salt water on the floor, near mains, with nobody there: {spilled} by the time somebody looks after {time}. A display that holds the return chamber is no protection while the top-off can go on.',
      { all: [topoffFloods, 'V_o > 0', { not: FRESH }] },
    ),
    caution(
      'stop',
      'The clog alone floods: run the return chamber lower, or give the display more room below its rim (topoff run-dry gives the level).',
      tooSmall,
    ),
    caution(
      'stop',
      'And the top-off goes on after that: {spilled} over the rim by the time somebody looks after {time}, near mains. Bound it too: a finite reservoir in place of the live line, a run-time limit, a second high float in the display, a leak sensor on the supply.',
      { all: [tooSmall, endless, 'j > 0'] },
    ),
    caution('caution', 'Nothing spills within {time}, but it does after {time_to_flood} if nobody comes.', {
      all: [topoffFloods, 'V_o <= 0'],
    }),
    caution(
      'caution',
      'The surest cure is a finite reservoir: with less than {room_left:low} in it, in place of a live water line, the top-off cannot flood the display however long it runs.',
      { all: [topoffFloods, 'V_s > 0'] },
    ),
    caution(
      'caution',
      'Then stack up: shut the top-off after {longest_run_time:low} of running, let a second high float in display and sump cut it, put a leak sensor on the supply and a valve that is shut without power, and stop the return pump at low level, with any heater in that chamber: dry, both burn out.',
      { all: [topoffFloods, 'V_s > 0'] },
    ),
    caution(
      'caution',
      'That holds while nobody tops the reservoir up and no water line feeds it. Keep a second high float in display and sump, and a low-level stop on the return pump all the same.',
      { all: [bounded, { given: 'reservoir_volume' }] },
    ),
    caution(
      'caution',
      'That holds while the run-time limit works and stays shut: one that starts again by itself adds as much once more, and the line behind it never ends. Keep a second high float, and a leak sensor on the supply.',
      { all: [bounded, { not: { given: 'reservoir_volume' } }] },
    ),
    caution(
      'caution',
      'A pump that sucks air burns out, and a heater in the dry chamber can burst: stop both at low level.',
      { not: topoffFloods },
    ),
    testTheCutOff,
    {
      ...topoffIsPlumbing,
      when: { all: [{ not: { given: 'reservoir_volume' } }, { any: [topoffFloods, tooSmall, bounded] }] },
    },
    { ...tooFastForMembrane, when: { all: ['q > q_fast', endless] } },
  ],
  sources: [
    'balance of water and salt, well mixed',
    'a model with levels and weirs in it floods a reference tank within 1 % of the same time (fed the same levels), and ends a little fresher than well mixed',
  ],
  examples: [
    'both drains clog and my ATO solenoid on a 75 gpd RO line stays open: return chamber 10x16 in with 7 in of water, 60x24 in tank, water 1.25 in below the rim, 900 gph',
    'what if the drains clog and the top off keeps running at 12 L/h, return chamber 24 x 43 cm running at 17 cm, tank 150x60 cm, 3.1 cm below the rim, 473 L in the system',
    'can the ATO flood the display if the drains clog? 5 gal reservoir, ato adds 10 gph, usable 13.7 L in the return chamber, 28.7 L of room in the display',
  ],
});
