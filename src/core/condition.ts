import type { Condition } from './calculation.js';
import {
  compile,
  type Formula,
  FormulaError,
  type Functions,
  parseFormula,
  type Shape,
  shapeOf,
  symbolsOf,
} from './formula.js';
import { dimensionText, same } from './quantity/dimension.js';

/** What a condition is judged on: SI values by symbol, what was given, and what was chosen. */
export interface Circumstances {
  readonly values: Readonly<Record<string, number>>;
  readonly given: ReadonlySet<string>;
  /** Inputs that nobody gave, at their default. */
  readonly assumed: ReadonlySet<string>;
  readonly choices: Readonly<Record<string, string>>;
}

type Comparator = '>=' | '<=' | '>' | '<' | '==';
const COMPARE: Record<Comparator, (a: number, b: number) => boolean> = {
  '>=': (a, b) => a >= b,
  '<=': (a, b) => a <= b,
  '>': (a, b) => a > b,
  '<': (a, b) => a < b,
  '==': (a, b) => a === b,
};

interface Comparison {
  readonly left: Formula;
  readonly right: Formula;
  readonly comparator: Comparator;
}

function readComparisons(text: string): Comparison[] {
  return text.split(/\s+and\s+/).map((part) => {
    const match = part.match(/^(.*?)(>=|<=|==|>|<)(.*)$/);
    if (!match) throw new FormulaError(`"${part}" compares nothing`);
    return { left: parseFormula(match[1]!), right: parseFormula(match[3]!), comparator: match[2] as Comparator };
  });
}

const compiled = new Map<string, (values: Readonly<Record<string, number>>) => boolean>();

function comparisonText(text: string, functions: Functions): (values: Readonly<Record<string, number>>) => boolean {
  const known = compiled.get(text);
  if (known) return known;
  const parts = readComparisons(text).map(({ left, right, comparator }) => {
    const [a, b] = [compile(left, functions), compile(right, functions)];
    return (values: Readonly<Record<string, number>>) => COMPARE[comparator](a(values), b(values));
  });
  const all = (values: Readonly<Record<string, number>>) => parts.every((part) => part(values));
  compiled.set(text, all);
  return all;
}

/** A comparison with a value that is not known is false: NaN compares to nothing. */
export function holds(condition: Condition | undefined, at: Circumstances, functions: Functions): boolean {
  if (condition === undefined) return true;
  if (typeof condition === 'string') return comparisonText(condition, functions)(at.values);
  if ('given' in condition) return at.given.has(condition.given);
  if ('assumed' in condition) return at.assumed.has(condition.assumed);
  if ('is' in condition) return at.choices[condition.is[0]] === condition.is[1];
  if ('not' in condition) return !holds(condition.not, at, functions);
  if ('any' in condition) return condition.any.some((part) => holds(part, at, functions));
  return condition.all.every((part) => holds(part, at, functions));
}

/** Symbols that a condition's comparisons read. */
export function symbolsOfCondition(condition: Condition): string[] {
  if (typeof condition === 'string')
    return readComparisons(condition).flatMap(({ left, right }) => [...symbolsOf(left), ...symbolsOf(right)]);
  if ('not' in condition) return symbolsOfCondition(condition.not);
  if ('any' in condition) return condition.any.flatMap(symbolsOfCondition);
  if ('all' in condition) return condition.all.flatMap(symbolsOfCondition);
  return [];
}

/**
 * Checks a condition when a calculation loads: its symbols exist and like is compared with like. A bare number stands for
 * the SI value of whatever it is compared with.
 * @throws FormulaError
 */
export function checkCondition(
  condition: Condition,
  symbols: ReadonlyMap<string, Shape>,
  inputs: ReadonlySet<string>,
  functions: Functions,
): void {
  if (typeof condition === 'string') {
    for (const { left, right } of readComparisons(condition)) {
      const [a, b] = [shapeOf(left, symbols, functions), shapeOf(right, symbols, functions)];
      const literal = left.kind === 'number' || right.kind === 'number' || right.kind === 'minus';
      if (!literal && !same(a.dimension, b.dimension)) {
        throw new FormulaError(
          `"${condition}" compares ${dimensionText(a.dimension)} with ${dimensionText(b.dimension)}`,
        );
      }
    }
    return;
  }
  const named =
    'given' in condition
      ? condition.given
      : 'assumed' in condition
        ? condition.assumed
        : 'is' in condition
          ? condition.is[0]
          : undefined;
  if (named !== undefined && !inputs.has(named))
    throw new FormulaError(`a condition names ${named}, which is no input`);
  const parts =
    'not' in condition ? [condition.not] : 'any' in condition ? condition.any : 'all' in condition ? condition.all : [];
  for (const part of parts) checkCondition(part, symbols, inputs, functions);
}
