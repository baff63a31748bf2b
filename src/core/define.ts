import { quantityTable } from '../../data/quantities.js';
import {
  type Calculation,
  type CalculationSpec,
  type Condition,
  defaultsOf,
  type Input,
  type QuantityInput,
  type Step,
} from './calculation.js';
import { checkCondition } from './condition.js';
import { FormulaError, parseFormula, type Shape, shapeOf } from './formula.js';
import { functions } from './functions.js';
import { dimensionOf, dimensionText, same } from './quantity/dimension.js';
import { unitNamed } from './quantity/units.js';
import { isTemplate, numbered, writeOut } from './sum.js';

/** The coherent unit of a step: its quantity's, or the unit itself. */
export const siUnitOf = (of: Step['of']): string =>
  of in quantityTable ? quantityTable[of as keyof typeof quantityTable].si : of;

const shapeOfStep = (of: Step['of']): Shape => ({
  dimension: dimensionOf(siUnitOf(of)),
  absolute: of === 'temperature',
});

/**
 * Declares a calculation and checks it: every formula reads, every symbol is known when it is used, like is added to like,
 * each step has the dimension it says, conditions compare like with like, and the sentences name things that exist.
 * @throws Error that names the calculation and the place, so that a wrong declaration cannot start the program
 */
export function calculation(spec: CalculationSpec): Calculation {
  const whole: Calculation = {
    ...spec,
    oneOf: spec.oneOf ?? [],
    constants: spec.constants ?? {},
    rules: spec.rules ?? [],
  };
  const symbols = inputSymbols(whole);
  const inputs = new Set(Object.keys(whole.inputs));
  const named = new Set(
    Object.values(whole.inputs).flatMap((input) =>
      input.kind === 'lookup' ? symbolsOfInput(input).map(([symbol]) => symbol) : [],
    ),
  );
  const at = (place: string, check: () => void) => {
    try {
      check();
    } catch (error) {
      throw new Error(`${whole.id}, ${place}: ${error instanceof FormulaError ? error.message : String(error)}`);
    }
  };
  const judge = (place: string, condition: Condition | false | undefined) => {
    if (condition) at(place, () => checkCondition(condition, symbols, inputs, functions));
  };

  for (const [id, input] of Object.entries(whole.inputs)) {
    for (const fallback of input.kind === 'quantity' ? defaultsOf(input) : []) {
      if ('formula' in fallback)
        at(`default of ${id}`, () =>
          checkFormula(fallback.formula, shapeOfStep((input as QuantityInput).quantity), symbols),
        );
      judge(`default of ${id}`, fallback.when);
    }
    judge(`need of ${id}`, input.needed);
  }
  for (const step of whole.steps) {
    judge(`step ${step.symbol}`, step.when);
    at(`step ${step.symbol}`, () => {
      const shape = shapeOfStep(step.of);
      checkFormula(step.formula, shape, symbols);
      if (named.has(step.symbol)) throw new FormulaError(`${step.symbol} is set by an input`);
      const known = symbols.get(step.symbol);
      if (known && !same(known.dimension, shape.dimension))
        throw new FormulaError(`${step.symbol} already means something else`);
      symbols.set(step.symbol, shape);
    });
  }
  for (const rule of whole.rules) judge(`rule "${rule.because}"`, rule.refuse);
  for (const [id, result] of Object.entries(whole.results)) {
    judge(`result ${id}`, result.when);
    at(`result ${id}`, () => checkResult(result, symbols, inputs));
  }
  for (const entry of [...whole.cautions, ...whole.headline]) {
    judge(`"${entry.text}"`, entry.when);
    at(`"${entry.text}"`, () => checkPlaces(entry.text, whole, symbols));
  }
  if (whole.sources.length === 0) throw new Error(`${whole.id} names no source`);
  for (const ids of whole.oneOf) {
    for (const id of ids) if (!inputs.has(id)) throw new Error(`${whole.id}: oneOf names ${id}, which is no input`);
  }
  return Object.freeze(whole);
}

