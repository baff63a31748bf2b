import { quantity } from '../calculation.js';

export const ALKALINITY_WORDS = ['alkalinity', 'alk', 'kh', 'dkh', 'carbonate hardness'];

/** What a test of the water says. Its unit must be named or follow from the number: 8 is dKH, 2.8 meq/L, 140 mg/L CaCO3. */
export const alkalinity = quantity('alkalinity', {
  symbol: 'A',
  name: 'alkalinity',
  words: ALKALINITY_WORDS,
  range: [0, 30.9, 'dKH'],
  slips: [
    [30.9, 90, 'Was that mg/L as CaCO3 (140 mg/L is 7.8 dKH)?'],
    [90, 1e5, 'Was that mg/L as CaCO3, or calcium? 140 mg/L CaCO3 is 7.8 dKH.'],
  ],
  ask: 'What is the alkalinity, and in which unit?',
  example: '8 dKH, 2.85 meq/L or 143 mg/L CaCO3',
});

export const alkalinityNow = quantity('alkalinity', {
  ...alkalinity,
  symbol: 'A_1',
  name: 'alkalinity now',
  usual: [2, 14, 'dKH'],
  words: [
    'raise from',
    'raise it from',
    'up from',
    ...ALKALINITY_WORDS,
    'from',
    'now',
    'currently',
    'at',
    'reads',
    'im at',
    'is',
    'is at',
    'its',
    'its at',
    'sits at',
    'tests at',
    'test says',
    'low',
    'right now',
    'starts at',
    'starting at',
    'down to',
  ],
  needed: false,
  ask: 'What is the alkalinity now?',
  example: '7.2 dKH',
});
