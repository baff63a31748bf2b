import * as chrono from 'chrono-node';

export interface DateFound {
  /** `YYYY-MM-DD`. */
  readonly date: string;
  readonly start: number;
  readonly end: number;
}

/**
 * A calendar date in what a person wrote. "Today" is the day of `now` in UTC, since nobody says in which zone they write; a
 * date without its year is the nearest one.
 * @param ahead "saturday" is the next one, not the nearest
 * @returns undefined when no day is named
 */
export function findDate(text: string, now: Date, ahead = false): DateFound | undefined {
  const iso = text.match(/\b\d{4}-\d{2}-\d{2}\b/);
  if (iso) return { date: iso[0], start: iso.index!, end: iso.index! + 10 };
  const found = chrono
    .parse(text, { instant: now, timezone: 0 }, { forwardDate: ahead })
    .find(({ start }) => start.isCertain('day') || start.isCertain('weekday'));
  if (!found) return undefined;
  const [year, month, day] = [found.start.get('year')!, found.start.get('month')!, found.start.get('day')!];
  const date = `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
  return { date, start: found.index, end: found.index + found.text.length };
}
