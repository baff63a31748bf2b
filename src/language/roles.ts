import { type Input, isAlwaysNeeded, type QuantityInput } from '../core/calculation.js';
import type { UnitRow } from '../core/quantity/units.js';
import { bestMatch } from './best-match.js';
import {
  type Candidate,
  candidatesFor,
  DECOY_NEAR,
  isLabel,
  isPane,
  leastNear,
  mismatchOf,
  NEAR,
} from './candidates.js';
import type { Words } from './cues.js';
import { cuePlaces } from './input-cues.js';
import type { Mention } from './measurements.js';
import { type Hints, type Reading, readingsOf } from './readings.js';
import { isChamber, isQuantity, otherThing, setFor, sizeSets, unitsForBareSizes } from './sizes.js';

/** A mention taken as the value of an input. */
export interface Role {
  readonly id: string;
  readonly mention: Mention;
  readonly reading: Reading;
  /** How near the words stand that say so, 0 to 1. */
  readonly near: number;
  readonly reason: string;
}

/** Another input that a number could have been, and how far behind in score. */
export interface Rival {
  readonly id: string;
  readonly behind: number;
}

/** A mention that nothing beside it names, and the inputs that it could be as well as one another. */
export interface Contest {
  readonly mention: Mention;
  readonly options: readonly { readonly id: string; readonly reading: Reading }[];
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
  /** Of the roles those that another input could have had as well: the role's own input comes first. */
  readonly contests: readonly Contest[];
  readonly unused: readonly Mention[];
  /** Numbers said of decoys. */
  readonly beside: readonly Role[];
  /** A number said of an input that it cannot measure: "the room is 5 litres". */
  readonly mismatches: readonly { readonly id: string; readonly mention: Mention }[];
  /** Joined sizes of a thing that none of the inputs measures. */
  readonly others: readonly { readonly thing: string; readonly said: string }[];
  /** What else the number of a role could have been, likeliest first. */
  readonly rivalsOf: (role: Role) => readonly Rival[];
}

/** A candidate must be better than a mere fit of a bare number. */
const LEAST_SCORE = 1.4;

export interface RoleOptions {
  /** The input that was just asked for: a lone number belongs there. */
  readonly asked?: string | undefined;
  /** A number is taken only where the words beside it say what it is (for statements about a whole tank). */
  readonly strict?: boolean;
  /** Things that numbers may be said of instead: "room 68" fills no length, even while one is asked for. */
  readonly decoys?: Readonly<Record<string, Input>>;
}

/** Among equals the question's own input has it; against one that nothing points at, not even being asked for helps it. */
const DECOY_LOSES = 2;
const DECOY_WINS = 2;

const NO_DECOYS: Readonly<Record<string, Input>> = {};

/**
 * Decides which number is which input: by the unit, the cue words around it, joined sizes, and what is plausible.
 */
