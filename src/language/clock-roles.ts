import type { Input } from '../core/calculation.js';
import { type ClockWindow, lightWindow } from '../core/models/clock-window.js';
import type { Given } from '../core/outcome.js';
import { clockText, readClock } from '../core/quantity/clock-text.js';
import type { TextRole } from './choices.js';
import { findPhrase, holdsPhrase, isLittle, type Words } from './cues.js';

const TIME =
  '(?:(?<![\\d.])(?:\\d{1,2}[:h]\\d{2}(?!\\d)\\s*(?:[ap]\\.?m?\\.?(?![a-z]))?|\\d{1,2}(?:\\.\\d{2})?\\s*(?:[ap]\\.?m\\.?|[ap])(?![a-z])|noon|midday|midnight))';
const WINDOW = new RegExp(
  `(?:from\\s+|between\\s+)?(${TIME}|\\d{1,2})\\s*(?:-|to|until|till|and|,?\\s*(?:and\\s+)?off(?: at)?)\\s*(${TIME}|\\d{1,2})(?![\\d.:"'%]|\\s*(?:cm|mm|in|ft|l|g|w|h|k|hours?|%|mol|gal|par|ppfd|weeks?|days?|lb|kg|m)(?![a-z]))`,
);
const SINGLE = new RegExp(`(?:at|from|on at|starting(?: at)?|start(?:s)?(?: at)?|on)\\s+(${TIME})|(${TIME})`);

/** What the clock words of a message give, or the stretches of the day of which one must be chosen. */
export interface ClockReading {
  readonly roles: readonly TextRole[];
  readonly given: Given;
  readonly windows?: readonly ClockWindow[];
}

const NOTHING: ClockReading = { roles: [], given: {} };

/** Of all that a tank keeps a time of day is only the one whose words are said: "up since 4 am" switches no light on. */
const isNamed = (input: Input, words: Words): boolean =>
  (input.words ?? []).some((word) => !isLittle(word) && holdsPhrase(words, word));

/** Clock times of a message for inputs that are times of day. A window, "10 to 8", fills a start and its hours, or a start and an end. @param strict only where the input's own words are said */
export function clockRoles(
  inputs: Readonly<Record<string, Input>>,
  text: string,
  words: Words,
  strict = false,
): ClockReading {
  const clockIds = Object.entries(inputs)
    .filter(([, input]) => input.kind === 'clock' && (!strict || isNamed(input, words)))
    .map(([id]) => id);
  if (clockIds.length === 0) return NOTHING;
  const window = windowIn(text);
  const read = window && lightWindow(window[1]!, window[2]!);
  if (window && read && read.kind !== 'none') {
    const place = { start: window.index!, end: window.index! + window[0].length };
    if (read.kind === 'window') return windowRoles(clockIds, inputs, words, read, place);
    return { roles: [{ id: clockIds[0]!, text: '', ...place }], given: {}, windows: read.windows };
  }
  const single = text.match(SINGLE);
  const time = single?.[1] ?? single?.[2];
  if (!single || time === undefined || readClock(time) === undefined) return NOTHING;
  const start = single.index!;
  const id = namedBefore(clockIds, inputs, words, single.index! + single[0].indexOf(time)) ?? clockIds[0]!;
  return { roles: [{ id, text: time.trim(), start, end: start + single[0].length }], given: {} };
}

/** How far before a time the word may stand that says which it is, in characters. */
const JUST_BEFORE = 6;

/** Of several times of day the one whose word leads to the time: "until 11 pm". */
function namedBefore(
  ids: readonly string[],
  inputs: Readonly<Record<string, Input>>,
  words: Words,
  start: number,
): string | undefined {
  return ids.find((id) =>
    (inputs[id]!.words ?? []).some((word) =>
      findPhrase(words, word).some(({ end }) => end <= start && start - end <= JUST_BEFORE),
    ),
  );
}

/** "10 to 8" is a window of the day; "1-1/2 in" is a size, and "38 to 35 ppt" is neither. */
function windowIn(text: string): RegExpMatchArray | null {
  const found = text.match(WINDOW);
  if (!found) return null;
  const behind = text.slice(found.index! + found[0].length);
  return /^\s*\/\s*\d/.test(behind) ? null : found;
}

function windowRoles(
  clockIds: readonly string[],
  inputs: Readonly<Record<string, Input>>,
  words: Words,
  { on, off: end, hours }: ClockWindow,
  place: { start: number; end: number },
): ClockReading {
  const off = clockText(end);
  const pair = clockIds.filter((id) => /_(?:from|to)$/.test(id));
  const viewing = ['view', 'see', 'watch', 'viewing', 'home', 'look at'].some((word) => holdsPhrase(words, word));
  if (viewing && pair.length === 2) {
    return {
      roles: [
        { id: pair[0]!, text: clockText(on), ...place },
        { id: pair[1]!, text: off, ...place },
      ],
      given: {},
    };
  }
  const start = clockIds.find((id) => id.endsWith('_on')) ?? clockIds[0]!;
  const length = Object.keys(inputs).find((id) => id === start.replace(/_on$/, '_hours'));
  const given: Given = length === undefined ? {} : { [length]: { si: hours, unit: 'h', from: 'message' } };
  return { roles: [{ id: start, text: clockText(on), ...place }], given };
}
