import type { Input } from '../core/calculation.js';
import { type CueFound, indexPhrases, lengthOfPhrase, type PhraseIndex, phrasesIn, type Words } from './cues.js';

/** Where the words that point at each input stand, by its id. */
export type CuePlaces = ReadonlyMap<string, readonly CueFound[]>;

type Inputs = Readonly<Record<string, Input>>;

/** The words of a set of inputs, and the inputs that each points at. */
interface InputWords {
  readonly index: PhraseIndex;
  readonly ids: ReadonlyMap<string, readonly string[]>;
  readonly nowhere: CuePlaces;
}

const wordsOfSets = [new WeakMap<Inputs, InputWords>(), new WeakMap<Inputs, InputWords>()] as const;

/** Worked out once for a set of inputs. */
function inputWordsOf(inputs: Inputs, strict: boolean): InputWords {
  const known = wordsOfSets[Number(strict) as 0 | 1].get(inputs);
  if (known) return known;
  const ids = new Map<string, string[]>();
  for (const [id, { name, words = [] }] of Object.entries(inputs)) {
    for (const word of new Set([name, ...words]))
      if (!strict || lengthOfPhrase(word) >= 1) ids.set(word, [...(ids.get(word) ?? []), id]);
  }
  const nowhere = new Map(Object.keys(inputs).map((id) => [id, []]));
  const made = { index: indexPhrases(ids.keys()), ids, nowhere };
  wordsOfSets[Number(strict) as 0 | 1].set(inputs, made);
  return made;
}

/** @param strict without the words that say nothing alone, "at" or "in": of all that a tank keeps some input has each of them */
export function cuePlaces(inputs: Inputs, words: Words, strict = false): CuePlaces {
  const { index, ids, nowhere } = inputWordsOf(inputs, strict);
  const places = new Map(nowhere);
  for (const [word, found] of phrasesIn(words, index)) {
    for (const id of ids.get(word)!) places.set(id, [...places.get(id)!, ...found]);
  }
  return places;
}
