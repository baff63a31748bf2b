import type { Command } from '../src/conversation/command.js';

export const returnCommand: Command = {
  name: 'return',
  description: 'Return pump: flow, pipe, turnover, power',
  calculations: [
    'pump.operating_point',
    'pump.flow_needed',
    'pump.turnover',
    'pump.velocity',
    'pump.split',
    'pump.power',
    'refugium.turnover',
  ],
};
