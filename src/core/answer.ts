import { quantityTable } from '../../data/quantities.js';
import type { Calculation, Input, Sentence } from './calculation.js';
import { holds } from './condition.js';
import { PLACE, siUnitOf } from './define.js';
import { printFormula } from './formula.js';
import { functions } from './functions.js';
import type { OtherVerdict, Outcome, UsedInput, WorkedResult, WorkedStep } from './outcome.js';
import { clockText } from './quantity/clock-text.js';
import { forReading } from './quantity/number.js';
import { fromSI, type UnitRow, unitNamed } from './quantity/units.js';
import type { ReplyInput, ReplyResult, ReplyStep } from './reply.js';
import { type SymbolUnits, showStep, unitText } from './show-step.js';
import {
  digits,
  displayed,
  type Preferences,
  show,
  showBoth,
  showInput,
  showRange,
  type ValueFormat,
} from './show-value.js';

type Answered = Outcome & { kind: 'answer' };

export interface Answer {
  readonly headline: string;
  readonly inputs: readonly ReplyInput[];
  readonly steps: readonly ReplyStep[];
  readonly results: readonly ReplyResult[];
  readonly cautions: readonly { readonly level: 'stop' | 'caution' | 'note'; readonly text: string }[];
  readonly sources: readonly string[];
}

const headlineOf = ({ calculation, at }: Answered): Sentence | undefined =>
  calculation.headline.find(({ when }) => holds(when, at, functions));

/** The results, those that the bottom line speaks of first. */
export function mainFirst(outcome: Answered): readonly WorkedResult[] {
  const places = [...(headlineOf(outcome)?.text.matchAll(PLACE) ?? [])].map(([, id]) => id);
  const spoken = ({ id }: WorkedResult) => places.includes(id);
  return [...outcome.results.filter(spoken), ...outcome.results.filter((entry) => !spoken(entry))];
}

/** An outcome worded in a member's units. */
export function answerIn(outcome: Answered, preferences: Preferences): Answer {
  const say = (sentence: Sentence) => fillIn(sentence.text, outcome, preferences);
  const units = symbolUnits(outcome);
  const headline = headlineOf(outcome);
  return {
    headline: headline ? say(headline) : outcome.calculation.title,
    inputs: outcome.inputs.map((used) => inputIn(used, preferences)),
    steps: outcome.steps.map((worked) => stepIn(worked, outcome, preferences, units)),
    results: outcome.results.map((worked) => resultIn(worked, preferences)),
    cautions: [
      ...outcome.cautions.map((entry) => ({ level: entry.level, text: say(entry) })),
      ...outcome.otherVerdicts.map((other) => ({
        level: 'caution' as const,
        text: atTheEdge(other, outcome, preferences),
      })),
    ],
    sources: outcome.sources,
  };
}

function atTheEdge(other: OtherVerdict, outcome: Answered, preferences: Preferences): string {
  const said =
    'refusal' in other ? other.refusal : fillIn(other.sentence.text, { ...outcome, ...other.corner }, preferences);
  return `At the edge of what is assumed here it comes out otherwise: ${said}`;
}

export function inputIn(used: UsedInput, preferences: Preferences): ReplyInput {
  const { id, name, from, input, si, text } = used;
  const si_unit = used.siUnit ?? '1';
  if (si !== undefined && input?.kind === 'quantity') {
    const shown = showInput(si, input, used.unit, preferences);
    const spread =
      used.low === undefined || used.high === undefined
        ? {}
        : { low: fromSI(used.low, shown.unit), high: fromSI(used.high, shown.unit) };
    const difference = input.quantity === 'temperature difference' ? { difference: true } : {};
    const read = saidRange(used, shown.unit) ?? shown.text;
    return {
      id,
      name,
      value: Number(shown.value),
      unit: shown.unit.shown,
      si,
      si_unit,
      from,
      shown: used.via === undefined ? read : `${read} (worked out: ${used.via})`,
      ...difference,
      ...spread,
    };
  }
  if (si !== undefined && text === undefined) {
    const unit = unitText(si_unit);
    // One number of a list that was said is told by the list itself.
    const listed = input === undefined && from !== 'table';
    const shown = listed ? '' : unit ? `${si} ${unit}` : String(si);
    return { id, name, value: si, unit, si, si_unit, from, shown };
  }
  const option = input?.kind === 'choice' ? input.options[text ?? '']?.label : undefined;
  return { id, name, value: text ?? '', unit: '', si: si ?? null, si_unit, from, shown: option ?? text ?? '' };
}

