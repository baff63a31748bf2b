import type { Command } from '../src/conversation/command.js';

export const waterCommand: Command = {
  name: 'water',
  description: 'Water changes, alkalinity, calcium, magnesium, ammonia, nitrogen units',
  calculations: [
    'alkalinity.units',
    'dosing.mass',
    'dosing.consumption',
    'calcification.ratio',
    'alkalinity.natural_levels',
  ],
};
