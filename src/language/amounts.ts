import { type UnitRow, unitNamed } from '../core/quantity/units.js';
import { colonAt, compoundAt, isDivisible, type Measured, shareMore } from './compounds.js';
import { at, isDigit, type NumberFound, type OtherValue } from './number-parts.js';
import { numberAt } from './number-words.js';
import { isOf, type UnitFound, unitAfter, unitAt } from './unit-words.js';

/** A number with the units it may carry, at one place of a folded text. */
export interface Amount {
  readonly start: number;
  readonly end: number;
  readonly value: number;
  readonly units: readonly UnitRow[];
  /** A number in words without a unit: a count or a share, never a size. */
  readonly word?: boolean;
  readonly other?: OtherValue;
  readonly corrected?: string;
}

export const measures = ({ units }: Pick<Amount, 'units'>, ...names: readonly string[]): boolean =>
  units.some((row) => isOf(row, ...names));

const BEGINS = /[a-z\d.$€£+-]/;
const WORD = /[a-z\d_.]/;

/** `pH8.3`: names that people write without a blank. */
const GLUED = /(?:^|[^a-z])(?:ph|sg|alk|kh|temp|sal)$/;

/** A place where a word or a number begins. */
export const beginsAmount = (text: string, index: number): boolean =>
  BEGINS.test(text[index]!) &&
  (index === 0 ||
    !WORD.test(text[index - 1]!) ||
    (isDigit(text[index]) && GLUED.test(text.slice(Math.max(0, index - 6), index))));

/** `no3`, `h2o`, `5th`: digits that measure nothing. */
export const isPartOfWord = (text: string, { units, end }: Amount): boolean =>
  units.length === 0 &&
  /[a-z]/.test(text[end] ?? '') &&
  /\d/.test(text[end - 1] ?? '') &&
  !/^x\s*\d/.test(text.slice(end, end + 4));

const MONEY = /(?:us|au|ca|nz)?[$€£]\s*(?=[\d.])/y;
const SIGN = /[-+](?=[\d.])|(?:minus|negative)\s+/y;

/** A number with its unit that begins exactly at `start`: `1-1/2"`, `$3.50`, "minus two degrees", "an hour and a half". */
export function amountAt(text: string, start: number): Amount | undefined {
  if (isDigit(text[start])) return numberWithUnit(text, start, start);
  if (at(MONEY, text, start)) return priceAt(text, start, MONEY.lastIndex);
  if (at(SIGN, text, start)) return isBetween(text, start) ? undefined : numberWithUnit(text, start, SIGN.lastIndex);
  return numberWithUnit(text, start, start) ?? articleAt(text, start);
}

