import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, test } from 'vitest';
import { calculationNamed } from '../src/conversation/catalogue.js';
import { isUnit, toSI, unitNamed } from '../src/core/quantity/units.js';
import type { ReplyResult } from '../src/core/reply.js';
import { startTalk } from './conversation.js';
import { innerFunctions } from './reference/inner-functions.js';

const talk = await startTalk();
afterAll(() => talk.close());

interface Value {
  value: unknown;
  unit: string | null;
}
interface Tolerance {
  rel?: number;
  abs?: number;
  exact?: boolean;
  meaning?: string;
}
interface Case {
  calculation: string;
  case: string;
  inputs: Record<string, Value>;
  expected: Record<string, Value>;
  tolerance: Record<string, Tolerance>;
  source: string;
}

const load = (file: string): Case[] =>
  JSON.parse(readFileSync(new URL(`./reference/${file}.json`, import.meta.url), 'utf8'));
const cases = ['build-physics', 'water', 'light', 'water-and-light'].flatMap(load);

/** Result ids that are another result in another unit. */
const inOtherUnit = (id: string): string => id.replace(/_(us|imperial|mg)$/, '');

function siOf(value: number, unit: string | null): { si: number; scale: number } {
  if (unit === null || !isUnit(unit)) return { si: value, scale: 1 };
  const row = unitNamed(unit);
  return { si: toSI(value, row), scale: row.factor };
}

/** A number in SI, else the value as it stands: a label, a clock time, true or false. */
const comparable = ({ si, value }: ReplyResult): unknown =>
  value === null ? null : typeof value === 'string' || typeof value === 'boolean' ? value : si;

function check(id: string, got: unknown, expected: Value, tolerance: Tolerance): void {
  const message = `${id}: got ${JSON.stringify(got)}, want ${JSON.stringify(expected)}`;
  if (Array.isArray(expected.value)) {
    expect(Array.isArray(got), message).toBe(true);
    for (const [i, value] of expected.value.entries())
      check(`${id}[${i}]`, (got as unknown[])[i], { value, unit: expected.unit }, tolerance);
  } else if (typeof expected.value === 'number') {
    expect(typeof got, message).toBe('number');
    const { si, scale } = siOf(expected.value, expected.unit);
    const offset = expected.unit !== null && isUnit(expected.unit) ? (unitNamed(expected.unit).offset ?? 0) : 0;
    const allowed = Math.max(
      (tolerance.abs ?? 0) * scale,
      (tolerance.rel ?? 0) * Math.abs(si - offset),
      tolerance.exact ? 1e-9 * Math.abs(si) : 0,
    );
    expect(Math.abs((got as number) - si), message).toBeLessThanOrEqual(allowed + 1e-12);
  } else {
    expect(got, message).toEqual(expected.value);
  }
}

describe('check values of calculations, through the structured call', () => {
  for (const entry of cases.filter(({ calculation }) => calculationNamed(calculation))) {
    test(`${entry.calculation}: ${entry.case}`, async () => {
      const { calculation, inputs, expected, tolerance } = entry;
      const [reply] = await talk.sends({ calculation, inputs });
      if (expected.asks) {
        expect(reply!.kind).toBe('question');
        expect(reply!.asks).toEqual(expected.asks.value);
        return;
      }
      if (expected.refused) {
        expect(reply!.kind, reply!.text).toBe('refusal');
        return;
      }
      expect(reply!.kind, reply!.text).toBe('answer');
      for (const [id, wanted] of Object.entries(expected)) {
        const found =
          reply!.results.find((result) => result.id === id) ??
          reply!.results.find((result) => result.id === inOtherUnit(id));
        const input = reply!.inputs.find((used) => used.id === id);
        expect(found ?? input, `no result ${id}`).toBeDefined();
        check(
          id,
          found ? comparable(found) : typeof wanted.value === 'number' ? input!.si : input!.value,
          wanted,
          tolerance[id] ?? {},
        );
      }
    });
  }
});

describe('check values of inner functions', () => {
  for (const entry of cases.filter(({ calculation }) => calculation in innerFunctions)) {
    test(`${entry.calculation}: ${entry.case}`, () => {
      const values = Object.fromEntries(Object.entries(entry.inputs).map(([id, { value }]) => [id, value]));
      const results = innerFunctions[entry.calculation]!(values as Record<string, never>);
      for (const [id, expected] of Object.entries(entry.expected)) {
        check(id, results[id], { value: expected.value, unit: null }, entry.tolerance[id] ?? {});
      }
    });
  }
});

test('says which check values have nothing to run them yet', () => {
  const unbuilt = [...new Set(cases.map(({ calculation }) => calculation))].filter(
    (id) => !calculationNamed(id) && !(id in innerFunctions),
  );
  console.info(`not built yet (${unbuilt.length}): ${unbuilt.join(', ')}`);
  expect(cases.length).toBeGreaterThan(400);
});
