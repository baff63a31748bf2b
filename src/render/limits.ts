/** What Discord takes, in characters (code points after trimming) or pieces. */
export const LIMITS = {
  content: 2000,
  componentText: 4000,
  buttonsInRow: 5,
  buttonLabel: 80,
  customId: 100,
  files: 10,
  altText: 1024,
  modalDescription: 100,
  choices: 25,
  choiceName: 100,
  choiceValue: 100,
  description: 100,
  commandText: 8000,
} as const;

export const lengthOf = (text: string): number => [...text.trim()].length;

/** Cuts at a word, with an ellipsis, when the text is longer than it may be. */
export function clipped(text: string, most: number): string {
  if (lengthOf(text) <= most) return text.trim();
  const letters = [...text.trim()];
  const space = letters.lastIndexOf(' ', most - 1);
  return `${letters
    .slice(0, space > most / 2 ? space : most - 1)
    .join('')
    .trimEnd()}…`;
}

/** Where a text may be divided, the gentlest place first: paragraphs, lines that begin something, lines, words. */
const SEAMS = [
  [/\n{2,}/, '\n\n'],
  [/\n(?!\s)/, '\n'],
  [/\n/, '\n'],
  [/ /, ' '],
] as const;

/**
 * Puts blocks one under the other into as few texts as hold them. A block that is longer than a text may be is divided
 * between its paragraphs, else between its lines, where an indented line stays with the one it explains.
 */
export function packed(blocks: readonly string[], most: number): string[] {
  const texts: string[] = [];
  for (const { before, text } of blocks.flatMap((block) => pieces(block, '\n\n', most, SEAMS))) {
    const last = texts.at(-1);
    const longer = last === undefined ? text : `${last}${before}${text}`;
    if (last !== undefined && lengthOf(longer) <= most) texts[texts.length - 1] = longer;
    else texts.push(text);
  }
  return texts;
}

/** A part of a text, and what stands between it and the part before. */
interface Piece {
  readonly before: string;
  readonly text: string;
}

function pieces(text: string, before: string, most: number, seams: readonly (readonly [RegExp, string])[]): Piece[] {
  if (text.trim() === '') return [];
  if (lengthOf(text) <= most) return [{ before, text }];
  const [seam, ...finer] = seams;
  if (seam === undefined) {
    const letters = [...text];
    const rest = pieces(letters.slice(most).join(''), '', most, []);
    return [{ before, text: letters.slice(0, most).join('') }, ...rest];
  }
  const [pattern, between] = seam;
  return text.split(pattern).flatMap((part, i) => pieces(part, i === 0 ? before : between, most, finer));
}
