import { literal } from '../core/literal.js';
import type { Tank } from './ports.js';

/** What a member's first tank is called until they name it. */
export const FIRST_TANK = 'main tank';

const OWNERS =
  'wife|husband|son|daughter|kid|brother|sister|friend|mate|dad|mom|mum|mother|father|girlfriend|boyfriend|partner|neighbou?r';
/** Tanks that stand beside a display, called so without the word tank too: "my nano is …". */
const KINDS = 'nano|pico|frag|quarantine|qt|hospital|grow[- ]?out|nursery|seahorse|mantis|anemone|nem';
/** Words before "tank" that say what it is like, what it is part of or what it holds, and do not name it. */
const NO_NAMES = new Set(
  `tank aquarium sump heater pump drain light lamp pipe overflow new big large small little huge own old main current reef display home
  whole entire first glass saltwater salt water acrylic custom next dream rectangular empty full fish marine mixed rimless corner bow front
  bowfront round cylinder cylindrical hex hexagon hexagonal square cube tall long wide shallow deep drilled used planned future finished
  actual real poor lovely nice beautiful gorgeous favourite favorite coral sps lps soft gal gallon gallons liter litre l ft foot inch cm
  in of to on at from this that the a and is has for with inside rock sand stand floor house room wife skimmer chiller controller return ato`.split(
    /\s+/,
  ),
);
/** Vessels that hold water for a tank. */
const VESSEL = /\b(?:mixing|storage|top|off|topoff|holding|reservoir|ro|rodi|brine|bucket|waste)\b/;
const NO_OWNER = /^(?:it|that|what|there|here|let|how|who|where|when|tank|he|she|today|everyone|everybody)'s$/;

/** "the big blue" of `my tank called "the big blue"`. */
const CALLED =
  /\b(?:tank|system|aquarium|reef) (?:called|named)(?: "([^"]{1,28})"| '([^']{1,28})'| ([a-z0-9][a-z0-9 -]{0,28}?)(?= is\b| has\b| holds\b|[,.:;(]|$))/;
const OTHER = /\b(?:my|the) other (?:tank|one|system|aquarium)\b/;
/** "Another tank", "I also have a frag tank", "a second one, 60x30x30". */
const ANOTHER =
  /\b(?:another|(?:a|my|the) (?:second|2nd)|also (?:have|got)(?: a| an)?)(?: ([a-z][a-z-]{1,20}))? (?:tank|system|aquarium|reef)\b|\b(?:another|a second)(?: one)?[ :,]+(?=\d+(?:\.\d+)? ?(?:x|by) ?\d)/;
const SECOND = /\b(?:second|2nd)\b/;
const NEXT_NAMES = ['second tank', 'third tank', 'fourth tank', 'fifth tank', 'sixth tank'];
const OWNED = new RegExp(`\\b(?:my )?([a-z]+'s|(?:${OWNERS})s)((?: [a-z][a-z-]{1,20})?) (?:tank|aquarium|reef)\\b`);
const MINE = /\bmy ([a-z][a-z-]{1,20}(?: [a-z][a-z-]{1,20})?) (?:tank|aquarium|system)\b/;
const DETERMINED = '(?:^|\\b(?:my|the|our|have a|got a) )';
const OF_KIND = new RegExp(
  `${DETERMINED}(${KINDS})(?: (?:cube|reef))?(?=(?:'s)? (?:is|was|that'?s?|which|has|holds|needs?|weighs?|runs|at|of|with)\\b|[,:;.?!(]|\\s*\\d|\\s*$)|${DETERMINED}(${KINDS}) (?:tank|system|aquarium)\\b`,
);

/** The tank's name of what stands before the word: without the words that only say what it is like. */
const nameOf = (words: string): string | undefined => {
  const telling = words.split(' ').filter((word) => word !== '' && !NO_NAMES.has(word));
  return telling.length === 0 ? undefined : `${telling.join(' ')} tank`;
};

const stands = (name: string, text: string): boolean =>
  new RegExp(`(?<![a-z])${literal(name.toLowerCase())}(?![a-z])`).test(text);

/**
 * The tank that a text names, kept already or not: "my frag tank is …", "the big blue", "my other tank".
 * @returns undefined where it names none, so that the current one is meant
 */
export function tankNamed(text: string, tanks: readonly Tank[]): string | undefined {
  const known = tanks.filter(({ name }) => stands(name, text)).sort((a, b) => b.name.length - a.name.length)[0];
  if (known) return known.name;
  const called = text.match(CALLED)?.slice(1).find(Boolean);
  if (called) return called.trim();
  const others = tanks.filter(({ current }) => !current);
  if (OTHER.test(text)) return others.length === 1 ? others[0]!.name : 'other tank';
  const another = text.match(ANOTHER);
  if (another) {
    const free = NEXT_NAMES.find((name) => !tanks.some((tank) => tank.name === name));
    return nameOf(another[1] ?? '') ?? (SECOND.test(another[0]) ? NEXT_NAMES[0] : free);
  }
  const owned = text.match(OWNED);
  if (owned && !NO_OWNER.test(owned[1]!)) return `${owned[1]!.replace(/'?s$/, "'s")}${owned[2]} tank`;
  const kind = text.match(OF_KIND)?.slice(1).find(Boolean);
  if (kind) return `${kind} tank`;
  const mine = text.match(MINE)?.[1];
  return mine === undefined ? undefined : nameOf(mine);
}

/** Whether a name is that of a vessel which holds water for a tank, rather than of a tank. */
export const isVessel = (name: string): boolean => VESSEL.test(name);
