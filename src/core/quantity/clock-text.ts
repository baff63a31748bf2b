export const DAY_SECONDS = 86_400;

/** `HH:MM` of seconds after midnight, to the nearest minute. */
export function clockText(seconds: number): string {
  const minutes = Math.round(seconds / 60) % 1440;
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}

/** Seconds after midnight of `HH:MM`, `9`, `9pm`, `9:30 am`, `noon`, `midnight`; undefined when it is no time of day. */
export function readClock(text: string): number | undefined {
  const clean = text.trim().toLowerCase();
  if (clean === 'noon' || clean === 'midday') return 43_200;
  if (clean === 'midnight') return 0;
  const match = clean.match(/^(\d{1,2})(?:[:.h](\d{2}))?\s*(am|pm|a|p|a\.m\.|p\.m\.)?$/);
  if (!match) return undefined;
  const [, hourText, minuteText = '0', half] = match;
  let hour = Number(hourText);
  const minute = Number(minuteText);
  if (minute > 59 || hour > 24) return undefined;
  if (half) {
    if (hour < 1 || hour > 12) return undefined;
    hour = (hour % 12) + (half.startsWith('p') ? 12 : 0);
  }
  return ((hour % 24) * 60 + minute) * 60;
}
