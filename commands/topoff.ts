import type { Command } from '../src/conversation/command.js';

export const topoffCommand: Command = {
  name: 'topoff',
  description: 'Return chamber, top-off, reverse osmosis, and what happens when they fail',
  calculations: ['topoff.drift', 'ro.time', 'ro.waste', 'ro.rejection'],
};
