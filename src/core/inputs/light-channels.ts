import { rows } from './rows.js';

/** The channels of a light that run for different hours. */
export const lightChannels = rows({
  name: 'channels, watts and hours each',
  row: 'channel',
  words: ['channels', 'channel'],
  ask: 'How many watts does each channel draw, and for how many hours a day?',
  example: '60 W 11 h, 120 W 8 h',
  suggestions: ['60 W 11 h, 120 W 8 h', '40 W 12 h, 90 W 9 h, 30 W 4 h'],
  columns: [
    { symbol: 'P', name: 'power', unit: 'W', range: [0, 5000] },
    { symbol: 'h', name: 'hours', unit: 'h', range: [0, 24] },
  ],
  atLeast: 2,
});
