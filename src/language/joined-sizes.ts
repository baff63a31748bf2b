import { type UnitRow, unitNamed } from '../core/quantity/units.js';
import { type Amount, amountAt } from './amounts.js';
import { at } from './number-parts.js';
import { numberAt } from './number-words.js';
import { unitAt } from './unit-words.js';

/** One of joined sizes, with the direction that was named. */
export interface Size extends Amount {
  readonly axis?: Axis;
}
type Axis = 'length' | 'width' | 'height';

const BY = /\.?\s*(?:x|by|\*)\s*(?=[\d.a-z])/y;

/** `48L x 24W x 20H`: letters that would be litres and watts elsewhere. */
const AXES: Readonly<Record<string, Axis>> = {
  l: 'length',
  long: 'length',
  length: 'length',
  w: 'width',
  wide: 'width',
  width: 'width',
  d: 'width',
  deep: 'width',
  depth: 'width',
  h: 'height',
  high: 'height',
  height: 'height',
  tall: 'height',
};
const AXIS = new RegExp(`\\s*\\(?(${Object.keys(AXES).join('|')})(?![a-wyz])\\)?`, 'y');

const isLength = ({ units }: Amount): boolean =>
  units.length === 0 || units.some(({ quantities }) => quantities.includes('length'));

/**
 * @param letter whether the letter behind the number is no unit
 * @param named whether that letter, or a word, names the direction
 */
function sizeAt(text: string, start: number, letter: boolean, named = true): Size | undefined {
  const amount = amountAt(text, start);
  const lettered = amount && !isLength(amount) && letter ? bareAt(text, start) : amount;
  if (!lettered || !isLength(lettered)) return undefined;
  const axis = named ? at(AXIS, text, lettered.end)?.[1] : undefined;
  if (axis === undefined) return lettered;
  const { units, end } = lettered.units.length > 0 ? lettered : { units: [], end: AXIS.lastIndex };
  return { ...lettered, units, end: Math.max(end, AXIS.lastIndex), axis: AXES[axis]! };
}

function bareAt(text: string, start: number): Amount | undefined {
  const number = numberAt(text, start);
  return number && { start, end: number.end, value: number.value, units: [] };
}

/** What follows the first of joined sizes. */
const JOINED = new RegExp(`(?:${AXIS.source})?${BY.source}`, 'y');

const MOST_SIZES = 3;

const LABEL = /([lwdh])\s?[:=]?\s?(?=\d)/y;
const BETWEEN_LABELLED = /\s*(?:x|\*|,)?\s*(?=[lwdh])/y;

/** `L 48 W 24 H 20`, `L48xW24xH20`: the direction stands before its size. */
export function labelledSizes(text: string, start: number): Size[] | undefined {
  const sizes: Size[] = [];
  for (let next = start; sizes.length < MOST_SIZES; next = BETWEEN_LABELLED.lastIndex) {
    const label = at(LABEL, text, next)?.[1];
    const size = label && sizeAt(text, LABEL.lastIndex, true, false);
    if (!size) break;
    sizes.push({ ...size, start: next, axis: AXES[label]! });
    if (!at(BETWEEN_LABELLED, text, size.end)) break;
  }
  return new Set(sizes.map(({ axis }) => axis)).size > 1 ? inOneUnit(text, sizes) : undefined;
}

/** Sizes joined by x or by from `start`, as far as they go. */
function chainFrom(text: string, start: number, letters: boolean): Size[] {
  const sizes: Size[] = [];
  for (let next: number | undefined = start; next !== undefined && sizes.length < MOST_SIZES; ) {
    const size = sizeAt(text, next, letters);
    if (!size) break;
    sizes.push(size);
    next = at(BY, text, size.end) ? BY.lastIndex : undefined;
  }
  return sizes;
}

