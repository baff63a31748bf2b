import * as chrono from 'chrono-node';

/**
 * A calendar date from what a person wrote, as `YYYY-MM-DD`. "Today" and dates without a year take the reference.
 * @returns undefined when no day is named
 */
export function readDate(text: string, reference = new Date(Date.UTC(2027, 0, 1, 12))): string | undefined {
  if (/^\d{4}-\d{2}-\d{2}$/.test(text.trim())) return text.trim();
  const [found] = chrono.parse(text, { instant: reference, timezone: 0 });
  if (!found || !(found.start.isCertain('day') || found.start.isCertain('weekday'))) return undefined;
  const [year, month, day] = [found.start.get('year')!, found.start.get('month')!, found.start.get('day')!];
  return `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}
