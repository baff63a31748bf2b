import type { Calculation, QuantityInput } from '../core/calculation.js';
import type { Given, GivenValue } from '../core/outcome.js';
import { unitNamed } from '../core/quantity/units.js';
import { countsThings, NEAR } from '../language/candidates.js';
import { isLittle } from '../language/cues.js';
import type { Mention } from '../language/measurements.js';
import { givenFrom } from '../language/read-value.js';
import { type Hints, inBand, type Reading, readingsOf } from '../language/readings.js';
import { namedFor } from './named-for.js';
import type { Heard, Understood } from './understand.js';

/** A number with nothing beside it, and what it could be, likeliest first. */
export interface Between {
  readonly said: string;
  readonly options: readonly { readonly id: string; readonly reading: Reading }[];
}

/** Of two numbers the nearer is meant only when it is this much nearer than the other. */
const CLEARLY_NEARER = 0.6;
/** No number is meant that would become more than ten times what it was. */
const TOO_FAR = Math.log(10);
/** Ten degrees are as much of a change as a number that becomes e times as large. */
const DEGREES = 10;

/**
 * What a message changes whose numbers do not all say what they are: one that only names its unit changes an input of its
 * quantity, a bare one that fits nowhere any input, and of several the one whose value it is nearest to.
 * @param before the values that the last question was worked from
 */
export function whatChanges(
  open: Calculation,
  before: Given,
  heard: Heard,
  { given, assignment }: Understood,
  hints: Hints,
): { readonly given: Given } | Between {
  const changed: Record<string, GivenValue> = { ...given };
  const loose = looseNumbers(heard, assignment);
  const taken = assignment.roles.map(({ id }) => id).filter((id) => !loose.some((number) => number.id === id));
  for (const { mention, id } of loose) {
    const said = heard.text.slice(mention.start, mention.end);
    const thing = id === undefined || id in before ? undefined : namedFor(open, id, said);
    if (thing && Object.keys(thing).every((name) => name in before)) {
      delete changed[id!];
      Object.assign(changed, thing);
      continue;
    }
    const options = rivals(open, before, mention, hints, id).filter((rival) => !taken.includes(rival.id));
    const [first, second] = options;
    if (!first) continue;
    if (second && first.distance > CLEARLY_NEARER * second.distance) return { said, options };
    if (id !== undefined) delete changed[id];
    changed[first.id] = givenFrom(first.reading);
    taken.push(first.id);
  }
  return { given: changed };
}

/** Numbers of which nothing but a unit says what they are, and the input that each was taken for, if any. */
function looseNumbers(
  heard: Heard,
  { roles, unused }: Understood['assignment'],
): { readonly mention: Mention; readonly id?: string }[] {
  const unnamed = saysNothing(heard);
  const unsure = roles.filter(({ near, mention }) => (near < NEAR || unnamed) && !mention.group);
  const bare = unused.filter(
    (mention) => mention.units.length === 0 && !mention.word && !mention.group && !countsThings(mention, heard.text),
  );
  return [...unsure, ...bare.map((mention) => ({ mention }))];
}

/** Words of a change that say nothing of what it changes. */
const SAYS_NOTHING =
  /^(?:one|ones|instead|please|what|how|about|make|try|use|change|now|only|just|wait|sorry|same|again)$/;

/** Whether a message is nothing but numbers and units: the litres of "what about a 50 litre one" name no input. */
function saysNothing({ words, mentions }: Heard): boolean {
  const inNumber = (start: number) => mentions.some((mention) => start >= mention.start && start < mention.end);
  return words.list.every(({ text, start }) => inNumber(start) || isLittle(text) || SAYS_NOTHING.test(text));
}

/**
 * The inputs whose value a number could replace, the nearest first; a bare number is in the unit of what it replaces.
 * @param like the input that it was taken for: only what measures the same is meant
 */
function rivals({ inputs }: Calculation, before: Given, mention: Mention, hints: Hints, like: string | undefined) {
  const taken = like === undefined ? undefined : inputs[like];
  return Object.entries(inputs)
    .flatMap(([id, input]) => {
      const value = before[id];
      if (input.kind !== 'quantity' || !value || !('si' in value)) return [];
      if (taken?.kind === 'quantity' && taken.quantity !== input.quantity) return [];
      const unit = mention.units.length === 0 && value.unit !== undefined ? [unitNamed(value.unit)] : mention.units;
      const reading = readingsOf(input, { ...mention, units: unit }, hints).find(({ si }) => inBand(si, input.range));
      if (!reading) return [];
      const distance = distanceOf(input, value.si, reading.si);
      return distance > TOO_FAR ? [] : [{ id, reading, distance }];
    })
    .sort((a, b) => a.distance - b.distance);
}

function distanceOf({ quantity }: QuantityInput, before: number, after: number): number {
  if (quantity === 'temperature') return Math.abs(after - before) / DEGREES;
  return before > 0 && after > 0 ? Math.abs(Math.log(after / before)) : Math.abs(after - before);
}
