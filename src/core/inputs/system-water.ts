import { quantity } from '../calculation.js';

/** The water that dilutes: display, sump and pipes, without rock and sand; never a trade size. */
export const systemVolume = quantity('volume', {
  symbol: 'V',
  name: 'water really in the system',
  words: [
    'system',
    'water volume',
    'volume',
    'tank',
    'total',
    'in the system',
    'holds',
    'of water',
    'litre tank',
    'in a',
    'on a',
    'in my',
    'on my',
    'out of',
    'of my',
    'through my',
    'my',
    'a',
  ],
  range: [0, 100_000, 'L'],
  aboveLow: true,
  usual: [20, 4000, 'L'],
  ask: 'How much water is really in the system, display and sump together, without rock and sand?',
  profile: 'water.volume',
  onKeeping:
    'If that is a trade size, it is a label and not a volume: give me the sizes of the tank and I work out the water in it.',
});

export const waterTemperature = quantity('temperature', {
  symbol: 'T',
  name: 'water temperature',
  words: ['water', 'tank', 'temp', 'temperature', 'water temperature'],
  range: [0, 40, 'degC'],
  usual: [20, 30, 'degC'],
  default: { value: 25, unit: 'degC', why: 'a reef tank; it moves the density by 0.3 % at most' },
  ask: 'How warm is the water?',
  profile: 'water.temperature',
});
