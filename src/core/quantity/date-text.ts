const DAY = 86_400_000;

/** Midnight UTC of `YYYY-MM-DD`; undefined when there is no such day. */
function instantOf(text: string): Date | undefined {
  const match = text.match(/^(\d{4})-(\d{2})-(\d{2})$/);
  if (!match) return undefined;
  const [year, month, day] = match.slice(1).map(Number) as [number, number, number];
  const at = new Date(Date.UTC(year, month - 1, day));
  return at.getUTCMonth() === month - 1 && at.getUTCDate() === day ? at : undefined;
}

/** Day of the year, 1 to 366, of `YYYY-MM-DD`; undefined when there is no such day. */
export function dayOfYear(text: string): number | undefined {
  const at = instantOf(text);
  return at && Math.round((at.getTime() - Date.UTC(at.getUTCFullYear(), 0, 1)) / DAY) + 1;
}

const known = (text: string): Date => {
  const at = instantOf(text);
  if (!at) throw new Error(`there is no day ${text}`);
  return at;
};

/** The day so many days later. @throws Error when there is no such day */
export const dateAfter = (text: string, days: number): string =>
  new Date(known(text).getTime() + days * DAY).toISOString().slice(0, 10);

/** Whole days from one day to another, negative backwards. @throws Error when there is no such day */
export const daysBetween = (from: string, to: string): number =>
  Math.round((known(to).getTime() - known(from).getTime()) / DAY);

const shown = new Intl.DateTimeFormat('en-GB', { weekday: 'short', day: 'numeric', month: 'short', timeZone: 'UTC' });
const long = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', timeZone: 'UTC' });

/** `Tue 1 Dec`, as a person reads it. */
export const shownDate = (text: string): string => shown.format(known(text)).replace(',', '');

/** `1 December`, where the month must not be mistaken. */
export const dayAndMonth = (text: string): string => long.format(known(text));
