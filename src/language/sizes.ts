import type { Input, QuantityInput } from '../core/calculation.js';
import { type UnitRow, unitNamed } from '../core/quantity/units.js';
import type { Words } from './cues.js';
import { findPhrase } from './cues.js';
import type { Mention } from './measurements.js';
import type { Hints } from './readings.js';

/** Three inputs that joined sizes belong to: length, width, height of the tank, of the sump. */
export interface SizeSet {
  readonly prefix: string;
  /** What the thing is called beside its prefix: the one-word names of its length. */
  readonly names: readonly string[];
  readonly ids: readonly string[];
}

const CHAMBER = 'chamber_';
export const isChamber = ({ prefix }: SizeSet): boolean => prefix === CHAMBER;

/** The sets of sizes among some inputs: those with a length and a width of the same thing. */
export function sizeSets(inputs: Readonly<Record<string, Input>>): SizeSet[] {
  return Object.keys(inputs).flatMap((id) => {
    const prefix = id.match(/^(.*?)length$/)?.[1];
    if (id === 'sump.return_length') return [{ prefix: CHAMBER, names: ['chamber'], ids: [id, 'sump.inside_width'] }];
    if (prefix === undefined || !(`${prefix}width` in inputs)) return [];
    const third = [`${prefix}height`, `${prefix}water_height`].find((name) => name in inputs);
    const called = prefix === '' || prefix === 'display.' ? [] : (inputs[id]?.words ?? []);
    const names = [prefix.replace(/[._]$/, ''), ...called.filter((word) => !word.includes(' '))];
    return [{ prefix, names, ids: third ? [id, `${prefix}width`, third] : [id, `${prefix}width`] }];
  });
}

const OWN = 'tank|display|aquarium|sump';
const OTHERS =
  'chamber|section|compartment|refugium|fuge|box|overflow box|stand|cabinet|room|basement|hallway|door|doorway|doorframe';
const THING = new RegExp(
  `\\b(?:(?:${OWN}|${OTHERS})(?:'?s)? (?:(?:return|pump|drain|skimmer|overflow) )?)*(${OWN}|${OTHERS})\\b`,
  'g',
);
const CLAUSE_END = /[,;.!?:]\s|\band\b/;
const SUBJECT = /^\s*(?:(?:my|the|our|its|a|and|so|inside)\s+)*(?:[a-z]+\s+)?$/;
const TELLS = /\b(?:is|are|was|measures|=)\s*(?:about\s+|only\s+)?$/;

/**
 * A thing other than the tank and its sump that joined sizes are said of: its name, or none. What a clause begins with is
 * meant ("the stand under the tank is 130x60"), else what stands nearest.
 */
export function otherThing(group: readonly Mention[], text: string): string | undefined {
  const [start, end] = [group[0]!.start, group[group.length - 1]!.end];
  const things = [...text.matchAll(THING)].map((match) => ({
    name: match[1]!,
    start: match.index,
    end: match.index + match[0].length,
  }));
  const before = text.slice(0, start);
  const clause = before.length - before.split(CLAUSE_END).at(-1)!.length;
  const subject = TELLS.test(before)
    ? things.find(
        (thing) => thing.start >= clause && thing.end <= start && SUBJECT.test(text.slice(clause, thing.start)),
      )
    : undefined;
  const near = things
    .filter((thing) => !/[,;.!?]\s/.test(text.slice(thing.end, start)))
    .map((thing) => ({ ...thing, gap: thing.end <= start ? start - thing.end : thing.start - end }))
    // "4x2x2 when the room is 88": behind its sizes a thing stands at once.
    .filter(({ name, gap, start: from }) => {
      const behind = from >= end && new RegExp(`^(?:${OTHERS})$`).test(name);
      return gap >= 0 && gap <= (behind ? 1 : NEAR_THING);
    })
    .sort((a, b) => a.gap - b.gap);
  const name = (subject ?? near[0])?.name;
  return name !== undefined && new RegExp(`^(?:${OTHERS})$`).test(name) ? name : undefined;
}

/** How far behind or before its sizes another thing may stand, in characters. */
const NEAR_THING = 14;
const FOOTED = /^(?:stand|cabinet)$/;
const CHAMBERS = /^(?:chamber|section|compartment)$/;

/** Which set a group of sizes belongs to: the one whose thing is named nearest, else the tank itself. */
export function setFor(
  sets: readonly SizeSet[],
  group: readonly Mention[],
  words: Words,
  taken: ReadonlySet<string>,
  other?: string,
): SizeSet | undefined {
  if (other !== undefined)
    return sets.find(
      (set) =>
        !set.ids.some((id) => taken.has(id)) &&
        (CHAMBERS.test(other)
          ? isChamber(set)
          : set.names.some((name) => name.includes(other) || (FOOTED.test(other) && name === 'foot'))),
    );
  const untaken = sets.filter(({ ids }) => !ids.some((id) => taken.has(id)));
  const roomy = untaken.filter(({ ids }) => ids.length >= group.length);
  const free = roomy.length > 0 ? roomy : untaken;
  const [first] = group;
  if (!first || free.length === 0) return undefined;
  const named = free
    .map((set) => ({ set, distance: Math.min(...set.names.map((name) => nearest(name, first, words))) }))
    .sort((a, b) => a.distance - b.distance);
  const plain = free.find(({ prefix }) => prefix === '' || prefix === 'display.') ?? free[0];
  const tank = Math.min(...['tank', 'display', 'aquarium'].map((word) => nearest(word, first, words)));
  return named[0]!.distance < Math.min(REACH, tank) ? named[0]!.set : plain;
}

/** How far the name of a thing may stand from its sizes, in characters. */
const REACH = 40;

function nearest(thing: string, group: Mention, words: Words): number {
  if (thing === '') return Number.POSITIVE_INFINITY;
  const places = findPhrase(words, thing);
  return Math.min(
    Number.POSITIVE_INFINITY,
    ...places.map(({ start, end }) => Math.min(Math.abs(group.start - end), Math.abs(start - group.end))),
  );
}

/** Volumes [m³] between which a box is a home tank or its sump. */
const HOME_TANK = [0.05, 4] as const;
const HOME_CHAMBER = [0.003, 0.2] as const;
const BARE_SIZE_UNITS = ['in', 'cm', 'ft'] as const;

/** The units in which bare sizes make a box the size of a home tank, or of a chamber in its sump. */
export function unitsForBareSizes(group: readonly Mention[], hints: Hints, chamber = false): readonly UnitRow[] {
  const [least, most] = chamber ? HOME_CHAMBER : HOME_TANK;
  const product = group.reduce((total, { value }) => total * value, 1);
  const units = BARE_SIZE_UNITS.map(unitNamed).filter((unit) => {
    const volume = group.length === 3 ? product * unit.factor ** 3 : product * unit.factor ** 2 * 0.4;
    return volume >= least && volume <= most;
  });
  if (units.length < 2 || !hints.settled) return units;
  return units.filter(({ id }) => (hints.preferences.system === 'metric') === (id === 'cm'));
}

export const isQuantity = (input: Input | undefined): input is QuantityInput => input?.kind === 'quantity';
