import type { Calculation } from './calculation.js';
import { holds } from './condition.js';
import { type Formula, partsOf } from './formula.js';
import { functions } from './functions.js';
import type { Given, Outcome, UsedInput, WorkedStep } from './outcome.js';
import { type Resolved, resolve } from './resolve.js';
import { cornersOf, otherVerdicts, outsideRange, readResults, withSpread } from './results.js';
import { brokenRules, workSteps } from './work-steps.js';

/**
 * Works a calculation from what was given.
 * @param spread false where nobody reads how far guesses move the results: every corner of the guesses is a run of its own
 * @returns an answer; the inputs still to be asked for; or the refusals, when a value is outside the model's range
 */
export function run(calculation: Calculation, given: Given, { spread = true } = {}): Outcome {
  const resolved = resolve(calculation, given);
  const { inputs, refusals } = resolved;
  refusals.push(...brokenRules(calculation, resolved));
  if (refusals.length > 0) return { kind: 'refusal', calculation, refusals, inputs };
  const asks = missing(calculation, resolved);
  if (asks.length > 0) return { kind: 'question', calculation, asks, inputs };

  const steps = [...resolved.steps, ...workSteps(calculation, resolved)];
  refusals.push(...brokenRules(calculation, resolved));
  const results = refusals.length > 0 ? [] : readResults(calculation, resolved);
  refusals.push(...results.flatMap((entry) => outsideRange(entry)));
  if (refusals.length > 0) return { kind: 'refusal', calculation, refusals, inputs };

  const cautions = calculation.cautions.filter((entry) => holds(entry.when, resolved, functions));
  const sources = [...calculation.sources, ...resolved.sources, ...functionSources(steps)];
  const corners = spread ? cornersOf(calculation, given, inputs) : [];
  return {
    kind: 'answer',
    calculation,
    inputs: [...inputs, ...constantsUsed(calculation, steps)],
    steps,
    results: withSpread(results, corners),
    cautions,
    otherVerdicts: otherVerdicts(calculation, resolved, corners),
    at: resolved,
    sources: [...new Set(sources)],
  };
}

/** The inputs that a calculation would still ask for, however the given values turn out. */
export const stillToAsk = (calculation: Calculation, given: Given): readonly string[] =>
  missing(calculation, resolve(calculation, given));

/** What must still be asked for, in the order of the declaration. */
function missing(calculation: Calculation, at: Resolved): string[] {
  const alternatives = new Set(calculation.oneOf.flat());
  const absent = Object.entries(calculation.inputs)
    .filter(([id, input]) => !at.given.has(id) && !alternatives.has(id) && input.needed !== false)
    .filter(
      ([, input]) =>
        input.needed === undefined || holds(input.needed as Exclude<typeof input.needed, false>, at, functions),
    )
    .map(([id]) => id);
  return [...absent, ...missingAlternative(calculation, at)];
}

function missingAlternative({ oneOf }: Calculation, at: Resolved): string[] {
  const counted = oneOf.map((ids) => ({ ids, lacking: ids.filter((id) => !at.given.has(id)) }));
  if (counted.length === 0 || counted.some(({ lacking }) => lacking.length === 0)) return [];
  const started = (entry: { ids: readonly string[]; lacking: string[] }) => entry.ids.length - entry.lacking.length;
  const best = counted.reduce((a, b) => (started(b) > started(a) ? b : a));
  return best.lacking;
}

function constantsUsed(calculation: Calculation, steps: readonly WorkedStep[]): UsedInput[] {
  const used = new Set(steps.flatMap(({ values }) => Object.keys(values)));
  return Object.entries(calculation.constants)
    .filter(([symbol]) => used.has(symbol))
    .map(([symbol, { name, value, unit }]) => ({
      id: symbol,
      from: 'table' as const,
      symbol,
      name,
      si: value,
      siUnit: unit,
    }));
}

function functionSources(steps: readonly WorkedStep[]): string[] {
  const names = new Set<string>();
  const visit = (node: Formula): void => {
    if (node.kind === 'call') names.add(node.name);
    partsOf(node).forEach(visit);
  };
  for (const { formula } of steps) visit(formula);
  return [...names].flatMap((name) => functions.get(name)?.source ?? []);
}
