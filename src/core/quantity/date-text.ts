/** Day of the year, 1 to 366, of `YYYY-MM-DD`; undefined when there is no such day. */
export function dayOfYear(text: string): number | undefined {
  const match = text.match(/^(\d{4})-(\d{2})-(\d{2})$/);
  if (!match) return undefined;
  const [year, month, day] = match.slice(1).map(Number) as [number, number, number];
  const at = new Date(Date.UTC(year, month - 1, day));
  if (at.getUTCMonth() !== month - 1 || at.getUTCDate() !== day) return undefined;
  return Math.round((at.getTime() - Date.UTC(year, 0, 1)) / 86_400_000) + 1;
}
