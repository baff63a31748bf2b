import type { Command } from '../src/conversation/command.js';

export const heaterCommand: Command = {
  name: 'heater',
  description: 'Heat lost, heater power, evaporation, and what a dead or stuck heater does',
  calculations: [
    'heater.size',
    'heat.loss',
    'evaporation.rate',
    'heater.warm_up',
    'heater.stuck_on',
    'heater.outage',
    'cooling.need',
    'air.ventilation',
  ],
};
