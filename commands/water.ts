import type { Command } from '../src/conversation/command.js';

export const waterCommand: Command = {
  name: 'water',
  description: 'Water changes, alkalinity, calcium, magnesium, ammonia, nitrogen units',
  calculations: [
    'water_change.single',
    'water_change.series',
    'water_change.to_target',
    'water_change.continuous',
    'alkalinity.units',
    'dosing.mass',
    'dosing.consumption',
    'calcification.ratio',
    'alkalinity.natural_levels',
    'ammonia.free_concentration',
    'ammonia.free_fraction',
    'nitrogen.units',
  ],
};
