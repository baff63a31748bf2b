import { type Input, isAlwaysNeeded, type QuantityInput } from '../core/calculation.js';
import { type CueFound, isLittle } from './cues.js';
import type { CuePlaces } from './input-cues.js';
import type { Mention } from './measurements.js';
import { type Hints, inBand, narrowness, type Reading, readingsOf } from './readings.js';
import { isQuantity } from './sizes.js';

/** A mention that could be the value of an input. */
export interface Candidate {
  readonly id: string;
  readonly mention: Mention;
  readonly readings: readonly Reading[];
  readonly score: number;
  readonly near: number;
  readonly bare: boolean;
  readonly reason: string;
}

/** From here on the words beside a number say what it is. */
export const NEAR = 0.3;
/** How far a cue word reaches, in characters. */
const REACH = 48;
const CLAUSE = /[,;.!?]\s|\b(?:and|with|but|if|when|while|where)\b/g;

/** @param least how near the words that point at an input must be */
export function candidatesFor(
  mention: Mention,
  inputs: Readonly<Record<string, Input>>,
  cues: CuePlaces,
  text: string,
  hints: Hints,
  asked: string | undefined,
  mentions: readonly Mention[],
  least = 0,
): Candidate[] {
  const level = LEVELS.find((id) => id in inputs);
  const thing = thingOf(mention, text, level !== undefined);
  const vessel = isVessel(mention, text);
  const counts = countsThings(mention, text);
  const innerSaid = INNER_SAID.test(text);
  const named = thingsNamed(text);
  const ofAnother = isOfAnother(mention, text);
  return Object.entries(inputs).flatMap(([id, input]): Candidate[] => {
    if (!isQuantity(input)) return [];
    if (least > 0 && thing !== 'sump' && cues.get(id)!.length === 0) return [];
    if (!innerSaid && isInner(id, inputs)) return [];
    if (mention.word && mention.units.length === 0 && id !== asked && !ofWords(input, mention)) return [];
    if (input.quantity === 'count' ? !Number.isInteger(mention.value) : counts) return [];
    const twin = thing === 'sump' || OF_SUMP.test(id) ? twinOf(id, inputs) : undefined;
    // "22 cm of water" in the sump: the words that point at the display's water height point at the sump's.
    const borrowed = thing === 'sump' && twin !== undefined && OF_SUMP.test(id) ? cues.get(twin)! : [];
    const near = closeness(mention, [...(cues.get(id) ?? []), ...borrowed], text, mentions);
    if (near < least || (input.byName && near < NEAR && id !== asked)) return [];
    const readings = readingsOf(input, mention, hints);
    const [first] = readings;
    if (!first) return [];
    const bare = first.guessed && mention.units.length === 0;
    // "Kept at 0.3": what no tank's water has is its salinity only where a word says so.
    if (
      id !== asked &&
      isOddSalinity(input, bare, first) &&
      !SAYS_SALT.test(text.slice(Math.max(0, mention.start - REACH), mention.end + 12))
    )
      return [];
    if (input.quantity === 'volume' && vessel && near < NEAR) return [];
    const score =
      (bare ? 0.4 : 2) +
      3 * near +
      (first.plausible ? 0.6 : -0.4) +
      (bare && first.plausible ? 0.5 * narrowness(input) : 0) +
      (id === asked ? 2 : 0) +
      ofSump(id, thing, twin) +
      (thing === 'chamber' && id === level ? 1 : 0) -
      (thing === 'chamber' && OF_WATER.test(id) ? 1 : 0) +
      (id.startsWith('display.') ? OF_THE_TANK : 0) +
      (named.some((thing) => id.startsWith(thing)) ? OF_NAMED_THING : 0) -
      (ofAnother && id.startsWith('display.') ? OF_ANOTHER : 0) +
      (bare && id !== asked && !inBand(first.si, input.range) ? -BEYOND : 0) +
      (isAlwaysNeeded(input) ? 0.15 : bare && near < NEAR ? -0.6 : 0) -
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

/** The inside of what has an outside too is meant only where it is said. */
const isInner = (id: string, inputs: Readonly<Record<string, Input>>): boolean =>
  id.includes('inside_') && id.replace('inside_', '') in inputs;
const INNER_SAID = /\b(?:inside|inner|internal|interior)\b/;

const SAYS_SALT = /salin|\b(?:ppt|psu|salt|salty|brackish)\b/;
const isOddSalinity = ({ quantity }: QuantityInput, bare: boolean, { plausible }: Reading): boolean =>
  bare && quantity === 'salinity' && !plausible;

/** What it costs a bare number that an input cannot be it: 79 are no heaters. */
const BEYOND = 1.5;

/** A number in words and without a unit counts things, or is a share such as "half". */
const ofWords = ({ quantity }: QuantityInput, { value }: Mention): boolean =>
  quantity === 'count' || (quantity === 'fraction' && value < 1);

/** "5 gallon buckets": what one vessel holds, not the system. */
const isVessel = ({ end }: Mention, text: string): boolean =>
  /^\s*(?:bucket|container|jug|can|bottle)s?(?![a-z])/.test(text.slice(end, end + 14));

/** "3 drains", "2 of them", "4 x 20 %": a number of things, never a size. */
export const countsThings = ({ units, value, end, group }: Mention, text: string): boolean =>
  units.length === 0 &&
  !group &&
  Number.isInteger(value) &&
  value <= MOST_THINGS &&
  /^(?: +(?:of (?:them|those|these)(?![a-z])|[a-z]{3,}s(?![a-z]))| *x *[\d.]+ ?%)/.test(text.slice(end, end + 24));
const MOST_THINGS = 24;

/** The 1 of "chamber 1" is part of the name. */
export const isLabel = (mention: Mention, labels: readonly CueFound[]): boolean =>
  mention.units.length === 0 && labels.some(({ start, end }) => start < mention.start && end >= mention.end);

const SAYS_OF = /^\s*(?:temp(?:erature)?\s*)?(?:is|was|=|:|gets(?: down)? to|stays(?: at)?)\s*(?:about|at|around)?\s*$/;

export function mismatchOf(
  mention: Mention,
  inputs: Readonly<Record<string, Input>>,
  cues: CuePlaces,
  text: string,
  hints: Hints,
  strict: boolean,
): { id: string; mention: Mention }[] {
  if (mention.units.length === 0 || mention.group) return [];
  const saidOf = Object.keys(inputs).filter((id) =>
    cues.get(id)!.some((cue) => cue.end <= mention.start && SAYS_OF.test(text.slice(cue.end, mention.start))),
  );
  const wrong = saidOf.find((id) => isQuantity(inputs[id]));
  if (wrong === undefined) return [];
  // What a question cannot do without is not said of something else: the salinity in "that water is 38 ppt, in g/l at 24 °C".
  const wanted =
    !strict &&
    Object.values(inputs).some(
      (input) => isQuantity(input) && isAlwaysNeeded(input) && readingsOf(input, mention, hints).length > 0,
    );
  if (wanted) return [];
  const fitting = Object.entries(inputs).some(
    ([id, input]) =>
      isQuantity(input) &&
      readingsOf(input, mention, hints).length > 0 &&
      (saidOf.includes(id) || closeness(mention, cues.get(id)!, text, []) > 0.5),
  );
  return fitting ? [] : [{ id: wrong, mention }];
}

/** "90x50x45 cm, 10 mm": millimetres of that size behind a tank's are its panes. */
export const isPane = ({ profile }: Input, { units, value }: Mention): boolean =>
  profile === 'display.glass_thickness' && units.some(({ id }) => id === 'mm') && value >= 4 && value <= 25;

/** In a statement a number must be near the name of what it is; only how much a tank holds, how salty it is and how thick its glass is go without saying. */
export const leastNear = (input: Input, mention: Mention): number =>
  input.profile === 'water.volume' || isSaltiness(input, mention) || isPane(input, mention) ? 0 : NEAR;

const isSaltiness = ({ profile }: Input, { units }: Mention): boolean =>
  profile === 'water.salinity' && units.some(({ id }) => id === 'g/kg');

/** A number that the words beside it give to something that the question does not ask for. */
export const DECOY_NEAR = 0.6;

const THINGS = /\b(sump|display|tank|aquarium|refugium)\b/g;
const THINGS_AND_CHAMBER = /\b(sump|display|tank|aquarium|refugium|chamber)\b/g;
/** The level in the return chamber, and the water heights that "20 cm of water" means elsewhere. */
const LEVELS = ['return.level', 'running_level'] as const;
const OF_WATER = /water_height$/;
const CLAUSE_END = /[,;.]\s|\band\b/;

/** What a number is said of: the thing named last before it in its clause. "sump is 90x40 cm with 22 cm of water" */
function thingOf(mention: Mention, text: string, chambers: boolean): string | undefined {
  const clauses = text.slice(Math.max(0, mention.start - 2 * REACH), mention.start).split(CLAUSE_END);
  const last = clauses.at(-1)!;
  // "the sump is 48x20x16, water 9 inches deep": the water is the sump's.
  // "My sump is 75 cm long and 40 cm wide": a number right behind the "and" is said of the same.
  const goesOn = /^\s*(?:(?:with )?(?:about )?(?:water|level)\b|(?:is |it'?s |about )?$)/.test(last);
  const before = goesOn ? clauses.slice(-2).join(' ') : last;
  return [...before.matchAll(chambers ? THINGS_AND_CHAMBER : THINGS)].at(-1)?.[1];
}

/** What people call the things that a tank's page keeps numbers of, by the first part of their keys. */
const CALLED: Readonly<Record<string, RegExp>> = {
  drain: /\b(?:drains?|standpipes?|siphons?)\b/,
  return: /\breturn (?:pump|line|pipe)?/,
  stand: /\b(?:stand|cabinet)\b/,
  topoff: /\b(?:top-? ?off|ato|top-? ?up|reservoir)\b/,
  refugium: /\b(?:refugium|fuge)\b/,
  light: /\b(?:lights?|lamps?|leds?)\b/,
  heater: /\bheaters?\b/,
  rock: /\brocks?\b/,
  sand: /\bsand\b/,
  water: /\bsystem\b/,
};
const OF_NAMED_THING = 0.6;
/** How the keys of the things begin that a text names. */
const thingsNamed = (text: string): string[] =>
  Object.entries(CALLED).flatMap(([thing, pattern]) => (pattern.test(text) ? [`${thing}.`] : []));

/** Things with sizes of their own: "the front door is 80 cm wide" says nothing of the tank. */
const ANOTHER =
  /\b(?:door|doorway|hallway|corridor|weir|overflow|baffle|teeth|pipe|stairs|staircase|room|box|lamp|shelf|hole|joists?|ceiling|wall|pond|pool)\b/g;
const OF_TANK = /\b(?:tank|display|aquarium|glass|panes?)\b/g;
const OF_ANOTHER = 1.5;

/** The last thing named before a number in its sentence is no tank. */
function isOfAnother({ start }: Mention, text: string): boolean {
  const before = text
    .slice(Math.max(0, start - 2 * REACH), start)
    .split(/[;.]\s/)
    .at(-1)!;
  const last = (pattern: RegExp): number => [...before.matchAll(pattern)].at(-1)?.index ?? -1;
  return last(ANOTHER) > last(OF_TANK);
}

/** Of everything that a tank keeps, a size that nothing else is said of is the tank's own. */
const OF_THE_TANK = 0.3;

const OF_SUMP = /^sump[._]/;

/** Where the sump is spoken of its own inputs come first, and their twins of the display last. */
function ofSump(id: string, thing: string | undefined, twin: string | undefined): number {
  const own = OF_SUMP.test(id);
  if (thing === 'sump') return own ? 1 : twin === undefined ? 0 : -1;
  return own && twin !== undefined ? -1 : 0;
}

/** The input of the display that measures what this one measures of the sump, and the other way round. */
function twinOf(id: string, inputs: Readonly<Record<string, Input>>): string | undefined {
  const leaf = id.replace(/^(?:display\.|sump[._])/, '');
  const twins = OF_SUMP.test(id) ? [leaf, `display.${leaf}`] : [`sump_${leaf}`, `sump.${leaf}`];
  return twins.find((name) => name in inputs);
}

/** How sure the words around a number make it that it is said of what they name, 0 to 1: each word adds to the others. */
function closeness(mention: Mention, cues: readonly CueFound[], text: string, mentions: readonly Mention[]): number {
  const distinct = new Map<string, number>();
  for (const cue of cues) {
    const word = text.slice(cue.start, cue.end);
    distinct.set(word, Math.max(distinct.get(word) ?? 0, closenessTo(mention, cue, text, mentions)));
  }
  let doubt = 1;
  for (const [word, near] of distinct) doubt *= 1 - near * (saysLittle(word) ? HARDLY_SURE : SURE);
  return 1 - doubt;
}

/** How sure a word beside a number makes it that the number is said of it: "nitrite", against "now" or "to". */
const SURE = 0.95;
const HARDLY_SURE = 0.6;
/** Verbs and particles that many things are said with. */
const COMMON = new Set([
  'holds',
  'hold',
  'weighs',
  'weigh',
  'gets',
  'goes',
  'runs',
  'makes',
  'takes',
  'all',
  'both',
  'about',
  'then',
]);
const saysLittle = (phrase: string): boolean => phrase.split(' ').every((word) => isLittle(word) || COMMON.has(word));

/** From 1, beside a cue word, down to 0, out of reach. Another clause, or another number of the kind in between, weakens it. */
function closenessTo(mention: Mention, cue: CueFound, text: string, mentions: readonly Mention[]): number {
  // "1.5 inch down": the cue begins in the unit and goes on behind it.
  if (cue.start > mention.start && cue.start < mention.end && cue.end > mention.end) return 1;
  const before = cue.end <= mention.start;
  const [from, to] = before ? [cue.end, mention.start] : [mention.end, cue.start];
  const gap = to - from;
  if (gap < 0 || gap > REACH) return 0;
  const clauses = text.slice(from, to).match(CLAUSE)?.length ?? 0;
  const between = mentions.filter((other) => other !== mention && other.start >= from && other.end <= to);
  const alike = between.filter((other) => sameKind(other, mention)).length;
  const weakened = 0.3 ** clauses * 0.3 ** alike * 0.75 ** (between.length - alike);
  const claimed = before
    ? claimedByLast(text.slice(cue.start, cue.end), text.slice(Math.max(0, cue.start - 24), cue.start))
    : claimedByNext(text.slice(cue.end, cue.end + 24), gap);
  return (1 - gap / REACH) * weakened * claimed * (before ? 1 : 0.97);
}

/** Words that English puts behind their number: "5 ft long 2 ft wide". */
const SAID_BEHIND = /^(?:long|wide|high|tall|deep|thick|across)$/;
const NUMBER_JUST_BEFORE = /\d ?(?:"|'|[a-zµ]{1,12}\.?)? ?$/;

/** How much of a cue before a number is left to it where the cue stands behind a number of its own. */
const claimedByLast = (cue: string, before: string): number =>
  SAID_BEHIND.test(cue) && NUMBER_JUST_BEFORE.test(before) ? 0.4 : 1;

/** A word that its own number follows: "78 degrees house is 60". */
const OWN_NUMBER = /^\s*(?:is|at|=|:|gets|around|about|only)?\s*(?:down to |up to )?\d/;
const NUMBER_AT_ONCE = /^\s*\d/;

/** How much of a cue behind a number is left to it, by what follows the cue: in "6 ft long 30 in tall" it is still the first number's. */
function claimedByNext(following: string, gap: number): number {
  if (!OWN_NUMBER.test(following)) return 1;
  return gap <= 1 && NUMBER_AT_ONCE.test(following) ? 0.6 : 0.3;
}

/** "four 25 % changes": a percentage does not stand between a bare number and its word. */
const isShare = ({ units }: Mention): boolean => units.some(({ id }) => id === '%');

const sameKind = (a: Mention, b: Mention): boolean =>
  (a.units.length === 0 && !isShare(b)) ||
  (b.units.length === 0 && !isShare(a)) ||
  a.units.some(({ quantities }) => b.units.some((unit) => unit.quantities.some((name) => quantities.includes(name))));
