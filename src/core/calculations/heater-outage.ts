import { caution, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { heatStoreConstants, heatStoreStep, nearLimit } from '../inputs/heat-store.js';
import { rockMass } from '../inputs/heater.js';
import { LOSS_SOURCES, lossCautions, lossConstants, lossSteps, systemVolumeSteps } from '../inputs/loss-steps.js';
import { roomTemperature } from '../inputs/room.js';
import { gains as gainsByDay, geometryRules, tankHeatInputs, tankTemperature } from '../inputs/tank-heat.js';

export const heaterOutage = calculation({
  id: 'heater.outage',
  slash: 'heater outage',
  title: 'Cooling down without heat',
  question: 'How long until the water gets too cold when heaters or power fail?',
  part: 'heat',
  cues: [
    'heater dies overnight',
    'how many hours do i have',
    'til too cold',
    'until too cold',
    'power goes out',
    'power is out',
    'power fails',
    'power went out',
    'without power',
    'no power',
    'go without power',
    'how long can',
    'how long till',
    'power outage',
    'power cut',
    'outage',
    'blackout',
    'without heat',
    'without a heater',
    'no heater',
    'cool down',
    'cools down',
    'get cold',
    'gets cold',
    'too cold',
    'how long until',
    'how long before',
    'heater fails',
    'heater died',
    'heater dies',
  ],
  inputs: {
    start_temperature: quantity('temperature', {
      ...tankTemperature,
      name: 'water temperature at the start',
      words: [...(tankTemperature.words ?? []), 'from', 'start'],
    }),
    limit: quantity('temperature', {
      symbol: 'T_1',
      name: 'temperature it must not fall below',
      words: ['limit', 'down to', 'below', 'drops to', 'falls to', 'fall to', 'reaches', 'to', 'hits'],
      range: [5, 35, 'degC'],
      usual: [15, 25, 'degC'],
      default: { value: 75, unit: 'degF', why: 'common practice, no source' },
      ask: 'How cold may the water get?',
      example: '75 F or 24 C',
    }),
    room_temperature: quantity('temperature', { ...roomTemperature, ask: 'How cold does the room get?' }),
    rock_mass: rockMass,
    ...tankHeatInputs,
    gains: quantity('power', {
      ...gainsByDay,
      name: 'heat that still goes in',
      ask: 'How many watts of heat still go in while the power is out? Pumps that stop give none.',
      profile: undefined,
    }),
  },
  constants: { ...lossConstants, ...heatStoreConstants, ...nearLimit },
  rules: [
    ...geometryRules,
    { refuse: 'T_1 >= T_w', because: 'The limit must lie below the water temperature at the start.', about: 'limit' },
  ],
  steps: [
    ...lossSteps,
    step(
      'K',
      'UA + A*(e*(psat_slope(T_w)*(1 - b_S*S) + gamma) + 4*eps*sigma*T_w^3)',
      'conductance',
      'watts more lost for each degree the water is warmer',
    ),
    ...systemVolumeSteps,
    heatStoreStep,
    step('tau', 'C/K', 'time', 'time constant'),
    step('T_end', 'water_at_loss(G, UA, A, e, RH, S, T_r)', 'temperature', 'where the water ends up'),
    step('t_1', 'time_to_reach(C, G, UA, A, e, RH, S, T_w, T_1, T_r)', 'time', 'time to the limit'),
  ],
  results: {
    time_to_limit: result('t_1', 'time', 'time to the limit'),
    equilibrium_temperature: result('T_end', 'temperature', 'where the water ends up'),
    loss_conductance: result('K', 'conductance', 'watts more lost for each degree'),
    time_constant: result('tau', 'time', 'time constant'),
    heat_capacity: result('C', 'heat capacity', 'heat to warm water and rock by a degree'),
  },
  headline: [
    {
      text: 'Without heat the water falls from {start_temperature} to {limit} in {time_to_limit:range}.',
      when: 'T_end < T_1',
    },
    { text: 'Without heat the water settles at {equilibrium_temperature:range} and does not fall to {limit}.' },
  ],
  cautions: [
    caution(
      'caution',
      'Oxygen runs out before warmth in most outages: keep one air pump or circulation pump on a battery first.',
    ),
    caution(
      'note',
      'Heaters empty a battery within the hour. Covering the surface and wrapping the sides slows the fall: a tight lid alone saves most of the evaporation.',
      'c > 0.5',
    ),
    caution('stop', 'A generator or a fuel heater runs outdoors only: carbon monoxide kills without warning.'),
    caution(
      'note',
      'When the pumps stop the sump no longer shares its water with the display, and each cools by itself: this takes them as one.',
      { given: 'sump_length' },
    ),
    caution(
      'caution',
      'The water would settle close to the limit, so the time to it is very uncertain: sooner, or never.',
      'T_end > T_1 - near and T_end < T_1',
    ),
    caution('note', 'The room is taken as staying at {room_temperature}; in a house without heating it falls too.'),
    ...lossCautions,
  ],
  sources: [...LOSS_SOURCES, 'energy balance of a mixed tank'],
  examples: [
    'power cut: how long until my 125 gal drops from 79F to 75F in a 64F room',
    'how long before a 40 L cube at 25.5 °C gets down to 22 °C in a 16 °C room without heat',
  ],
});
