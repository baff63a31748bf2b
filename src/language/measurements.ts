import { type UnitRow, unitNamed } from '../core/quantity/units.js';
import { type NumberFound, numberAt } from './number-words.js';
import { type UnitFound, unitAt } from './unit-words.js';

/** A number seen in a text, with the units it may carry. Without units it is a bare number. */
export interface Mention {
  /** Stretch of the folded text. */
  readonly start: number;
  readonly end: number;
  readonly value: number;
  readonly units: readonly UnitRow[];
  /** The ends of a range that was said, in the same units. */
  readonly low?: number;
  readonly high?: number;
  /** "about": the value is kept, the reply says so. */
  readonly about?: boolean;
  /** 2 of `2x300w`. */
  readonly count?: number;
  /** Place in joined sizes, `72x18x21`. */
  readonly group?: { readonly id: number; readonly index: number; readonly size: number };
  /** A number in words without a unit: a count or a share, never a size. */
  readonly word?: boolean;
  /** Another way to read the digits: `1.200` as 1200. */
  readonly other?: number;
  readonly corrected?: string;
  /** "5 degrees colder": a difference, never a temperature. */
  readonly difference?: boolean;
}

/** More than this in one message is a table, not a question. */
export const MOST_MENTIONS = 60;

const ABOUT = /(?:about|around|approx(?:imately)?|roughly|circa|ca\.?|~|nearly|almost|maybe|like)\s*$/;
const RANGE_SIGN = /\s*(?:-|to|\.\.)\s*/y;
const BY = /\s*(?:x|by|\*)\s*(?=[\d.])/y;
const SPACE = / */y;
const COUNT_BEFORE = /\s*(?:x|\*|of)\s*(?=\d)/y;
const COUNT_AFTER = /\s*(?:x|\*)\s*(\d{1,2})(?![\d.a-z])/y;
const COLDER =
  /^\s*(?:colder|cooler|warmer|hotter|lower|higher|difference|swing|drop|rise|above|below|over|under|less|more)(?![a-z])/;
const JOINT = /\s*(?:and)?\s*/y;
/** So many small parts would be another big one: 12 in are never said behind feet. */
const PARTS_OF = { in: 12, oz: 16 } as const;
const SIGN = /^[-+]$/;
const SPREAD_OF_ABOUT = 0.1;

const skip = (pattern: RegExp, text: string, start: number): number | undefined => {
  pattern.lastIndex = start;
  return pattern.exec(text) ? pattern.lastIndex : undefined;
};
const startsWord = (text: string, index: number): boolean => index === 0 || !/[a-z0-9_.]/.test(text[index - 1]!);

interface Part {
  value: number;
  units: readonly UnitRow[];
  start: number;
  end: number;
  corrected?: string;
  other?: number;
  word?: boolean;
}

/** Every measurement and bare number of a folded text, in order. */
export function measurementsIn(text: string): Mention[] {
  const found: Mention[] = [];
  let groupId = 0;
  let index = 0;
  while (index < text.length && found.length < MOST_MENTIONS) {
    const price = moneyAt(text, index);
    if (price) {
      found.push(price);
      index = price.end;
      continue;
    }
    const first = startsWord(text, index) ? partAt(text, index) : undefined;
    if (!first || isPartOfWord(text, first)) {
      index += 1;
      continue;
    }
    const sizes = sizesFrom(text, first);
    if (sizes) {
      groupId += 1;
      sizes.forEach((part, i) => {
        found.push({ ...part, group: { id: groupId, index: i, size: sizes.length } });
      });
      index = sizes[sizes.length - 1]!.end;
      continue;
    }
    const several = temperaturePair(text, first) ?? fromTo(text, first) ?? [qualified(text, first)];
    found.push(...several);
    index = several[several.length - 1]!.end;
  }
  return found;
}

