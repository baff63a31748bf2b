import { caution, quantity, result, step } from '../calculation.js';
import { day } from '../constants.js';
import { calculation } from '../define.js';
import { energyPrice } from '../inputs/mains.js';
import { rows } from '../inputs/rows.js';

export const costRunning = calculation({
  id: 'cost.running',
  slash: 'power running-cost',
  title: 'Running cost of the whole tank',
  question: 'What does the tank cost a month in electricity?',
  part: 'money',
  cues: [
    'running cost',
    'cost of # w',
    'cost of a # w',
    'cost of # watts',
    'cost of running',
    'running cost of',
    '~kwh',
    'running costs',
    'cost a month',
    'kwh a day',
    'kwh a month',
    'cost per month',
    'cost to run',
    'cost to run my tank',
    'monthly cost',
    'electricity cost',
    'electric bill',
    'power bill',
    'electricity a month',
    'tank cost',
  ],
  inputs: {
    loads: rows({
      name: 'what runs, watts and hours a day each',
      row: 'device',
      words: ['loads', 'devices', 'runs'],
      ask: 'How many watts does each thing draw, and for how many hours a day? A heater counts with the watts it gives on average, not its label.',
      example: 'heater 120 W 24 h, pump 40 W 24 h, lights 160 W 10 h',
      suggestions: ['120 W 24 h, 40 W 24 h, 160 W 10 h', '173 W 24 h, 40 W 24 h, 160 W 10 h, 30 W 24 h'],
      columns: [
        { symbol: 'P', name: 'power', unit: 'W', range: [0, 20_000] },
        { symbol: 'h', name: 'hours a day', unit: 'h', range: [0, 24] },
      ],
    }),
    price: quantity('energy price', { ...energyPrice, words: [...(energyPrice.words ?? []), 'at'], needed: false }),
    heat_loss: quantity('power', {
      symbol: 'P_loss',
      name: 'heat the heaters give on average',
      words: ['heat loss', 'heaters give', 'heater average', 'loses'],
      range: [0, 50_000, 'W'],
      needed: false,
      ask: 'How many watts do the heaters give on average over the year (heater loss works that out)?',
      example: '170 W',
    }),
  },
  constants: { day, kWh: { value: 3.6e6, unit: 'J', name: 'joules in a kilowatt hour' } },
  steps: [
    step('E', 'sum_i(P_i*h_i)/day + P_loss', 'energy a day', 'mean power over the whole day, heaters added'),
    step('E', 'sum_i(P_i*h_i)/day', 'energy a day', 'mean power over the whole day'),
    step('cost', 'E*c', 'cost a month', 'cost'),
  ],
  results: {
    cost_per_month: result('cost', 'cost a month', 'cost a month'),
    energy_per_day: result('E', 'energy a day', 'energy a day'),
    mean_power: result('E', 'power', 'mean power over the day'),
  },
  headline: [
    { text: 'It costs {cost_per_month} to run, {energy_per_day}.', when: 'cost >= 0' },
    { text: 'It uses {energy_per_day}, {mean_power} on average.' },
  ],
  cautions: [
    caution('note', 'Tell me the price of a kilowatt hour and I work out the cost.', { not: { given: 'price' } }),
    caution(
      'note',
      'A heater counts with what it gives on average, not with its label: “heater loss” works out the watts for a room, and the year’s mean lies between winter and summer.',
    ),
    caution('note', 'Watts measured at the plug beat labels: dimmed lights and controllable pumps draw less.'),
    caution('note', 'That price looks like cents or pence: say “28 cents per kWh” if it is.', 'c*kWh > 2'),
  ],
  sources: ['energy is power times time; a month is 365.25/12 days'],
  examples: [
    'running cost of a 173 W heater 24 h, 40 W pump 24 h, lights 160 W 10 h, 30 W 24 h at 0.32 per kWh',
    'what does it cost a month to run pump 60 W 24 h, lights 200 W 9 h and skimmer 25 W 24 h at 28 cents per kWh',
    'monthly cost: 100 W 24 h and 150 W 8 h at 0.15 per kWh',
  ],
});
