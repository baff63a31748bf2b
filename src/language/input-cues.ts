import type { Input } from '../core/calculation.js';
import { type CueFound, indexPhrases, type PhraseIndex, phrasesIn, type Words } from './cues.js';

/** Where the words that point at each input stand, by its id. */
export type CuePlaces = ReadonlyMap<string, readonly CueFound[]>;

type Inputs = Readonly<Record<string, Input>>;

const inputWords = (input: Input): readonly string[] => [input.name, ...(input.words ?? [])];

const indexes = new WeakMap<Inputs, PhraseIndex>();

/** Made once for a set of inputs. */
function indexOf(inputs: Inputs): PhraseIndex {
  const known = indexes.get(inputs);
  if (known) return known;
  const index = indexPhrases(new Set(Object.values(inputs).flatMap(inputWords)));
  indexes.set(inputs, index);
  return index;
}

export function cuePlaces(inputs: Inputs, words: Words): CuePlaces {
  const found = phrasesIn(words, indexOf(inputs));
  return new Map(
    Object.entries(inputs).map(([id, input]) => [id, inputWords(input).flatMap((word) => found.get(word) ?? [])]),
  );
}