/** `no3`, `h2o`, `two 90s`: digits that measure nothing. */
function isPartOfWord(text: string, part: Part): boolean {
  if (/^(?:45|90)'?s(?![a-z])/.test(text.slice(part.start, part.start + 5))) return true;
  return (
    part.units.length === 0 &&
    /[a-z]/.test(text[part.end] ?? '') &&
    /\d/.test(text[part.end - 1] ?? '') &&
    !/^x\s*\d/.test(text.slice(part.end, part.end + 4))
  );
}

function partAt(text: string, start: number): Part | undefined {
  const signed =
    SIGN.test(text[start] ?? '') &&
    /[\d.]/.test(text[start + 1] ?? '') &&
    !/[\d"']\s*$/.test(text.slice(Math.max(0, start - 2), start));
  const number = numberAt(text, signed ? start + 1 : start);
  if (!number) return undefined;
  const value = signed && text[start] === '-' ? -number.value : number.value;
  const compound = compoundAt(text, number, value);
  if (compound) return { ...compound, start };
  const unit = unitAfter(text, number) ?? risesInTime(text, number);
  const other = number.other === undefined ? {} : { other: number.other };
  if (!unit) return { value, units: [], start, end: number.end, ...other, ...(number.word ? { word: true } : {}) };
  return {
    value,
    units: unit.units,
    start,
    end: unit.end,
    ...other,
    ...(unit.corrected ? { corrected: unit.corrected } : {}),
  };
}

function unitAfter(text: string, number: NumberFound) {
  const hyphen = text[number.end] === '-' && /[a-z]/.test(text[number.end + 1] ?? '') ? number.end + 1 : undefined;
  const spaced = hyphen ?? skip(SPACE, text, number.end) ?? number.end;
  return unitAt(text, spaced);
}

const RISES =
  /\b(?:nitrate|no3|phosphate|po4)\b.*\b(?:ris(?:es|ing)|climb(?:s|ing)|goes up|creeps up|rise of)(?: by)?(?: about)? $/;
const IN_TIME = /\s*(?:\/|an?\s|per\s|each\s|every\s)\s*(day|week)(?![a-z])/y;

/** "Nitrate …, rises 2 a week": a rate of the reading that is spoken of. */
function risesInTime(text: string, { end, word }: NumberFound): UnitFound | undefined {
  IN_TIME.lastIndex = end;
  const time = word ? undefined : IN_TIME.exec(text)?.[1];
  if (!time || !RISES.test(text.slice(0, end).replace(/[\d.]+$/, ''))) return undefined;
  return { units: [unitNamed(`mg/L/${time}`)], end: IN_TIME.lastIndex };
}

/** `5'6"`, `6 ft 2 in`, `5' 10 1/2"`, `1m80`, `12 lb 4 oz`: two parts that make one measurement. */
function compoundAt(text: string, number: NumberFound, value: number): Omit<Part, 'start'> | undefined {
  const unit = unitAfter(text, number);
  if (!unit) return undefined;
  const ids = unit.units.map(({ id }) => id);
  if (ids.includes('m') && text[unit.end - 1] === 'm') {
    const centimetres = text.slice(unit.end, unit.end + 4).match(/^(\d{2})(?![\d.a-z])/);
    if (centimetres) return { value: value + Number(centimetres[1]) / 100, units: [unitNamed('m')], end: unit.end + 2 };
  }
  const pair = ids.includes('ft') ? (['ft', 'in'] as const) : ids.includes('lb') ? (['lb', 'oz'] as const) : undefined;
  if (!pair) return undefined;
  const second = numberAt(text, skip(JOINT, text, unit.end) ?? unit.end);
  if (!second || second.word || second.value >= PARTS_OF[pair[1]]) return undefined;
  const secondUnit = unitAfter(text, second);
  const same = secondUnit?.units.some(({ id }) => id === pair[1]);
  const bare = !secondUnit && pair[0] === 'ft' && text[unit.end - 1] === "'";
  if (!same && !bare) return undefined;
  const [big, small] = [unitNamed(pair[0]), unitNamed(pair[1])];
  return {
    value: value + (second.value * small.factor) / big.factor,
    units: [big],
    end: same ? secondUnit!.end : second.end,
  };
}

/** Two or three sizes joined by x or by; a missing unit takes the one that follows. */
function sizesFrom(text: string, first: Part): Part[] | undefined {
  const parts = [first];
  for (let last = first; parts.length < 3; ) {
    const next = skip(BY, text, last.end);
    const part = next === undefined ? undefined : partAt(text, next);
    if (!part) break;
    parts.push(part);
    last = part;
  }
  if (parts.length < 2 || isCountOfWatts(parts)) return undefined;
  const isLength = (part: Part) =>
    part.units.length === 0 || part.units.some(({ quantities }) => quantities.includes('length'));
  if (!parts.every(isLength)) return undefined;
  for (let i = parts.length - 2; i >= 0; i -= 1)
    if (parts[i]!.units.length === 0) parts[i]!.units = parts[i + 1]!.units;
  for (let i = 1; i < parts.length; i += 1) if (parts[i]!.units.length === 0) parts[i]!.units = parts[i - 1]!.units;
  return parts;
}

/** `60/60 F`, `20/4`: the two temperatures of a hydrometer's scale. */
function temperaturePair(text: string, first: Part): Mention[] | undefined {
  if (first.units.length > 0) return undefined;
  const slash = skip(/\s*\/\s*(?=\d)/y, text, first.end);
  const second = slash === undefined ? undefined : partAt(text, slash);
  if (!second) return undefined;
  const scale = second.units.length > 0 ? second.units : [unitNamed(first.value > 40 ? 'degF' : 'degC')];
  if (!scale.some(({ quantities }) => quantities.includes('temperature'))) return undefined;
  return [
    { ...first, units: scale },
    { ...second, units: scale },
  ];
}

const FROM = /\bfrom\s+(?:about\s+|around\s+)?$/;

/** "from 32 to 35 ppt": two values, a start and a target, where "32 to 35 ppt" alone is a range. */
function fromTo(text: string, first: Part): Mention[] | undefined {
  if (!FROM.test(text.slice(Math.max(0, first.start - 14), first.start))) return undefined;
  const to = skip(/\s+to\s+(?:about\s+|around\s+)?/y, text, first.end);
  const second = to === undefined ? undefined : partAt(text, to);
  if (!second || !sharesUnit(first, second)) return undefined;
  const units = (part: Part, other: Part) => (part.units.length > 0 ? part.units : other.units);
  return [
    { ...first, units: units(first, second) },
    { ...second, units: units(second, first) },
  ];
}

/** "1.023 to 1.026", "32 to 35 ppt": where it is and where it should be, never a range to be averaged. */
const isSaltiness = ({ value, units }: Part): boolean =>
  units.length === 0
    ? value >= 0.99 && value <= 1.05
    : units.some(({ quantities }) => quantities.includes('salinity') || quantities.includes('specific gravity'));

/** "2x300": so many of so many watts, no length and width. */
const isCountOfWatts = ([count, watts, third]: readonly Part[]): boolean =>
  third === undefined &&
  count!.units.length === 0 &&
  watts!.units.length === 0 &&
  Number.isInteger(count!.value) &&
  count!.value <= 8 &&
  watts!.value >= 50 &&
  watts!.value <= 1000;

function qualified(text: string, first: Part): Mention {
  const about = ABOUT.test(text.slice(Math.max(0, first.start - 16), first.start));
  const counted = countBefore(text, first);
  if (counted) return counted;
  const afterRange = isSaltiness(first) ? undefined : skip(RANGE_SIGN, text, first.end);
  const second = afterRange === undefined || text[afterRange] === '-' ? undefined : partAt(text, afterRange);
  if (second && second.value > first.value && sharesUnit(first, second) && !isPartOfWord(text, second)) {
    const units = second.units.length > 0 ? second.units : first.units;
    if (units.length > 0)
      return {
        ...second,
        units,
        start: first.start,
        value: (first.value + second.value) / 2,
        low: first.value,
        high: second.value,
      };
  }
  COUNT_AFTER.lastIndex = first.end;
  const after = first.units.length > 0 ? COUNT_AFTER.exec(text) : null;
  if (after) return { ...first, end: COUNT_AFTER.lastIndex, count: Number(after[1]) };
  const difference =
    COLDER.test(text.slice(first.end, first.end + 14)) &&
    first.units.some(({ quantities }) => quantities.includes('temperature') || quantities.includes('angle'));
  const spread =
    about && first.units.length > 0
      ? { about, low: first.value * (1 - SPREAD_OF_ABOUT), high: first.value * (1 + SPREAD_OF_ABOUT) }
      : about
        ? { about }
        : {};
  const temperature = first.units.some(({ quantities }) => quantities.includes('temperature'));
  return { ...first, ...(temperature && about ? { about } : spread), ...(difference ? { difference } : {}) };
}

const sharesUnit = (a: Part, b: Part): boolean =>
  a.units.length === 0 || b.units.length === 0 || a.units.some((unit) => b.units.includes(unit));

/** `2x300w`, `two 300 W heaters`: a count of equal things. */
function countBefore(text: string, first: Part): Mention | undefined {
  if (first.units.length > 0 || !Number.isInteger(first.value) || first.value < 1 || first.value > 24) return undefined;
  const joined = skip(COUNT_BEFORE, text, first.end) ?? skip(/ +(?=\d)/y, text, first.end);
  const second = joined === undefined ? undefined : partAt(text, joined);
  if (second && /x|\*/.test(text.slice(first.end, second.start)) && isCountOfWatts([first, second])) {
    return { ...second, start: first.start, count: first.value, units: [unitNamed('W')] };
  }
  if (!second?.units.some(({ quantities }) => quantities.includes('power'))) return undefined;
  return { ...second, start: first.start, count: first.value };
}

const MONEY = /(?:[$€£]\s*(\d+(?:[.,]\d+)?)|(\d+(?:[.,]\d+)?)\s*(?:[$€£]|dollars?|euros?|usd|eur|gbp)(?![a-z]))\s*/y;

function moneyAt(text: string, start: number): Mention | undefined {
  MONEY.lastIndex = start;
  const match = startsWord(text, start) || /[$€£]/.test(text[start] ?? '') ? MONEY.exec(text) : null;
  if (!match) return undefined;
  const value = Number((match[1] ?? match[2]!).replace(',', '.'));
  const end = MONEY.lastIndex;
  const per = unitAt(text, end);
  const prices = per?.units.filter(({ quantities }) => quantities.some((name) => name.includes('price'))) ?? [];
  return per && prices.length > 0
    ? { start, end: per.end, value, units: prices }
    : { start, end: start + match[0].trimEnd().length, value, units: [unitNamed('currency')] };
}
