import { lookup } from '../calculation.js';
import { LENGTH_UNIT, metres, NUMBER } from './length-text.js';

const FROM_TO = `(?:from\\s+)?${NUMBER}\\s*${LENGTH_UNIT}?\\s*(?:up |down )?(?:to|->)\\s*${NUMBER}\\s*${LENGTH_UNIT}(?![a-z\\d])`;

/** "from 25 cm to 50 cm", "10 to 16 inches": a lamp moved from one distance to another. A missing unit takes the other's. */
export const lampMove = lookup({
  name: 'from and to, in one',
  words: ['move', 'moved'],
  ask: 'From which distance to which?',
  example: '25 cm to 50 cm',
  needed: false,
  suggestions: ['25 cm to 40 cm', '10 in to 16 in', '16 in to 12 in'],
  pattern: new RegExp(FROM_TO),
  read(text) {
    const match = text.toLowerCase().match(new RegExp(FROM_TO));
    if (!match) return `I can't read “${text}” as two distances: 25 cm to 50 cm would do.`;
    const [, from, fromUnit, to, toUnit] = match;
    return {
      reading: `${from} ${fromUnit ?? toUnit} to ${to} ${toUnit}`,
      inputs: { distance_1: metres(from!, fromUnit ?? toUnit!), distance_2: metres(to!, toUnit!) },
      said: true,
    };
  },
});
