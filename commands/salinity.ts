import type { Command } from '../src/conversation/command.js';

export const salinityCommand: Command = {
  name: 'salinity',
  description: 'Salinity from a meter, a hydrometer or a refractometer, and back',
  calculations: [
    'salinity.from_conductivity',
    'salinity.to_conductivity',
    'salinity.from_sg',
    'salinity.to_sg',
    'salinity.from_density',
    'salinity.hydrometer',
    'salinity.refractometer',
    'salinity.units',
  ],
};
