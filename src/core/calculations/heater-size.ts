import { type Condition, caution, flag, quantity, result, step } from '../calculation.js';
import { heaterElectrics, heaterPlace, roomSearchEnds, secondCutOut, waterSearchEnds } from '../cautions/heater.js';
import { calculation } from '../define.js';
import { heaterCount, heaterPower } from '../inputs/heater.js';
import { LOSS_SOURCES, lossCautions, lossConstants, lossSteps, systemVolumeSteps } from '../inputs/loss-steps.js';
import { roomTemperature } from '../inputs/room.js';
import { gains, geometryRules, tankHeatInputs, tankTemperature } from '../inputs/tank-heat.js';

const LOSS_AT_LEAST = 'P_all + G >= P_loss';
const hasPower: Condition = { given: 'heater_power' };
/** 30 °C, above what reef animals are kept at. */
const TOO_HOT: Condition = 'T_stuck > 303.15';
const several: Condition = { all: [hasPower, 'n >= 2'] };

export const heaterSize = calculation({
  id: 'heater.size',
  slash: 'heater size',
  title: 'Heater power for a room',
  question: 'How many watts of heater hold the target in the coldest room, how are they split, and what if one fails?',
  general: true,
  part: 'heat',
  cues: [
    'one dies',
    'one fails',
    'heater dies',
    'heater fails',
    '~heater',
    'heater size',
    'what size heater',
    'which heater',
    'heater for',
    'heaters for',
    'watts of heat',
    'heater do I need',
    'heaters do I need',
    'watts do I need',
    'enough heater',
    'heater enough',
    'W enough',
    'watt enough',
    'watts enough',
    'watts to keep',
    'watts to hold',
    'watts to heat',
    'keep it at',
    'hold temperature',
    'heater redundancy',
    'two heaters',
  ],
  inputs: {
    target: quantity('temperature', { ...tankTemperature, name: 'target water temperature' }),
    room_temperature: quantity('temperature', { ...roomTemperature, ask: 'How cold does the room get?' }),
    heater_power: quantity('power', { ...heaterPower, needed: false }),
    heaters: heaterCount,
    ...tankHeatInputs,
    gains,
    margin: quantity('ratio', {
      symbol: 'm',
      name: 'margin on the loss',
      words: ['margin', 'safety margin', 'reserve'],
      range: [1, 2, '1'],
      default: { value: 1.25, unit: '1', why: 'common practice; about the spread of the loss itself' },
      ask: 'How much more than the loss should the heaters give?',
      example: '1.25',
    }),
  },
  constants: {
    ...lossConstants,
    P_0: { value: 0, unit: 'W', name: 'no heater' },
    gal: { value: 0.003785411784, unit: 'm^3', name: 'US gallon' },
  },
  rules: geometryRules,
  steps: [
    ...lossSteps,
    step('P_need', 'm*max(P_loss - G, P_0)', 'power', 'heater power needed'),
    ...systemVolumeSteps,
    step('P_gal', 'P_need/(V/gal)', 'power', 'heater power for each US gallon'),
    step('P_each', 'P_need/(n - 1)', 'power', 'each heater, so that the rest hold with one dead', 'n >= 2'),
    step('P_all', 'n*P_h', 'power', 'all heaters together'),
    step('T_cold', 'room_at_loss(P_all + G, UA, A, e, RH, S, T_w)', 'temperature', 'coldest room they hold'),
    step(
      'T_one',
      'room_at_loss((n - 1)*P_h + G, UA, A, e, RH, S, T_w)',
      'temperature',
      'coldest room with one dead',
      'n >= 2',
    ),
    step(
      'T_stuck',
      'water_at_loss(P_h + G, UA, A, e, RH, S, T_r)',
      'temperature',
      'water with one heater stuck on alone',
    ),
    step(
      'T_stuck',
      'water_at_loss(P_each + G, UA, A, e, RH, S, T_r)',
      'temperature',
      'water with one heater of that size stuck on alone',
      'n >= 2 and P_need > 0',
    ),
    step(
      'T_stuck',
      'water_at_loss(P_need + G, UA, A, e, RH, S, T_r)',
      'temperature',
      'water with one heater of that size stuck on',
      'P_need > 0',
    ),
  ],
  results: {
    holds: flag('holds the target in this room', LOSS_AT_LEAST, hasPower),
    coldest_room_held: result('T_cold', 'temperature', 'coldest room the heaters hold'),
    coldest_room_one_failed: result('T_one', 'temperature', 'coldest room with one heater dead'),
    power_needed: result('P_need', 'power', 'heater power needed, margin included'),
    power_each: result('P_each', 'power', 'each heater, so that the rest hold with one dead'),
    total_loss: result('P_loss', 'power', 'heat lost to the room'),
    stuck_on_temperature: result('T_stuck', 'temperature', 'where one heater stuck on alone takes the water'),
    watts_per_us_gallon: result('P_gal', 'power', 'heater power for each US gallon', { figures: 2 }),
  },
  headline: [
    {
      text: 'No heater is needed to hold {target} with the room at {room_temperature}: the water already gets more heat than it loses.',
      when: 'P_loss <= G',
    },
    {
      text: '{heaters} × {heater_power} hold {target} with the room at {room_temperature}, and still do with one dead: then down to a room at {coldest_room_one_failed:range}.',
      when: { all: [several, 'P_all >= P_need and (n - 1)*P_h + G >= P_loss'] },
    },
    {
      text: '{heaters} × {heater_power} hold {target} down to a room at {coldest_room_held:range}; with one dead only down to {coldest_room_one_failed}.',
      when: { all: [several, LOSS_AT_LEAST] },
    },
    {
      text: '{heaters} × {heater_power} do not hold {target} with the room at {room_temperature}: they keep up down to {coldest_room_held:range}, and this room takes {power_needed:range}.',
      when: several,
    },
    {
      text: '{heater_power} holds {target} with the room at {room_temperature} with the margin in hand; its limit is a room at {coldest_room_held:range}.',
      when: 'P_all >= P_need',
    },
    {
      text: 'By the middle estimate {heater_power} holds {target} with the room at {room_temperature}, with little in hand: its limit is a room at {coldest_room_held:range}.',
      when: LOSS_AT_LEAST,
    },
    {
      text: '{heater_power} does not hold {target} with the room at {room_temperature}: it keeps up down to {coldest_room_held:range}, and this room takes {power_needed:range}.',
      when: hasPower,
    },
    {
      text: 'With the room at {room_temperature} and one of {heaters} heaters dead, the rest hold {target} if each gives {power_each:range}.',
      when: 'n >= 2',
    },
    {
      text: 'Holding {target} with the room at {room_temperature} takes {power_needed:range}, {margin} times the loss.',
    },
  ],
  cautions: [
    roomSearchEnds('T_cold'),
    waterSearchEnds('T_stuck'),
    caution(
      'stop',
      'One heater of this size stuck on would take the water to {stuck_on_temperature} in this room, higher in a warm one: split the power over more heaters, and cut it off with a controller of its own.',
      TOO_HOT,
    ),
    caution(
      'caution',
      'One heater stuck on would take the water to {stuck_on_temperature} in this room, higher in a warm one (heater stuck-on works that out): run it through a controller of its own as a second cut-out.',
      { all: ['T_stuck > T_w', { not: TOO_HOT }] },
    ),
    { ...secondCutOut, when: 'T_stuck <= T_w' },
    caution(
      'caution',
      'The heaters cover the middle estimate of the loss but not the margin on it: on a dry, draughty night they may fall behind.',
      { all: [hasPower, 'P_loss > G', LOSS_AT_LEAST, 'P_all < P_need'] },
    ),
    caution(
      'note',
      'They hold even the coldest room this check covers: the real limit is colder still.',
      'T_cold <= 268.15',
    ),
    caution(
      'note',
      'One heater leaves no spare. With several, let any one fail and the rest hold; two of 60 to 75 % of the power each is common practice, and with one dead holds only a milder room.',
      'n == 1 and P_need > 0',
    ),
    caution(
      'note',
      'Strong enough to stand in for a dead one and weak enough not to overheat when stuck on pull against each other: more and smaller heaters ease both.',
      'n >= 2 and P_need > 0',
    ),
    ...lossCautions,
    heaterElectrics,
    heaterPlace,
  ],
  sources: [
    ...LOSS_SOURCES,
    'margin, and 3 to 5 W a US gallon as a cross-check: common practice, no source; it fails for small tanks and for cold or warm rooms',
  ],
  examples: [
    'is 300 W enough for 90 gal at 78F in a 66F room',
    'what size heater for a 150x60 cm tank with 12 mm glass, 50 cm of water, 25.5 °C in an 18 °C room',
    'two 200 W heaters, 48x24 in tank, 22 in of water, 1/2 in glass, room 64F, tank 78F',
  ],
});
