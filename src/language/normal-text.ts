/** A text folded to plain characters, with the place in the original that each came from. */
export interface NormalText {
  readonly text: string;
  /** Index in the original of each character, and of the end. */
  readonly from: readonly number[];
}

const FRACTIONS: Record<string, string> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
};
const FOLDED: Record<string, string> = {
  '×': 'x',
  '✕': 'x',
  '⨯': 'x',
  '’': "'",
  '‘': "'",
  '′': "'",
  '`': "'",
  '“': '"',
  '”': '"',
  '″': '"',
  '–': '-',
  '—': '-',
  '−': '-',
  '‑': '-',
  '‐': '-',
  º: '°',
  '℃': '°c',
  '℉': '°f',
  μ: 'µ',
  '，': ',',
  '．': '.',
  '\t': ' ',
  '\n': ' ',
  '\r': ' ',
};

/** Lower case, one kind of quote, dash and space, fractions written out; invisible and direction marks and a leading space dropped. */
export function normalText(original: string): NormalText {
  let text = '';
  const from: number[] = [];
  const put = (characters: string, index: number) => {
    text += characters;
    for (let i = 0; i < characters.length; i += 1) from.push(index);
  };
  let index = 0;
  for (const character of original) {
    const fraction = FRACTIONS[character];
    if (text === '' && character.trim() === '') put('', index);
    else if (fraction) put(/\d$/.test(text) ? ` ${fraction}` : fraction, index);
    else if (FOLDED[character] !== undefined) put(FOLDED[character], index);
    else if (/[\p{Cf}\p{Cc}]/u.test(character)) put('', index);
    else if (/\p{Zs}/u.test(character)) put(' ', index);
    else if (/[\p{Nd}\p{Lu}\p{Ll}]/u.test(character) && character !== 'µ')
      put(character.normalize('NFKC').toLowerCase(), index);
    else put(character.toLowerCase(), index);
    index += character.length;
  }
  from.push(original.length);
  return { text, from };
}

/** The place in the original of a stretch of the folded text. */
export const originalSpan = (normal: NormalText, start: number, end: number): [number, number] => [
  normal.from[start] ?? 0,
  end === start ? (normal.from[end] ?? 0) : (normal.from[end - 1] ?? 0) + 1,
];
