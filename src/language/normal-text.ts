import { isDigit } from './number-parts.js';

/** A text folded to plain characters, with the place in the original that each came from. */
export interface NormalText {
  readonly text: string;
  /** Index in the original of each character, and of the end. */
  readonly from: readonly number[];
}

/** One kind of each sign. What a compatibility mapping of Unicode knows (`½`, `²`, `㎡`, `６`) stands not here. */
const FOLDED: Record<string, string> = {
  '×': 'x',
  '✕': 'x',
  '⨯': 'x',
  '✖': 'x',
  '’': "'",
  '‘': "'",
  '′': "'",
  '`': "'",
  '´': "'",
  '“': '"',
  '”': '"',
  '″': '"',
  '„': '"',
  '–': '-',
  '—': '-',
  '−': '-',
  '‑': '-',
  '‐': '-',
  '‒': '-',
  '⁄': '/',
  '∕': '/',
  '→': ' to ',
  '≤': '<',
  '≥': '>',
  '≈': '~',
  '≃': '~',
  º: '°',
  '˚': '°',
  μ: 'µ',
  µ: 'µ',
  '\t': ' ',
  '\n': ' ',
  '\r': ' ',
};

const fold = (character: string): string => FOLDED[character] ?? character.toLowerCase();

const DROPPED = /\p{Cf}|\p{Cc}|\p{Me}|\uFE0F/u;
const BLANK = /\p{Z}/u;

/** What a character is written as behind another: `½` is `1/2`, set off from the 1 of `1½`; `²` is a plain 2 but of a number. */
function folded(character: string, before: string | undefined): string {
  const known = FOLDED[character];
  if (known !== undefined) return known;
  if (character.charCodeAt(0) < 0x80) return DROPPED.test(character) ? '' : character.toLowerCase();
  if (DROPPED.test(character)) return '';
  if (BLANK.test(character)) return ' ';
  const mapped = [...character.normalize('NFKC')].map(fold).join('');
  if (mapped === character.toLowerCase() || !isDigit(before)) return mapped;
  return mapped.includes('/') ? ` ${mapped}` : /^\p{No}$/u.test(character) ? `^${mapped}` : mapped;
}

const ENDS_A_LINE = /[a-z\d%"')]$/;

/** Lower case, one kind of quote, dash and space, fractions written out; invisible and direction marks and a leading space dropped. */
export function normalText(original: string): NormalText {
  const written: string[] = [];
  const from: number[] = [];
  let index = 0;
  const last = original.trimEnd().length;
  for (const character of original) {
    // A line of a list ends a clause.
    const ends = character === '\n' && index < last && ENDS_A_LINE.test(written.at(-1) ?? '');
    const characters = ends ? '; ' : folded(character, written.at(-1)?.at(-1));
    if (written.length > 0 || characters.trim() !== '') {
      if (characters !== '') written.push(characters);
      for (let i = 0; i < characters.length; i += 1) from.push(index);
    }
    index += character.length;
  }
  from.push(original.length);
  return { text: written.join(''), from };
}

/** The place in the original of a stretch of the folded text. */
export const originalSpan = (normal: NormalText, start: number, end: number): [number, number] => [
  normal.from[start] ?? 0,
  end === start ? (normal.from[end] ?? 0) : (normal.from[end - 1] ?? 0) + 1,
];
