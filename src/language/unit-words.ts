import type { QuantityName } from '../../data/quantities.js';
import { type UnitRow, unitTable } from '../../data/units.js';
import { normalText } from './normal-text.js';
import { at, isDigit } from './number-parts.js';

/** A tree of letters, so that the longest spelling that stands at a place is found in one walk along the text. */
interface Letters {
  readonly next: Map<string, Letters>;
  units?: UnitRow[];
}

const tree: Letters = { next: new Map() };
const typoTargets: string[] = [];
const rates = new Map<string, UnitRow[]>();

/** What stands between the words of a unit is all one, `sq ft`, `sq. ft`, `watt-hours`; and so are the ways to write µ or ². */
const SIGNS: Readonly<Record<string, string>> = { '.': ' ', '-': ' ', µ: 'u', '²': '2', '³': '3' };
const spelling = (word: string): string =>
  word
    .toLowerCase()
    .replace(/[-.µ²³]/g, (sign) => SIGNS[sign]!)
    .trim();

/** What is written in two ways of every unit: `sq ft`, `cu in`, `centi meter`. */
const VARIANT = /^(?:square|cubic|(?:kilo|centi|milli|micro|deci|deca|hecto|nano)(?=[a-z]{4}))/;
const SHORT: Readonly<Record<string, string>> = { square: 'sq', cubic: 'cu' };
const spellings = (word: string): string[] =>
  VARIANT.test(word)
    ? [spelling(word), spelling(word.replace(VARIANT, (first) => SHORT[first] ?? `${first} `))]
    : [spelling(word)];

for (const row of unitTable) {
  for (const word of new Set([...row.words, row.id].flatMap(spellings))) {
    let node = tree;
    for (const letter of word) {
      const next = node.next.get(letter) ?? { next: new Map() };
      node.next.set(letter, next);
      node = next;
    }
    node.units ??= [];
    node.units.push(row);
    if (/^[a-z]{5,}$/.test(word) && !row.quantities.includes('count')) typoTargets.push(word);
  }
  if (row.rate) {
    const pair = row.rate.join(' ');
    rates.set(pair, [...(rates.get(pair) ?? []), row]);
  }
}
// The id of a plain number is no word.
delete tree.next.get('1')!.units;

export interface UnitFound {
  readonly units: readonly UnitRow[];
  readonly end: number;
  readonly corrected?: string;
}

/** Whether a unit measures one of some quantities. */
export const isOf = ({ quantities }: UnitRow, ...names: readonly string[]): boolean =>
  quantities.some((name) => names.includes(name));

const isLetter = (character: string | undefined): boolean =>
  character !== undefined && ((character >= 'a' && character <= 'z') || character === 'µ');

const isGap = (character: string | undefined): boolean => character === ' ' || character === '.' || character === '-';

/** The x of `120cmx60cm`. */
const isJoint = (text: string, place: number): boolean => text[place] === 'x' && isDigit(text[place + 1]);

const PER = / ?\/ ?|\.? per | an? (?=[a-z]{2})/y;

/** The unit that begins at a place, with what it is counted by: `gal`, `gal/h`, "grams per litre a day". */
function longestAt(text: string, start: number): UnitFound | undefined {
  let found = plainAt(text, start);
  while (found) {
    const per = at(PER, text, found.end) && plainAt(text, PER.lastIndex);
    const units: UnitRow[] = per
      ? found.units.flatMap((of) => per.units.flatMap(({ id }) => rates.get(`${of.id} ${id}`) ?? []))
      : [];
    if (!per || units.length === 0) break;
    found = { units, end: per.end };
  }
  return found && (perDayOf(text, found) ?? found);
}

const THING = '(?: of)?(?: (?!(?:and|with|in|at|from|to|for|then|is|are|was|if|every|each|per|a)\\b)[a-z]{3,}){0,3}';
const DAILY = new RegExp(`${THING} (?:(?:a|per|each|every) day|daily)(?![a-z])`, 'y');

