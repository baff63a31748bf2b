import * as chrono from 'chrono-node/en';
import { dateAfter, dayOfYear } from '../core/quantity/date-text.js';
import { type WallClock, wallClock } from '../core/wall-clock.js';
import { numberAt } from './number-words.js';
import type { Hints } from './readings.js';
import { DAY_ENDS, SLASHED, textForDates } from './text-for-dates.js';

/** A stretch of a text. */
interface Place {
  readonly start: number;
  readonly end: number;
}

export interface DateFound extends Place {
  /** `YYYY-MM-DD`. */
  readonly date: string;
  /** It was counted from today: in another time zone it may be another day. */
  readonly counted: boolean;
  /** The words, where their day and month could stand the other way round: `3/4`. */
  readonly ambiguous?: string;
}

/** Of several days that are called the same: "Friday" of a thing done is the last one, of a thing planned the next. */
export type Which = 'last' | 'nearest' | 'next';

/**
 * A calendar date in what a person wrote, in their own time zone and their own order of day and month. A date without its
 * year is the nearest one, or the next where that is wanted. Numbers that measure something are no dates.
 * @returns undefined when no day is named
 */
export function findDate(
  folded: string,
  hints: Pick<Hints, 'now' | 'zone' | 'preferences'>,
  which: Which = 'nearest',
): DateFound | undefined {
  const lead = leadTo(folded);
  const named = readDay(lead ? blanked(folded, lead) : folded, hints, which);
  if (!named || !isDay(named.date)) return undefined;
  if (lead?.end !== named.start) return named;
  const date = dateAfter(named.date, lead.days);
  return isDay(date) ? { ...named, date, start: lead.start } : undefined;
}

/** A day that there is, in a year that a build could speak of: what is counted from it stays a day too. */
const isDay = (date: string): boolean => /^(?:19|20|21)\d{2}-/.test(date) && dayOfYear(date) !== undefined;

const blanked = (text: string, { start, end }: Place): string => text.slice(0, start).padEnd(end) + text.slice(end);

/** Days that lead beyond every year that is read. */
const MOST_AHEAD = 100_000;

/** "Two weeks from" the day that follows. */
function leadTo(text: string): (Place & { readonly days: number }) | undefined {
  const match = text.match(/\b([a-z]+|\d+) (day|week)s? (?:from|after) (?!now\b)/);
  const count = match && (/^an?$/.test(match[1]!) ? 1 : numberAt(match[1]!, 0)?.value);
  if (!match || !Number.isInteger(count)) return undefined;
  const start = match.index!;
  const days = Math.min(count! * (match[2] === 'week' ? 7 : 1), MOST_AHEAD);
  return { days, start, end: start + match[0].length };
}

function readDay(
  folded: string,
  { now, zone, preferences }: Pick<Hints, 'now' | 'zone' | 'preferences'>,
  which: Which,
): DateFound | undefined {
  const iso = folded.match(/\b\d{4}-\d{2}-\d{2}\b/);
  if (iso) {
    const [date] = iso;
    const start = iso.index!;
    return { date, start, end: start + date.length, counted: false };
  }
  const wall = wallClock(now, zone);
  const found = dayInWords(textForDates(folded, writesMonthFirst(zone, preferences.system)), wall, which);
  if (!found?.exact) return dayOfMonth(folded, wall.date, which) ?? found?.day;
  const ambiguous = ambiguousIn(folded.slice(found.day.start, found.day.end));
  return { ...found.day, ...(ambiguous === undefined ? {} : { ambiguous }) };
}

const writesMonthFirst = (zone: string, system: Hints['preferences']['system']): boolean =>
  system === 'us' || zone.startsWith('America/') || zone === 'Pacific/Honolulu';

function ambiguousIn(text: string): string | undefined {
  const [said, first, second] = text.match(SLASHED) ?? [];
  return first !== second && Number(first) <= 12 && Number(second) <= 12 ? said : undefined;
}

interface InWords {
  readonly day: DateFound;
  /** It was said by more than the day of the week. */
  readonly exact: boolean;
}

/** "In a month" is a day, "next month" is none. */
const MONTHS_ON = /^(?:in|within)\b|\b(?:ago|later|from now)$/;
const COUNTED = /^casualReference|^result\/relativeDate|EndOfCurrentMonth/;

/** What chrono reads. It takes the time on the member's wall for UTC: so it counts their days. */
function dayInWords(text: string, { date: today, seconds }: WallClock, which: Which): InWords | undefined {
  const reference = { instant: new Date(Date.parse(`${today}T00:00:00Z`) + seconds * 1000), timezone: 0 };
  const days = chrono
    .parse(text, reference, { forwardDate: which === 'next' && !/\blast\b/.test(text) })
    .filter((day) => namesDay(day, text.trim(), which));
  const found = days.find(({ start }) => start.isCertain('day')) ?? days[0];
  if (!found) return undefined;
  const { start, index, text: said } = found;
  const [year, month, day] = [start.get('year')!, start.get('month')!, start.get('day')!];
  const date = `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
  const dayOfWeek = !start.isCertain('day') && start.isCertain('weekday');
  const over = which === 'last' && dayOfWeek && date > today && !/\b(?:this|next|coming)\b/.test(said);
  return {
    day: {
      date: over ? dateAfter(date, -7) : date,
      start: index,
      end: index + said.length,
      counted: dayOfWeek || [...start.tags()].some((tag) => COUNTED.test(tag)),
    },
    exact: !dayOfWeek,
  };
}

/** "The sun" and "it sat there" name no day, while "sun" alone does; what was done was not done "in 3 days". */
function namesDay({ start, text }: chrono.ParsedResult, whole: string, which: Which): boolean {
  if (which === 'last' && /^(?:in|within)\b/.test(text)) return false;
  if (start.isCertain('day')) return true;
  return start.isCertain('weekday')
    ? !/^(?:sun|sat)$/.test(text) || text === whole
    : start.tags().has('result/relativeDate') && MONTHS_ON.test(text);
}

/** "The 5th". */
const ORDINAL = /\b(?:the|on) (\d{1,2})(?:st|nd|rd|th)\b/g;
/** Between two months that have a 31st lies at most one that has none. */
const LONGEST_WAIT = 62;

function dayOfMonth(folded: string, today: string, which: Which): DateFound | undefined {
  const match = [...folded.matchAll(ORDINAL)].find(({ 0: said, index }) =>
    DAY_ENDS.test(folded.slice(index + said.length)),
  );
  if (!match) return undefined;
  const back = which === 'next' ? [] : [-1];
  const ahead = which === 'last' ? [] : [1];
  for (let away = 0; away <= LONGEST_WAIT; away += 1) {
    const date = [...back, ...ahead]
      .map((sign) => dateAfter(today, sign * away))
      .find((day) => Number(day.slice(-2)) === Number(match[1]));
    if (date) return { date, start: match.index, end: match.index + match[0].length, counted: true };
  }
  return undefined;
}
