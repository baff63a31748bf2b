import { answerIn } from '../../src/core/answer.js';
import type { Calculation } from '../../src/core/calculation.js';
import type { Given, Outcome } from '../../src/core/outcome.js';
import { fromSI, toSI, unitNamed } from '../../src/core/quantity/units.js';
import { run } from '../../src/core/run.js';
import { METRIC } from '../../src/core/show-value.js';

/** What a member said: numbers with their unit, choices and looked-up things as text. */
export type Said = Readonly<Record<string, readonly [value: number, unit: string] | string>>;

export function outcomeOf(calculation: Calculation, said: Said): Outcome {
  const given: Given = Object.fromEntries(
    Object.entries(said).map(([id, value]) => [
      id,
      typeof value === 'string'
        ? { text: value, from: 'message' as const }
        : { si: toSI(value[0], unitNamed(value[1])), unit: value[1], from: 'message' as const },
    ]),
  );
  return run(calculation, given);
}

/** The answer's numbers by result id, in a unit. @throws Error when there is no answer, or no such number in it */
export function worked(calculation: Calculation, said: Said) {
  const outcome = outcomeOf(calculation, said);
  if (outcome.kind !== 'answer') throw new Error(`${calculation.id}: ${JSON.stringify(told(outcome))}`);
  const find = (id: string) => outcome.results.find((result) => result.id === id);
  const number = (value: unknown, unit: string, what: string) => {
    if (typeof value !== 'number') throw new Error(`${calculation.id} gives no ${what}`);
    return fromSI(value, unitNamed(unit));
  };
  return {
    value: (id: string, unit: string) => number(find(id)?.value, unit, id),
    low: (id: string, unit: string) => number(find(id)?.low, unit, `low of ${id}`),
    high: (id: string, unit: string) => number(find(id)?.high, unit, `high of ${id}`),
    outcome,
  };
}

/** What is asked for, or why it is refused. */
export function told(outcome: Outcome): readonly string[] {
  if (outcome.kind === 'question') return outcome.asks;
  return outcome.kind === 'refusal' ? outcome.refusals.map(({ text }) => text) : [];
}

/** The first line of the answer and the cautions under it, as a member with metric units reads them. */
export function spoken(calculation: Calculation, said: Said): { headline: string; cautions: readonly string[] } {
  const { outcome } = worked(calculation, said);
  const { headline, cautions } = answerIn(outcome, METRIC);
  return { headline, cautions: cautions.map(({ level, text }) => `${level}: ${text}`) };
}
