import { type UnitRow, unitNamed } from '../core/quantity/units.js';
import { type Amount, amountAt, startsWord } from './amounts.js';
import { isCountOfWatts, placesOf, type Size, sizesFrom } from './joined-sizes.js';
import { unmeasuredAt } from './no-measurements.js';
import { at } from './number-parts.js';

/** A number seen in a text, with the units it may carry. Without units it is a bare number. */
export interface Mention extends Amount {
  /** The ends of a range that was said, in the same units. Of "under 30 min" only one. */
  readonly low?: number;
  readonly high?: number;
  /** "about": the value is kept, the reply says so. */
  readonly about?: boolean;
  /** 2 of `2x300w`. */
  readonly count?: number;
  /** Place in joined sizes, `72x18x21`. */
  readonly group?: { readonly id: number; readonly index: number; readonly size: number };
  /** "5 degrees colder": a difference, never a temperature. */
  readonly difference?: boolean;
}

/** More than this in one message is a table, not a question. */
export const MOST_MENTIONS = 60;

/** Every measurement and bare number of a folded text, in order. */
export function measurementsIn(text: string): Mention[] {
  const found: Mention[] = [];
  for (let index = 0; index < text.length && found.length < MOST_MENTIONS; ) {
    const end = startsWord(text, index) ? (unmeasuredAt(text, index) ?? readAt(text, index, found)) : undefined;
    index = end ?? index + 1;
  }
  return found;
}

/** Reads what begins at a place: joined sizes, two values, or one measurement. @returns where it ends */
function readAt(text: string, start: number, found: Mention[]): number | undefined {
  const first = amountAt(text, start);
  if (!first || isPartOfWord(text, first)) return undefined;
  const sizes = sizesFrom(text, first);
  const pair = sizes ? undefined : temperaturePair(text, first);
  const ratio = sizes || pair ? undefined : ratioAt(text, first);
  if (ratio) return ratio.end;
  const read = sizes
    ? grouped(sizes)
    : (pair ?? fromTo(text, first) ?? eitherOr(text, first) ?? [qualified(text, first)]);
  found.push(...read);
  return read.at(-1)!.end;
}

function grouped(sizes: readonly Size[]): Mention[] {
  const places = placesOf(sizes);
  return sizes.map(({ axis: _, ...size }, i) => ({
    ...size,
    group: { id: sizes[0]!.start, index: places[i]!, size: sizes.length },
  }));
}

/** `no3`, `h2o`, `5th`: digits that measure nothing. */
const isPartOfWord = (text: string, { units, end }: Amount): boolean =>
  units.length === 0 &&
  /[a-z]/.test(text[end] ?? '') &&
  /\d/.test(text[end - 1] ?? '') &&
  !/^x\s*\d/.test(text.slice(end, end + 4));

/** The amount behind a joint, if one stands there. */
function secondAfter(text: string, { end }: Amount, joint: RegExp): Amount | undefined {
  const second =
    at(joint, text, end) && unmeasuredAt(text, joint.lastIndex) === undefined
      ? amountAt(text, joint.lastIndex)
      : undefined;
  return second && !isPartOfWord(text, second) ? second : undefined;
}

const shared = (a: Amount, b: Amount): readonly UnitRow[] => (a.units.length > 0 ? a.units : b.units);

const sharesUnit = (a: Amount, b: Amount): boolean =>
  a.units.length === 0 || b.units.length === 0 || a.units.some((unit) => b.units.includes(unit));

/** Both with the unit that one of them bears. */
const inSameUnit = (a: Amount, b: Amount): [Amount, Amount] => [
  { ...a, units: shared(a, b) },
  { ...b, units: shared(b, a) },
];

/** An amount in the units of another, where both measure the same: the 18 in of "18 in to 2 ft". */
function inUnitsOf({ units: [unit] }: Amount, amount: Amount): Amount | undefined {
  const [own] = amount.units;
  if (!unit || !own || amount.units.includes(unit)) return amount;
  const alike = own.quantities[0] === unit.quantities[0] && own.offset === undefined && unit.offset === undefined;
  return alike ? { ...amount, units: [unit], value: (amount.value * own.factor) / unit.factor } : undefined;
}

const measures = ({ units }: Amount, ...names: readonly string[]): boolean =>
  units.some(({ quantities }) => quantities.some((name) => names.includes(name)));

const STROKE = /\s*\/\s*(?=\d)/y;
/** Where two numbers with a stroke between are temperatures: of a tank by day and night, or of a hydrometer's scale. */
const SCALES: readonly { readonly unit: string; readonly from: number; readonly to: number }[] = [
  { unit: 'degC', from: 15, to: 32 },
  { unit: 'degF', from: 59, to: 95 },
];
/** Water at its densest, the lower temperature of old hydrometers [°C]. */
const DENSEST = 4;

