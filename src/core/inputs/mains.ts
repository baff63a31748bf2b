import { quantity } from '../calculation.js';
import { rows } from './rows.js';

export const voltage = quantity('voltage', {
  symbol: 'U',
  name: 'mains voltage',
  words: [
    'volt',
    'volts',
    'mains',
    'voltage',
    'v mains',
    'supply',
    'line voltage',
    'outlet voltage',
    'wall',
    'have',
    'power here',
  ],
  range: [100, 240, 'V'],
  ask: 'Which mains voltage do you have: 120 V as in North America, or 230 V as in Europe?',
  example: '120 V or 230 V',
  profile: 'power.voltage',
});

export const powerFactor = (value: number, why: string) =>
  quantity('ratio', {
    symbol: 'pf',
    name: 'power factor',
    words: ['power factor', 'pf'],
    range: [0, 1, '1'],
    aboveLow: true,
    usual: [0.4, 1, '1'],
    default: { value, unit: '1', why },
    ask: 'What is the power factor, as the label gives it?',
    example: '0.95',
  });

/** Things that draw power, so many watts each. */
export const draws = rows({
  name: 'what draws power, watts each',
  row: 'device',
  words: ['loads', 'devices', 'everything on'],
  ask: 'How many watts does each thing draw?',
  example: '300 W heater, 40 W pump, 190 W light',
  suggestions: ['300 W, 40 W, 190 W', '150 W, 150 W, 25 W, 60 W, 35 W'],
  columns: [{ symbol: 'P', name: 'power', unit: 'W', range: [0, 10_000] }],
  atLeast: 2,
  needed: false,
});

export const energyPrice = quantity('energy price', {
  symbol: 'c',
  name: 'price of electricity',
  words: [
    'price',
    'kwh',
    'per kwh',
    'electricity',
    'rate',
    'costs',
    'tariff',
    'electricity costs',
    'power costs',
    'pay',
    'we pay',
    'i pay',
    'per kilowatt hour',
    'kilowatt hour',
    'a kwh',
    'per unit',
    'energy price',
    'kwh price',
    'electric rate',
    'electricity price',
    'at',
    'cost per kwh',
  ],
  range: [0.001, 1000, 'currency/kWh'],
  usual: [0.05, 0.8, 'currency/kWh'],
  ask: 'What does a kilowatt hour cost?',
  example: '0.28 per kWh, or 28 cents per kWh',
  profile: 'room.energy_price',
});
