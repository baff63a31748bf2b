import { type UnitRow, unitNamed } from '../core/quantity/units.js';
import { andShareAt, at, type NumberFound } from './number-parts.js';
import { numberAt } from './number-words.js';
import { isOf, type UnitFound, unitAfter } from './unit-words.js';

/** A number that has its unit. */
export type Measured = NumberFound & UnitFound;

/** What people halve and quarter by name. */
export const isDivisible = (units: readonly UnitRow[]): boolean =>
  units.some((row) => isOf(row, 'length', 'time', 'volume', 'mass', 'flow'));

/** "A foot and a half", but neither "a foot and a half inch" nor "a gallon and half a cup". */
export function shareMore(text: string, { units, end }: UnitFound): NumberFound | undefined {
  const share = isDivisible(units) ? andShareAt(text, end) : undefined;
  const ofOther =
    share && (unitAfter(text, share.end) ?? /^\s+(?:of|an?)\s/.test(text.slice(share.end, share.end + 5)));
  return ofOther ? undefined : share;
}

/** The smaller unit in which people go on, beside the parts of time, which they go on in from any to any smaller one. */
const SMALLER: Readonly<Record<string, string>> = {
  yd: 'ft',
  ft: 'in',
  m: 'cm',
  lb: 'oz',
  kg: 'g',
  gal_US: 'qt_US',
  L: 'mL',
  currency: 'cent',
};
const isDivided = (row: UnitRow): boolean => row.id in SMALLER || isOf(row, 'time');
const isPart = (big: UnitRow, small: UnitRow): boolean =>
  SMALLER[big.id] === small.id || (isOf(big, 'time') && isOf(small, 'time') && small.factor < big.factor);

/** `5'6`, `1m80`, `1h30`: a last part may have no unit, if it stands close. */
const BARE_PARTS: Readonly<Record<string, { readonly unit: string; readonly pattern: RegExp }>> = {
  ft: { unit: 'in', pattern: /\s*(?=[\da-z])/y },
  m: { unit: 'cm', pattern: /(?=\d{2}(?![\d.]))/y },
  h: { unit: 'min', pattern: /(?=[0-5]\d(?![\d.]))/y },
};
/** What a part behind a blank is followed by when it is one: "5 ft 6 long", but not "4 ft 2 pumps". */
const GOES_ON =
  /^\s*(?:$|[^a-z\d\s]|(?:by|long|wide|high|tall|deep|across|thick|in(?!ch)|and|or|to|from|above|below|of|each|at|on|with|per|total)(?![a-z]))/;

const JOINT = /(?:\.(?=\s))?\s*(?:(?:,\s*)?and\s+|[&,-]\s*)?/y;

/** `5'6"`, `6 ft 2 in`, `1m80`, `12 lb 4 oz`, `1 h 30 min`: parts that make one measurement. */
export function compoundAt(text: string, number: NumberFound, first: UnitFound): Measured | undefined {
  if (!first.units.some(isDivided)) return undefined;
  let { units: bigs, end } = first;
  let [whole, value]: [UnitRow | undefined, number] = [undefined, number.value];
  for (;;) {
    const part = partAt(text, end, bigs) ?? barePartAt(text, end, bigs);
    if (!part) break;
    whole ??= part.big;
    value += (part.value * part.small.factor) / whole.factor;
    bigs = [part.small];
    end = part.end;
  }
  return whole && { value, units: [whole], end };
}

interface SmallPart {
  readonly big: UnitRow;
  readonly small: UnitRow;
  readonly value: number;
  readonly end: number;
}

function partAt(text: string, end: number, bigs: readonly UnitRow[]): SmallPart | undefined {
  const joint = at(JOINT, text, end)?.[0] ?? '';
  const second = numberAt(text, JOINT.lastIndex);
  const unit = second && unitAfter(text, second.end);
  if (!unit) return undefined;
  for (const big of bigs) {
    const small = unit.units.find((row) => isPart(big, row) && second.value * row.factor < big.factor);
    if (!small) continue;
    // "6 ft, 2 in pipe" and "10 h and 30 min of ramp" are two measurements.
    if (joint.includes('-') && !isOf(big, 'length')) return undefined;
    const listed = joint.includes(',') || (joint.includes('and') && isOf(big, 'time'));
    if (listed && (!isOf(big, 'time') || !ENDS.test(text.slice(unit.end, unit.end + 12)))) return undefined;
    return { big, small, value: second.value, end: unit.end };
  }
  return undefined;
}
const ENDS =
  /^\s*(?:$|[,.;:!?)]|(?:and|to|for|in|at|per|is|or|then|when|after|before|ago|later|long|old|total)(?![a-z]))/;

function barePartAt(text: string, end: number, bigs: readonly UnitRow[]): SmallPart | undefined {
  const big = bigs.find(({ id }) => id in BARE_PARTS);
  if (!big) return undefined;
  const { unit, pattern } = BARE_PARTS[big.id]!;
  const small = unitNamed(unit);
  const found = at(pattern, text, end) && numberAt(text, pattern.lastIndex);
  if (!found || found.value * small.factor >= big.factor || unitAfter(text, found.end)) return undefined;
  const close = !found.word && (pattern.lastIndex === end || text[end - 1] === "'");
  const behind = text.slice(found.end, found.end + 12);
  return (close ? !/^(?!x\s*\d)[a-z]/.test(behind) : GOES_ON.test(behind)) ? { big, small, ...found } : undefined;
}

const COLON = /(\d{1,3}):([0-5]\d)(?::([0-5]\d))?(?=\s?(h|hrs?|hours?|mins?|minutes?)(?![a-z]))/y;

/** `1:30 h`, `4:30 min`; without its unit it is a time of day. */
export function colonAt(text: string, start: number): Measured | undefined {
  const match = at(COLON, text, start);
  const unit = match && unitAfter(text, COLON.lastIndex);
  if (!unit) return undefined;
  const [, whole, part, rest = '0'] = match;
  return { value: Number(whole) + Number(part) / 60 + Number(rest) / 3600, units: unit.units, end: unit.end };
}
