import type { Input, QuantityInput } from '../core/calculation.js';
import { type CueFound, findPhrase, type Words } from './cues.js';
import type { Mention } from './measurements.js';
import { narrowness, type Reading, readingsOf, type UnitHints } from './readings.js';
import { isQuantity, setFor, sizeSets, unitsForBareSizes } from './sizes.js';

/** A mention taken as the value of an input. */
export interface Role {
  readonly id: string;
  readonly mention: Mention;
  readonly reading: Reading;
}

/** A mention that two readings fit equally well. */
export interface Doubt {
  readonly id: string;
  readonly mention: Mention;
  readonly readings: readonly Reading[];
}

export interface Assignment {
  readonly roles: readonly Role[];
  readonly doubts: readonly Doubt[];
  readonly unused: readonly Mention[];
  /** A number said of an input that it cannot measure: "the room is 5 litres". */
  readonly mismatches: readonly { readonly id: string; readonly mention: Mention }[];
  readonly why: readonly string[];
}

interface Candidate {
  readonly id: string;
  readonly mention: Mention;
  readonly readings: readonly Reading[];
  readonly score: number;
  readonly near: number;
  readonly bare: boolean;
  readonly reason: string;
}

/** A candidate must be better than a mere fit of a bare number. */
const LEAST_SCORE = 1.4;
/** From here on the words beside a number say what it is. */
const NEAR = 0.3;
/** How far a cue word reaches, in characters. */
const REACH = 48;
const CLAUSE = /[,;.!?]\s|\band\b|\bwith\b|\bbut\b/g;

/**
 * Decides which number is which input: by the unit, the cue words around it, joined sizes, and what is plausible.
 * @param asked the input that was just asked for: a lone number belongs there
 * @param strict a bare number is taken only where the words beside it say what it is (for statements about a whole tank)
 */
export function assignRoles(
  inputs: Readonly<Record<string, Input>>,
  mentions: readonly Mention[],
  words: Words,
  text: string,
  hints: UnitHints,
  asked?: string,
  strict = false,
): Assignment {
  const roles: Role[] = [];
  const doubts: Doubt[] = [];
  const why: string[] = [];
  const taken = new Set<string>();
  const used = new Set<Mention>();
  for (const group of groupsOf(mentions)) takeGroup(group);
  const cues = cuePlaces(inputs, words);
  const labels = [...cues.values()].flat();
  for (const mention of mentions) if (isLabel(mention, labels)) used.add(mention);
  const mismatches = mentions.flatMap((mention) => mismatchOf(mention, inputs, cues, text, hints));
  const candidates = mentions
    .filter((mention) => !mention.group && !used.has(mention) && !mismatches.some((entry) => entry.mention === mention))
    .flatMap((mention) => candidatesFor(mention, inputs, cues, text, hints, asked, mentions))
    .filter((candidate) => !strict || candidate.near >= (candidate.bare ? NEAR : leastNear(inputs[candidate.id]!)))
    .sort((a, b) => b.score - a.score);
  for (const candidate of candidates) {
    if (taken.has(candidate.id) || used.has(candidate.mention) || candidate.score < LEAST_SCORE) continue;
    settle(candidate.id, candidate.mention, candidate.readings, candidate.reason);
    if (candidate.mention.count !== undefined) takeCount(candidate);
  }
  return { roles, doubts, unused: mentions.filter((mention) => !used.has(mention)), mismatches, why };

  function settle(id: string, mention: Mention, readings: readonly Reading[], reason: string): void {
    taken.add(id);
    used.add(mention);
    if (readings.length > 1) doubts.push({ id, mention, readings });
    else roles.push({ id, mention, reading: readings[0]! });
    why.push(`“${text.slice(mention.start, mention.end)}” is taken as the ${inputs[id]!.name}: ${reason}`);
  }

  function takeGroup(group: readonly Mention[]): void {
    const set = setFor(sizeSets(inputs), group, words, taken);
    if (!set) return;
    const bare = group.every(({ units }) => units.length === 0) ? unitsForBareSizes(group, hints) : undefined;
    group.forEach((mention, i) => {
      const id = set.ids[i];
      const input = id === undefined ? undefined : inputs[id];
      if (id === undefined || !isQuantity(input)) return;
      const withUnit = bare
        ? bare
            .map((unit) => readingsOf(input, { ...mention, units: [unit] }, hints)[0]!)
            .map((entry) => ({ ...entry, guessed: true }))
        : readingsOf(input, mention, hints);
      if (withUnit.length > 0)
        settle(
          id,
          mention,
          withUnit,
          bare ? 'joined sizes, in the unit that makes a tank of them' : 'joined sizes, in the order they were given',
        );
    });
  }

  /** The 2 of `2x300w` is how many there are. */
  function takeCount({ id, mention }: Candidate): void {
    const countId = Object.keys(inputs).find(
      (name) =>
        isQuantity(inputs[name]) &&
        (inputs[name] as QuantityInput).quantity === 'count' &&
        related(name, id) &&
        !taken.has(name),
    );
    if (countId === undefined) return;
    const counted: Mention = { start: mention.start, end: mention.end, value: mention.count!, units: [] };
    taken.add(countId);
    roles.push({
      id: countId,
      mention: counted,
      reading: readingsOf(inputs[countId] as QuantityInput, counted, hints)[0]!,
    });
  }
}

