import { andShareAt, at, isDigit, type NumberFound, timesAt } from './number-parts.js';

type Value = Pick<NumberFound, 'value' | 'other'>;

/** One way to write a number in digits, and what it means; undefined where it only looks like it. */
interface Shape {
  /** What may stand behind its first digits; without it anything. */
  readonly behind?: string;
  readonly pattern: RegExp;
  readonly value: (match: RegExpExecArray) => Value | undefined;
}

/** What an inch, a cup or an hour is cut into: 5/30 and 24/7 are no fractions. */
const PARTS: ReadonlySet<number> = new Set([2, 3, 4, 5, 6, 8, 10, 12, 16, 32, 64, 100]);
const fraction = (top: string, bottom: string): number | undefined =>
  Number(top) < Number(bottom) && PARTS.has(Number(bottom)) ? Number(top) / Number(bottom) : undefined;

const plain = (text: string): number => Number(text.replace(/[,' ]/g, ''));
const continental = (text: string): number => Number(text.replace(/\./g, '').replace(',', '.'));

/** More digits than this are nobody's measurement, and no longer exact. */
const MOST_DIGITS = 15;
const EXPONENT = '(?:e[+-]?\\d{1,2}(?!\\d))?';

/** In order: the first that fits counts. */
const SHAPES: readonly Shape[] = [
  {
    // `1-1/4`, `47 1/4`, `2 and 3/4`
    behind: ' -',
    pattern: /(\d{1,4})(?:\s*-\s*|\s+(?:(?:and|&)\s+)?)(\d{1,2})\s?\/\s?(\d{1,3})(?![\d/])/y,
    value: ([, whole, top, bottom]) => {
      const part = fraction(top!, bottom!);
      return part === undefined ? undefined : { value: Number(whole) + part };
    },
  },
  {
    behind: ' /',
    pattern: /(\d{1,2})\s?\/\s?(\d{1,3})(?![\d/])/y,
    value: ([, top, bottom]) => {
      const value = fraction(top!, bottom!);
      return value === undefined ? undefined : { value };
    },
  },
  // `1.200,5`, `1.200.000`
  {
    behind: '.',
    pattern: /[1-9]\d{0,2}(?:(?:\.\d{3})+,\d{1,6}|(?:\.\d{3}){2,4})(?!\d|[.,]\d)/y,
    value: ([text]) => ({ value: continental(text) }),
  },
  // `1,5`, `0,125`
  {
    behind: ',',
    pattern: /(?<!\d,)(?:\d{1,15},(?:\d{1,2}|\d{4,6})|0,\d{1,6})(?!\d|,\d)/y,
    value: ([text]) => ({ value: continental(text) }),
  },
  // `1'200`
  { behind: "'", pattern: /[1-9]\d{0,2}(?:'\d{3}){1,4}(?!\d|'\d)/y, value: ([text]) => ({ value: plain(text) }) },
  // `1,200`
  {
    behind: ',',
    pattern: /[1-9]\d{0,2}(?:,\d{3}){1,4}(?:\.\d+)?(?!\d|,\d)/y,
    value: ([text]) => {
      const other = /^\d+,\d+$/.test(text) ? { other: { value: continental(text), asLikely: false } } : {};
      return { value: plain(text), ...other };
    },
  },
  {
    pattern: new RegExp(`(?:\\d{1,${MOST_DIGITS}}(?!\\d)(?:\\.\\d+)?|\\.\\d+)${EXPONENT}`, 'y'),
    value: ([text]) => {
      const other = /^[1-9]\d{0,2}\.\d{3}$/.test(text) ? { other: { value: continental(text), asLikely: true } } : {};
      return { value: Number(text), ...other };
    },
  },
];

/** `1k`; behind four digits the k is of kelvins. */
const THOUSAND = /k(?![a-z])|k(?=(?:lph|gph|l\/h)(?![a-z]))/y;

/** A number in digits that begins exactly at `start`. */
export function digitsAt(text: string, start: number): NumberFound | undefined {
  let end = start;
  while (isDigit(text[end])) end += 1;
  const next = text[end] ?? '';
  for (const { behind, pattern, value } of SHAPES) {
    const match = behind === undefined || (next !== '' && behind.includes(next)) ? at(pattern, text, start) : undefined;
    const read = match && value(match);
    if (read) return multiplied(text, { ...read, end: start + match[0].length });
  }
  return undefined;
}

/** "2 and a half", "1.5 million", `2k`. */
function multiplied(text: string, number: NumberFound): NumberFound {
  const share = andShareAt(text, number.end);
  if (share) return { value: number.value + share.value, end: share.end };
  if (number.value < 1000 && at(THOUSAND, text, number.end)) return { value: number.value * 1000, end: number.end + 1 };
  const times = timesAt(text, number.end);
  return times ? { value: number.value * times.value, end: times.end } : number;
}
