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
}

/** A folded text cut into words once, so that many cues can be looked for. */
export interface Words {
  readonly list: readonly Word[];
  readonly places: ReadonlyMap<string, readonly number[]>;
}

const SHORTEST_WITH_SLIP = 6;

export function wordsOf(text: string): Words {
  const list = [...text.matchAll(/[a-z][a-z']*|\d+(?:[.,]\d+)*/g)].map((match) => ({
    text: match[0].replace(/'s$|'$/, ''),
    start: match.index,
    end: match.index + match[0].length,
  }));
  const places = new Map<string, number[]>();
  list.forEach(({ text: word }, i) => {
    const known = places.get(word);
    if (known) known.push(i);
    else places.set(word, [i]);
  });
  return { list, places };
}

const phrases = new Map<string, readonly string[]>();

/** A phrase as its words, cut once. */
function wordsOfPhrase(phrase: string): readonly string[] {
  let words = phrases.get(phrase);
  if (!words) {
    words = wordsOf(phrase.toLowerCase().replace(/[“”]/g, '"').replace(/[’]/g, "'")).list.map(({ text }) => text);
    phrases.set(phrase, words);
  }
  return words;
}

const alike = (typed: string, wanted: string): boolean =>
  typed === wanted ||
  typed === `${wanted}s` ||
  wanted === `${typed}s` ||
  (wanted.length >= SHORTEST_WITH_SLIP &&
    typed.length >= SHORTEST_WITH_SLIP - 1 &&
    typed[0] === wanted[0] &&
    withinOneSlip(typed, wanted));

/** Every place where a phrase stands; plurals and one slip of the finger in a long word do not matter. */
export function findPhrase(words: Words, phrase: string): CueFound[] {
  const wanted = wordsOfPhrase(phrase);
  const [first] = wanted;
  if (first === undefined) return [];
  const found: CueFound[] = [];
  for (let i = 0; i + wanted.length <= words.list.length; i += 1) {
    if (wanted.every((word, j) => alike(words.list[i + j]!.text, word))) {
      found.push({ start: words.list[i]!.start, end: words.list[i + wanted.length - 1]!.end });
    }
  }
  return found;
}

export const holdsPhrase = (words: Words, phrase: string): boolean => findPhrase(words, phrase).length > 0;
export const lengthOfPhrase = (phrase: string): number => wordsOfPhrase(phrase).length;
