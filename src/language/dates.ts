import * as chrono from 'chrono-node';

export interface DateFound {
  /** `YYYY-MM-DD`. */
  readonly date: string;
  readonly start: number;
  readonly end: number;
}

/**
 * A calendar date in what a person wrote. "Today" and dates without a year take the reference.
 * @param ahead "saturday" is the next one, not the nearest
 * @returns undefined when no day is named
 */
export function findDate(
  text: string,
  reference = new Date(Date.UTC(2027, 0, 1, 12)),
  ahead = false,
): DateFound | undefined {
  const iso = text.match(/\b\d{4}-\d{2}-\d{2}\b/);
  if (iso) return { date: iso[0], start: iso.index!, end: iso.index! + 10 };
  const found = chrono
    .parse(text, { instant: reference, timezone: 0 }, { forwardDate: ahead })
    .find(({ start }) => start.isCertain('day') || start.isCertain('weekday'));
  if (!found) return undefined;
  const [year, month, day] = [found.start.get('year')!, found.start.get('month')!, found.start.get('day')!];
  const date = `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
  return { date, start: found.index, end: found.index + found.text.length };
}
