import { type Amount, measures } from './amounts.js';
import type { Mention } from './measurements.js';
import { isOf } from './unit-words.js';

/** How many characters before and behind an amount are looked at. */
const NEAR = 32;
export const wordsBefore = (text: string, { start }: Amount): string => text.slice(Math.max(0, start - NEAR), start);

const before = (sign: string, words: string): RegExp => new RegExp(`(?:(?:^|[^a-z])(?:${words})|${sign})\\s*$`);
const behind = (words: string): RegExp => new RegExp(`^\\s*(?:${words})(?![a-z])`);

const ABOUT_BEFORE = before(
  '~',
  '(?<!(?:what|how) )about|around|abt|approx(?:imately)?\\.?|aprox|roughly|circa|ca\\.|close to|some|nearly|almost|maybe|probably|like|say|(?:just|a (?:bit|little)) (?:over|under)',
);
const ABOUT_BEHIND = behind('or so|or thereabouts|give or take|roughly|approx(?:imately)?');
/** "What about 3 cm" asks; it is not nearly 3. */
const ASKS_ABOUT = /(?:what|how)\s+about\s+$/;
/** `ca 420` is calcium. */
const CIRCA = /(?:^|[^a-z])ca\s+$/;
const MOST_BEFORE = before(
  '<=?',
  'under|below|less than|at most|up to|max(?:imum)?(?: of)?|no more than|not more than|not over|within',
);
const MOST_BEHIND = behind('max(?:imum)?|or (?:less|under|below|fewer)|at most|tops');
const LEAST_BEFORE = before(
  '>=?',
  'over|above|more than|at least|min(?:imum)?(?: of)?|no less than|not under|upwards of',
);
const LEAST_BEHIND = behind('or (?:more|over|above|longer)|at least|minimum');
const COLDER = behind(
  'colder|cooler|warmer|hotter|lower|higher|difference|swings?|drops?|rise|above|below|(?:over|under) (?:room|ambient|the room|the air)|less|more',
);
const BY_DEGREES =
  /(?:^|[^a-z])(?:by|drop(?:s|ped)?(?: of)?|swings?(?: of)?|fluctuat(?:es|ion)(?: of)?|differ(?:s|ence)(?: of| is)?|delta(?: t)?(?: of)?|(?:rise|raise|lower|cool|heat|warm)s?(?: it| the (?:tank|water|temp))?(?: by)?|rise of|within)\s+(?:about\s+|around\s+)?$/;
/** "About 90" may be a tenth less or more. */
const SPREAD_OF_ABOUT = 0.1;

/** A mention with what is said of it: "about", "at most", or that it is a difference. */
export function qualified(text: string, mention: Mention): Mention {
  const ahead = wordsBefore(text, mention);
  const following = text.slice(mention.end, mention.end + NEAR);
  const own = text.slice(mention.start, mention.end);
  const isHeat = measures(mention, 'temperature', 'angle');
  const said = isHeat && (COLDER.test(following) || BY_DEGREES.test(ahead)) ? difference(mention) : mention;
  if (mention.low !== undefined) return said;
  if (isAbout(mention, ahead) || ABOUT_BEHIND.test(following) || /\dish/.test(own)) {
    const spread = mention.units.length > 0 && !measures(mention, 'temperature') ? SPREAD_OF_ABOUT : undefined;
    return { ...said, about: true, ...(spread === undefined ? {} : around(mention, spread * Math.abs(mention.value))) };
  }
  const most = MOST_BEFORE.test(ahead) || MOST_BEHIND.test(following) ? { high: mention.value } : {};
  const least =
    LEAST_BEFORE.test(ahead) || LEAST_BEHIND.test(following) || /\d\+/.test(own) ? { low: mention.value } : {};
  return { ...said, ...most, ...least };
}

/** "5 C colder" is no temperature; "5 degrees" has no unit of its own. */
function difference(mention: Mention): Mention {
  const units = mention.units.filter((row) => isOf(row, 'temperature difference'));
  return { ...mention, difference: true, ...(units.length > 0 ? { units } : {}) };
}

const isAbout = (mention: Mention, ahead: string): boolean =>
  (ABOUT_BEFORE.test(ahead) && !ASKS_ABOUT.test(ahead)) ||
  (CIRCA.test(ahead) && mention.units.length > 0 && !measures(mention, 'dissolved'));

export const around = ({ value }: Amount, spread: number) => ({ low: value - spread, high: value + spread });
