import type { Calculation, Step } from './calculation.js';
import { type Circumstances, holds } from './condition.js';
import { compile, type Formula, parseFormula, symbolsOf } from './formula.js';
import { functions } from './functions.js';
import type { WorkedStep } from './outcome.js';
import { type Refusal, refusalForRule } from './refusal.js';
import { isTemplate, writeOut } from './sum.js';

const formulas = new Map<
  string,
  { tree: Formula; work: (values: Readonly<Record<string, number>>) => number; symbols: string[] }
>();

/** A formula's tree, its closure and its symbols, made once. */
export function readOnce(text: string) {
  let read = formulas.get(text);
  if (!read) {
    const tree = parseFormula(text);
    read = { tree, work: compile(tree, functions), symbols: symbolsOf(tree) };
    formulas.set(text, read);
  }
  return read;
}

/** Works one step. @returns undefined when one of its symbols has no value */
export function workStep(step: Step, values: Readonly<Record<string, number>>): WorkedStep | undefined {
  const text = isTemplate(step.formula)
    ? writeOut(step.formula, (symbol) => values[symbol] !== undefined)
    : step.formula;
  if (text === undefined) return undefined;
  const { tree, work, symbols } = readOnce(text);
  const used: Record<string, number> = {};
  for (const symbol of symbols) {
    const value = values[symbol];
    if (value === undefined) return undefined;
    used[symbol] = value;
  }
  return { step, formula: tree, values: used, si: work(used) };
}

/** Works the steps in order and writes their values into `at`. */
export function workSteps(
  calculation: Calculation,
  at: Circumstances & { readonly values: Record<string, number> },
): WorkedStep[] {
  const steps: WorkedStep[] = [];
  for (const step of calculation.steps) {
    if (at.values[step.symbol] !== undefined || !holds(step.when, at, functions)) continue;
    const worked = workStep(step, at.values);
    if (!worked) continue;
    at.values[step.symbol] = worked.si;
    steps.push(worked);
    if (Number.isNaN(worked.si) && brokenRules(calculation, at).length > 0) break;
  }
  return steps;
}

/** Refusals over several inputs, or over a step's value. */
export const brokenRules = (calculation: Calculation, at: Circumstances): Refusal[] =>
  calculation.rules.filter((rule) => holds(rule.refuse, at, functions)).map(refusalForRule);
