import { quantity, type Rule, type Sentence, step } from '../calculation.js';

export const SALINITY_WORDS = [
  'salinity',
  'salinity of',
  'ppt',
  'psu',
  'salt level',
  'sg',
  'sg of',
  'specific gravity',
  'parts per thousand',
  'per mille',
  'per mil',
  'per thousand',
  'promille',
];

/** EOS-80 was fitted up to here; so was the practical salinity scale. */
const HIGHEST = 42;

export const salinity = quantity('salinity', {
  symbol: 'S',
  name: 'salinity',
  words: SALINITY_WORDS,
  range: [0, HIGHEST, 'g/kg'],
  usual: [20, 40, 'g/kg'],
  slips: [
    [1000, 1100, 'That looks like a density in kg/m³, or a specific gravity without its point.'],
    [200, 420, 'A decimal point may be missing: 350 is written for 35.0.'],
  ],
  ask: 'Which salinity?',
  example: '35 ppt',
});

/** What the tank is kept at. */
export const salinityKept = quantity('salinity', { ...salinity, profile: 'water.salinity' });

export const salinityNow = quantity('salinity', {
  ...salinity,
  symbol: 'S_1',
  name: 'salinity now',
  words: [
    'from',
    'salinity is',
    'im at',
    'currently at',
    'now',
    'currently',
    'at the moment',
    'is at',
    'reads',
    'measured',
    'present',
    'dropped to',
    'fell to',
    'rose to',
    'crept up to',
    'too low',
    'too high',
    'salinity',
    'its',
    'it is',
    'its at',
    'sits at',
    'is reading',
    'tank is',
    'tank at',
    'now at',
    'right now',
    'started at',
    'go from',
    'up from',
    'down from',
    'too salty',
    'crept to',
    'climbed to',
    'went up to',
    'down at',
    'we are at',
    'were at',
    'im reading',
    'salt is',
    'tank',
    'water is',
    'is now',
    'salinity now',
    'at present',
    'climbed to #',
    'salt climbed to',
    'risen to',
    'gone up to',
    'gone down to',
    'is only',
    'only',
    'let it go to',
    'from about',
    'diluted to',
    'bring it from',
    'bring from',
    'got to',
    'went to',
    'rising to',
    'present salinity',
    'current salinity',
    'salinity is now',
    'salinity now is',
    'it reads',
  ],
  ask: 'What is the salinity now?',
  example: '33 ppt',
});

export const salinityTarget = quantity('salinity', {
  ...salinity,
  symbol: 'S_2',
  name: 'salinity wanted',
  words: [
    'target',
    'want',
    'wanted',
    'get to',
    'to',
    'up to',
    'down to',
    'back to',
    'goal',
    'aim',
    'should be',
    'need',
    'needs',
    'needed',
    'need to be',
    'get it to',
    'reach',
    'until',
    'instead of',
    'raise to',
    'raise it to',
    'lower to',
    'lower it to',
    'bring it to',
    'aiming for',
    'aim for',
    'should',
    'supposed to be',
    'desired',
    'shooting for',
    'hit',
    'again',
    'go to',
    'ideal',
    'should read',
    'want it at',
    'wants',
    'i want',
    'target is',
    'salinity wanted',
    'wanted salinity',
    'bring it back to',
    'lift it to',
    'increase to',
    'increase it to',
    'would like',
    'id like',
    'like to have',
    'instead',
  ],
  ask: 'Which salinity do you want?',
  profile: 'water.salinity',
});

/** The water in the sample when it was read; a reading, so the tank's page does not keep it. */
export const sampleTemperature = quantity('temperature', {
  symbol: 'T',
  name: 'temperature of the sample',
  words: ['at', 'sample', 'water', 'temp', 'temperature', 'tank', 'in water of'],
  range: [0, 40, 'degC'],
  usual: [10, 32, 'degC'],
  ask: 'How warm was the water when you read it?',
});

export const absoluteSalinityStep = step(
  'S_A',
  'S*35.16504/35',
  'salinity',
  'true mass of salt, reference composition (TEOS-10)',
);

/** A density that no seawater within the formula's range has at that temperature. */
export const densityRules = (about: string): readonly Rule[] => [
  {
    refuse: 'rho < rho_w(T)*0.999999999',
    because:
      'That is lighter than fresh water at that temperature, so no salinity fits: check the reading, the temperatures and the unit.',
    about,
  },
  {
    refuse: 'rho > rho_sw(0.042, T)*1.000000001',
    because:
      'The salinity comes out above 42 ppt, where the density formula ends: check the reading and the temperatures the scale was made for.',
    about,
  },
];

const REEF = 'of natural water over reefs (common practice)';

/** A first line that ends in how the salinity `S` stands to what reefs have, to the tenth that is shown. */
export const againstReef = (text: string): readonly Sentence[] => [
  { text: `${text}: within the 34 to 36 ppt ${REEF}.`, when: 'S >= 0.03395 and S <= 0.03605' },
  { text: `${text}: below the 34 to 36 ppt ${REEF}.`, when: 'S < 0.03395' },
  { text: `${text}: above the 34 to 36 ppt ${REEF}.` },
];
