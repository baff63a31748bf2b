import { at, isDigit } from './number-parts.js';

/** Digits that measure nothing, whatever follows them; each pattern stands at the first digit. */
const UNMEASURED: readonly RegExp[] = [
  // Dates: 2027-03-01, 5/30/27, 21.6.2027
  /\d{4}-\d{1,2}-\d{1,2}(?!\d)/y,
  /\d{1,2}[/.]\d{1,2}[/.](?:\d{2}|\d{4})(?![\d./])/y,
  // Numbers of telephones and versions: 555-123-4567, 1.4.2
  /\d+-\d+-\d+(?![\d/])/y,
  /(?!\d{1,3}(?:\.\d{3})+(?!\.?\d))\d+\.\d+\.\d+(?:\.\d+)*/y,
  // Times of day: 14:30, 9 pm, 9p-11p. "1:30 h" is a duration.
  /\d{1,2}:[0-5]\d(?::[0-5]\d)?(?!\s?(?:h|hrs?|hours?|mins?|minutes?)(?![a-z]))(?:\s*[ap]\.?m(?![a-z])\.?)?/y,
  /\d{1,2}\s*[ap]\.?m(?![a-z])\.?/y,
  /\d{1,2}[ap]\s?-\s?\d{1,2}[ap](?![a-z])/y,
  // The colour of light: 8500K, 20,000 K, "14k bulbs"
  /(?:\d{4,5}|\d{1,2},\d{3})\s?k(?![a-z])/y,
  /\d{1,2}k(?=\s+(?:leds?|bulbs?|lamps?|lights?|halides?|tubes?|white|spectrum)(?![a-z]))/y,
  // Elbows: "two 90s", "a pair of 45's"
  /(?:45|90)'?s(?![a-z])/y,
  // Shapes and names: "6 sided", "2 part", "3D"
  /\d\s?-?(?:sided|part)(?![a-z])/y,
  // Timber: 2x4s, "2x10 joists"
  /2\s?x\s?(?:4|6|8|10|12)(?:'?s(?![a-z])|(?=\s+(?:lumber|timber|studs?|joists?|frames?|framing|framed)(?![a-z])))/y,
];

/** Where digits that begin at `start` and measure nothing end. */
export function unmeasuredAt(text: string, start: number): number | undefined {
  if (!isDigit(text[start])) return undefined;
  for (const pattern of UNMEASURED) if (at(pattern, text, start)) return pattern.lastIndex;
  return undefined;
}
