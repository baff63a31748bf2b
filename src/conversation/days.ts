import { dayAndMonth } from '../core/quantity/date-text.js';
import type { DateFound, Which } from '../language/dates.js';
import { normalText } from '../language/normal-text.js';
import { hintsFor, type Turn, zoneOf } from './turn.js';

/** Today where the member is, as `YYYY-MM-DD`. */
export async function today(turn: Turn): Promise<string> {
  const { dayAt } = await import('../core/wall-clock.js');
  return dayAt(turn.clock.now(), zoneOf(turn));
}

/** The day that a text names, where the member is. */
export async function findDay(turn: Turn, text: string, which: Which): Promise<DateFound | undefined> {
  const { findDate } = await import('../language/dates.js');
  return findDate(normalText(text).text, hintsFor(turn, []), which);
}

/** The day that a text names, as `YYYY-MM-DD`, for the reply to this message, which says how it was read. */
export async function dayNamed(turn: Turn, text: string, which: Which): Promise<string | undefined> {
  const found = await findDay(turn, text, which);
  noteDay(turn, found);
  return found?.date;
}

/** The reply says how a day was read that could have been another. */
export function noteDay(turn: Turn, found: DateFound | undefined): void {
  if (found?.ambiguous) turn.notes.add(`“${found.ambiguous}” is read as ${dayAndMonth(found.date)}.`);
  if (found?.counted) noteZone(turn);
}

/** The reply depends on the day: once it says in which zone days are counted while the member said none. */
export function noteZone({ zone, dialogue, notes }: Turn): void {
  if (zone !== undefined || dialogue.utcSaid) return;
  dialogue.utcSaid = true;
  notes.add('Days are counted in UTC: say, for example, “my time zone is Lisbon” for your own.');
}
