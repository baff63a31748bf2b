import { answerIn } from '../../src/core/answer.js';
import type { Calculation } from '../../src/core/calculation.js';
import { METRIC } from '../../src/core/show-value.js';
import { outcomeOf, type Said } from './worked.js';

/** What a member reads of an answer before the numbers. @throws Error when there is no answer */
export function read(calculation: Calculation, said: Said) {
  const outcome = outcomeOf(calculation, said);
  if (outcome.kind !== 'answer') throw new Error(`${calculation.id}: ${outcome.kind}`);
  const { headline, cautions } = answerIn(outcome, METRIC);
  return { headline, cautions: cautions.map(({ level, text }) => `${level}: ${text}`) };
}

/** Whether one of the cautions matches. */
export const warns = (calculation: Calculation, said: Said, text: RegExp): boolean =>
  read(calculation, said).cautions.some((caution) => text.test(caution));
