import type { Command } from '../src/conversation/command.js';

export const topoffCommand: Command = {
  name: 'topoff',
  description: 'Return chamber, top-off, reverse osmosis, and what happens when they fail',
  calculations: [
    'chamber.run_dry',
    'topoff.clog_flood',
    'topoff.runaway',
    'topoff.reservoir',
    'topoff.drift',
    'topoff.ro_rate',
    'ro.time',
    'ro.waste',
    'ro.rejection',
  ],
};
