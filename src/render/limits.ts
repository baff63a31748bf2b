/** What Discord takes, in characters (code points after trimming) or pieces. */
export const LIMITS = {
  content: 2000,
  components: 40,
  componentText: 4000,
  rows: 5,
  buttonsInRow: 5,
  buttonLabel: 80,
  customId: 100,
  files: 10,
  altText: 1024,
  modalTitle: 45,
  modalLabel: 45,
  modalDescription: 100,
  modalPlaceholder: 100,
  choices: 25,
  choiceName: 100,
  choiceValue: 100,
  options: 25,
  name: 32,
  description: 100,
  commands: 100,
  commandText: 8000,
} as const;

export const lengthOf = (text: string): number => [...text.trim()].length;

/** Cuts at a word, with an ellipsis, when the text is longer than it may be. */
export function clipped(text: string, most: number): string {
  if (lengthOf(text) <= most) return text.trim();
  const cut = [...text.trim()].slice(0, most - 1).join('');
  const space = cut.lastIndexOf(' ');
  return `${(space > most / 2 ? cut.slice(0, space) : cut).trimEnd()}…`;
}

/**
 * Puts blocks one under the other into as few texts as hold them. A block stays whole; one that is longer than a text may
 * be is divided between its lines, and a line that is longer still between words.
 */
export function packed(blocks: readonly string[], most: number): string[] {
  const texts: string[] = [];
  for (const block of blocks.flatMap((text) => divided(text, most, ['\n', ' ']))) {
    const last = texts.at(-1);
    const joined = last === undefined ? block : `${last}\n\n${block}`;
    if (last !== undefined && lengthOf(joined) <= most) texts[texts.length - 1] = joined;
    else texts.push(block);
  }
  return texts;
}

function divided(text: string, most: number, separators: readonly string[]): string[] {
  if (lengthOf(text) <= most) return text.trim() === '' ? [] : [text];
  const [separator, ...finer] = separators;
  if (separator === undefined) {
    const letters = [...text.trim()];
    return [letters.slice(0, most).join(''), ...divided(letters.slice(most).join(''), most, [])];
  }
  const parts: string[] = [];
  for (const piece of text.split(separator).flatMap((line) => divided(line, most, finer))) {
    const last = parts.at(-1);
    const joined = last === undefined ? piece : `${last}${separator}${piece}`;
    if (last !== undefined && lengthOf(joined) <= most) parts[parts.length - 1] = joined;
    else parts.push(piece);
  }
  return parts;
}
