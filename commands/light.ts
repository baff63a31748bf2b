import type { Command } from '../src/conversation/command.js';

export const lightCommand: Command = {
  name: 'light',
  description: 'Light hours, daily light, timers, acclimation, refugium and energy',
  calculations: [
    'light.schedule',
    'light.integral',
    'light.hours',
    'light.acclimation',
    'light.refugium',
    'light.energy',
    'light.height',
    'light.attenuation',
    'light.spread',
    'light.day_length',
    'light.lux',
  ],
};
