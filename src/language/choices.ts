import type { ChoiceInput, Input, LookupInput } from '../core/calculation.js';
import { type CueFound, findPhrase, holdsPhrase, type Words } from './cues.js';
import type { Mention } from './measurements.js';

/** A choice or a looked-up thing that was found in a text. */
export interface TextRole {
  readonly id: string;
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/** Options named in a text, the longest wording of each choice. */
export function choicesIn(inputs: Readonly<Record<string, Input>>, words: Words): TextRole[] {
  return Object.entries(inputs).flatMap(([id, input]) => {
    if (input.kind !== 'choice' || (input.byName && !(input.words ?? []).some((word) => holdsPhrase(words, word))))
      return [];
    const found = optionIn(input, words);
    return found ? [{ id, ...found }] : [];
  });
}

function optionIn(input: ChoiceInput, words: Words): Omit<TextRole, 'id'> | undefined {
  const hits = Object.entries(input.options).flatMap(([option, { label, words: spellings }]) =>
    spellingsOf(option, label, spellings).flatMap((phrase) =>
      findPhrase(words, phrase).map((place) => ({ text: option, ...place })),
    ),
  );
  const [best] = hits.sort((a, b) => b.end - b.start - (a.end - a.start));
  // "Is that nitrogen or NO3?" asks for the choice rather than making it.
  return best && hits.some((other) => other.text !== best.text && joinedByOr(best, other, words)) ? undefined : best;
}

function joinedByOr(a: CueFound, b: CueFound, { list }: Words): boolean {
  const [first, second] = a.end <= b.start ? [a, b] : [b, a];
  const between = list.filter(({ start, end }) => start >= first.end && end <= second.start);
  return between.length === 1 && between[0]!.text === 'or';
}

/** A bare "yes" or "no" in a longer text belongs to the text, not to a choice. */
const spellingsOf = (option: string, label: string, words: readonly string[] = []): string[] =>
  [option.replace(/_/g, ' '), label, ...words].filter((phrase) => !/^(?:yes|no)$/i.test(phrase));

/** The option that a short answer means: its words, or its first letters. */
export function optionMeant(input: ChoiceInput, text: string, words: Words): string | undefined {
  const found = optionIn(input, words);
  if (found) return found.text;
  const typed = text.trim().toLowerCase();
  if (Object.hasOwn(input.options, typed)) return typed;
  if (typed.length < 2) return undefined;
  const starts = Object.entries(input.options).filter(
    ([option, { label }]) => option.startsWith(typed) || label.toLowerCase().startsWith(typed),
  );
  return starts.length === 1 ? starts[0]![0] : undefined;
}

/**
 * Pipe sizes, lists of fittings and the like, picked out by what they look like; several stretches are joined. A stretch
 * that several inputs could take, the pipe of the drain or of the return, goes to the one whose own words stand nearest.
 */
export function lookupsIn(inputs: Readonly<Record<string, Input>>, text: string, words: Words): TextRole[] {
  const found = Object.entries(inputs).flatMap(([id, input]) =>
    input.kind === 'lookup' ? [{ id, input, stretches: stretchesOf(input, text) }] : [],
  );
  return found.flatMap((own) => {
    const kept = own.stretches.filter((stretch) => {
      const rivals = found.filter(({ stretches }) => stretches.some((other) => overlap(other, stretch)));
      return rivals.length < 2 || nearestOf(rivals, stretch, words) === own;
    });
    const taken = own.input.many ? kept : kept.slice(0, 1);
    const [first, last] = [taken[0], taken.at(-1)];
    if (!first || !last) return [];
    const said = taken.map(({ start, end }) => text.slice(start, end).trim()).join(', ');
    return [{ id: own.id, text: said, start: first.start, end: last.end }];
  });
}

const overlap = (a: CueFound, b: CueFound): boolean => a.start < b.end && a.end > b.start;

function stretchesOf(input: LookupInput, text: string): CueFound[] {
  if (!input.pattern) return [];
  const matches = [...text.matchAll(new RegExp(input.pattern, 'g'))].filter(([found]) => found.trim() !== '');
  // A list keeps what it cannot read, so that the reply says so: a valve left out unsaid would change the answer.
  const usable = input.many ? matches : matches.filter(([found]) => typeof input.read(found, {}) !== 'string');
  return usable.map((match) => ({ start: match.index, end: match.index + match[0].length }));
}

/** Of several inputs the one that a word of its own names nearest to a stretch; among equals the first. */
function nearestOf<T extends { readonly input: LookupInput }>(rivals: readonly T[], at: CueFound, words: Words): T {
  const distance = ({ input }: T): number => {
    const own = (input.words ?? []).filter(
      (word) => !rivals.some((other) => other.input !== input && other.input.words?.includes(word)),
    );
    const gaps = own
      .flatMap((word) => findPhrase(words, word))
      .map(({ start, end }) => Math.max(0, start - at.end, at.start - end));
    return Math.min(Number.POSITIVE_INFINITY, ...gaps);
  };
  return rivals.reduce((best, rival) => (distance(rival) < distance(best) ? rival : best));
}

/** Numbers inside a pipe size or a list of fittings mean nothing else. */
export const outside = (mentions: readonly Mention[], taken: readonly TextRole[]): Mention[] =>
  mentions.filter((mention) => !taken.some(({ start, end }) => mention.start < end && mention.end > start));