/** The dash of `10-12` is no minus. */
const isBetween = (text: string, start: number): boolean =>
  /[\d"']\s*$/.test(text.slice(Math.max(0, start - 2), start));

/** @param first where the number begins behind its sign */
function numberWithUnit(text: string, start: number, first: number): Amount | undefined {
  const number = spacedAt(text, first) ?? numberAt(text, first);
  if (!number) return undefined;
  const { value, units, end, corrected, word, other } = withUnit(text, first, loosened(text, number));
  // "Minus 25 kg of rock" takes rock away.
  if (text[start]! >= 'a' && first > start && !units.every((row) => isOf(row, ...SIGNED))) return undefined;
  const sign = first > start && text[start] !== '+' ? -1 : 1;
  return {
    start,
    end,
    value: sign * value,
    units,
    ...(other ? { other } : {}),
    ...(corrected === undefined ? {} : { corrected }),
    ...(word && units.length === 0 ? { word } : {}),
  };
}

/** What is below nought in words. */
const SIGNED = ['temperature', 'temperature difference', 'angle'];

const SPACED = /[1-9]\d{0,2}(?: \d{3}){1,4}(?![\d.,]| \d)/y;
/** Behind these a number begins: not so in "alk 8 400 l". */
const LEADS =
  /(?:^|[(,;:=~]|\b(?:is|are|of|at|an?|about|around|with|holds?|my|the|to|for|only|need|have|has|runs?))\s*$/;

/** `53 000`, `1 200 l`: thousands set off by a blank; but for noughts only of water, since `2 300 w` are two of 300 W. */
function spacedAt(text: string, start: number): NumberFound | undefined {
  const digits = at(SPACED, text, start)?.[0];
  if (digits === undefined) return undefined;
  const end = SPACED.lastIndex;
  const ofWater = () => unitAfter(text, end)?.units.some((row) => isOf(row, 'volume', 'flow'));
  const led = () => LEADS.test(text.slice(Math.max(0, start - 12), start));
  return digits.endsWith(' 000') || (led() && ofWater())
    ? { value: Number(digits.replaceAll(' ', '')), end }
    : undefined;
}

const LOOSE = /\+(?!\d)|-?ish(?![a-z])/y;

/** `90+`, `4ish`: the sign belongs to the number. */
const loosened = (text: string, number: NumberFound): NumberFound =>
  at(LOOSE, text, number.end) ? { ...number, end: LOOSE.lastIndex } : number;

function withUnit(text: string, start: number, number: NumberFound): Measured {
  if (text[number.end] === ':') return colonAt(text, start) ?? { ...number, units: [] };
  const next = unitAfter(text, number.end);
  const compound = next && compoundAt(text, number, next);
  if (compound) return compound;
  const unit = next ?? ofAUnit(text, number) ?? risesInTime(text, number);
  if (!unit) return { ...number, units: [] };
  const share = shareMore(text, unit);
  return share ? { ...unit, value: number.value + share.value, end: share.end } : { ...number, ...unit };
}

/** `$3.50`, `£0.28 per kWh` */
function priceAt(text: string, start: number, digits: number): Amount | undefined {
  const number = numberAt(text, digits);
  if (!number) return undefined;
  const per = unitAfter(text, number.end);
  const prices = per?.units.filter(({ quantities }) => quantities.some((name) => name.includes('price'))) ?? [];
  const { value, other } = number;
  return {
    start,
    value,
    ...(other ? { other } : {}),
    ...(per && prices.length > 0
      ? { units: prices, end: per.end }
      : { units: [unitNamed('currency')], end: number.end }),
  };
}

const OF_A = /\s+(?:of\s+)?an?\s+/y;

/** `1/2 an inch`, `3/4 of an hour` */
const ofAUnit = (text: string, { value, end }: NumberFound): UnitFound | undefined =>
  value < 1 && at(OF_A, text, end) ? unitAt(text, OF_A.lastIndex) : undefined;

const RISES =
  /\b(?:nitrate|no3|phosphate|po4)\b.*\b(?:ris(?:es|ing)|climb(?:s|ing)|goes up|creeps up|rise of)(?: by)?(?: about)? $/;
const IN_TIME = /\s*(?:\/|an?\s|per\s|each\s|every\s)\s*(day|week)(?![a-z])/y;
/** How far back the reading is named that rises. */
const NAMED_WITHIN = 120;

/** "Nitrate …, rises 2 a week": a rate of the reading that is spoken of. */
function risesInTime(text: string, { end, word }: NumberFound): UnitFound | undefined {
  const time = word ? undefined : at(IN_TIME, text, end)?.[1];
  const before = text.slice(Math.max(0, end - NAMED_WITHIN), end).replace(/[\d.]+$/, '');
  return time && RISES.test(before) ? { units: [unitNamed(`mg/L/${time}`)], end: IN_TIME.lastIndex } : undefined;
}

const ONE = /an?\s+(?=[a-z]{3})/y;
/** "After a week", "to 0 in a day", "is an inch": behind these a unit with an article is measured by it. */
const TELLS =
  /(?:^|[(,;:=]|\b(?:after|for|about|around|only|just|is|was|takes?|took|lasts?|lasted|wait|waits|nearly|almost|leave|keep)|\d\S*(?: \S{1,5})? in)\s*$/;
/** "Lose a gallon", but what it loses "a day" is asked. */
const TELLS_SIZE = /\b(?:in|within|by|over|under|than|lose|loses|lost|adds?|added|uses?|used)\s*$/;
const BEHIND_SIZE =
  /^\s+(?:below|above|under|over|from|deep|long|high|wide|tall|thick|short|of (?:water|sand|head|freeboard|room))(?![a-z])/;
/** Things that bear the name of a unit. */
const THINGS: ReadonlySet<string> = new Set(['meter', 'meters', 'stone', 'second', 'cup', 'mil', 'yard']);
const UNIT_AND_SHARE = /[a-z]{4,}(?=\s+(?:and|&)\s+)/y;

/** "An inch", "a week", "an hour and a half", "inch and a half": one of it. */
function articleAt(text: string, start: number): Amount | undefined {
  const article = at(ONE, text, start) !== undefined;
  const name = article ? ONE.lastIndex : start;
  if (!article && !at(UNIT_AND_SHARE, text, start)) return undefined;
  const unit = unitAt(text, name);
  if (!unit || unit.corrected !== undefined || !isDivisible(unit.units)) return undefined;
  const { end, value, units } = withUnit(text, name, { value: 1, end: name });
  if (end > unit.end) return { start, end, value, units };
  if (!article || THINGS.has(text.slice(name, unit.end))) return undefined;
  const ahead = text.slice(Math.max(0, start - 16), start);
  const isTime = unit.units.some((row) => isOf(row, 'time'));
  const told =
    TELLS.test(ahead) || (!isTime && (TELLS_SIZE.test(ahead) || BEHIND_SIZE.test(text.slice(unit.end, unit.end + 16))));
  return told ? { start, end, value, units } : undefined;
}