/** "6 grams of pellets a day", "8 litres daily": what is measured stands between the unit and the day. */
function perDayOf(text: string, { units, end }: UnitFound): UnitFound | undefined {
  if (!at(DAILY, text, end)) return undefined;
  const daily = units.flatMap(({ id }) => rates.get(`${id} day`) ?? []);
  return daily.length > 0 ? { units: daily, end } : undefined;
}

/** The longest spelling that ends where a word may end. */
function plainAt(text: string, start: number): UnitFound | undefined {
  let node: Letters | undefined = tree;
  let found: UnitFound | undefined;
  for (let place = start; node && place < text.length; ) {
    const letter = text[place] === 'µ' ? 'u' : text[place]!;
    const gap = isGap(letter);
    let end = place + 1;
    if (gap) while (isGap(text[end])) end += 1;
    // Blanks around a stroke are no gap: `€ / kWh`.
    const stroke = text[end] === '/' || text[place - 1] === '/';
    const word: Letters | undefined = gap ? node.next.get(' ') : node.next.get(letter);
    // `g.p.h.`: a point alone may stand between two letters of one word.
    const within: boolean = gap && (stroke || (letter === '.' && end === place + 1));
    node = word ?? (within ? node : undefined);
    place = end;
    const inside = isLetter(letter)
      ? isLetter(text[end]) && !isJoint(text, end)
      : isDigit(letter) && isDigit(text[end]);
    if (node?.units && !gap && !inside) found = { units: node.units, end };
  }
  return found;
}

/** `in` before an article, a unit ("2.8 in dKH") or a number that is no length ("78 in 70 room") is the preposition, not inches. */
const PREPOSITION = new RegExp(
  '^\\s+(?:(?:an?|the|my|our|your|this|that|it|total|all|each|between|there|here|dkh|meq|ppm|\\d+(?:\\.\\d+)? ?(?:l|litres?|liters?|gal|gals|gallons?|hours?|days?|weeks?))(?![a-z])' +
    `|\\d+(?:\\.\\d+)?(?![\\d.])(?!\\s*(?:in(?![a-z])|inch|"|'|ft|feet|cm|mm|x|by|/|-))(?!\\s+[a-z]{3,}s(?![a-z])))`,
);

/** A lone `a` after a blank is amperes before what amperes are said of, or at the end of a sentence; else it is the article. */
const AMPERES =
  /^(?:\s+(?:breaker|fuse|fused|circuit|socket|outlet|plug|cord|lead|chain|limit|max|rated|rating|supply|timer|at|on|and|or|total)\b|\s*[,;.?!)]|\s*$)/;

/** Cents and pence are written `22c` and `30p` where a price is spoken of, or where nothing else is said. */
const OF_PRICE =
  /\b(?:price|prices|pay|paying|cost|costs|tariff|rate|electric|electricity|kwh|per unit)\b|^\s*[\d.]+\s*[cp]\s*$/;

/** Where a short word is no unit, by the text and by where the word begins and ends. */
const NO_UNIT: Readonly<Record<string, (text: string, start: number, end: number) => boolean>> = {
  in: (text, _, end) => PREPOSITION.test(text.slice(end, end + 24)),
  a: (text, start, end) => !isDigit(text[start - 1]) && !AMPERES.test(text.slice(end, end + 12)),
  // "3D printed".
  d: (text, _, end) => /^[ -]?(?:print|model|scape|design)/.test(text.slice(end, end + 8)),
  p: (text) => !OF_PRICE.test(text),
  // A stand "on 4 feet".
  feet: (text, start) =>
    /\b(?:on|has|have|with|its) (?:\d|two|three|four|six|eight) ?$/.test(text.slice(Math.max(0, start - 14), start)),
  // "Ca 460 Mg 1420": magnesium.
  mg: (text, _, end) => /^ ?:?=? ?\d/.test(text.slice(end, end + 4)) && /\b(?:ca|calcium|alk)\b/.test(text),
  // "Two 4's."
  "'": (text, _, end) => /^s(?![a-z])/.test(text.slice(end, end + 2)),
  x: () => true,
  times: () => true,
};

