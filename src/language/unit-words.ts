import { type UnitRow, unitTable } from '../../data/units.js';

/** Units that a word may mean; the question's quantity decides between them. */
const byWord = new Map<string, UnitRow[]>();
for (const row of unitTable) {
  for (const word of new Set([
    ...row.words.map((spelling) => spelling.toLowerCase().replace('μ', 'µ')),
    row.id.toLowerCase(),
  ])) {
    const rows = byWord.get(word);
    if (rows) rows.push(row);
    else byWord.set(word, [row]);
  }
}
byWord.delete('1');

const longest = Math.max(...[...byWord.keys()].map((word) => word.length));
const typoTargets = [...byWord.keys()].filter((word) => /^[a-z]{5,}$/.test(word));

export interface UnitFound {
  readonly units: readonly UnitRow[];
  readonly end: number;
  readonly corrected?: string;
}

const isLetter = (character: string | undefined): boolean => character !== undefined && /[a-zµ]/.test(character);

/** `in` before an article, a unit ("2.8 in dKH") or a number that is no length ("78 in 70 room") is the preposition, not inches. */
const PREPOSITION = new RegExp(
  '^\\s+(?:(?:an?|the|my|our|your|this|that|it|total|all|each|between|there|here|dkh|meq|ppm|\\d+(?:\\.\\d+)? ?(?:l|litres?|liters?|gal|gals|gallons?|hours?|days?|weeks?))(?![a-z])' +
    `|\\d+(?:\\.\\d+)?(?![\\d.])(?!\\s*(?:in(?![a-z])|inch|"|'|ft|feet|cm|mm|x|by|/|-))(?!\\s+[a-z]{3,}s(?![a-z])))`,
);

/** A lone `a` after a blank is amperes before what amperes are said of, or at the end of a sentence; else it is the article. */
const AMPERES =
  /^(?:\s+(?:breaker|fuse|fused|circuit|socket|outlet|plug|cord|lead|chain|limit|max|rated|rating|supply|timer|at|on|and|or|total)\b|\s*[,;.?!)]|\s*$)/;

/** Reads a unit that begins at `start` of a folded text, the longest that fits; a long word may hold one slip of the finger. */
export function unitAt(text: string, start: number): UnitFound | undefined {
  for (let length = Math.min(longest, text.length - start); length > 0; length -= 1) {
    const word = text.slice(start, start + length);
    const units = byWord.get(word);
    if (!units) continue;
    const end = start + length;
    const last = word[word.length - 1];
    if (isLetter(last) && isLetter(text[end])) continue;
    if (/\d$/.test(word) && /[\d]/.test(text[end] ?? '')) continue;
    if (word === 'in' && PREPOSITION.test(text.slice(end, end + 24))) return undefined;
    if (word === 'a' && !/\d/.test(text[start - 1] ?? '') && !AMPERES.test(text.slice(end, end + 12))) return undefined;
    if ((word === 'x' || word === 'times') && units.length > 0) return undefined;
    return { units, end };
  }
  return misspelt(text, start);
}

/** Words of their own that are one slip away from a unit: rock stands on three points, not on three pints. */
const NO_SLIPS: ReadonlySet<string> = new Set(['point', 'points']);

function misspelt(text: string, start: number): UnitFound | undefined {
  const word = text.slice(start, start + 24).match(/^[a-z]{5,}/)?.[0];
  if (!word || NO_SLIPS.has(word)) return undefined;
  const close = typoTargets.find((target) => word[0] === target[0] && withinOneSlip(word, target));
  return close === undefined ? undefined : { units: byWord.get(close)!, end: start + word.length, corrected: close };
}

/** One letter missing, extra, wrong, or two neighbours swapped. */
export function withinOneSlip(a: string, b: string): boolean {
  if (a === b) return true;
  if (Math.abs(a.length - b.length) > 1) return false;
  let i = 0;
  while (i < a.length && a[i] === b[i]) i += 1;
  const [restA, restB] = [a.slice(i), b.slice(i)];
  return (
    restA.slice(1) === restB.slice(1) ||
    restA.slice(1) === restB ||
    restA === restB.slice(1) ||
    (restA[0] === restB[1] && restA[1] === restB[0] && restA.slice(2) === restB.slice(2))
  );
}

/** The units that a whole text names, `"L/h"`; empty when it names none. */
export function unitsNamed(text: string): readonly UnitRow[] {
  return byWord.get(text.trim().toLowerCase()) ?? [];
}
