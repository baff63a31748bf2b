import type { Command } from '../src/conversation/command.js';

export const powerCommand: Command = {
  name: 'power',
  description: 'Circuits, cords, battery and running cost',
  calculations: ['electric.circuit', 'electric.cord', 'electric.backup', 'cost.running'],
};