interface Narrowing {
  readonly word: string;
  readonly when: (text: string, end: number) => boolean;
  /** What it means then. */
  readonly means: readonly QuantityName[];
}

const followed = (by: string) => {
  const pattern = new RegExp(`^ (?:of )?(?:[a-z]+ )?(?:${by})(?![a-z])`);
  return (text: string, end: number) => pattern.test(text.slice(end, end + 32));
};
const VESSEL =
  'tank|sump|display|aquarium|system|drum|bucket|reservoir|cube|breeder|container|barrel|vat|refugium|long|tall';
const POWDER = 'mix|sand|rock|powder|soda|bicarb|bicarbonate|carbonate|chloride|sulphate|sulfate|food|pellets|feed';

/** Words that mean several things, where what stands beside them says which; elsewhere the question decides. */
const NARROWED: readonly Narrowing[] = [
  { word: 'g', when: followed(POWDER), means: ['mass'] },
  { word: 'g', when: followed(VESSEL), means: ['volume'] },
  { word: 'oz', when: followed(POWDER), means: ['mass'] },
  { word: 'oz', when: followed(`${VESSEL}|water|bottle|cup|jar`), means: ['volume'] },
  { word: 'c', when: (text) => !OF_PRICE.test(text), means: ['temperature', 'temperature difference'] },
];

/** Only lengths and times are followed by a digit at once: `5ft6`, `1h30`, but "2 t5 lamps". */
const maySplit = ({ quantities }: UnitRow): boolean => quantities.includes('length') || quantities.includes('time');

/** Reads a unit that begins at `start` of a folded text, the longest that fits; a long word may hold one slip of the finger. */
export function unitAt(text: string, start: number): UnitFound | undefined {
  const found = longestAt(text, start);
  if (!found) return misspelt(text, start);
  const { units, end } = found;
  const word = text.slice(start, end);
  if (NO_UNIT[word]?.(text, start, end)) return undefined;
  if (isLetter(word.at(-1)) && isDigit(text[end]) && !units.some(maySplit)) return undefined;
  const narrowing = NARROWED.find((entry) => entry.word === word && entry.when(text, end));
  if (!narrowing) return found;
  return { units: units.filter(({ quantities }) => quantities.some((name) => narrowing.means.includes(name))), end };
}

const SPACE = / */y;

/** The unit behind a number: at once, after a blank, or after a hyphen as in `6-foot`. */
export function unitAfter(text: string, end: number): UnitFound | undefined {
  const hyphen = text[end] === '-' && /[a-z]/.test(text[end + 1] ?? '');
  if (hyphen) return unitAt(text, end + 1);
  at(SPACE, text, end);
  return unitAt(text, SPACE.lastIndex);
}

/** Words of their own that are one slip away from a unit: rock stands on three points, not on three pints. */
const NO_SLIPS: ReadonlySet<string> = new Set(
  'point points pond ponds prints paints stones store stove quartz grass waits wants weeds mouth later backs'.split(
    ' ',
  ),
);

function misspelt(text: string, start: number): UnitFound | undefined {
  const word = text.slice(start, start + 24).match(/^[a-z]{5,}/)?.[0];
  if (!word || NO_SLIPS.has(word)) return undefined;
  const close = typoTargets.find((target) => word[0] === target[0] && withinOneSlip(word, target));
  if (close === undefined) return undefined;
  // "Galons per hour": the unit may go on behind the word.
  const rest = text.slice(start + word.length, start + word.length + LONGEST_REST);
  const { units, end } = longestAt(close + rest, 0)!;
  return { units, end: start + word.length + end - close.length, corrected: close };
}
const LONGEST_REST = 24;

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
  const { text: name } = normalText(text.trim());
  const found = longestAt(name, 0);
  return found?.end === name.length ? found.units : [];
}
