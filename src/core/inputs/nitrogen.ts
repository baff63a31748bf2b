import { caution, choice, quantity } from '../calculation.js';
import { MOLAR_MASS_SOURCE } from '../molar-masses.js';
import { ANIMALS_IN_IT, NO_ANIMALS } from './animal-words.js';

const AMMONIA_WORDS = ['ammonia', 'tan', 'total ammonia', 'nh3', 'nh4'];

/** As nitrogen unless `ammoniaForm` says otherwise. */
export const totalAmmonia = quantity('dissolved', {
  symbol: 'a',
  name: 'total ammonia',
  words: AMMONIA_WORDS,
  range: [0, 20, 'mg/L'],
  usual: [0, 8, 'mg/L'],
  ask: 'What does the ammonia test read?',
  example: '0.25 ppm',
});

/** What kits print, as nitrogen: IUPAC 2021 masses N 14.007, NH3 17.031, NH4 18.039, NO2 46.005 g/mol. */
export const ammoniaForm = choice({
  name: 'ammonia counted as',
  ask: 'Does your kit count ammonia as nitrogen (N), as NH3 or as NH4?',
  default: 'as_nitrogen',
  options: {
    as_nitrogen: {
      label: 'nitrogen (N)',
      words: [
        'as n',
        'nh3 n',
        'nh4 n',
        'as nitrogen',
        'ammonia nitrogen',
        'counted as nitrogen',
        'reads as nitrogen',
        'total ammonia nitrogen',
        'tan',
      ],
      gives: { f_a: 1 },
    },
    as_nh3: {
      label: 'NH3, the molecule',
      words: ['reads nh3', 'reads as nh3', 'counts nh3', 'counted as nh3', 'in nh3', 'kit shows nh3'],
      gives: { f_a: 14.007 / 17.031 },
    },
    as_nh4: {
      label: 'NH4, the ion',
      words: ['reads nh4', 'reads as nh4', 'counts nh4', 'counted as nh4', 'in nh4', 'kit shows nh4', 'ammonium'],
      gives: { f_a: 14.007 / 18.039 },
    },
  },
  symbols: { f_a: '1' },
  source: MOLAR_MASS_SOURCE,
});

export const nitriteForm = choice({
  name: 'nitrite counted as',
  ask: 'Does your kit count nitrite as nitrogen (N) or as NO2?',
  default: 'as_nitrogen',
  options: {
    as_nitrogen: {
      label: 'nitrogen (N)',
      words: [
        'no2 n',
        'nitrite n',
        'nitrite nitrogen',
        'nitrite as n',
        'nitrite as nitrogen',
        'no2 as n',
        'no2 as nitrogen',
      ],
      gives: { f_n: 1 },
    },
    as_no2: {
      label: 'NO2, the ion',
      words: ['nitrite as no2', 'reads no2', 'reads as no2', 'counts no2', 'counted as no2', 'in no2'],
      gives: { f_n: 14.007 / 46.005 },
    },
  },
  symbols: { f_n: '1' },
  source: MOLAR_MASS_SOURCE,
});

export const countedAsNitrogen = caution(
  'note',
  'Counted as nitrogen (N). A kit that prints NH₃ reads 1.22 times as much, NH₄ 1.29, NO₂ 3.28 times: tell me which yours prints.',
  { any: [{ assumed: 'ammonia_form' }, { assumed: 'nitrite_form' }] },
);

export const kitZero = caution(
  'note',
  'A kit’s zero means “less than its lowest step”, not nothing: with steps of 0.25 it may still be 0.2.',
);

