import { DAY_SECONDS, readClock } from '../quantity/clock-text.js';

const HALF_DAY = DAY_SECONDS / 2;
const HOUR = 3_600;
const SHORTEST = 4 * HOUR;
const LONGEST = 16 * HOUR;
/** Lights that come on at a time given without a half of the day come on in this stretch. */
const USUAL_START = [7 * HOUR, 18 * HOUR] as const;

/** A stretch of the day, seconds after midnight; `hours` in seconds too, across midnight where need be. */
export interface ClockWindow {
  readonly on: number;
  readonly off: number;
  readonly hours: number;
}

export type WindowReading =
  | ({ readonly kind: 'window' } & ClockWindow)
  /** More than one stretch, or an unusual one, could be meant. */
  | { readonly kind: 'ask'; readonly windows: readonly ClockWindow[] }
  | { readonly kind: 'none' };

/** The times of day that a text can mean: one when it says which half of the day, else two. */
function meanings(text: string): { times: readonly number[]; open: boolean } {
  const at = readClock(text);
  if (at === undefined) return { times: [], open: false };
  const said = /[a-z]|^0|^(1[3-9]|2[0-4])/.test(
    text
      .trim()
      .toLowerCase()
      .replace(/(\d)h(\d|$)/, '$1:$2'),
  );
  return said ? { times: [at], open: false } : { times: [at % HALF_DAY, (at % HALF_DAY) + HALF_DAY], open: true };
}

/**
 * Reads "10 to 8" as lit hours: every half of the day that the words leave open is tried, stretches of 4 to 16 hours are
 * kept, and of those whose start was left open the ones that begin by day. One left is the meaning; several are asked about.
 * The rule is common practice: lamps come on between breakfast and early evening.
 */
export function lightWindow(from: string, to: string): WindowReading {
  const start = meanings(from);
  const windows = start.times.flatMap((on) =>
    meanings(to)
      .times.map((off) => ({ on, off, hours: (((off - on) % DAY_SECONDS) + DAY_SECONDS) % DAY_SECONDS }))
      .filter(({ hours }) => hours >= SHORTEST && hours <= LONGEST),
  );
  if (windows.length === 0) return { kind: 'none' };
  const usual = start.open ? windows.filter(({ on }) => on >= USUAL_START[0] && on < USUAL_START[1]) : windows;
  return usual.length === 1 ? { kind: 'window', ...usual[0]! } : { kind: 'ask', windows };
}
