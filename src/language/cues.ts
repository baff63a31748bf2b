import { withinOneSlip } from './unit-words.js';

/** Where a cue word or phrase stands in a folded text. */
export interface CueFound {
  readonly start: number;
  readonly end: number;
}

interface Word {
  readonly text: string;
  readonly start: number;
  readonly end: number;
  /** A comma or a full stop follows: no phrase goes on behind it. */
  readonly stops: boolean;
}

const STOP = /^ ?[,;:?!]|^\.(?:\s|$)/;

/** A folded text cut into words once, so that many cues can be looked for. */
export interface Words {
  readonly list: readonly Word[];
  /** The words, and each as it would be with or without an s. */
  readonly forms: ReadonlySet<string>;
}

const SHORTEST_WITH_SLIP = 6;
/** Two things a letter apart: neither is a slip of the other. */
const NO_SLIPS = new Set(['nitrate', 'nitrates', 'nitrite', 'nitrites', 'layer', 'layers', 'stocked', 'discuss']);

export function wordsOf(text: string): Words {
  const list = [...text.matchAll(/[a-z][a-z']*|\d+(?:[.,]\d+)*/g)].map((match) => ({
    text: match[0].replace(/'s$|'$/, ''),
    start: match.index,
    end: match.index + match[0].length,
    stops: STOP.test(text.slice(match.index + match[0].length, match.index + match[0].length + 2)),
  }));
  const forms = new Set<string>();
  for (const { text: word } of list) {
    forms.add(word).add(`${word}s`);
    if (word.endsWith('s')) forms.add(word.slice(0, -1));
  }
  return { list, forms };
}

const phrases = new Map<string, readonly string[]>();

/** In a phrase, stands for any number: `how many # water changes`. */
const ANY_NUMBER = '#';

/** A phrase as its words, cut once. */
function wordsOfPhrase(phrase: string): readonly string[] {
  let words = phrases.get(phrase);
  if (!words) {
    const parts = phrase.toLowerCase().replace(/[“”]/g, '"').replace(/[’]/g, "'").split('#');
    words = parts.flatMap((part, i) => [
      ...(i === 0 ? [] : [ANY_NUMBER]),
      ...wordsOf(part).list.map(({ text }) => text),
    ]);
    phrases.set(phrase, words);
  }
  return words;
}

const alike = (typed: string, wanted: string): boolean =>
  wanted === ANY_NUMBER ? /^\d/.test(typed) : similar(typed, wanted);

const similar = (typed: string, wanted: string): boolean =>
  typed[0] === wanted[0] &&
  Math.abs(typed.length - wanted.length) <= 1 &&
  (typed === wanted || typed === `${wanted}s` || wanted === `${typed}s` || slipped(typed, wanted));

const slipped = (typed: string, wanted: string): boolean =>
  !NO_SLIPS.has(typed) &&
  wanted.length >= SHORTEST_WITH_SLIP &&
  typed.length >= SHORTEST_WITH_SLIP - 1 &&
  withinOneSlip(typed, wanted);

/** Every place where a phrase stands; plurals and one slip of the finger in a long word do not matter. */
export function findPhrase({ list }: Words, phrase: string): CueFound[] {
  const wanted = wordsOfPhrase(phrase);
  const [first] = wanted;
  if (first === undefined) return [];
  const found: CueFound[] = [];
  for (let i = 0; i + wanted.length <= list.length; i += 1) {
    if (
      alike(list[i]!.text, first) &&
      wanted.every((word, j) => j === 0 || (!list[i + j - 1]!.stops && alike(list[i + j]!.text, word)))
    )
      found.push({ start: list[i]!.start, end: list[i + wanted.length - 1]!.end });
  }
  return found;
}

export const holdsPhrase = (words: Words, phrase: string): boolean => findPhrase(words, phrase).length > 0;
const LITTLE_WORDS = new Set([
  'a',
  'an',
  'the',
  'my',
  'in',
  'of',
  'to',
  'for',
  'from',
  'is',
  'it',
  'on',
  'at',
  'be',
  'do',
  'i',
  'will',
  'with',
  'want',
  'now',
  'need',
]);

/** A word that says nothing alone. */
export const isLittle = (word: string): boolean => LITTLE_WORDS.has(word);

/** Words of a phrase that say something; the little ones between them count for a fifth. */
export const lengthOfPhrase = (phrase: string): number =>
  wordsOfPhrase(phrase).reduce((sum, word) => sum + (word === ANY_NUMBER || LITTLE_WORDS.has(word) ? 0.2 : 1), 0);

/** Phrases by their first word, so that of hundreds only those are looked for that a text could hold. */
export interface PhraseIndex {
  readonly byFirst: ReadonlyMap<string, readonly string[]>;
  /** First words that are long enough to be known with a slip in them, by their first letter. */
  readonly long: ReadonlyMap<string, readonly string[]>;
}

export function indexPhrases(phrases: Iterable<string>): PhraseIndex {
  const byFirst = new Map<string, string[]>();
  for (const phrase of phrases) put(byFirst, wordsOfPhrase(phrase)[0] ?? '', phrase);
  const long = new Map<string, string[]>();
  for (const first of byFirst.keys()) if (first.length >= SHORTEST_WITH_SLIP) put(long, first[0]!, first);
  return { byFirst, long };
}

function put(lists: Map<string, string[]>, key: string, item: string): void {
  const list = lists.get(key);
  if (list) list.push(item);
  else lists.set(key, [item]);
}

/** A phrase of several words can only stand where each of them does, or one that a slip could have made of it. */
const couldStand = ({ forms }: Words, phrase: string): boolean =>
  wordsOfPhrase(phrase).every(
    (word, i) => i === 0 || word.length >= SHORTEST_WITH_SLIP || word === ANY_NUMBER || forms.has(word),
  );

/** The phrases of an index that stand in a text, with their places. */
export function phrasesIn(words: Words, { byFirst, long }: PhraseIndex): Map<string, readonly CueFound[]> {
  const found = new Map<string, readonly CueFound[]>();
  const look = (first: string) => {
    for (const phrase of byFirst.get(first) ?? []) {
      if (!couldStand(words, phrase)) continue;
      const places = findPhrase(words, phrase);
      if (places.length > 0) found.set(phrase, places);
    }
  };
  words.forms.forEach(look);
  if (byFirst.has(ANY_NUMBER) && words.list.some(({ text }) => /^\d/.test(text))) look(ANY_NUMBER);
  for (const { text } of words.list) {
    for (const first of long.get(text[0]!) ?? []) if (!words.forms.has(first) && slipped(text, first)) look(first);
  }
  return found;
}
