import { Temporal } from 'temporal-polyfill';

/** What a calendar and a clock on the wall show. */
export interface WallClock {
  /** `YYYY-MM-DD`. */
  readonly date: string;
  /** The time that is shown, as whole seconds after 00:00; on the day that the clocks change not the time that has passed. */
  readonly seconds: number;
}

/** What the clocks of a zone show at an instant. @throws RangeError when there is no zone of that name */
export function wallClock(at: Date, zone: string): WallClock {
  const shown = Temporal.Instant.fromEpochMilliseconds(at.getTime()).toZonedDateTimeISO(zone);
  return {
    date: shown.toPlainDate().toString(),
    seconds: shown.hour * 3600 + shown.minute * 60 + shown.second,
  };
}

/** The day of an instant in a zone, as `YYYY-MM-DD`. @throws RangeError when there is no zone of that name */
export const dayAt = (at: Date, zone: string): string => wallClock(at, zone).date;

/**
 * The instant at which the clocks of a zone show a time. Two times in a year need a decision: one that comes twice, when the
 * clocks are put back, is the first of the two; one that is skipped, when they are put forward, is the first that comes
 * after the gap (2:30 becomes 3:00, not 3:30).
 * @throws RangeError when there is no such day, time of day or zone
 */
export function instantAt({ date, seconds }: WallClock, zone: string): Date {
  const time = { hour: Math.floor(seconds / 3600), minute: Math.floor(seconds / 60) % 60, second: seconds % 60 };
  const wanted = Temporal.PlainDate.from(date).toPlainDateTime(Temporal.PlainTime.from(time, { overflow: 'reject' }));
  const earlier = wanted.toZonedDateTime(zone, { disambiguation: 'earlier' });
  // Of a time that is skipped the earlier reading is a time before the gap.
  const skipped = !earlier.toPlainDateTime().equals(wanted);
  return new Date((skipped ? earlier.getTimeZoneTransition('next')! : earlier).epochMilliseconds);
}
