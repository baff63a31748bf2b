import { type Calculation, groupOf, type Input } from '../core/calculation.js';
import { type CueFound, indexPhrases, lengthOfPhrase, type PhraseIndex, phrasesIn, type Words } from './cues.js';
import { cuePlaces } from './input-cues.js';
import type { Mention } from './measurements.js';
import { sizeSets } from './sizes.js';
import { likeness } from './vocabulary.js';

export interface TopicScore {
  readonly calculation: Calculation;
  /** From cues and numbers: what a message must have to be a question of its own. */
  readonly score: number;
  /** The share of the message's telling words that are the calculation's own. */
  readonly like: number;
  readonly cues: readonly string[];
}

/** Below this, a message does not name a topic of its own. */
export const NAMED = 0.9;

/** Somebody who asked about heaters asks about heaters again. */
const SAME_GROUP = 0.6;
/** What it is worth that all telling words of a message are a calculation's own; from a share on it needs no cue. */
const LIKENESS = 2;
const LIKE_ENOUGH = 0.5;
/** What a turn of phrase is worth beside a cue. */
const WORDED = 1.2;
/** What a group's usual question is ahead of its special ones. */
const GENERAL = 0.25;

/** The cues of some calculations, and how telling each is: rarer among the groups of calculations and longer weighs more. */
interface Cues {
  readonly weights: ReadonlyMap<string, number>;
  readonly index: PhraseIndex;
}

/** A cue written `~sump` only leans towards its calculation: the word names a thing that several speak of. */
const LEANS = '~';
const WEAK = 0.5;

const cuesOfLists = new WeakMap<readonly Calculation[], Cues>();

/** Worked out once for a list. */
function cuesOf(calculations: readonly Calculation[]): Cues {
  const known = cuesOfLists.get(calculations);
  if (known) return known;
  const groups = new Map<string, Set<string>>();
  for (const calculation of calculations) {
    for (const cue of calculation.cues) groups.set(cue, (groups.get(cue) ?? new Set()).add(groupOf(calculation)));
  }
  const weights = new Map(
    [...groups].map(([cue, { size }]) => [
      cue,
      ((cue.startsWith(LEANS) ? WEAK : 1) * (1 + 0.6 * (lengthOfPhrase(cue) - 1))) / Math.sqrt(size),
    ]),
  );
  const cues = { weights, index: indexPhrases(weights.keys()) };
  cuesOfLists.set(calculations, cues);
  return cues;
}

const fitsOne = (input: Input, mention: Mention): boolean =>
  input.kind === 'quantity' && mention.units.some(({ quantities }) => quantities.includes(input.quantity));

/** Joined sizes fit what has a length and a width of one thing; any other measurement fits an input of its quantity. */
const fits = (calculation: Calculation, mention: Mention): boolean =>
  mention.group
    ? sizeSets(calculation.inputs).some(({ ids }) => ids.length >= mention.group!.size)
    : Object.values(calculation.inputs).some((input) => fitsOne(input, mention));

/**
 * Scores every calculation against a message: its cue words, the words of its inputs, and how many of the measurements it
 * could use.
 * @param open the calculation last asked about: its group comes first among equals
 * @returns best first; only those with a cue of their own, or whose words the message speaks in
 */
export function topicsOf(
  words: Words,
  mentions: readonly Mention[],
  calculations: readonly Calculation[],
  open?: Calculation,
): TopicScore[] {
  const { weights, index } = cuesOf(calculations);
  const found = phrasesIn(words, index);
  const alike = likeness(words, calculations);
  const joined = words.list.map(({ text }) => text).join(' ');
  return calculations
    .flatMap((calculation) => {
      const cues = calculation.cues.filter((cue) => found.has(cue));
      const like = alike.get(calculation) ?? 0;
      if (cues.length === 0 && like < LIKE_ENOUGH) return [];
      const fromCues = sumOfSeparate(cues.map((cue) => ({ weight: weights.get(cue)!, places: found.get(cue)! })));
      const named = [...cuePlaces(calculation.inputs, words).values()].filter((places) => places.length > 0);
      const fromInputs = named.length * 0.15;
      const usable = mentions.filter((mention) => fits(calculation, mention)).length;
      const fromMentions = mentions.length === 0 ? 0 : (0.8 * usable) / mentions.length;
      const score =
        fromCues +
        fromInputs +
        fromMentions +
        (calculation.general ? GENERAL : 0) +
        (calculation.wording?.test(joined) ? WORDED : 0) +
        (open !== undefined && groupOf(open) === groupOf(calculation) ? SAME_GROUP : 0);
      return { calculation, cues, like, score: cues.length === 0 ? Math.max(NAMED, score) : score };
    })
    .sort((a, b) => rank(b) - rank(a));
}

/** A cue that means one calculation was said, rather than only the name of a thing that several speak of. */
export const hasOwnCue = ({ cues }: TopicScore): boolean => cues.some((cue) => !cue.startsWith(LEANS));

/** What topics are ordered by: what their cues say, and how much of the message is in their words. */
export const rank = ({ score, like }: TopicScore): number => score + LIKENESS * like;

/** The weight of cues that do not lie inside one another: "how many gallons" and "gallons is" count once. */
function sumOfSeparate(cues: readonly { weight: number; places: readonly CueFound[] }[]): number {
  const counted: CueFound[] = [];
  let sum = 0;
  for (const { weight, places } of [...cues].sort((a, b) => b.weight - a.weight)) {
    const free = places.find(({ start, end }) => !counted.some((other) => start < other.end && end > other.start));
    if (!free) continue;
    counted.push(free);
    sum += weight;
  }
  return sum;
}