/** `60/60 F`, `20/4`, `78/76`. */
function temperaturePair(text: string, first: Amount): Mention[] | undefined {
  const second = first.units.length > 0 ? undefined : secondAfter(text, first, STROKE);
  if (!second) return undefined;
  const fits = ({ from, to }: (typeof SCALES)[number]) =>
    first.value >= from &&
    first.value <= to &&
    ((second.value >= from && second.value <= to) || second.value === DENSEST);
  const scale = second.units.length > 0 ? undefined : SCALES.find(fits);
  if (!scale && !measures(second, 'temperature')) return undefined;
  return inSameUnit(first, scale ? { ...second, units: [unitNamed(scale.unit)] } : second);
}

/** `24/7`, `5/30`, `10/14`: neither a fraction nor two temperatures, so no value at all. */
function ratioAt(text: string, first: Amount): Amount | undefined {
  const second = first.units.length > 0 ? undefined : secondAfter(text, first, STROKE);
  return second?.units.length === 0 ? second : undefined;
}

const NEARLY = '(?:about|around|approx(?:imately)?\\.?|roughly|~|nearly|almost|say)?\\s*';
const FROM = new RegExp(`\\bfrom\\s+${NEARLY}$`);
const BETWEEN = new RegExp(`\\bbetween\\s+${NEARLY}$`);
const TO = new RegExp(`\\s+to\\s+${NEARLY}`, 'y');
const WORDS_BEFORE = 32;
const before = (text: string, { start }: Amount): string => text.slice(Math.max(0, start - WORDS_BEFORE), start);

/** "from 32 to 35 ppt": two values, a start and a target, where "32 to 35 ppt" alone is a range. */
function fromTo(text: string, first: Amount): Mention[] | undefined {
  const second = FROM.test(before(text, first)) ? secondAfter(text, first, TO) : undefined;
  return second && sharesUnit(first, second) ? inSameUnit(first, second) : undefined;
}

const OR = /\s+or\s+/y;
const ONE_THING = /\b(?:an?|the|my|our|this)\s+$/;

/** "A 75 or 90 gallon": one or the other, where "20 or 30 gallons" is a range. */
function eitherOr(text: string, first: Amount): Mention[] | undefined {
  const second =
    ONE_THING.test(before(text, first)) && first.units.length === 0 ? secondAfter(text, first, OR) : undefined;
  return second && second.units.length > 0 ? inSameUnit(first, second) : undefined;
}

/** "1.023 to 1.026", "32 to 35 ppt": where it is and where it should be, never a range to be averaged. */
const isSaltiness = (amount: Amount): boolean =>
  amount.units.length === 0
    ? amount.value >= 0.99 && amount.value <= 1.05
    : measures(amount, 'salinity', 'specific gravity');

const ABOUT =
  /(?:(?:^|[^a-z])(?:about|around|abt|approx(?:imately)?\.?|aprox|roughly|circa|ca\.|close to|some|nearly|almost|maybe|probably|like|say|(?:just|a (?:bit|little)) (?:over|under))|~)\s*$/;
/** `ca 420` is calcium. */
const CIRCA = /(?:^|[^a-z])ca\s+$/;
const ABOUT_BEHIND = /^\s*(?:or so|or thereabouts|give or take|roughly|approx(?:imately)?|ish)(?![a-z])/;
const AT_MOST =
  /(?:(?:^|[^a-z])(?:under|below|less than|at most|up to|max(?:imum)?(?: of)?|no more than|not more than|not over|within)|<=?)\s*$/;
const AT_LEAST =
  /(?:(?:^|[^a-z])(?:over|above|more than|at least|min(?:imum)?(?: of)?|no less than|not under|upwards of)|>=?)\s*$/;
const AT_MOST_BEHIND = /^\s*(?:max(?:imum)?|or (?:less|under|below|fewer)|at most|tops)(?![a-z])/;
const AT_LEAST_BEHIND = /^\s*(?:or (?:more|over|above|longer)|at least|minimum)(?![a-z])/;
const COLDER =
  /^\s*(?:colder|cooler|warmer|hotter|lower|higher|difference|swings?|drops?|rise|above|below|(?:over|under) (?:room|ambient|the room|the air)|less|more)(?![a-z])/;
const BY_DEGREES =
  /(?:^|[^a-z])(?:by|drop(?:s|ped)?(?: of)?|swing(?:s)?(?: of)?|fluctuat(?:es|ion)(?: of)?|differ(?:s|ence)(?: of| is)?|delta(?: t)?(?: of)?|(?:rise|raise|lower|cool|heat|warm)s?(?: it| the (?:tank|water|temp))?(?: by)?|rise of|within)\s+(?:about\s+|around\s+)?$/;
const SPREAD_OF_ABOUT = 0.1;

