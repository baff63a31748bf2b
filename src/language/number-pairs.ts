import { type UnitRow, unitNamed } from '../core/quantity/units.js';
import { type Amount, amountAt, isPartOfWord, measures } from './amounts.js';
import { isCountOfWatts } from './joined-sizes.js';
import type { Mention } from './measurements.js';
import { unmeasuredAt } from './no-measurements.js';
import { at } from './number-parts.js';
import { around, wordsBefore } from './qualifiers.js';

/** Two amounts that belong together, and what stands before them. */
interface Pair {
  readonly first: Amount;
  readonly second: Amount;
  readonly ahead: string;
}
type Reader = (pair: Pair) => readonly Mention[] | undefined;

const NEARLY = '(?:(?:about|around|approx(?:imately)?\\.?|roughly|nearly|almost|say)\\s+|~\\s*)?';

/** What stands between two amounts, and the ways to read them then, in order. */
const JOINTS: readonly { readonly joint: RegExp; readonly readers: readonly Reader[] }[] = [
  { joint: /\s*(?:-|\.\.+)\s*(?=[\d.a-z$€£])/y, readers: [range] },
  { joint: new RegExp(`\\s+(?:to|thru|through)\\s+${NEARLY}`, 'y'), readers: [change, between, measuredRange] },
  { joint: /\s+or\s+/y, readers: [eitherOr, measuredRange] },
  { joint: /\s+and\s+/y, readers: [between] },
  { joint: /\s*\/\s*(?=\d)/y, readers: [temperatures, ratio] },
  { joint: /\s*(?:±|\+\s?\/?\s?-|plus or minus|give or take)\s*/y, readers: [plusMinus] },
  { joint: /\s*(?:x|\*|of)\s*(?=[\d.])/y, readers: [countOfWatts, count] },
  { joint: /\)?\s+(?=\d)/y, readers: [countOfPowers] },
];
const COUNT_BEHIND = /\s*\(?(?:x|\*)\s*(\d{1,2})(?![\d.a-z])/y;

/** What an amount makes with the one behind it. @returns undefined where it stands alone */
export function pairFrom(
  text: string,
  first: Amount,
): { readonly mentions: readonly Mention[]; readonly end: number } | undefined {
  const times = first.units.length > 0 ? at(COUNT_BEHIND, text, first.end)?.[1] : undefined;
  if (times !== undefined) {
    const end = COUNT_BEHIND.lastIndex;
    return { mentions: [{ ...first, end, count: Number(times) }], end };
  }
  const found = JOINTS.find(({ joint }) => at(joint, text, first.end));
  const second = found && amountBehind(text, found.joint.lastIndex);
  if (!second) return undefined;
  const pair: Pair = { first, second, ahead: wordsBefore(text, first) };
  for (const reader of found.readers) {
    const mentions = reader(pair);
    if (mentions) return { mentions, end: second.end };
  }
  return undefined;
}

function amountBehind(text: string, start: number): Amount | undefined {
  const amount = unmeasuredAt(text, start) === undefined ? amountAt(text, start) : undefined;
  return amount && !isPartOfWord(text, amount) ? amount : undefined;
}

const shared = (a: Amount, b: Amount): readonly UnitRow[] => (a.units.length > 0 ? a.units : b.units);

const sharesUnit = (a: Amount, b: Amount): boolean =>
  a.units.length === 0 || b.units.length === 0 || a.units.some((unit) => b.units.includes(unit));

/** Both with the unit that one of them bears. */
const inSameUnit = (a: Amount, b: Amount): [Amount, Amount] => [
  { ...a, units: shared(a, b) },
  { ...b, units: shared(b, a) },
];

/** An amount in the unit of another, where both measure the same: the 18 in of "18 in to 2 ft", the $2 of "$2-3 per lb". */
function inUnitOf({ units: [unit, ...others] }: Amount, amount: Amount): Amount | undefined {
  const [own] = amount.units;
  if (!unit || !own || amount.units.includes(unit)) return amount;
  if (unit.rate?.[0] === own.id) return { ...amount, units: [unit, ...others] };
  const alike = own.quantities[0] === unit.quantities[0] && own.offset === undefined && unit.offset === undefined;
  return alike ? { ...amount, units: [unit], value: (amount.value * own.factor) / unit.factor } : undefined;
}

/** `10-12 hours` */
function range({ first, second }: Pair): Mention[] | undefined {
  const least = inUnitOf(second, first);
  if (!least || least.value >= second.value) return undefined;
  const { corrected } = second;
  return [
    {
      start: first.start,
      end: second.end,
      units: shared(second, least),
      value: (least.value + second.value) / 2,
      low: least.value,
      high: second.value,
      ...(corrected === undefined ? {} : { corrected }),
    },
  ];
}

const BETWEEN = new RegExp(`\\bbetween\\s+${NEARLY}$`);

/** "Between 76 and 78" */
function between(pair: Pair): Mention[] | undefined {
  return BETWEEN.test(pair.ahead) ? range(pair) : undefined;
}

/** "1.023 to 1.026", "32 ppt to 35 ppt": where it is and where it should be, never a range to be averaged. */
const isSaltiness = (amount: Amount): boolean =>
  amount.units.length === 0
    ? amount.value >= 0.99 && amount.value <= 1.05
    : measures(amount, 'salinity', 'specific gravity');

/** "10 to 12 hours". Without a unit two numbers are as often a start and a target, or two times of day. */
function measuredRange(pair: Pair): Mention[] | undefined {
  const { first, second } = pair;
  return isSaltiness(first) || shared(first, second).length === 0 ? undefined : range(pair);
}

const FROM = new RegExp(`\\bfrom\\s+${NEARLY}$`);

/** "From 32 to 35 ppt": a start and a target, where "32 to 35 ppt" alone is a range. */
function change({ first, second, ahead }: Pair): Mention[] | undefined {
  return FROM.test(ahead) && sharesUnit(first, second) ? inSameUnit(first, second) : undefined;
}

const ONE_THING = /\b(?:an?|the|my|our|this)\s+$/;

/** "A 75 or 90 gallon": one or the other, where "20 or 30 gallons" is a range. */
function eitherOr({ first, second, ahead }: Pair): Mention[] | undefined {
  return ONE_THING.test(ahead) && first.units.length === 0 && second.units.length > 0
    ? inSameUnit(first, second)
    : undefined;
}

/** Where two numbers with a stroke between are temperatures: of a tank by day and night, or of a hydrometer's scale. */
const SCALES: readonly { readonly unit: string; readonly from: number; readonly to: number }[] = [
  { unit: 'degC', from: 15, to: 32 },
  { unit: 'degF', from: 59, to: 95 },
];
/** Water at its densest, the lower temperature of old hydrometers [°C]. */
const DENSEST = 4;

/** `60/60 F`, `20/4`, `78/76` */
function temperatures({ first, second }: Pair): Mention[] | undefined {
  if (first.units.length > 0) return undefined;
  if (second.units.length > 0) return measures(second, 'temperature') ? inSameUnit(first, second) : undefined;
  const within = (value: number, { from, to }: (typeof SCALES)[number]) => value >= from && value <= to;
  const scale = SCALES.find(
    (band) => within(first.value, band) && (within(second.value, band) || second.value === DENSEST),
  );
  return scale && inSameUnit(first, { ...second, units: [unitNamed(scale.unit)] });
}

/** `24/7`, `5/30`, `10/14`: neither a fraction nor two temperatures, so no value at all. */
function ratio({ first, second }: Pair): Mention[] | undefined {
  return first.units.length === 0 && second.units.length === 0 ? [] : undefined;
}

/** `78 F ± 1`, `35 +/- 0.5 ppt`, `300 w ± 5 %` */
function plusMinus({ first, second }: Pair): Mention[] | undefined {
  const share = measures(second, 'fraction') && !measures(first, 'fraction');
  if (second.value < 0 || (!share && !sharesUnit(first, second))) return undefined;
  const spread = share ? (Math.abs(first.value) * second.value) / 100 : second.value;
  return [{ ...first, end: second.end, units: share ? first.units : shared(first, second), ...around(first, spread) }];
}

const MOST_THINGS = 24;
const counts = ({ units, value }: Amount): boolean =>
  units.length === 0 && Number.isInteger(value) && value >= 1 && value <= MOST_THINGS;
const counted = ({ first, second }: Pair, units = second.units): Mention[] => [
  { ...second, start: first.start, count: first.value, units },
];

/** `2x300` */
function countOfWatts(pair: Pair): Mention[] | undefined {
  return isCountOfWatts([pair.first, pair.second]) ? counted(pair, [unitNamed('W')]) : undefined;
}

/** `2x300w`, `3 x 5 gal` */
function count(pair: Pair): Mention[] | undefined {
  const { first, second } = pair;
  return counts(first) && second.units.length > 0 && !measures(second, 'length', 'fraction')
    ? counted(pair)
    : undefined;
}

/** "Two 300 W heaters": only of watts, since "2 300 gal" may be anything. */
function countOfPowers(pair: Pair): Mention[] | undefined {
  return counts(pair.first) && measures(pair.second, 'power') ? counted(pair) : undefined;
}
