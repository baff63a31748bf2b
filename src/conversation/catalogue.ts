import { quantityTable } from '../../data/quantities.js';
import { type Calculation, type Condition, hasDefault, type Input } from '../core/calculation.js';
import { calculations } from '../core/calculations/index.js';
import { functions } from '../core/functions.js';
import { toSI, unitNamed } from '../core/quantity/units.js';
import { catalogueUnit } from './structured.js';

export const calculationList: readonly Calculation[] = calculations;
const byId = new Map(calculationList.map((calculation) => [calculation.id, calculation]));

export const calculationNamed = (id: string): Calculation | undefined => byId.get(id);

function inputEntry(input: Input): Record<string, unknown> {
  const common = {
    name: input.name,
    kind: input.kind,
    ask: input.ask,
    needed: neededText(input),
    ...(input.profile ? { profile: input.profile } : {}),
  };
  if (input.kind === 'quantity') {
    const unit = unitNamed(input.range[2]);
    return {
      ...common,
      symbol: input.symbol,
      quantity: input.quantity,
      unit: catalogueUnit(input).id,
      si_unit: quantityTable[input.quantity].si,
      range: {
        low: input.range[0],
        high: input.range[1],
        unit: input.range[2],
        si: [toSI(input.range[0], unit), toSI(input.range[1], unit)],
        ...(input.aboveLow ? { above_low: true } : {}),
      },
      ...(input.whole ? { whole: true } : {}),
      ...(input.default ? { default: input.default } : {}),
    };
  }
  if (input.kind === 'choice') {
    const options = Object.fromEntries(
      Object.entries(input.options).map(([option, { label, gives }]) => [
        option,
        { label, ...(gives ? { gives } : {}) },
      ]),
    );
    return {
      ...common,
      options,
      ...(input.default ? { default: input.default } : {}),
      ...(input.source ? { source: input.source } : {}),
    };
  }
  return input.kind === 'lookup' ? { ...common, suggestions: input.suggestions } : common;
}

const neededText = (input: Input): boolean | Condition => !hasDefault(input) && (input.needed ?? true);

function calculationEntry(calculation: Calculation): Record<string, unknown> {
  const { id, slash, title, question, part, inputs, oneOf, constants, steps, results, cautions, sources, examples } =
    calculation;
  return {
    id,
    slash,
    title,
    question,
    part,
    inputs: Object.fromEntries(Object.entries(inputs).map(([name, input]) => [name, inputEntry(input)])),
    ...(oneOf.length > 0 ? { one_of: oneOf } : {}),
    constants,
    steps,
    results: Object.fromEntries(
      Object.entries(results).map(([name, result]) => [
        name,
        result.kind === 'quantity' ? { ...result, si_unit: quantityTable[result.quantity].si } : result,
      ]),
    ),
    cautions,
    sources,
    examples,
  };
}

/** Everything that can be asked, as one JSON document. */
export function catalogue(): Record<string, unknown> {
  return {
    calculations: calculationList.map(calculationEntry),
    functions: [...functions.values()].map(({ name, args, meaning, source }) => ({
      name,
      args,
      meaning,
      source: source ?? 'school algebra',
    })),
  };
}