function inputSymbols({ inputs, constants }: Calculation): Map<string, Shape> {
  const symbols = new Map<string, Shape>();
  for (const [symbol, { unit }] of Object.entries(constants)) symbols.set(symbol, { dimension: dimensionOf(unit) });
  for (const [id, input] of Object.entries(inputs)) {
    for (const [symbol, shape] of symbolsOfInput(input)) {
      const known = symbols.get(symbol);
      // The rows of a log may come as one text or as a list for each column: the same symbols either way.
      const again =
        input.kind === 'choice' || (input.kind === 'lookup' && known && same(known.dimension, shape.dimension));
      if (known && !again) throw new Error(`input ${id}: the symbol ${symbol} is taken`);
      symbols.set(symbol, shape);
    }
  }
  return symbols;
}

function symbolsOfInput(input: Input): [string, Shape][] {
  switch (input.kind) {
    case 'quantity':
      unitNamed(input.range[2]);
      return [[input.symbol, shapeOfStep(input.quantity)]];
    case 'clock':
      return [[input.symbol, { dimension: dimensionOf('s') }]];
    case 'date':
      return [[input.symbol, { dimension: dimensionOf('1') }]];
    case 'choice':
    case 'lookup':
      return Object.entries(input.symbols ?? {}).flatMap(([name, unit]) =>
        numbered(name).map((symbol): [string, Shape] => [symbol, { dimension: dimensionOf(unit) }]),
      );
  }
}

function checkFormula(formula: string, shape: Shape, symbols: ReadonlyMap<string, Shape>): void {
  const text = isTemplate(formula) ? writeOut(formula, (symbol) => symbols.has(symbol)) : formula;
  if (text === undefined) throw new FormulaError(`the sum in "${formula}" has no terms`);
  const got = shapeOf(parseFormula(text), symbols, functions);
  if (!same(got.dimension, shape.dimension)) {
    throw new FormulaError(`"${formula}" gives ${dimensionText(got.dimension)}, not ${dimensionText(shape.dimension)}`);
  }
  if (Boolean(got.absolute) !== Boolean(shape.absolute)) {
    throw new FormulaError(`"${formula}" mixes up a temperature and a temperature difference`);
  }
}

function checkResult(
  result: Calculation['results'][string],
  symbols: ReadonlyMap<string, Shape>,
  inputs: ReadonlySet<string>,
): void {
  if (result.kind === 'quantity' || result.kind === 'clock') {
    const wanted = result.kind === 'clock' ? dimensionOf('s') : dimensionOf(quantityTable[result.quantity].si);
    const read = result.kind === 'clock' ? [result.symbol] : [result.symbol, result.low, result.high];
    for (const symbol of read.filter((name) => name !== undefined)) {
      const shape = symbols.get(symbol);
      if (!shape) throw new FormulaError(`unknown symbol: ${symbol}`);
      if (!same(shape.dimension, wanted)) throw new FormulaError(`${symbol} is ${dimensionText(shape.dimension)}`);
    }
  } else if (result.kind === 'flag') {
    checkCondition(result.holds, symbols, inputs, functions);
  } else if (result.kind === 'label') {
    for (const [, , when] of result.labels) if (when) checkCondition(when, symbols, inputs, functions);
  } else {
    const within = new Map(symbols).set(result.over, { dimension: dimensionOf('1') });
    shapeOf(parseFormula(result.formula), within, functions);
  }
}

/** `{id}` in a sentence: a result, an input, or a symbol of a step. */
export const PLACE = /\{([A-Za-z_][A-Za-z0-9_]*)(:[a-z]+)?\}/g;

function checkPlaces(text: string, { inputs, results }: Calculation, symbols: ReadonlyMap<string, Shape>): void {
  for (const [, name] of text.matchAll(PLACE)) {
    if (!(name! in results) && !(name! in inputs) && !symbols.has(name!))
      throw new FormulaError(`{${name}} names nothing`);
  }
}
