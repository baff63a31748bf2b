import { answerIn } from '../../src/core/answer.js';
import type { Calculation } from '../../src/core/calculation.js';
import { METRIC, type Preferences } from '../../src/core/show-value.js';
import { type Said, worked } from './worked.js';

/** The first sentence of an answer, and every caution below it. */
export function spoken(calculation: Calculation, said: Said, preferences: Preferences = METRIC) {
  const { headline, cautions } = answerIn(worked(calculation, said).outcome, preferences);
  return { headline, cautions: cautions.map(({ level, text }) => `${level}: ${text}`).join('\n') };
}
