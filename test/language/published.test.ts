import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { QuantityName } from '../../data/quantities.js';
import { toSI } from '../../src/core/quantity/units.js';
import { measurementsIn } from '../../src/language/measurements.js';
import { normalText } from '../../src/language/normal-text.js';
import { deliberate } from './published/deliberate.js';

/** Cases that other people's test sets expect to be read, copied with where they come from; values in SI. */
interface Published {
  readonly source: string;
  readonly version: string;
  readonly licence: string;
  readonly quantity: QuantityName | 'number';
  /** A text and what is read of it; nothing where no value follows. */
  readonly cases: readonly (readonly [text: string, ...values: number[]])[];
}

const folder = new URL('./published/', import.meta.url);
const sets = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .map((name) => ({ name, ...(JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as Published) }));

/** The values of a text as a question for the quantity would take them: all of them, or what is first that fits. */
function valuesIn(text: string, quantity: Published['quantity']): number[] {
  return measurementsIn(normalText(text).text).flatMap(({ value, units }) => {
    if (quantity === 'number') return [value];
    const unit = units.find(({ quantities }) => quantities.includes(quantity));
    return unit ? [toSI(value, unit)] : [];
  });
}

const close = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-6 * Math.max(Math.abs(a), Math.abs(b));
const isRead = (text: string, quantity: Published['quantity'], values: readonly number[]): boolean => {
  const read = valuesIn(text, quantity);
  return read.length === values.length && read.every((value, i) => close(value, values[i]!));
};

const reasonFor = (set: string, text: string) =>
  deliberate.find(({ like, sets: only = '' }) => set.startsWith(only) && like.test(text));

describe.each(sets)('$name', ({ name, source, version, licence, quantity, cases }) => {
  test('says where it comes from', () => {
    for (const said of [source, version, licence]) expect(said).toMatch(/\S/);
  });
  const expected = cases.filter(([text]) => !reasonFor(name, text));
  test.each(expected.map(([text, ...values]) => ({ text, values })))('$text', ({ text, values }) => {
    expect(isRead(text, quantity, values), JSON.stringify([valuesIn(text, quantity), values])).toBe(true);
  });
});

test.each(deliberate)('$like is read otherwise: $reason', ({ like, sets: only = '' }) => {
  const fitting = sets
    .filter(({ name }) => name.startsWith(only))
    .flatMap(({ quantity, cases }) => cases.map(([text, ...values]) => ({ text, quantity, values })))
    .filter(({ text }) => like.test(text));
  expect(fitting).not.toEqual([]);
  for (const { text, quantity, values } of fitting) expect(isRead(text, quantity, values), text).toBe(false);
});
