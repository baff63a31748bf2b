import { quantityTable } from '../../../data/quantities.js';
import { unitTable } from '../../../data/units.js';
import { type LookupInput, lookup } from '../calculation.js';
import { literal } from '../literal.js';
import { withArticle } from '../quantity/number.js';
import { fromSI, toSI, type UnitRow, unitNamed } from '../quantity/units.js';
import { MOST_TERMS } from '../sum.js';

/** One number of each row. */
export interface Column {
  /** `P` for the symbols `P_1`, `P_2` …, SI. */
  readonly symbol: string;
  readonly name: string;
  /** The unit of a bare number in a structured list, and in a text where `bare` says so. */
  readonly unit: string;
  /** `[low, high]` in that unit. */
  readonly range: readonly [low: number, high: number];
  /** People write it without a unit: a count, a price, a day. */
  readonly bare?: boolean;
}

interface Spec {
  readonly name: string;
  /** One row in a word: "channel". */
  readonly row: string;
  readonly ask: string;
  readonly example: string;
  readonly suggestions: readonly string[];
  readonly columns: readonly Column[];
  /** A text with fewer rows is no list, where single numbers of that kind are inputs of their own. */
  readonly atLeast?: number;
  readonly words?: readonly string[];
  readonly needed?: LookupInput['needed'];
  readonly profile?: LookupInput['profile'];
}

const NUMBER = String.raw`-?\d+(?:\.\d+)?`;

/** `2 x 300 W`, `two 300 W`, `300 W x 2`: a row that stands several times. */
const COUNTS = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const COUNT = `\\d{1,2}|${COUNTS.join('|')}`;
const BEFORE = `(?:(?<![\\d.,])(${COUNT})\\s*(?:[x×*]\\s*|\\s))?`;
const BEHIND = `(?:\\s*[x×*]\\s*(${COUNT})(?![\\d.]|\\s*[x×*]))?`;
const countIn = (text: string | undefined): number =>
  text === undefined ? 1 : COUNTS.includes(text) ? COUNTS.indexOf(text) + 1 : Number(text);

/** Every way to write a unit of the column's kind, longest first. */
const unitsOf = ({ unit }: Column): readonly UnitRow[] => {
  const [quantity] = unitNamed(unit).quantities;
  return unitTable.filter(({ quantities }) => quantities.includes(quantity!));
};
const wordsOf = (column: Column): string[] =>
  unitsOf(column)
    .flatMap(({ id, words }) => [id.toLowerCase(), ...words])
    .sort((a, b) => b.length - a.length);

/** `60 W`, and no `60 watt hours`; where a bare number will do the unit may be missing. */
const patternOf = (column: Column): string =>
  `(${NUMBER})\\s*(${wordsOf(column).map(literal).join('|')})${column.bare ? '?' : ''}(?![a-z]|[- ]hours?(?![a-z]))`;

/** The unit that the tail of a structured list names for a column, in its place: `[[0, 4.2]] L/h, m`. */
function unitsOfList(tail: string, columns: readonly Column[]): UnitRow[] {
  const named = tail.split(',').map((text) => text.trim().toLowerCase());
  return columns.map((column, i) => {
    const text = columns.length === 1 ? tail.trim().toLowerCase() : named[i];
    return (
      unitsOf(column).find(({ id, words }) => text === id.toLowerCase() || words.includes(text ?? '')) ??
      unitNamed(column.unit)
    );
  });
}

/** Rows of a structured list in SI: `[[60, 11], [120, 8]]`, or `[60, 120]` where a row is one number. */
function rowsOfList(text: string, columns: readonly Column[]): number[][] | undefined {
  const end = text.lastIndexOf(']') + 1;
  let listed: unknown;
  try {
    listed = JSON.parse(text.slice(0, end));
  } catch {
    return undefined;
  }
  if (!Array.isArray(listed)) return undefined;
  const units = unitsOfList(text.slice(end), columns);
  const rows = listed.map((row: unknown) => (Array.isArray(row) ? row : [row]));
  const whole = rows.every((row) => row.length === columns.length && row.every((x) => typeof x === 'number'));
  return whole ? rows.map((row) => row.map((x: number, i) => toSI(x, units[i]!))) : undefined;
}

/** A list of rows of numbers, `60 W 11 h, 120 W 8 h`, for sums such as `sum_i(P_i*h_i)`. */
export function rows({ row, columns, atLeast = 1, ...spec }: Spec): LookupInput {
  const gap = '[^\\d,;+\\n]{0,40}?';
  // A list of bare numbers has no place for a count: its numbers are the rows.
  const allBare = columns.every(({ bare }) => bare);
  const numbers = columns.map(patternOf).join(gap);
  const one = allBare ? numbers : `${BEFORE}${numbers}${BEHIND}`;
  // "Two 15 W pumps" are two rows.
  const several = `${BEFORE.replace(/\?$/, '')}${numbers}|${numbers}${BEHIND.replace(/\?$/, '')}`;
  const each = new RegExp(one, 'g');
  const right = `write each ${row} as ${columns.map(({ name }) => name).join(' and ')}: ${spec.example}`;

  function rowsOfText(text: string): number[][] {
    return [...text.toLowerCase().matchAll(each)].flatMap((match) => {
      const [before, ...rest] = allBare ? [undefined, ...match.slice(1)] : match.slice(1);
      const row = columns.map((column, i) => {
        const word = rest[1 + 2 * i];
        const unit = unitsOf(column).find(({ id, words }) => word === id.toLowerCase() || words.includes(word ?? ''));
        return toSI(Number(rest[2 * i]), unit ?? unitNamed(column.unit));
      });
      return Array.from({ length: countIn(before ?? rest[2 * columns.length]) }, () => row);
    });
  }

  return lookup({
    ...spec,
    symbols: Object.fromEntries(
      columns.map(({ symbol, unit }) => [`${symbol}_i`, quantityTable[unitNamed(unit).quantities[0]!].si]),
    ),
    ...(allBare
      ? {}
      : { pattern: new RegExp(`${one}(?:[^\\d]{1,40}${one}){${atLeast - 1},}${atLeast > 1 ? `|${several}` : ''}`) }),
    read(text) {
      const found = /^\s*\[/.test(text) ? rowsOfList(text, columns) : rowsOfText(text);
      if (!found || found.length === 0) return `“${text}” holds no ${row} I can read: ${right}.`;
      if (found.length > MOST_TERMS) return `I take up to ${MOST_TERMS} rows, and that is ${found.length}.`;
      for (const [i, column] of columns.entries()) {
        const unit = unitNamed(column.unit);
        const [low, high] = column.range;
        const outside = found
          .map((values) => fromSI(values[i]!, unit))
          .find((value) => value < low - 1e-9 || value > high + 1e-9);
        if (outside !== undefined)
          return `The ${column.name} of ${withArticle(row)} can be ${low} to ${high} ${unit.shown}, and ${Number(outside.toPrecision(6))} is outside: ${right}.`;
      }
      return {
        reading: found
          .map((values) =>
            values
              .map((si, i) =>
                `${Number(fromSI(si, unitNamed(columns[i]!.unit)).toPrecision(6))} ${unitNamed(columns[i]!.unit).shown}`.trim(),
              )
              .join(', '),
          )
          .join('; '),
        symbols: Object.fromEntries(
          found.flatMap((values, k) =>
            values.map((si, i) => [
              `${columns[i]!.symbol}_${k + 1}`,
              { si, name: `${columns[i]!.name} ${k + 1}`, said: true },
            ]),
          ),
        ),
      };
    },
  });
}
