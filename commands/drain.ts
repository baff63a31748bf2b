import type { Command } from '../src/conversation/command.js';

export const drainCommand: Command = {
  name: 'drain',
  description: 'Drains, weir, emergency drain, and the water that comes back when the power fails',
  calculations: [
    'drain.siphon',
    'drain.open',
    'drain.stack',
    'drain.submergence',
    'drain.emergency',
    'drain.clog',
    'drain.hole_layout',
    'overflow.weir',
    'drainback.volume',
    'drainback.safe_level',
  ],
};
