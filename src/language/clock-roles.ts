import type { Input } from '../core/calculation.js';
import { clockText, readClock } from '../core/quantity/clock-text.js';
import type { Given } from '../core/run.js';
import type { TextRole } from './choices.js';
import { holdsPhrase, type Words } from './cues.js';

const TIME =
  '(?:(?<![\\d.])(?:\\d{1,2}[:h]\\d{2}(?!\\d)\\s*(?:[ap]\\.?m?\\.?(?![a-z]))?|\\d{1,2}(?:\\.\\d{2})?\\s*(?:[ap]\\.?m\\.?|[ap])(?![a-z])|noon|midday|midnight))';
const WINDOW = new RegExp(
  `(?:from\\s+|between\\s+)?(${TIME}|\\d{1,2})\\s*(?:-|to|until|till|and)\\s*(${TIME}|\\d{1,2})(?![\\d.:"'%]|\\s*(?:cm|mm|in|ft|l|g|w|h|k|hours?|%|mol|gal|par|ppfd|weeks?|days?|lb|kg|m)(?![a-z]))`,
);
const SINGLE = new RegExp(`(?:at|from|on at|starting(?: at)?|start(?:s)?(?: at)?|on)\\s+(${TIME})|(${TIME})`);
const DAY_HOURS = 24;

/**
 * Clock times of a message for inputs that are times of day. A window, "10 to 8", fills a start and its hours, or a start and
 * an end; both half-days are tried and only a window of 4 to 16 hours that begins between 7:00 and 18:00 is taken as said.
 */
export function clockRoles(
  inputs: Readonly<Record<string, Input>>,
  text: string,
  words: Words,
): { roles: TextRole[]; given: Given } {
  const clockIds = Object.keys(inputs).filter((id) => inputs[id]!.kind === 'clock');
  if (clockIds.length === 0) return { roles: [], given: {} };
  const window = text.match(WINDOW);
  const hours = window && windowHours(window[1]!, window[2]!);
  if (window && hours)
    return windowRoles(clockIds, inputs, words, hours, { start: window.index!, end: window.index! + window[0].length });
  const single = text.match(SINGLE);
  const time = single?.[1] ?? single?.[2];
  if (!single || time === undefined || readClock(time) === undefined) return { roles: [], given: {} };
  const start = single.index!;
  return { roles: [{ id: clockIds[0]!, text: time.trim(), start, end: start + single[0].length }], given: {} };
}

interface Hours {
  readonly on: number;
  readonly hours: number;
}

const OPEN = /^\d{1,2}$/;

/** The one way to read two clock words as a lit day, or undefined when there are several. */
export function windowHours(from: string, to: string): Hours | undefined {
  const halves = (text: string): number[] => {
    const read = readClock(text);
    if (read === undefined) return [];
    const open = OPEN.test(text.trim()) && Number(text) >= 1 && Number(text) <= 12;
    return open ? [read % 43_200, (read % 43_200) + 43_200] : [read];
  };
  const openStart = OPEN.test(from.trim()) && Number(from) >= 1 && Number(from) <= 12;
  const pairs = halves(from).flatMap((on) =>
    halves(to).map((off) => ({ on, hours: ((off - on) / 3600 + DAY_HOURS) % DAY_HOURS })),
  );
  const fitting = pairs.filter(
    ({ on, hours }) => hours >= 4 && hours <= 16 && (!openStart || (on >= 7 * 3600 && on < 18 * 3600)),
  );
  return fitting.length === 1 ? fitting[0] : undefined;
}

function windowRoles(
  clockIds: readonly string[],
  inputs: Readonly<Record<string, Input>>,
  words: Words,
  { on, hours }: Hours,
  place: { start: number; end: number },
): { roles: TextRole[]; given: Given } {
  const off = clockText((on + hours * 3600) % 86_400);
  const pair = clockIds.filter((id) => /_(?:from|to)$/.test(id));
  const viewing = ['view', 'see', 'watch', 'viewing'].some((word) => holdsPhrase(words, word));
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
  const given: Given = length === undefined ? {} : { [length]: { si: hours * 3600, unit: 'h', from: 'message' } };
  return { roles: [{ id: start, text: clockText(on), ...place }], given };
}
