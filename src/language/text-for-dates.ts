import { type Mention, measurementsIn } from './measurements.js';
import { numberAt } from './number-words.js';

/** A day and a month with or without a year, or a fraction. */
export const SLASHED = /(?<![\d/.-])(\d{1,2})\/(\d{1,2})(?=\/(?:\d{4}|\d{2})(?!\d)|(?![\d/]))/;
/** Parts that an inch or a tank is cut into; 5/30 is a date. */
const FRACTION = /\/(?:2|3|4|8|16)$/;
const DAY_STARTS = /\b(?:on|by|since|from|until|till|date|dated)\s+$/;
/** What may stand behind a date; behind the size of a pipe stands the pipe. */
export const DAY_ENDS = /^\s*(?:$|[.,;:!?)]|(?:and|with|at|for|please|this|next|last)\b)/;
const SPAN_STARTS = /\b(?:in|within)\s+(?:about\s+|around\s+)?$/;
const SPAN_ENDS = /^\s+(?:ago|earlier|later|hence|from now)\b/;

/**
 * A folded text as a reader of dates should see it, place for place: measurements blanked out, "two and a half weeks ago" in
 * digits, and `3/4` with its month first. A span of time stays where it leads from now to a day.
 */
export function textForDates(folded: string, monthFirst: boolean): string {
  let text = folded;
  for (const mention of measurementsIn(folded)) {
    const { start, end } = mention;
    text = text.slice(0, start) + seenAs(mention, folded).padStart(end - start) + text.slice(end);
  }
  return monthFirst ? text : text.replace(new RegExp(SLASHED, 'g'), '$2/$1');
}

/** What is left of a number: nothing where it measures something. Never longer than it was. */
function seenAs({ start, end, units, word, group }: Mention, text: string): string {
  const said = text.slice(start, end);
  const [before, behind] = [text.slice(0, start), text.slice(end)];
  const alone = said === text.trim();
  if (units.some(({ quantities }) => quantities.includes('time')))
    return alone || SPAN_STARTS.test(before) || SPAN_ENDS.test(behind) ? inDigits(said) : '';
  if (group) return '';
  if (/^\d{1,2}\/\d{1,2}$/.test(said)) {
    const placed = alone || (DAY_STARTS.test(before) && DAY_ENDS.test(behind));
    return placed || !FRACTION.test(said) ? said : '';
  }
  const bare = /^\d+(?:[.,]\d+)?$/.test(said) || (word === true && units.length === 0);
  return bare ? said : '';
}

function inDigits(span: string): string {
  const number = numberAt(span, 0);
  const digits = number ? `${Number(number.value.toFixed(2))} ${span.slice(number.end).trim()}` : span;
  return digits.length < span.length ? digits : span;
}
