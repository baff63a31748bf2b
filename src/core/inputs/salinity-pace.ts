import { choice, quantity, step } from '../calculation.js';
import { ANIMALS_IN_IT, NO_ANIMALS } from './animal-words.js';

/** How fast the salinity of a system may move. */
export const paceInputs = {
  stocked: choice({
    name: 'animals in it',
    ask: 'Are there animals in it?',
    default: 'yes',
    options: {
      yes: {
        label: 'yes, animals',
        words: [...ANIMALS_IN_IT, 'livestock', 'corals', 'coral', 'fish', 'inverts', 'anemone', 'snails'],
      },
      no: {
        label: 'no, empty of animals',
        words: [...NO_ANIMALS, 'empty'],
        gives: { n: 1 },
      },
    },
    symbols: { n: '1' },
  }),
  max_change: quantity('salinity rate', {
    symbol: 'v',
    name: 'most change in a day',
    words: ['a day', 'per day', 'daily', 'at most'],
    range: [0.1, 5, 'g/kg/day'],
    default: { value: 1, unit: 'g/kg/day', why: 'common practice with corals, no published source found' },
    ask: 'By how much may the salinity change in a day?',
    example: '1 ppt a day',
  }),
};

export const paceConstants = { day: { value: 86_400, unit: 's', name: 'a day' } };

/** Whole days `n` from `S_1` to `S_2`, one without animals; the millionth keeps three days from being rounded up to four. */
export const paceSteps = [
  step('n', 'ceil(abs(S_2 - S_1)/(v*day) - 0.000001)', 'count', 'days at the daily limit, whole'),
  step('t', 'n*day', 'time', 'time to take'),
];
