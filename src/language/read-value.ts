import { exampleOf } from '../core/answer.js';
import type { Input } from '../core/calculation.js';
import type { GivenValue } from '../core/outcome.js';
import { readClock } from '../core/quantity/clock-text.js';
import { forReading, withArticle, withFigures } from '../core/quantity/number.js';
import { fromSI, type UnitRow, unitNamed } from '../core/quantity/units.js';
import { optionMeant } from './choices.js';
import { wordsOf } from './cues.js';
import type { DateFound } from './dates.js';
import { type Mention, measurementsIn } from './measurements.js';
import { normalText } from './normal-text.js';
import { type Hints, type Reading, readingsOf } from './readings.js';
import { unitsNamed } from './unit-words.js';

/** A text read as the value of one input. */
export type ReadValue =
  | { readonly value: GivenValue; readonly guessed: boolean; readonly day?: DateFound }
  | { readonly doubt: readonly Reading[]; readonly mention: Mention }
  | { readonly problem: string };

export const givenFrom = (reading: Reading): GivenValue => ({
  si: reading.si,
  unit: reading.unit.id,
  from: 'message',
  ...(reading.low === undefined || reading.high === undefined ? {} : { low: reading.low, high: reading.high }),
});

/** Reads what somebody typed for one input: an option of a command, or the answer to its question. */
export async function readValue(input: Input, text: string, hints: Hints): Promise<ReadValue> {
  const normal = normalText(text);
  if (input.kind === 'quantity') {
    const mentions = measurementsIn(normal.text);
    const read = mentions
      .map((mention) => ({ mention, readings: readingsOf(input, mention, hints) }))
      .find(({ readings }) => readings.length > 0);
    if (read) {
      if (read.readings.length > 1) return { doubt: read.readings, mention: read.mention };
      return { value: givenFrom(read.readings[0]!), guessed: read.readings[0]!.guessed };
    }
    const [first] = mentions;
    if (first?.units[0]) {
      return {
        problem: `I read “${text.trim()}” as ${withArticle(first.units[0].quantities[0]!)}, but the ${input.name} is ${withArticle(input.quantity)}: ${exampleOf(input)} would be right.`,
      };
    }
    return {
      problem: `I can't read a number in “${shortened(text)}” for the ${input.name}: ${exampleOf(input)} would be right.`,
    };
  }
  if (input.kind === 'choice') {
    const option = optionMeant(input, normal.text, wordsOf(normal.text));
    if (option !== undefined) return { value: { text: option, from: 'message' }, guessed: false };
    const labels = Object.values(input.options).map(({ label }) => label);
    return { problem: `“${shortened(text)}” is not one of the choices for the ${input.name}: ${labels.join('; ')}.` };
  }
  if (input.kind === 'clock') {
    const seconds = readClock(normal.text);
    if (seconds === undefined)
      return { problem: `“${shortened(text)}” is no time of day I can read: 14:30 or 2:30 pm would be right.` };
    return { value: { text: normal.text.trim(), from: 'message' }, guessed: false };
  }
  if (input.kind === 'date') {
    const { findDate } = await import('./dates.js');
    const day = findDate(normal.text, hints);
    return day
      ? { value: { text: day.date, from: 'message' }, guessed: false, day }
      : { problem: `“${shortened(text)}” is no date I can read: 21 June or 2027-06-21 would be right.` };
  }
  const found = input.read(normal.text, {});
  return typeof found === 'string'
    ? { problem: found }
    : { value: { text: normal.text.trim(), from: 'message' }, guessed: false };
}

const LONGEST_QUOTE = 60;
export const shortened = (text: string): string =>
  text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE)}…` : text;

/** Which of several readings an answer means, by the unit that it names or by its number; undefined when it leaves that open. */
export function readingMeant<R extends { readonly si: number; readonly unit: string }>(
  text: string,
  readings: readonly R[],
): R | undefined {
  const normal = normalText(text);
  const mentions = measurementsIn(normal.text);
  const words = wordsOf(normal.text).list.map(({ text: word }) => unitsNamed(word));
  // "US tons" as a whole, then the units of numbers, then the last word: the "in" of "in cm" is none.
  const named = [unitsNamed(text), ...mentions.map(({ units }) => units), ...words.reverse()];
  const ofUnit = (units: readonly UnitRow[]) => readings.filter(({ unit }) => units.some(({ id }) => id === unit));
  const byUnit = named.map(ofUnit).find(({ length }) => length === 1);
  if (byUnit) return byUnit[0];
  const plain = mentions.filter(({ other }) => !other?.asLikely).map(({ value }) => value);
  const byNumber = readings.filter(({ si, unit }) =>
    plain.some((value) => Math.abs(fromSI(si, unitNamed(unit)) - value) <= 1e-9 * Math.abs(value)),
  );
  return byNumber.length === 1 ? byNumber[0] : undefined;
}

/** "In which unit is the length: 60 in or 60 cm?" @param subject with its verb */
export function readingQuestion(subject: string, readings: readonly Reading[]): string {
  const oneUnit = readings.every(({ unit }) => unit === readings[0]!.unit);
  return `${oneUnit ? 'Which' : 'In which unit'} ${subject}: ${readingChoices(readings)}?`;
}

/** "60 in, or 60 cm?" */
export const readingChoices = (readings: readonly Pick<Reading, 'si' | 'unit'>[]): string =>
  readings.map(({ si, unit }) => `${forReading(withFigures(fromSI(si, unit), 6))} ${unit.shown}`).join(' or ');
