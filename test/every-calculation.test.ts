import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unitTable } from '../data/units.js';
import { calculationList } from '../src/conversation/catalogue.js';
import { answerIn } from '../src/core/answer.js';
import type { Calculation, Input, QuantityInput } from '../src/core/calculation.js';
import type { Given, GivenValue } from '../src/core/outcome.js';
import { fromSI, toSI, unitNamed } from '../src/core/quantity/units.js';
import { run } from '../src/core/run.js';
import { METRIC, US } from '../src/core/show-value.js';
import { evaluate } from './independent-evaluator.js';

/** The same draws in every run; change it to look elsewhere. */
const SEED = 20270301;

/** Values in a thousand steps from one end of the range to the other, both ends included. */
const bounds = ({ range }: QuantityInput): [number, number] => {
  const unit = unitNamed(range[2]);
  return [toSI(range[0], unit), toSI(range[1], unit)];
};

function anyValue(input: Input): fc.Arbitrary<GivenValue | undefined> {
  switch (input.kind) {
    case 'quantity': {
      const [low, high] = bounds(input);
      const number = input.whole
        ? fc.integer({ min: Math.ceil(low), max: Math.floor(Math.min(high, low + 30)) })
        : fc.integer({ min: 0, max: 1000 }).map((step) => low + ((high - low) * step) / 1000);
      return fc.option(
        number.map((si) => ({ si, from: 'message' as const })),
        { nil: undefined, freq: 6 },
      );
    }
    case 'choice':
      return fc.option(
        fc.constantFrom(...Object.keys(input.options)).map((text) => ({ text, from: 'message' as const })),
        { nil: undefined },
      );
    case 'clock':
      return fc.option(
        fc.integer({ min: 0, max: 1439 }).map((m) => ({
          text: `${String(Math.floor(m / 60)).padStart(2, '0')}:${String(m % 60).padStart(2, '0')}`,
          from: 'message' as const,
        })),
        { nil: undefined, freq: 6 },
      );
    case 'date':
      return fc.option(
        fc
          .constantFrom('2027-01-01', '2027-06-21', '2028-02-29', '2027-12-31')
          .map((text) => ({ text, from: 'message' as const })),
        { nil: undefined },
      );
    case 'lookup':
      return fc.option(
        fc.constantFrom(...input.suggestions).map((text) => ({ text, from: 'message' as const })),
        { nil: undefined },
      );
  }
}

const anyGiven = ({ inputs }: Calculation): fc.Arbitrary<Given> =>
  fc
    .record(Object.fromEntries(Object.entries(inputs).map(([id, input]) => [id, anyValue(input)])))
    .map((values) => Object.fromEntries(Object.entries(values).flatMap(([id, value]) => (value ? [[id, value]] : []))));

describe('any inputs within their ranges', () => {
  for (const calculation of calculationList) {
    test(`${calculation.id}: an answer that holds together, a question, or a refusal in a sentence`, () => {
      fc.assert(
        fc.property(anyGiven(calculation), (given) => {
          const outcome = run(calculation, given);
          if (outcome.kind === 'question') {
            expect(outcome.asks.length).toBeGreaterThan(0);
          } else if (outcome.kind === 'refusal') {
            for (const { text } of outcome.refusals) expect(text).toMatch(/^.{10,}[.?!]$/s);
          } else {
            for (const { formula, values, si } of answerIn(outcome, METRIC).steps) {
              const again = evaluate(formula, values);
              expect(
                Object.is(again, si) ||
                  Math.abs(again - si) <= 1e-9 * Math.max(Math.abs(si), 1e-300) ||
                  (Number.isNaN(again) && Number.isNaN(si)),
                `${formula} gives ${again}, not ${si}`,
              ).toBe(true);
            }
            for (const { id, value, low, high } of outcome.results) {
              if (typeof value === 'number') expect(Number.isFinite(value), id).toBe(true);
              if (typeof value === 'number' && low !== undefined && high !== undefined) {
                const slack = 1e-9 * Math.abs(value);
                expect(low, `${id} low`).toBeLessThanOrEqual(value + slack);
                expect(high, `${id} high`).toBeGreaterThanOrEqual(value - slack);
              }
            }
            expect(answerIn(outcome, US).headline).not.toMatch(/unknown|NaN|undefined|\{/);
          }
        }),
        { numRuns: 60, seed: SEED },
      );
    });
  }
});

describe('US and metric give the same', () => {
  for (const calculation of calculationList) {
    test(calculation.id, () => {
      fc.assert(
        fc.property(anyGiven(calculation), (given) => {
          const said = Object.fromEntries(
            Object.entries(given).map(([id, value]) => {
              const input = calculation.inputs[id]!;
              if (input.kind !== 'quantity' || !('si' in value)) return [id, value];
              const units = unitTable.filter(({ quantities }) => quantities.includes(input.quantity));
              const unit = units[units.length - 1]!;
              return [id, { ...value, si: toSI(fromSI(value.si, unit), unit), unit: unit.id }];
            }),
          );
          const [a, b] = [run(calculation, given), run(calculation, said)];
          expect(b.kind).toBe(a.kind);
          if (a.kind !== 'answer' || b.kind !== 'answer') return;
          const [metric, us] = [answerIn(a, METRIC), answerIn(b, US)];
          for (const result of metric.results) {
            const other = us.results.find(({ id }) => id === result.id)?.si;
            if (typeof result.si === 'number' && typeof other === 'number') {
              expect(Math.abs(other - result.si), result.id).toBeLessThanOrEqual(
                1e-6 * Math.max(1e-9, Math.abs(result.si)),
              );
            }
          }
        }),
        { numRuns: 15, seed: SEED },
      );
    });
  }
});
