import type { Command } from '../src/conversation/command.js';

export const structureCommand: Command = {
  name: 'structure',
  description: 'Weights, floor, glass, rock, sand, the way in, and the lid',
  calculations: ['move.people', 'move.doorway', 'move.corner', 'move.tilt', 'lid.strut', 'hang.light'],
};
