import { caution, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { humidity, roomTemperature } from '../inputs/room.js';
import { freshWater } from '../inputs/surface.js';
import { evaporation } from '../inputs/topoff.js';

const outsideSlip = 'Relative humidity is at most 100 %.';

export const airVentilation = calculation({
  id: 'air.ventilation',
  slash: 'heater ventilation',
  title: 'Fresh air that carries the damp away',
  question: 'How much outside air takes the evaporated water out of the room?',
  part: 'heat',
  cues: [
    'vent fan',
    'fan sizing',
    'vent fan sizing',
    'ventilation',
    'ventilate',
    'vent the room',
    'damp',
    'against mould',
    'against mold',
    'mould',
    'mold',
    'condensation',
    'moisture',
    'exhaust fan',
    'fresh air',
    'air exchange',
    'humid room',
  ],
  inputs: {
    evaporation,
    room_temperature: quantity('temperature', { ...roomTemperature, range: [0, 45, 'degC'] }),
    room_humidity: quantity('fraction', { ...humidity, name: 'relative humidity wanted in the room' }),
    outside_temperature: quantity('temperature', {
      symbol: 'T_o',
      name: 'outside temperature',
      words: ['outside', 'outdoors', 'outdoor'],
      range: [0, 45, 'degC'],
      slips: [
        [
          -60,
          0,
          'Below freezing the formula for vapour over water does not hold; take 0 °C, which is on the cautious side.',
        ],
      ],
      ask: 'How warm is it outside?',
      example: '41 F or 5 C',
    }),
    outside_humidity: quantity('fraction', {
      symbol: 'RH_o',
      name: 'relative humidity outside',
      words: ['outside humidity', 'outdoor humidity', 'outside at', 'outdoors at'],
      range: [0, 1, 'fraction'],
      usual: [0.3, 1, 'fraction'],
      slips: [[1, 100, outsideSlip]],
      default: { value: 0.8, unit: 'fraction', low: 0.6, high: 0.95, why: 'a cool season outdoors, no source' },
      ask: 'How humid is it outside?',
      example: '80 %',
    }),
  },
  constants: {
    P_atm: { value: 101_325, unit: 'Pa', name: 'standard pressure' },
    R_a: { value: 287.055, unit: 'J/(kg K)', name: 'gas constant of dry air' },
    ...freshWater,
  },
  rules: [
    {
      refuse: 'W_r <= W_o',
      because:
        'The outside air holds as much moisture as the room, so no amount of it dries the room: this needs a dehumidifier, or a cooler day.',
      about: 'outside_humidity',
    },
  ],
  steps: [
    step('p_r', 'RH*psat(T_r)', 'pressure', 'vapour pressure in the room'),
    step('p_o', 'RH_o*psat(T_o)', 'pressure', 'vapour pressure outside'),
    step('W_r', '0.62198*p_r/(P_atm - p_r)', 'ratio', 'water in a kilogram of room air'),
    step('W_o', '0.62198*p_o/(P_atm - p_o)', 'ratio', 'water in a kilogram of outside air'),
    step('rho_a', '(P_atm - p_r)/(R_a*T_r)', 'density', 'dry air in a cubic metre of the room'),
    step('Q_a', 'E*rho_f/(rho_a*(W_r - W_o))', 'flow', 'air to exchange'),
  ],
  results: {
    air_flow: result('Q_a', 'flow', 'air to exchange', { units: { metric: 'm3/h', us: 'ft3/min' }, figures: 2 }),
    humidity_ratio_room: result('W_r', 'ratio', 'water in a kilogram of room air'),
    humidity_ratio_outside: result('W_o', 'ratio', 'water in a kilogram of outside air'),
  },
  headline: [
    {
      text: 'Keeping the room at {room_humidity} while {evaporation} evaporates takes this much outside air: {air_flow:range}.',
    },
  ],
  cautions: [
    caution(
      'note',
      'Air that leaks through the house counts towards it, and people, cooking and laundry add moisture that is not counted here.',
    ),
    caution(
      'caution',
      'Dampness grows mould: vent the hood and the cabinet outdoors, not into a wall or an attic, and keep cold walls behind the tank clear.',
    ),
    caution(
      'note',
      'Every cubic metre that leaves takes its warmth with it: in winter ventilation costs heating.',
      'T_o < T_r',
    ),
    caution('caution', 'New ducts and fixed fans follow local code; the wiring belongs to a licensed electrician.'),
  ],
  sources: [
    'humidity ratio and moist air: ASHRAE Fundamentals, psychrometrics (0.62198 and 287.055 J/(kg K), from memory)',
  ],
  examples: [
    'how much ventilation for 5.7 L a day of evaporation, room 22 °C at 50 %, outside 5 °C at 80 %',
    'how much fresh air against mold: 1.5 gallons a day evaporates, room 72F at 50% humidity, outside 40F',
  ],
});
