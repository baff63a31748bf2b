import { quantity } from '../calculation.js';

/** The heaters and what they heat, shared by every calculation about them. */
export const heaterPower = quantity('power', {
  symbol: 'P_h',
  name: 'power of each heater',
  words: [
    'heater',
    'heaters',
    'watt heater',
    'W heater',
    'titanium',
    'each',
    'w heater',
    'heating',
    'watts of heat',
    'watts of heater',
    'stuck',
    'runaway',
    'each one',
    'apiece',
    'watts each',
    'element',
  ],
  range: [0, 10_000, 'W'],
  aboveLow: true,
  usual: [10, 1500, 'W'],
  ask: 'How many watts is each heater?',
  profile: 'heater.power',
});

export const heaterCount = quantity('count', {
  symbol: 'n',
  name: 'number of heaters',
  words: ['heaters', 'split over', 'number of heaters', 'heater', 'of them', 'of these'],
  range: [1, 8, 'count'],
  whole: true,
  default: { value: 1, unit: 'count' },
  ask: 'How many heaters are there?',
  example: '2',
  profile: 'heater.count',
});

export const rockMass = quantity('mass', {
  symbol: 'm_r',
  name: 'dry mass of rock in the water',
  words: ['rock', 'live rock', 'rocks', 'of rock', 'of live rock', 'of dry rock', 'rockwork', 'liverock', 'lr'],
  range: [0, 5000, 'kg'],
  default: { value: 0, unit: 'kg' },
  ask: 'How much rock is in it?',
  profile: 'rock.mass',
});