/** The rise that a dose is for, as nitrogen. */
export const riseWanted = quantity('dissolved', {
  symbol: 'dN',
  name: 'rise of ammonia (as nitrogen)',
  words: [
    'to',
    'rise',
    'up to',
    'dose to',
    'reach',
    'ammonia',
    'get',
    'hit',
    'raise',
    'target',
    'want',
    'wanted',
    'for',
    'by',
    'raise by',
    'raise ammonia by',
    'up by',
    'bring it to',
    'get to',
    'get it to',
    'up',
    'goal',
    'aim',
  ],
  range: [0.5, 4, 'mg/L'],
  slips: [
    [0, 0.5, 'Less than 0.5 mg/L proves nothing: 2 mg/L is usual.'],
    [
      4,
      1e6,
      'Above 4 mg/L the ammonia itself holds back the bacteria that eat nitrite, and the cycle may stall: 2 is plenty.',
    ],
  ],
  default: { value: 2, unit: 'mg/L', why: 'common practice; 1 to 2 feeds the bacteria without holding them back' },
  ask: 'By how much should the ammonia rise?',
  example: '2 ppm',
});

/** A question about animals before ammonia goes in. */
export const animalsInWater = choice({
  name: 'animals in the water',
  ask: 'Are there animals in the water?',
  default: 'no',
  options: {
    no: { label: 'no animals', words: NO_ANIMALS },
    yes: { label: 'animals in it', words: ANIMALS_IN_IT },
  },
});

export const noAmmoniaOntoAnimals = {
  refuse: { is: ['animals', 'yes'] },
  because:
    'No ammonia into water with animals: it burns their gills. With animals in it, test daily, feed little and change water instead.',
  about: 'animals',
} as const;

export const neverWithAnimals = caution('stop', 'Only into water without any animals: ammonia burns gills.');

export const measureBeforeDosing = caution(
  'caution',
  'Test the ammonia first and dose only what is missing to 2 mg/L: dry rock may leach some of its own.',
);

export const noBleachWithAmmonia = caution(
  'stop',
  'Never near bleach or chlorine cleaner: together they give off a poisonous gas.',
);

export const dosesPlanned = quantity('count', {
  symbol: 'k',
  name: 'doses planned',
  words: ['doses', 'times', 'rounds', 'dose', 'times over', 'additions', 'in total doses'],
  range: [1, 60, 'count'],
  whole: true,
  needed: false,
  ask: 'How many doses do you plan?',
  example: '10',
});

export const proteinFraction = quantity('fraction', {
  symbol: 'PC',
  name: 'protein in the dry food',
  words: ['protein', 'crude protein', 'protein content', '% protein', 'percent protein'],
  range: [0.2, 0.7, 'fraction'],
  usual: [0.3, 0.6, 'fraction'],
  slips: [[20, 70, 'A share is meant: 45 %, or 0.45.']],
  default: {
    value: 0.45,
    unit: 'fraction',
    low: 0.4,
    high: 0.55,
    why: 'dry foods for marine fish; it stands on the label',
  },
  ask: 'How much protein does the label of the food state?',
  example: '45 %',
});

/** Dry mass over mass as fed. */
export const food = choice({
  name: 'food',
  ask: 'Is the food dry or frozen?',
  default: 'dry',
  options: {
    dry: {
      label: 'dry food',
      words: [
        'dry',
        'pellets',
        'pellet',
        'flakes',
        'flake',
        'dry food',
        'granules',
        'granulate',
        'flake food',
        'crisps',
        'wafers',
        'pellet food',
      ],
      gives: { q: 1 },
    },
    frozen: {
      label: 'frozen food',
      words: [
        'frozen',
        'mysis',
        'frozen mysis',
        'brine shrimp',
        'cubes',
        'cube',
        'frozen food',
        'frozen cubes',
        'frozen brine',
        'mysis shrimp',
        'frozen krill',
        'krill',
        'frozen shrimp',
        'thawed',
      ],
      gives: { q: 0.2 },
    },
  },
  symbols: { q: '1' },
  source: 'frozen food is 75 to 85 % water, so a fifth of it is dry: common practice, no source',
});

export const feedConstant = {
  y: { value: 0.092, unit: '1', name: 'nitrogen excreted as ammonia over protein fed' },
} as const;

export const FEED_SOURCE =
  'ammonia from feed, 0.16·0.8·0.8·0.9 = 0.092 of the protein: Timmons and Ebeling, Recirculating Aquaculture';

export const vetAndWelfare = caution(
  'note',
  'Quarantine, what the species needs and welfare law come first; a sick animal is a case for a veterinarian.',
);
