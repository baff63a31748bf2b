import { digitsAt } from './number-digits.js';
import { andShareAt, at, isDigit, type NumberFound, SCALES, SMALL, shareAt, timesAt } from './number-parts.js';

/** Reads a number that begins exactly at `start` of a folded text: digits, mixed fractions, words. */
export function numberAt(text: string, start: number): NumberFound | undefined {
  const [first, second] = [text[start], text[start + 1]];
  if (isDigit(first) || (first === '.' && isDigit(second))) return digitsAt(text, start);
  return at(NUMBER_WORD, text, start) ? wordsAt(text, start) : undefined;
}

/** What a number in words may begin with. */
const NUMBER_WORD = new RegExp(
  `(?<![a-z\\d])(?:an?|couple|pair|half|quarter|dozen|${[...Object.keys(SMALL), ...Object.keys(SCALES)].join('|')})(?![a-z])`,
  'y',
);

/** "Half an hour", "quarter of an inch": the article belongs to the share. */
const OF_A = /\s+(?:of\s+)?an?(?=\s)/y;
/** Numbers of their own that begin with an article or a count of nothing. */
const PAIR = /(?:a\s+)?(?:couple|pair)\s+of(?![a-z])|a\s+couple(?![a-z])/y;

function wordsAt(text: string, start: number): NumberFound | undefined {
  if (at(PAIR, text, start)) return { value: 2, end: PAIR.lastIndex, word: true };
  const share = shareAt(text, start);
  if (share) {
    const end = at(OF_A, text, share.end) ? OF_A.lastIndex : share.end;
    const times = timesAt(text, end);
    return times ? { value: share.value * times.value, end: times.end, word: true } : { ...share, end, word: true };
  }
  const cardinal = cardinalAt(text, start);
  if (!cardinal) return undefined;
  const more = andShareAt(text, cardinal.end) ?? decimalsAt(text, cardinal.end);
  if (more) return { value: cardinal.value + more.value, end: more.end, word: true };
  const times = timesAt(text, cardinal.end);
  return times ? { value: cardinal.value * times.value, end: times.end, word: true } : { ...cardinal, word: true };
}

const WORD = /[a-z]+/y;
const ARTICLE = /an?\s+(?=hundred|thousand|million|billion|dozen)/y;
/** Between the words of one number; "and" and a comma stand only behind hundreds and thousands. */
const JOINT = /[ -]+/y;
const LOOSE_JOINT = /,? +and +|, +|[ -]+/y;

/** "Two thousand three hundred and twenty-five". */
function cardinalAt(text: string, start: number): NumberFound | undefined {
  let next = at(ARTICLE, text, start) ? ARTICLE.lastIndex : start;
  let [total, group, last] = [0, 0, Number.POSITIVE_INFINITY];
  let end: number | undefined;
  for (;;) {
    const word = at(WORD, text, next)?.[0] ?? '';
    const small = SMALL[word];
    const scale = end === undefined ? SCALES[word] : (SCALES[word] ?? SCALES[word.replace(/s$/, '')]);
    if (small !== undefined) {
      if (end !== undefined && !fitsBehind(group, small)) break;
      group += small;
    } else if (scale === 100 && group < 100) group = (group || 1) * 100;
    else if (word === 'dozen' && end === undefined) group = 12;
    else if (scale !== undefined && scale > 100 && scale < last && (group > 0 || end === undefined)) {
      total += (group || 1) * scale;
      [group, last] = [0, scale];
    } else break;
    end = WORD.lastIndex;
    if (small === 0 || andShareAt(text, end)) break;
    const joint = group % 100 === 0 ? LOOSE_JOINT : JOINT;
    if (!at(joint, text, end)) break;
    next = joint.lastIndex;
  }
  return end === undefined || at(ORDINAL, text, end) ? undefined : { value: total + group, end };
}

/** "Twenty fifth" counts nothing; "twenty second" may be a time. */
const ORDINAL = /[ -](?:first|third|fourth|fifth|sixth|seventh|eighth|ninth)(?![a-z])/y;

/** "Twenty five", "hundred five" and "hundred twenty" go together; "one two" and "one thirty" are two numbers. */
const fitsBehind = (group: number, small: number): boolean =>
  group % 100 === 0 ? small > 0 : small > 0 && small < 10 && group % 100 >= 20 && group % 10 === 0;

const POINT = /\s+(?:point|dot)(?=\s)/y;
const BLANKS = /\s+/y;

/** " point two five". */
function decimalsAt(text: string, start: number): NumberFound | undefined {
  if (!at(POINT, text, start)) return undefined;
  let digits = '';
  let end = POINT.lastIndex;
  while (at(BLANKS, text, end)) {
    const digit = SMALL[at(WORD, text, BLANKS.lastIndex)?.[0] ?? ''];
    if (digit === undefined || digit > 9) break;
    digits += digit;
    end = WORD.lastIndex;
  }
  return digits === '' ? undefined : { value: Number(`0.${digits}`), end };
}