/** `heaters` counts what `heater_power` measures. */
const related = (countId: string, id: string): boolean => {
  const stem = (name: string) =>
    name
      .split(/[._]/)
      .find((part) => part !== 'number' && part !== 'of')
      ?.replace(/s$/, '');
  return stem(countId) === stem(id);
};

function groupsOf(mentions: readonly Mention[]): Mention[][] {
  const groups = new Map<number, Mention[]>();
  for (const mention of mentions) {
    if (!mention.group) continue;
    const group = groups.get(mention.group.id);
    if (group) group.push(mention);
    else groups.set(mention.group.id, [mention]);
  }
  return [...groups.values()];
}

type CuePlaces = ReadonlyMap<string, readonly CueFound[]>;

function cuePlaces(inputs: Readonly<Record<string, Input>>, words: Words): CuePlaces {
  return new Map(
    Object.entries(inputs).map(([id, input]) => [
      id,
      [input.name, ...(input.words ?? [])].flatMap((word) => findPhrase(words, word)),
    ]),
  );
}

function candidatesFor(
  mention: Mention,
  inputs: Readonly<Record<string, Input>>,
  cues: CuePlaces,
  text: string,
  hints: UnitHints,
  asked: string | undefined,
  mentions: readonly Mention[],
): Candidate[] {
  return Object.entries(inputs).flatMap(([id, input]): Candidate[] => {
    if (!isQuantity(input)) return [];
    const readings = readingsOf(input, mention, hints);
    const [first] = readings;
    if (!first) return [];
    const near = closeness(mention, cues.get(id) ?? [], text, mentions);
    const bare = first.guessed && mention.units.length === 0;
    if (mention.word && id !== asked && input.quantity !== 'count' && input.quantity !== 'fraction') return [];
    const wholeNumber = input.quantity !== 'count' || Number.isInteger(mention.value);
    if (!wholeNumber) return [];
    const score =
      (bare ? 0.4 : 2) +
      3 * near +
      (first.plausible ? 0.6 : -0.4) +
      (bare && first.plausible ? 0.5 * narrowness(input) : 0) +
      (id === asked ? 2 : 0) +
      (isWanted(input) ? 0.15 : bare && near < NEAR ? -0.6 : 0) -
      (bare && input.quantity === 'count' && near === 0 ? 1 : 0);
    const reason =
      near > NEAR
        ? 'the words beside it say so'
        : id === asked
          ? 'it answers the question'
          : bare
            ? 'the only place where a bare number like this fits'
            : 'its unit fits';
    return [{ id, mention, readings, score, near, bare, reason }];
  });
}

/** The 1 of "chamber 1" is part of the name. */
const isLabel = (mention: Mention, labels: readonly CueFound[]): boolean =>
  mention.units.length === 0 && labels.some(({ start, end }) => start < mention.start && end >= mention.end);

const SAYS_OF = /^\s*(?:temp(?:erature)?\s*)?(?:is|was|=|:|gets(?: down)? to|stays(?: at)?)\s*(?:about|at|around)?\s*$/;

function mismatchOf(
  mention: Mention,
  inputs: Readonly<Record<string, Input>>,
  cues: CuePlaces,
  text: string,
  hints: UnitHints,
): { id: string; mention: Mention }[] {
  if (mention.units.length === 0 || mention.group) return [];
  const saidOf = Object.keys(inputs).filter((id) =>
    cues.get(id)!.some((cue) => cue.end <= mention.start && SAYS_OF.test(text.slice(cue.end, mention.start))),
  );
  const fitting = Object.entries(inputs).some(
    ([id, input]) =>
      isQuantity(input) &&
      readingsOf(input, mention, hints).length > 0 &&
      (saidOf.includes(id) || closeness(mention, cues.get(id)!, text, []) > 0.5),
  );
  const wrong = saidOf.find((id) => isQuantity(inputs[id]));
  return fitting || wrong === undefined ? [] : [{ id: wrong, mention }];
}

/** Much about a tank is a length, an area, a share or a time: in a statement one must be near its name. */
const COMMON: readonly string[] = ['length', 'area', 'fraction', 'time'];
const leastNear = (input: Input): number => (isQuantity(input) && COMMON.includes(input.quantity) ? NEAR / 2 : 0);

/** It would be asked for if it were not given. */
const isWanted = (input: QuantityInput): boolean => input.default === undefined && input.needed === undefined;

/** From 1, beside a cue word, down to 0, out of reach. Another clause, or another number of the kind in between, weakens it. */
function closeness(mention: Mention, cues: readonly CueFound[], text: string, mentions: readonly Mention[]): number {
  let best = 0;
  for (const cue of cues) {
    const before = cue.end <= mention.start;
    const [from, to] = before ? [cue.end, mention.start] : [mention.end, cue.start];
    if (from > to) continue;
    const gap = to - from;
    if (gap > REACH) continue;
    const clauses = text.slice(from, to).match(CLAUSE)?.length ?? 0;
    const between = mentions.filter((other) => other !== mention && other.start >= from && other.end <= to);
    const alike = between.filter((other) => sameKind(other, mention)).length;
    const weakened = 0.3 ** clauses * 0.3 ** alike * 0.75 ** (between.length - alike);
    best = Math.max(best, (1 - gap / REACH) * weakened * (before ? 0.97 : 1));
  }
  return best;
}

const sameKind = (a: Mention, b: Mention): boolean =>
  a.units.length === 0 ||
  b.units.length === 0 ||
  a.units.some(({ quantities }) => b.units.some((unit) => unit.quantities.some((name) => quantities.includes(name))));