export function assignRoles(
  inputs: Readonly<Record<string, Input>>,
  mentions: readonly Mention[],
  words: Words,
  text: string,
  hints: Hints,
  { asked, strict = false, decoys = NO_DECOYS }: RoleOptions = {},
): Assignment {
  const roles: Role[] = [];
  const beside: Role[] = [];
  const doubts: Doubt[] = [];
  const taken = new Set<string>();
  const used = new Set<Mention>();
  const others: { thing: string; said: string }[] = [];
  /** Bare sizes of one message are in one unit. */
  let bareUnits: readonly UnitRow[] | undefined;
  const said = (group: readonly Mention[]) => text.slice(group[0]!.start, group[group.length - 1]!.end);
  for (const group of groupsOf(mentions)) takeGroup(group);
  const cues = cuePlaces(inputs, words, strict);
  const decoyCues = cuePlaces(decoys, words);
  const labels = [...cues.values()].flat();
  for (const mention of mentions) if (isLabel(mention, labels)) used.add(mention);
  // A number is not said beside the point while the question lacks one of its kind: 35 ppt where one salinity is asked for.
  const hasRoom = (mention: Mention): boolean => {
    const kinds = mention.units.flatMap(({ quantities }) => quantities);
    const lacking = Object.values(inputs).filter(
      (input) => isQuantity(input) && isAlwaysNeeded(input) && kinds.includes(input.quantity),
    ).length;
    const alike = mentions.filter(({ units }) =>
      units.some(({ quantities }) => quantities.some((kind) => kinds.includes(kind))),
    );
    return mention.units.length > 0 && alike.length <= lacking;
  };
  const mismatches = mentions.flatMap((mention) => mismatchOf(mention, inputs, cues, text, hints, strict));
  const candidates = mentions
    .filter((mention) => !mention.group && !used.has(mention) && !mismatches.some((entry) => entry.mention === mention))
    .flatMap((mention) => {
      const own = candidatesFor(mention, inputs, cues, text, hints, asked, mentions);
      const handicap = own.some(({ near }) => near >= NEAR) ? -DECOY_LOSES : DECOY_WINS;
      const others = hasRoom(mention)
        ? []
        : candidatesFor(mention, decoys, decoyCues, text, hints, undefined, mentions, DECOY_NEAR);
      return [...own, ...others.map((other) => ({ ...other, score: other.score + handicap }))];
    })
    .filter(({ id, score }) => score >= LEAST_SCORE && !taken.has(id))
    .filter(
      (candidate) =>
        !strict ||
        candidate.near >=
          (candidate.bare ? NEAR : leastNear(inputs[candidate.id] ?? decoys[candidate.id]!, candidate.mention)),
    );
  for (const candidate of bestMatch<Mention, Candidate>(candidates)) {
    if (!(candidate.id in inputs)) {
      used.add(candidate.mention);
      beside.push({ ...candidate, reading: candidate.readings[0]! });
      continue;
    }
    settle(candidate.id, candidate.mention, candidate.readings, candidate.reason, candidate.near);
    if (candidate.mention.count !== undefined) takeCount(candidate);
  }
  const contests = strict ? [] : roles.flatMap(contestOf);
  return {
    roles,
    contests,
    doubts,
    unused: mentions.filter((mention) => !used.has(mention)),
    mismatches,
    beside,
    others,
    rivalsOf,
  };

  /** The other candidates for a role's number, and how far behind each is. */
  function othersFor({ id, mention }: Role): { other: Candidate; behind: number }[] {
    const all = candidates.filter((candidate) => candidate.mention === mention && candidate.id in inputs);
    const own = all.find((candidate) => candidate.id === id);
    return own ? all.filter((other) => other !== own).map((other) => ({ other, behind: own.score - other.score })) : [];
  }

  function rivalsOf(role: Role): Rival[] {
    return othersFor(role)
      .map(({ other, behind }) => ({ id: other.id, behind }))
      .sort((a, b) => a.behind - b.behind);
  }

  function contestOf(role: Role): Contest[] {
    const { id, mention, near, reading } = role;
    if (near >= NEAR || id === asked || mention.group || isPane(inputs[id]!, mention)) return [];
    const rivals = othersFor(role)
      .filter(({ other, behind }) => !taken.has(other.id) && behind <= CLOSE)
      .filter(({ other }) => other.readings[0]!.plausible || !reading.plausible)
      .filter(({ other }) => !isAlwaysNeeded(inputs[id]!) || isAlwaysNeeded(inputs[other.id]!))
      .map(({ other }) => ({ id: other.id, reading: other.readings[0]! }));
    return rivals.length === 0 ? [] : [{ mention, options: [{ id, reading }, ...rivals] }];
  }

  function settle(id: string, mention: Mention, readings: readonly Reading[], reason: string, near = 1): void {
    taken.add(id);
    used.add(mention);
    if (readings.length > 1) doubts.push({ id, mention, readings });
    else roles.push({ id, mention, reading: readings[0]!, near, reason });
  }

  function takeGroup(group: readonly Mention[]): void {
    const other = otherThing(group, text);
    const set = setFor(sizeSets(inputs), group, words, taken, other);
    if (!set) {
      if (other !== undefined) others.push({ thing: other, said: said(group) });
      return;
    }
    const isBare = group.every(({ units }) => units.length === 0);
    const bare = isBare ? (bareUnits ?? unitsForBareSizes(group, hints, isChamber(set))) : undefined;
    if (bare?.length === 1) bareUnits = bare;
    for (const mention of group) {
      const id = set.ids[mention.group!.index];
      const input = id === undefined ? undefined : inputs[id];
      if (id === undefined || !isQuantity(input)) continue;
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
    }
  }

  /** The 2 of `2x300w` is how many there are. */
  function takeCount({ id, mention }: Candidate): void {
    const counts = Object.keys(inputs).filter(
      (name) => isQuantity(inputs[name]) && (inputs[name] as QuantityInput).quantity === 'count' && !taken.has(name),
    );
    const countId = counts.find((name) => related(name, id)) ?? (counts.length === 1 ? counts[0] : undefined);
    if (countId === undefined) return;
    const counted: Mention = { start: mention.start, end: mention.end, value: mention.count!, units: [] };
    taken.add(countId);
    roles.push({
      id: countId,
      mention: counted,
      reading: readingsOf(inputs[countId] as QuantityInput, counted, hints)[0]!,
      near: 1,
      reason: 'the number before the x counts them',
    });
  }
}

/** How far behind in score another input may be that a number could have been as well. */
const CLOSE = 0.3;

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
