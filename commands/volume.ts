import type { Command } from '../src/conversation/command.js';

export const volumeCommand: Command = {
  name: 'volume',
  description: 'How much water a tank, a sump or the whole system really holds',
  calculations: [
    'volume.rectangular',
    'volume.bow_front',
    'volume.cylinder',
    'volume.quarter_cylinder',
    'volume.corner',
    'volume.hexagon',
    'volume.sump',
    'volume.displacement',
    'volume.system',
    'volume.convert',
  ],
};