/** The range that somebody said. A range without a unit is a guess of ours, which is listed by its middle. */
const saidRange = ({ low, high, unit: said }: UsedInput, unit: UnitRow): string | undefined =>
  low === undefined || high === undefined || said === undefined ? undefined : showRange(low, high, unit);

const formatOf = (result: { quantity: ValueFormat['quantity'] } & Partial<ValueFormat>): ValueFormat => ({
  quantity: result.quantity,
  units: result.units,
  figures: result.figures,
  decimals: result.decimals,
});

function resultIn({ id, result, value, low, high }: WorkedResult, preferences: Preferences): ReplyResult {
  const common = { id, name: result.name };
  if (result.kind === 'quantity') {
    const si_unit = quantityTable[result.quantity].si;
    const format = formatOf(result);
    if (typeof value !== 'number') return { ...common, value: null, unit: '', si: null, si_unit, shown: 'never' };
    const unit = result.quantity === 'fraction' ? unitNamed('%') : displayed(value, format, preferences);
    const rounded = (si: number) => Number(digits(si, unit, format));
    const spread =
      low === undefined || high === undefined
        ? {}
        : Number.isFinite(high)
          ? { low: rounded(low), high: rounded(high), si_low: low, si_high: high }
          : { low: rounded(low), si_low: low };
    const difference = result.quantity === 'temperature difference' ? { difference: true } : {};
    return {
      ...common,
      value: rounded(value),
      unit: unit.shown,
      si: value,
      si_unit,
      shown: shownWithSpread(value, low, high, format, preferences),
      ...difference,
      ...spread,
    };
  }
  if (result.kind === 'clock') {
    const shown = typeof value === 'number' ? clockText(value) : 'never';
    return { ...common, value: shown, unit: '', si: typeof value === 'number' ? value : null, si_unit: 's', shown };
  }
  if (result.kind === 'list' && Array.isArray(value)) {
    const format = formatOf(result);
    const shown = value.map((si: number) => show(si, format, preferences)).join(', ');
    return { ...common, value, unit: '', si: value, si_unit: quantityTable[result.quantity].si, shown };
  }
  if (result.kind === 'label') {
    const shown = result.labels.find(([label]) => label === value)?.[1] ?? String(value);
    return { ...common, value: String(value), unit: '', si: null, si_unit: '1', shown };
  }
  return { ...common, value: value as boolean, unit: '', si: null, si_unit: '1', shown: value ? 'yes' : 'no' };
}

function shownWithSpread(
  value: number,
  low: number | undefined,
  high: number | undefined,
  format: ValueFormat,
  preferences: Preferences,
): string {
  const main = showBoth(value, format, preferences);
  if (low === undefined || high === undefined) return main;
  const unit = format.quantity === 'fraction' ? unitNamed('%') : displayed(value, format, preferences);
  const least = forReading(digits(low, unit, format));
  return Number.isFinite(high)
    ? `${main}, likely ${least} to ${forReading(digits(high, unit, format))}`
    : `${main}, at least ${least} and perhaps never`;
}

function stepIn(worked: WorkedStep, outcome: Answered, preferences: Preferences, units: SymbolUnits): ReplyStep {
  const { step, formula, values, si } = worked;
  const si_unit = siUnitOf(step.of);
  const line = showStep(worked, units, si_unit);
  return {
    symbol: step.symbol,
    name: step.name,
    formula: printFormula(formula),
    values,
    si,
    si_unit,
    shown: `${line}${inMembersUnit(worked, outcome, preferences)}`,
  };
}

/** ` (3831 L/h)` behind a result in a coherent unit that nobody thinks in. */
function inMembersUnit({ step, si }: WorkedStep, { calculation }: Answered, preferences: Preferences): string {
  const result = Object.values(calculation.results).find((entry) => 'symbol' in entry && entry.symbol === step.symbol);
  if (result?.kind === 'clock') return ` (${clockText(si)})`;
  const format =
    result?.kind === 'quantity'
      ? formatOf(result)
      : step.of in quantityTable
        ? { quantity: step.of as ValueFormat['quantity'] }
        : undefined;
  if (!format || !Number.isFinite(si)) return '';
  const unit = displayed(si, format, preferences);
  const coherent = unit.factor === 1 && !unit.offset;
  if (coherent || (format.quantity === 'temperature' && unit.id === 'degC') || unit.shown === '') return '';
  return ` (${show(si, format, preferences)})`;
}

