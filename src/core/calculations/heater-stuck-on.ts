import { caution, flag, quantity, result, step } from '../calculation.js';
import { heaterElectrics, secondCutOut, waterSearchEnds } from '../cautions/heater.js';
import { calculation } from '../define.js';
import { heatStoreConstants, heatStoreStep, nearLimit } from '../inputs/heat-store.js';
import { heaterPower, rockMass } from '../inputs/heater.js';
import { LOSS_SOURCES, lossCautions, lossConstants, lossSteps, systemVolumeSteps } from '../inputs/loss-steps.js';
import { roomTemperature } from '../inputs/room.js';
import { gains, geometryRules, tankHeatInputs, tankTemperature } from '../inputs/tank-heat.js';

const limit = (symbol: string, name: string, degF: number, words: readonly string[]) =>
  quantity('temperature', {
    symbol,
    name,
    words,
    range: [15, 45, 'degC'],
    default: { value: degF, unit: 'degF', why: 'common practice, no source' },
    ask: 'Which temperature must it not reach?',
    example: '84 F or 29 C',
  });

export const heaterStuckOn = calculation({
  id: 'heater.stuck_on',
  slash: 'heater stuck-on',
  title: 'A heater stuck on',
  question: 'How hot does the water get when one heater sticks on, and how soon?',
  part: 'heat',
  cues: [
    'jams on',
    'heater jams',
    'never switched off',
    'never switches off',
    'welded on',
    'how fast does it cook',
    'stuck',
    'stuck on',
    'stuck heater',
    'cook',
    'sticks on',
    'stick on',
    'stays on',
    'fails on',
    'failed on',
    'cook the tank',
    'cook my tank',
    'cooks the tank',
    'overheat',
    'heater runaway',
    'thermostat fails',
    'welded',
  ],
  inputs: {
    heater_power: quantity('power', { ...heaterPower, name: 'power of the heater that sticks on' }),
    start_temperature: quantity('temperature', { ...tankTemperature, name: 'water temperature when it sticks' }),
    room_temperature: quantity('temperature', { ...roomTemperature, ask: 'How warm does the room get?' }),
    limit_1: limit('T_1', 'first limit', 84, ['limit', 'first limit', 'danger', 'above']),
    limit_2: limit('T_2', 'second limit', 90, ['second limit', 'lethal', 'dead by']),
    rock_mass: rockMass,
    ...tankHeatInputs,
    gains,
  },
  constants: {
    ...lossConstants,
    ...heatStoreConstants,
    ...nearLimit,
  },
  rules: [
    ...geometryRules,
    { refuse: 'T_1 <= T_w', because: 'The first limit must lie above the water temperature.', about: 'limit_1' },
    { refuse: 'T_2 <= T_w', because: 'The second limit must lie above the water temperature.', about: 'limit_2' },
  ],
  steps: [
    ...lossSteps,
    step('T_end', 'water_at_loss(P_h + G, UA, A, e, RH, S, T_r)', 'temperature', 'where the water ends up'),
    ...systemVolumeSteps,
    heatStoreStep,
    step('t_1', 'time_to_reach(C, P_h + G, UA, A, e, RH, S, T_w, T_1, T_r)', 'time', 'time to the first limit'),
    step('t_2', 'time_to_reach(C, P_h + G, UA, A, e, RH, S, T_w, T_2, T_r)', 'time', 'time to the second limit'),
  ],
  results: {
    equilibrium_temperature: result('T_end', 'temperature', 'where the water ends up'),
    reaches_limit_1: flag('reaches the first limit', 'T_end > T_1'),
    time_to_limit_1: result('t_1', 'time', 'time to the first limit'),
    reaches_limit_2: flag('reaches the second limit', 'T_end > T_2'),
    time_to_limit_2: result('t_2', 'time', 'time to the second limit'),
    heat_capacity: result('C', 'heat capacity', 'heat to warm water and rock by a degree'),
  },
  headline: [
    {
      text: 'Stuck on, {heater_power} takes the water to {equilibrium_temperature:range}: past {limit_1} in {time_to_limit_1:range} and {limit_2} in {time_to_limit_2:range}.',
      when: 'T_end > T_1 and T_end > T_2',
    },
    {
      text: 'Stuck on, {heater_power} takes the water to {equilibrium_temperature:range}: past {limit_1} in {time_to_limit_1:range}.',
      when: 'T_end > T_1',
    },
    {
      text: 'Stuck on, {heater_power} takes the water only to {equilibrium_temperature:range}, short of {limit_1}.',
      when: 'T_end > T_w',
    },
    {
      text: 'Even stuck on, {heater_power} cannot warm the water in this room: alone it settles at {equilibrium_temperature:range}, so nobody would notice.',
    },
  ],
  cautions: [
    waterSearchEnds('T_end'),
    caution(
      'stop',
      'This heater can kill the tank on its own: use smaller ones, so that one stuck on stays below {limit_1}.',
      'T_end > T_2',
    ),
    caution(
      'caution',
      'The end temperature lies close to the first limit, so the time to it is very uncertain: sooner, or never.',
      'T_end > T_1 - near and T_end < T_1 + near',
    ),
    secondCutOut,
    caution(
      'note',
      'The other heaters are taken as switched off by their thermostats. A warmer room or lights at noon end higher: try your hottest day.',
    ),
    ...lossCautions,
    heaterElectrics,
  ],
  sources: [...LOSS_SOURCES, 'energy balance of a mixed tank', 'limits: common practice, no source'],
  examples: [
    'what if my 300 W heater sticks on, 125 gal at 79F, room 72F',
    'heater stuck on: 500 W, 120x60x60 cm tank, 12 mm glass, water 25.5 °C, room 24 °C',
  ],
});
