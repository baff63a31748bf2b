import { quantity } from '../calculation.js';

/** The room's own numbers, shared by every calculation that asks for them. */
export const roomTemperature = quantity('temperature', {
  symbol: 'T_r',
  name: 'room temperature',
  words: ['room', 'house', 'ambient', 'basement', 'garage', 'air', 'winter', 'overnight', 'indoors'],
  range: [-5, 45, 'degC'],
  usual: [10, 35, 'degC'],
  ask: 'How warm is the room?',
  example: '68 F or 20 C',
  profile: 'room.temperature',
});

export const humidity = quantity('fraction', {
  symbol: 'RH',
  name: 'relative humidity of the room',
  words: ['humidity', 'rh', 'relative humidity', 'humid'],
  range: [0, 1, 'fraction'],
  usual: [0.2, 0.9, 'fraction'],
  default: { value: 0.5, unit: 'fraction', low: 0.3, high: 0.7, why: 'a lived-in room' },
  ask: 'How humid is the room?',
  example: '50 %',
  profile: 'room.humidity',
  slips: [[1, 100, 'Relative humidity is at most 100 %: write it with the per cent sign, 50 %.']],
});
