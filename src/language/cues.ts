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
  /** Where each word of a cue stands in the list, noted as it is first looked for: thousands of cues share some hundred words. */
  readonly places: Map<string, readonly number[]>;
}

const SHORTEST_WITH_SLIP = 6;

export function wordsOf(text: string): Words {
  const list = [...text.matchAll(/[a-z][a-z']*|\d+(?:[.,]\d+)*/g)].map((match) => ({
    text: match[0].replace(/'s$|'$/, ''),
    start: match.index,
    end: match.index + match[0].length,
  }));
  return { list, places: new Map() };
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
  typed[0] === wanted[0] &&
  Math.abs(typed.length - wanted.length) <= 1 &&
  (typed === wanted ||
    typed === `${wanted}s` ||
    wanted === `${typed}s` ||
    (wanted.length >= SHORTEST_WITH_SLIP && typed.length >= SHORTEST_WITH_SLIP - 1 && withinOneSlip(typed, wanted)));

function placesOf({ list, places }: Words, wanted: string): readonly number[] {
  let known = places.get(wanted);
  if (!known) {
    known = list.flatMap(({ text }, i) => (alike(text, wanted) ? [i] : []));
    places.set(wanted, known);
  }
  return known;
}

const NOWHERE: readonly CueFound[] = [];

/** Every place where a phrase stands; plurals and one slip of the finger in a long word do not matter. */
export function findPhrase(words: Words, phrase: string): readonly CueFound[] {
  const [first, ...rest] = wordsOfPhrase(phrase);
  const starts = first === undefined ? [] : placesOf(words, first);
  if (starts.length === 0) return NOWHERE;
  return starts
    .filter((start) => rest.every((word, i) => placesOf(words, word).includes(start + 1 + i)))
    .map((start) => ({ start: words.list[start]!.start, end: words.list[start + rest.length]!.end }));
}

export const holdsPhrase = (words: Words, phrase: string): boolean => findPhrase(words, phrase).length > 0;
export const lengthOfPhrase = (phrase: string): number => wordsOfPhrase(phrase).length;
