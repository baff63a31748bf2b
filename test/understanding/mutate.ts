import type { Message } from './corpus.js';

/** A way in which somebody else would have typed the same message: nothing that it means changes. */
interface Mutation {
  readonly name: string;
  readonly apply: (say: string, pick: (many: number) => number) => string;
}

const SPELLINGS: readonly (readonly string[])[] = [
  ['cm', 'centimeters', 'centimetres', 'cms'],
  ['mm', 'millimeters', 'millimetres'],
  ['inches', 'in.', 'inch'],
  ['ft', 'feet', 'foot'],
  ['gal', 'gallons', 'gallon', 'gals'],
  ['litres', 'liters', 'ltr', 'litre'],
  ['kg', 'kilos', 'kgs'],
  ['lb', 'lbs', 'pounds'],
  ['watts', 'watt', 'W'],
  ['hours', 'hrs', 'hour'],
  ['gph', 'gal/h', 'gallons per hour', 'gal per hour'],
  ['l/h', 'lph', 'litres per hour', 'liters an hour'],
  ['days', 'day'],
  ['percent', '%'],
];
const spellingOf = new Map(SPELLINGS.flatMap((words) => words.map((word) => [word.toLowerCase(), words] as const)));

const escaped = (word: string): string => word.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
const UNIT = new RegExp(
  `(\\d\\s?)(${[...spellingOf.keys()]
    .sort((a, b) => b.length - a.length)
    .map(escaped)
    .join('|')})(?![a-zµ/0-9²³%])`,
  'gi',
);
/** Long words that a thumb slips in; words that are numbers, units or two things a letter apart are left alone. */
const LONG_WORD = /[a-z]{7,}/gi;
const NO_SLIP =
  /^(?:nitrat|nitrit|litre|liter|gallon|inch|centi|milli|kilo|fahren|celsius|percent|hundred|thousand|seven|eight|quarter|millisie|micro|schedul)/i;

const MUTATIONS: readonly Mutation[] = [
  {
    name: 'other spellings of units',
    apply: (say, pick) =>
      say.replace(UNIT, (_, number: string, unit: string) => {
        const others = spellingOf.get(unit.toLowerCase())!;
        return `${number.trim()} ${others[pick(others.length)]}`;
      }),
  },
  {
    name: 'no blank before a unit',
    apply: (say) => say.replace(/(\d) (cm|mm|kg|lbs?|gal|gph|lph|ppt|ppm|dKH|watts?)(?![a-z/])/gi, '$1$2'),
  },
  { name: 'blanks in joined sizes', apply: (say) => say.replace(/(\d) ?x ?(?=\d)/g, '$1 x ') },
  { name: 'no blanks in joined sizes', apply: (say) => say.replace(/(\d) x (?=\d)/g, '$1x') },
  { name: 'capitals', apply: (say) => say.toUpperCase() },
  { name: 'small letters', apply: (say) => say.toLowerCase() },
  {
    name: 'a greeting in front',
    apply: (say, pick) => `${['hey guys, ', 'hi all! ', 'quick one: ', 'evening folks, '][pick(4)]}${say}`,
  },
  { name: 'thanks behind', apply: (say, pick) => `${say}${[' thanks', ', thx!', ' 🙏', ' cheers'][pick(4)]}` },
  {
    name: 'a slip of the finger in a long word',
    apply: (say, pick) => {
      const words = [...say.matchAll(LONG_WORD)].filter(([word]) => !NO_SLIP.test(word));
      if (words.length === 0) return say;
      const { 0: word, index } = words[pick(words.length)]!;
      const at = 2 + pick(word.length - 4);
      const slipped = `${word.slice(0, at)}${word[at + 1]}${word[at]}${word.slice(at + 2)}`;
      return say.slice(0, index) + slipped + say.slice(index + word.length);
    },
  },
  { name: 'doubled blanks', apply: (say) => say.replace(/ /g, '  ') },
];

/** A small generator with a seed of its own for each text (mulberry32), so that the same corpus makes the same mutants. */
function picker(text: string): (many: number) => number {
  let seed = [...text].reduce((sum, character) => (Math.imul(sum, 31) + character.charCodeAt(0)) | 0, 7);
  return (many) => {
    seed = (seed + 0x6d2b79f5) | 0;
    let mixed = Math.imul(seed ^ (seed >>> 15), 1 | seed);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296) * many);
  };
}

/** Each message once more in other words for the same, for every mutation that changes it. */
export const mutants = (list: readonly Message[]): Message[] =>
  list.flatMap((message) => {
    const pick = picker(message.say);
    return MUTATIONS.flatMap(({ apply }) => {
      const say = apply(message.say, pick);
      return say === message.say ? [] : [{ ...message, say }];
    });
  });
