import { caution, quantity, result, step } from '../calculation.js';
import { heaterElectrics, heaterPlace } from '../cautions/heater.js';
import { calculation } from '../define.js';
import { heatStoreConstants, heatStoreStep } from '../inputs/heat-store.js';
import { heaterCount, heaterPower, rockMass } from '../inputs/heater.js';
import { LOSS_SOURCES, lossCautions, lossConstants, lossSteps, systemVolumeSteps } from '../inputs/loss-steps.js';
import { roomTemperature } from '../inputs/room.js';
import { gains, geometryRules, tankHeatInputs, tankTemperature } from '../inputs/tank-heat.js';

const ARRIVES = 'n*P_h + G > P_loss';

export const heaterWarmUp = calculation({
  id: 'heater.warm_up',
  slash: 'heater warm-up',
  title: 'Time to warm the tank up',
  question: 'How long do the heaters take from the water’s temperature now to the target?',
  part: 'heat',
  cues: [
    'until its warm',
    'until it is warm',
    'when is it warm',
    'how many hours until',
    'heat it up from',
    'how long to reach',
    'to reach',
    'warm up',
    'heat up',
    'warm it up',
    'heat it up',
    'bring it up',
    'get it up to',
    'up to temperature',
    'raise the temperature',
    'how long to heat',
    'how long to warm',
    'heat from',
    'warm from',
  ],
  inputs: {
    start_temperature: quantity('temperature', {
      symbol: 'T_0',
      name: 'water temperature at the start',
      words: ['from', 'start', 'starting at', 'starts at', 'is now', 'now at', 'water is', 'filling', 'cold water'],
      range: [0, 35, 'degC'],
      needed: false,
      default: { same: 'room_temperature' },
      ask: 'How warm is the water now?',
    }),
    target: quantity('temperature', {
      ...tankTemperature,
      name: 'target water temperature',
      words: [...(tankTemperature.words ?? []), 'to', 'up to', 'reach'],
    }),
    room_temperature: roomTemperature,
    heater_power: heaterPower,
    heaters: heaterCount,
    rock_mass: rockMass,
    ...tankHeatInputs,
    gains,
  },
  constants: { ...lossConstants, ...heatStoreConstants },
  rules: [
    ...geometryRules,
    {
      refuse: { all: [{ assumed: 'start_temperature' }, 'T_0 >= T_w'] },
      because:
        'Water that starts as warm as this room needs no warming up to the target: how warm is the water now, if it is colder?',
      about: 'start_temperature',
    },
    {
      refuse: { all: [{ not: { assumed: 'start_temperature' } }, 'T_0 >= T_w'] },
      because: 'The water is already at the target or above it: there is nothing to warm up.',
      about: 'start_temperature',
    },
  ],
  steps: [
    ...lossSteps,
    ...systemVolumeSteps,
    heatStoreStep,
    step('P_all', 'n*P_h', 'power', 'all heaters together'),
    step('t_up', 'time_to_reach(C, P_all + G, UA, A, e, RH, S, T_0, T_w, T_r)', 'time', 'time to the target'),
  ],
  results: {
    time: result('t_up', 'time', 'time to the target'),
    heat_capacity: result('C', 'heat capacity', 'heat to warm water and rock by a degree'),
    loss_at_target: result('P_loss', 'power', 'heat lost to the room at the target'),
  },
  headline: [
    { text: 'From {start_temperature} to {target} takes {time:range}.', when: ARRIVES },
    {
      text: 'It never gets to {target}: there the room takes {loss_at_target:range}, and the heaters and equipment give less.',
    },
  ],
  cautions: [
    caution(
      'caution',
      'The heaters give not much more than the loss at the target, so the last degrees are slow and the time uncertain: if the loss runs high it never gets there.',
      'n*P_h + G > P_loss and n*P_h + G < 1.5*P_loss',
    ),
    caution(
      'caution',
      'Warm up an empty system at any pace, but not one with animals in it: about 1 °C an hour is common practice, no source.',
      '(P_all + G)/C > 0.00028',
    ),
    caution('note', 'Mix while it warms: a heater in still water warms its corner and switches off.'),
    ...lossCautions,
    heaterElectrics,
    heaterPlace,
  ],
  sources: [...LOSS_SOURCES, 'energy balance of a mixed tank'],
  examples: [
    'how long to heat 125 gal up to 78F with a 500 W heater in a 68F room',
    'warm up a 120x60x60 cm tank with 10 mm glass, water now at 18 °C, target 25 °C, 300 W heater, room 20 °C',
  ],
});