/** Two or three sizes joined by x or by, `first` being the first; a missing unit takes the one that follows. */
export function sizesFrom(text: string, first: Amount): Size[] | undefined {
  if (!at(JOINED, text, first.end)) return undefined;
  const sizes = isLength(first) ? chainFrom(text, first.start, false) : [];
  if (sizes.length === MOST_SIZES) return inOneUnit(text, sizes);
  const lettered = chainFrom(text, first.start, true);
  const axes = new Set(lettered.flatMap(({ axis }) => axis ?? []));
  if (axes.size > 1 && lettered.length > sizes.length) return inOneUnit(text, lettered);
  return sizes.length < 2 || isCountOfWatts(sizes) ? undefined : inOneUnit(text, sizes);
}

/** "2x300": so many of so many watts, no length and width. */
export const isCountOfWatts = ([count, watts, third]: readonly Amount[]): boolean =>
  third === undefined &&
  count!.units.length === 0 &&
  watts!.units.length === 0 &&
  Number.isInteger(count!.value) &&
  count!.value <= 8 &&
  watts!.value >= 50 &&
  watts!.value <= 1000;

/** Where each of joined sizes belongs: 0 to the length, 1 to the width, 2 to the height. */
export function placesOf(sizes: readonly Size[]): number[] {
  const axes = sizes.map(({ axis }) => axis);
  // "48W x 24D x 20H" is said by who stands before it: its width is the tank's length.
  const facing = !axes.includes('length') && axes.filter((axis) => axis === 'width').length === 2;
  const named = facing ? sizes.map((_, i) => i) : axes.map((axis) => (axis === undefined ? -1 : ORDER.indexOf(axis)));
  const whole = named.every((place) => place >= 0) && new Set(named).size === named.length;
  return whole ? named : sizes.map((_, i) => i);
}
const ORDER: readonly Axis[] = ['length', 'width', 'height'];

/** `(72 x 18 x 21) in`, `48L x 24W x 20H inches`, `48x24x24 in cm`, where the first "in" was taken for inches */
const BEHIND = /\s*[()]\s*|(?<=\sin|\d\s?[lwdh])\s+/y;

function inOneUnit(text: string, sizes: readonly Size[]): Size[] {
  const last = sizes.at(-1)!;
  const said = unitBehind(text, last.end);
  const shared = sizes.map(({ units }, i) => (said && i === sizes.length - 1 ? said.units : units));
  for (let i = shared.length - 2; i >= 0; i -= 1) if (shared[i]!.length === 0) shared[i] = shared[i + 1]!;
  for (let i = 1; i < shared.length; i += 1) if (shared[i]!.length === 0) shared[i] = shared[i - 1]!;
  return sizes.map(({ word: _, ...size }, i) => ({
    ...size,
    units:
      size.units.length > 0 && !(said && i === sizes.length - 1) ? size.units : fitting(shared[i]!, size.value, sizes),
    ...(said && i === sizes.length - 1 ? { end: said.end } : {}),
  }));
}

function unitBehind(
  text: string,
  end: number,
): { readonly units: readonly UnitRow[]; readonly end: number } | undefined {
  if (!at(BEHIND, text, end)) return undefined;
  const unit = unitAt(text, BEHIND.lastIndex);
  return unit?.units.some(({ quantities }) => quantities.includes('length')) ? unit : undefined;
}

/** `6' x 24 x 24`, `1.5 m x 60 x 50`: no tank is 24 feet wide that is 6 feet long. */
const SMALLER: Readonly<Record<string, string>> = { ft: 'in', m: 'cm' };
const WIDEST = 3;

function fitting(units: readonly UnitRow[], value: number, sizes: readonly Size[]): readonly UnitRow[] {
  const [unit] = units;
  const smaller = unit && SMALLER[unit.id];
  if (!smaller || value * unit.factor <= WIDEST) return units;
  return sizes.some((size) => size.units.includes(unit) && size.value >= value) ? units : [unitNamed(smaller)];
}
