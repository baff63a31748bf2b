import { type Condition, type Input, quantity, type Rule } from '../calculation.js';

const CHAMBERS = 8;
/** A slash command takes 25 options: the first six chambers may be given by their length as well. */
const BY_LENGTH = 6;

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth'] as const;
const NUMBERS = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight'] as const;
/** What people call a chamber: the first chamber, section 2, compartment three. */
const namesOf = (i: number): string[] =>
  ['chamber', 'section', 'compartment'].flatMap((thing) => [
    `${ORDINALS[i - 1]} ${thing}`,
    `${thing} ${i}`,
    `${thing} ${NUMBERS[i - 1]}`,
  ]);
/** Said of any chamber: chambers are told one after the other, so that the first level belongs to the first. */
const LEVEL_WORDS = [
  'level',
  'of water',
  'cm water',
  'in water',
  'inch water',
  'water level',
  'deep',
  'water',
  'water at',
  'at',
  'with',
  'filled',
  'filled to',
];

const each = <T>(count: number, make: (i: number) => T): T[] => Array.from({ length: count }, (_, k) => make(k + 1));

const given = (id: string): Condition => ({ given: id });
const lengthOf = (i: number): Condition[] => (i <= BY_LENGTH ? [given(`chamber_${i}_length`)] : []);

const area = (i: number): Input =>
  quantity('area', {
    symbol: `A_${i}`,
    name: `area of chamber ${i}`,
    words: namesOf(i),
    range: [0, 4, 'm2'],
    aboveLow: true,
    ...(i <= BY_LENGTH ? { default: { formula: `l_${i}*W_i` } } : {}),
    needed:
      i === 1
        ? { not: given('chamber_1_length') }
        : { all: [given(`chamber_${i}_level`), { not: { any: lengthOf(i) } }] },
    ask: `What is the area of chamber ${i}, length times width?`,
    example: '0.13 m2 or 200 sq in',
    profile: `sump.chamber_${i}_area`,
  });

const level = (i: number): Input =>
  quantity('length', {
    symbol: `z_${i}`,
    name: `water level in chamber ${i}`,
    words: [
      ...namesOf(i).map((name) => `${name} level`),
      ...namesOf(i).flatMap((name) => [`water in ${name}`, `level in ${name}`]),
      ...LEVEL_WORDS,
    ],
    range: [0, 1.5, 'm'],
    usual: [5, 60, 'cm'],
    ...(i === 1 ? {} : { needed: { any: [given(`chamber_${i}_area`), ...lengthOf(i)] } }),
    ask: `How high does the water stand in chamber ${i} while it runs?`,
    example: '10 in or 25 cm',
    profile: `sump.chamber_${i}_level`,
  });

const lengthInput = (i: number): Input =>
  quantity('length', {
    symbol: `l_${i}`,
    name: `inside length of chamber ${i}`,
    words: [...namesOf(i), 'long', 'length'],
    range: [0.01, 3, 'm'],
    usual: [5, 100, 'cm'],
    needed: false,
    ask: `How long is chamber ${i} inside?`,
    example: '12 in or 30 cm',
    profile: `sump.chamber_${i}_length`,
  });

/** Chambers of a sump that runs: each by its area, or by its length and the inside width of the sump, and its level. */
export const chamberInputs: Readonly<Record<string, Input>> = {
  ...Object.fromEntries(
    each(CHAMBERS, (i) => [
      [`chamber_${i}_area`, area(i)],
      [`chamber_${i}_level`, level(i)],
    ]).flat(),
  ),
  ...Object.fromEntries(each(BY_LENGTH, (i) => [`chamber_${i}_length`, lengthInput(i)])),
  width: quantity('length', {
    symbol: 'W_i',
    name: 'inside width of the sump',
    words: ['width', 'wide', 'front to back', 'inside width', 'sump width'],
    range: [0.05, 3, 'm'],
    needed: { any: each(BY_LENGTH, (i) => given(`chamber_${i}_length`)) },
    byName: true,
    ask: 'How wide is the sump inside, front to back?',
    example: '16 in or 40 cm',
    profile: 'sump.inside_width',
  }),
};

export const chamberRules: readonly Rule[] = each(CHAMBERS, (i) => ({
  refuse: `z_${i} > H`,
  because: `The water in chamber ${i} would stand above the rim: check that level against the height.`,
  about: `chamber_${i}_level`,
}));
