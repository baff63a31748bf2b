/** A number as people write it, found at one place of a text. */
export interface NumberFound {
  readonly value: number;
  readonly end: number;
  /** Written in words; such a number is not followed by a unit letter without a space. */
  readonly word?: boolean;
  /** `1.200` or `1,5`: the other way to read it. */
  readonly other?: number;
}

const WORDS: Record<string, number> = {
  zero: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
  'a dozen': 12,
  'half a dozen': 6,
  'a hundred': 100,
  'a couple of': 2,
  'a couple': 2,
  'a pair of': 2,
  'one hundred': 100,
  'two hundred': 200,
  'three hundred': 300,
  'four hundred': 400,
  'five hundred': 500,
  'six hundred': 600,
  'seven hundred': 700,
  'eight hundred': 800,
  'nine hundred': 900,
  'a thousand': 1000,
  'one thousand': 1000,
  'two thousand': 2000,
  'three thousand': 3000,
};
const SHARES: Record<string, number> = { half: 0.5, quarter: 0.25, third: 1 / 3, eighth: 0.125 };

const TENS = 'twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety';
const UNITS = 'one|two|three|four|five|six|seven|eight|nine';
const WORD = new RegExp(
  `(?:(${TENS})[- ](${UNITS})|${Object.keys(WORDS)
    .sort((a, b) => b.length - a.length)
    .join('|')})(?![a-z])`,
  'y',
);
/** What follows a round hundred: "two hundred and fifty", "four hundred twenty five". */
const AND_REST = new RegExp(
  `\\s+(?:and\\s+)?(?:(${TENS})[- ](${UNITS})|(${TENS}|${UNITS}|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen))(?![a-z])`,
  'y',
);
const AND_SHARE = /\s+and\s+(?:a\s+|one\s+)?(half|quarter|third)(?![a-z])/y;
/** "third" alone is the third of something: a share needs its count, but for halves and quarters. */
const SHARE_WORD =
  /(?:(one|two|three|five|seven|a)[- ](third|eighth|quarter|half)|(half|quarter))s?(?:\s+(?:of\s+)?an?(?=\s))?(?![a-z])/y;
const MIXED = /(\d+)(?:\s*-\s*|\s+)(\d+)\s?\/\s?(\d+)(?![\d/])/y;
const FRACTION = /(\d+)\s?\/\s?(\d+)(?![\d/])/y;
const DIGITS = /(\d{1,3}(?:,\d{3})+|\d+)(\.\d+)?(?:e[+-]?\d+)?|\.\d+/y;
const DECIMAL_COMMA = /\d+,\d{1,2}(?![\d,])/y;
const AND_HALF = /\s+and\s+(?:a\s+)?(half|quarter)(?![a-z])/y;
const THOUSAND = /k(?![a-z])|k(?=(?:lph|gph|l\/h)(?![a-z]))/y;

const at = (pattern: RegExp, text: string, start: number): RegExpExecArray | null => {
  pattern.lastIndex = start;
  return pattern.exec(text);
};

/** Reads a number that begins exactly at `start` of a folded text: digits, mixed fractions, words. */
export function numberAt(text: string, start: number): NumberFound | undefined {
  const code = text.charCodeAt(start);
  const digit = (code >= 48 && code <= 57) || (code === 46 && /\d/.test(text[start + 1] ?? ''));
  return digit ? digitsAt(text, start) : code >= 97 && code <= 122 ? wordsAt(text, start) : undefined;
}

function digitsAt(text: string, start: number): NumberFound | undefined {
  const mixed = at(MIXED, text, start);
  if (mixed && Number(mixed[3]) > 0 && Number(mixed[2]) < Number(mixed[3]) && Number(mixed[3]) <= 64) {
    return { value: Number(mixed[1]) + Number(mixed[2]) / Number(mixed[3]), end: MIXED.lastIndex };
  }
  const fraction = at(FRACTION, text, start);
  if (fraction && Number(fraction[1]) < Number(fraction[2]) && Number(fraction[2]) <= 64)
    return { value: Number(fraction[1]) / Number(fraction[2]), end: FRACTION.lastIndex };
  const comma = at(DECIMAL_COMMA, text, start);
  if (comma) return { value: Number(comma[0].replace(',', '.')), end: DECIMAL_COMMA.lastIndex };
  const digits = at(DIGITS, text, start);
  if (!digits) return undefined;
  let end = DIGITS.lastIndex;
  let value = Number(digits[0].replace(/,/g, ''));
  const half = at(AND_HALF, text, end);
  if (half) {
    value += SHARES[half[1]!]!;
    end = AND_HALF.lastIndex;
  }
  if (at(THOUSAND, text, end)) return { value: value * 1000, end: end + 1 };
  const grouped = /^[1-9]\d{0,2}\.\d{3}$/.test(digits[0]) ? { other: value * 1000 } : {};
  return { value, end, ...grouped };
}

function wordsAt(text: string, start: number): NumberFound | undefined {
  if (start > 0 && /[a-z0-9]/.test(text[start - 1]!)) return undefined;
  const share = at(SHARE_WORD, text, start);
  if (share && !text.startsWith('half a dozen', start)) {
    const count = share[1] === undefined || share[1] === 'a' ? 1 : WORDS[share[1]]!;
    return { value: count * SHARES[(share[2] ?? share[3])!]!, end: SHARE_WORD.lastIndex, word: true };
  }
  const word = at(WORD, text, start);
  if (!word) return undefined;
  let end = WORD.lastIndex;
  let value = word[1] === undefined ? WORDS[word[0]]! : WORDS[word[1]]! + WORDS[word[2]!]!;
  const hundred = value >= 100 ? at(AND_REST, text, end) : null;
  if (hundred) {
    value += hundred[1] === undefined ? WORDS[hundred[3]!]! : WORDS[hundred[1]]! + WORDS[hundred[2]!]!;
    end = AND_REST.lastIndex;
  }
  const and = at(AND_SHARE, text, end);
  if (and) {
    value += SHARES[and[1]!]!;
    end = AND_SHARE.lastIndex;
  }
  return { value, end, word: true };
}
