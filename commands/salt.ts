import type { Command } from '../src/conversation/command.js';

export const saltCommand: Command = {
  name: 'salt',
  description: 'How much salt to mix, and how to raise or lower the salinity of a system',
  calculations: ['salt.mix', 'salt.raise', 'salt.lower', 'salt.raise_by_swap'],
};