/** One measurement with what is said of it: its range or count, "about", "at most", or that it is a difference. */
function qualified(text: string, first: Amount): Mention {
  const said = countBefore(text, first) ?? rangeFrom(text, first) ?? plusMinus(text, first) ?? countBehind(text, first);
  const [ahead, behind] = [before(text, first), text.slice(said.end, said.end + WORDS_BEFORE)];
  const isHeat = measures(said, 'temperature', 'angle');
  const difference = isHeat && (COLDER.test(behind) || BY_DEGREES.test(ahead)) ? { difference: true } : {};
  const own = text.slice(said.start, said.end);
  if (said.low !== undefined) return { ...said, ...difference };
  const circa = CIRCA.test(ahead) && said.units.length > 0 && !measures(said, 'dissolved');
  if (circa || ABOUT.test(ahead) || ABOUT_BEHIND.test(behind) || /\dish/.test(own)) {
    const spread =
      said.units.length > 0 && !measures(said, 'temperature')
        ? around(said.value, SPREAD_OF_ABOUT * Math.abs(said.value))
        : {};
    return { ...said, about: true, ...spread, ...difference };
  }
  const most = AT_MOST.test(ahead) || AT_MOST_BEHIND.test(behind) ? { high: said.value } : {};
  const least = AT_LEAST.test(ahead) || AT_LEAST_BEHIND.test(behind) || /\d\+/.test(own) ? { low: said.value } : {};
  return { ...said, ...most, ...least, ...difference };
}

const around = (value: number, spread: number) => ({ low: value - spread, high: value + spread });

const DASH = /\s*(?:-|\.\.+)\s*(?=[\d.a-z$€£])/y;
const RANGE_TO = /\s+(?:to|thru|through)\s+/y;
const AND = /\s+and\s+/y;

/** `10-12 hours`, "10 to 12 hours", "between 76 and 78", "20 or 30 gallons". */
function rangeFrom(text: string, first: Amount): Mention | undefined {
  const dashed = secondAfter(text, first, DASH);
  const between = BETWEEN.test(before(text, first))
    ? (secondAfter(text, first, AND) ?? secondAfter(text, first, RANGE_TO))
    : undefined;
  const spoken = isSaltiness(first) ? undefined : (secondAfter(text, first, RANGE_TO) ?? secondAfter(text, first, OR));
  const second = dashed ?? between ?? spoken;
  const start = second && inUnitsOf(second, first);
  if (!start || start.value >= second.value) return undefined;
  const { units } = inSameUnit(start, second)[1];
  // Two bare numbers with "to" between are as often a start and a target, or two times of day.
  if (units.length === 0 && second === spoken) return undefined;
  const { corrected } = second;
  return {
    start: first.start,
    end: second.end,
    units,
    value: (start.value + second.value) / 2,
    low: start.value,
    high: second.value,
    ...(corrected === undefined ? {} : { corrected }),
  };
}

const PLUS_MINUS = /\s*(?:±|\+\s?\/?\s?-|plus or minus|give or take)\s*/y;

/** `78 F ± 1`, `35 +/- 0.5 ppt`. */
function plusMinus(text: string, first: Amount): Mention | undefined {
  const spread = secondAfter(text, first, PLUS_MINUS);
  if (!spread) return undefined;
  const share = spread.units.some(({ id }) => id === '%') && !first.units.some(({ id }) => id === '%');
  if (!share && !sharesUnit(first, spread)) return undefined;
  const by = share ? (Math.abs(first.value) * spread.value) / 100 : spread.value;
  return { ...first, end: spread.end, units: share ? first.units : shared(first, spread), ...around(first.value, by) };
}

const TIMES = /\s*(?:x|\*|of)\s*(?=[\d.])/y;
const CLOSE = /\)?\s+(?=\d)/y;
const MOST_THINGS = 24;

/** `2x300w`, `two 300 W heaters`, `3 x 5 gal`: a count of equal things. */
function countBefore(text: string, first: Amount): Mention | undefined {
  if (first.units.length > 0 || !Number.isInteger(first.value) || first.value < 1 || first.value > MOST_THINGS)
    return undefined;
  const joined = secondAfter(text, first, TIMES);
  if (joined && isCountOfWatts([first, joined])) {
    return { ...joined, start: first.start, count: first.value, units: [unitNamed('W')] };
  }
  const equal = joined && !measures(joined, 'length', 'fraction') && joined.units.length > 0 ? joined : undefined;
  const close = equal ? undefined : secondAfter(text, first, CLOSE);
  const second = equal ?? (close && measures(close, 'power') ? close : undefined);
  return second && { ...second, start: first.start, count: first.value };
}

const COUNT_BEHIND = /\s*\(?(?:x|\*)\s*(\d{1,2})(?![\d.a-z])/y;

/** `300w x2` */
function countBehind(text: string, first: Amount): Mention {
  const count = first.units.length > 0 ? at(COUNT_BEHIND, text, first.end)?.[1] : undefined;
  return count === undefined ? first : { ...first, end: COUNT_BEHIND.lastIndex, count: Number(count) };
}