function symbolUnits({ calculation, steps }: Answered): SymbolUnits {
  const units = new Map<string, string>();
  const temperatures = new Set<string>();
  for (const [symbol, { unit }] of Object.entries(calculation.constants)) units.set(symbol, unit);
  for (const input of Object.values(calculation.inputs)) {
    if (input.kind === 'quantity') {
      units.set(input.symbol, quantityTable[input.quantity].si);
      if (input.quantity === 'temperature') temperatures.add(input.symbol);
    } else if (input.kind === 'clock') units.set(input.symbol, 's');
    else if (input.kind === 'choice')
      for (const [symbol, unit] of Object.entries(input.symbols ?? {})) units.set(symbol, unit);
  }
  for (const { step } of steps) {
    units.set(step.symbol, siUnitOf(step.of));
    if (step.of === 'temperature') temperatures.add(step.symbol);
  }
  const numberedUnits = Object.values(calculation.inputs).flatMap((input) =>
    input.kind === 'lookup' ? Object.entries(input.symbols ?? {}) : [],
  );
  const unitOf = (symbol: string) =>
    units.get(symbol) ?? numberedUnits.find(([name]) => name === symbol.replace(/_\d+$/, '_i'))?.[1] ?? '1';
  return { unitOf, isTemperature: (symbol) => temperatures.has(symbol) };
}

/** Puts values into the `{places}` of a sentence. `{x:both}` adds the other units, `{x:range}` the spread. */
export function fillIn(text: string, outcome: Answered, preferences: Preferences): string {
  return text.replace(PLACE, (_, name: string, how?: string) => {
    const worked = outcome.results.find(({ id }) => id === name);
    if (worked) {
      const { result, value, low, high } = worked;
      if (result.kind !== 'quantity' || typeof value !== 'number') return resultIn(worked, preferences).shown;
      const format = formatOf(result);
      if (how === ':low') return show(low ?? value, format, preferences);
      if (how === ':range') return shownWithSpread(value, low, high, format, preferences);
      return how === ':both' ? showBoth(value, format, preferences) : show(value, format, preferences);
    }
    const used = outcome.inputs.find(({ id }) => id === name);
    // What a sentence says holds at the value that was worked with, not along the whole of a said range.
    if (used) return inputIn({ ...used, low: undefined, high: undefined }, preferences).shown;
    // An input whose default is a formula stands among the steps.
    const input = outcome.calculation.inputs[name];
    return showSymbol(input?.kind === 'quantity' ? input.symbol : name, outcome, preferences);
  });
}

function showSymbol(symbol: string, { calculation, steps, at }: Answered, preferences: Preferences): string {
  const si = at.values[symbol];
  if (si === undefined) return 'unknown';
  const input = Object.values(calculation.inputs).find((entry) => entry.kind === 'quantity' && entry.symbol === symbol);
  if (input?.kind === 'quantity') return showInput(si, input, undefined, preferences).text;
  const of = steps.find(({ step }) => step.symbol === symbol)?.step.of;
  return of !== undefined && of in quantityTable
    ? show(si, { quantity: of as ValueFormat['quantity'] }, preferences)
    : String(Number(si.toPrecision(3)));
}

/** What somebody could write for an input; of a choice its options say it. */
export function exampleOf(input: Input): string | undefined {
  if (input.example !== undefined) return input.example;
  switch (input.kind) {
    case 'quantity':
      return quantityTable[input.quantity].example;
    case 'clock':
      return '14:30';
    case 'date':
      return '2027-03-21';
    case 'choice':
    case 'lookup':
      return undefined;
  }
}

/** The question that asks for an input, with an example of how to answer. */
export function questionFor({ inputs }: Calculation, id: string): string {
  const input = inputs[id]!;
  if (input.kind === 'choice') {
    const choices = Object.values(input.options).map(({ label }) => label);
    return `${input.ask} Answer with one of: ${choices.join('; ')}.`;
  }
  const example = exampleOf(input);
  return example ? `${input.ask} For example: ${example}.` : input.ask;
}
