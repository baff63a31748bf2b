import { quantityTable } from '../../data/quantities.js';
import type { Calculation, Caution, From, Input, QuantityInput, Result, Step } from './calculation.js';
import { type Circumstances, holds } from './condition.js';
import { compile, type Formula, parseFormula, symbolsOf } from './formula.js';
import { functions } from './functions.js';
import { readClock } from './quantity/clock-text.js';
import { dayOfYear } from './quantity/date-text.js';
import { toSI, unitNamed } from './quantity/units.js';
import { type Refusal, refusalForRange, refusalForRule } from './refusal.js';
import { isTemplate, writeOut } from './sum.js';

/** A value that somebody gave: a number in SI with the unit it was said in, or a text (a choice, a clock time, a pipe size). */
export type GivenValue =
  | {
      readonly si: number;
      readonly unit?: string;
      readonly from: From;
      readonly low?: number;
      readonly high?: number;
      readonly via?: string;
    }
  | { readonly text: string; readonly from: From };
export type Given = Readonly<Record<string, GivenValue>>;

/** An input as it was used. Constants of a formula stand here too, from a table. */
export interface UsedInput {
  readonly id: string;
  readonly from: From;
  readonly input?: Input;
  readonly symbol?: string;
  readonly name: string;
  readonly si?: number;
  readonly siUnit?: string;
  readonly unit?: string;
  readonly text?: string;
  readonly low?: number;
  readonly high?: number;
  /** The calculation that worked it out from other numbers of the tank. */
  readonly via?: string;
}

export interface WorkedStep {
  readonly step: Step;
  readonly formula: Formula;
  readonly values: Readonly<Record<string, number>>;
  readonly si: number;
}

export interface WorkedResult {
  readonly id: string;
  readonly result: Result;
  /** A number in SI (null: never), a label, true or false, seconds after midnight, or a list of SI numbers. */
  readonly value: number | null | string | boolean | readonly number[];
  readonly low?: number;
  readonly high?: number;
}

export type Outcome =
  | {
      readonly kind: 'answer';
      readonly calculation: Calculation;
      readonly inputs: readonly UsedInput[];
      readonly steps: readonly WorkedStep[];
      readonly results: readonly WorkedResult[];
      readonly cautions: readonly Caution[];
      readonly at: Circumstances;
      readonly sources: readonly string[];
    }
  | {
      readonly kind: 'question';
      readonly calculation: Calculation;
      readonly asks: readonly string[];
      readonly inputs: readonly UsedInput[];
    }
  | {
      readonly kind: 'refusal';
      readonly calculation: Calculation;
      readonly refusals: readonly Refusal[];
      readonly inputs: readonly UsedInput[];
    };

/** Spread inputs beyond this many are left at their middle when a range is worked out (every corner is run). */
const MOST_SPREAD_INPUTS = 4;

/**
 * Works a calculation from what was given.
 * @returns an answer; the inputs still to be asked for; or the refusals, when a value is outside the model's range
 */
export function run(calculation: Calculation, given: Given): Outcome {
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
  return {
    kind: 'answer',
    calculation,
    inputs: [...inputs, ...constantsUsed(calculation, steps)],
    steps,
    results: withSpread(calculation, given, inputs, results),
    cautions,
    at: resolved,
    sources: [...new Set(sources)],
  };
}

interface Resolved extends Circumstances {
  readonly values: Record<string, number>;
  readonly given: Set<string>;
  readonly assumed: Set<string>;
  readonly choices: Record<string, string>;
  readonly inputs: UsedInput[];
  readonly steps: WorkedStep[];
  readonly refusals: Refusal[];
  readonly sources: string[];
}

function resolve(calculation: Calculation, given: Given): Resolved {
  const at: Resolved = {
    values: {},
    given: new Set(),
    assumed: new Set(),
    choices: {},
    inputs: [],
    steps: [],
    refusals: [],
    sources: [],
  };
  for (const [symbol, constant] of Object.entries(calculation.constants)) at.values[symbol] = constant.value;
  for (const [id, input] of Object.entries(calculation.inputs)) {
    const value = given[id];
    if (value) take(at, id, input, value);
  }
  for (const [id, input] of Object.entries(calculation.inputs)) {
    if (input.kind === 'lookup' && given[id]) applyLookup(calculation, at, id, input, given[id]);
  }
  applyDefaults(calculation, at);
  return at;
}

function take(at: Resolved, id: string, input: Input, value: GivenValue): void {
  const { from } = value;
  if (input.kind === 'quantity') {
    if (!('si' in value)) {
      at.refusals.push({
        code: 'unreadable',
        input: id,
        text: `“${value.text}” is not a ${input.name} I can read: ${input.example ?? quantityTable[input.quantity].example} would do.`,
      });
      return;
    }
    takeNumber(at, id, input, value.si, from, value);
    return;
  }
  const text = 'text' in value ? value.text : String(value.si);
  if (input.kind === 'choice') {
    takeChoice(at, id, input, text, from);
  } else if (input.kind === 'clock' || input.kind === 'date') {
    const read = input.kind === 'clock' ? readClock(text) : dayOfYear(text);
    if (read === undefined) {
      const right = input.kind === 'clock' ? 'a time of day such as 14:30 or 2:30 pm' : 'a date such as 2027-06-21';
      at.refusals.push({ code: 'unreadable', input: id, text: `“${text}” is not ${right}.` });
      return;
    }
    at.values[input.symbol] = read;
    at.given.add(id);
    at.inputs.push({
      id,
      from,
      input,
      symbol: input.symbol,
      name: input.name,
      text,
      si: read,
      siUnit: input.kind === 'clock' ? 's' : '1',
    });
  }
}

function takeChoice(at: Resolved, id: string, input: Input & { kind: 'choice' }, text: string, from: From): void {
  const option = input.options[text];
  if (!option) {
    const labels = Object.entries(input.options).map(([key, { label }]) => `${label} (${key})`);
    at.refusals.push({
      code: 'unreadable',
      input: id,
      text: `“${text}” is not one of the choices for ${input.name}: ${labels.join(', ')}.`,
    });
    return;
  }
  at.choices[id] = text;
  at.given.add(id);
  if (from === 'default') at.assumed.add(id);
  Object.assign(at.values, option.gives ?? {});
  at.inputs.push({ id, from, input, name: input.name, text });
  for (const [symbol, si] of Object.entries(option.gives ?? {})) {
    at.inputs.push({
      id: symbol,
      from: 'table',
      symbol,
      name: `${symbol} of ${option.label}`,
      si,
      siUnit: input.symbols?.[symbol] ?? '1',
    });
  }
  if (option.gives && input.source) at.sources.push(input.source);
}

function takeNumber(
  at: Resolved,
  id: string,
  input: QuantityInput,
  si: number,
  from: From,
  spread: { low?: number; high?: number; unit?: string; via?: string } = {},
): void {
  const refusal = refusalForRange(id, input, si, spread.unit);
  if (refusal) {
    at.refusals.push(refusal);
    return;
  }
  at.values[input.symbol] = si;
  at.given.add(id);
  if (from === 'default') at.assumed.add(id);
  const siUnit = quantityTable[input.quantity].si;
  at.inputs.push({ id, from, input, symbol: input.symbol, name: input.name, si, siUnit, ...pick(spread) });
}

const pick = ({ low, high, unit, via }: { low?: number; high?: number; unit?: string; via?: string }) => ({
  ...(via === undefined ? {} : { via }),
  ...(unit === undefined ? {} : { unit }),
  ...(low === undefined || high === undefined ? {} : { low, high }),
});

function applyLookup(
  calculation: Calculation,
  at: Resolved,
  id: string,
  input: Input & { kind: 'lookup' },
  value: GivenValue,
): void {
  const text = 'text' in value ? value.text : String(value.si);
  const found = input.read(text, lookupTexts(at));
  if (typeof found === 'string') {
    at.refusals.push({ code: 'unreadable', input: id, text: found });
    return;
  }
  at.given.add(id);
  at.inputs.push({ id, from: value.from, input, name: input.name, text: found.reading });
  for (const [target, si] of Object.entries(found.inputs ?? {})) {
    const targetInput = calculation.inputs[target];
    if (targetInput?.kind === 'quantity' && !at.given.has(target))
      takeNumber(at, target, targetInput, si, found.said ? value.from : 'table');
  }
  for (const [symbol, { si, name, said }] of Object.entries(found.symbols ?? {})) {
    at.values[symbol] = si;
    const siUnit = input.symbols?.[symbol.replace(/_\d+$/, '_i')] ?? '1';
    at.inputs.push({ id: symbol, from: said ? value.from : 'table', symbol, name, si, siUnit });
  }
  if (found.source) at.sources.push(found.source);
}

/** The texts of the lookups so far, for one that depends on another: the loss of an elbow on the size of the pipe. */
const lookupTexts = (at: Resolved): Record<string, string> =>
  Object.fromEntries(
    at.inputs.flatMap(({ id, input, text }) => (input?.kind === 'lookup' && text ? [[id, text]] : [])),
  );

function applyDefaults(calculation: Calculation, at: Resolved): void {
  for (let settled = false; !settled; ) {
    settled = true;
    for (const [id, input] of Object.entries(calculation.inputs)) {
      if (
        !at.given.has(id) &&
        !at.refusals.some((refusal) => refusal.input === id) &&
        applyDefault(calculation, at, id, input)
      )
        settled = false;
    }
  }
}

function applyDefault(calculation: Calculation, at: Resolved, id: string, input: Input): boolean {
  if (input.kind === 'choice') {
    if (input.default === undefined) return false;
    takeChoice(at, id, input, input.default, 'default');
    return true;
  }
  if (input.kind !== 'quantity' || !input.default || !holds(input.default.when, at, functions)) return false;
  const fallback = input.default;
  if ('value' in fallback) {
    const unit = unitNamed(fallback.unit);
    const spread =
      fallback.low === undefined || fallback.high === undefined
        ? {}
        : { low: toSI(fallback.low, unit), high: toSI(fallback.high, unit) };
    takeNumber(at, id, input, toSI(fallback.value, unit), 'default', spread);
    return true;
  }
  if ('same' in fallback) {
    const other = calculation.inputs[fallback.same];
    if (other?.kind !== 'quantity' || !at.given.has(fallback.same)) return false;
    takeNumber(
      at,
      id,
      input,
      at.values[other.symbol]!,
      'default',
      pick(at.inputs.find((used) => used.id === fallback.same) ?? {}),
    );
    return true;
  }
  const worked = workStep(
    { symbol: input.symbol, formula: fallback.formula, of: input.quantity, name: input.name },
    at.values,
  );
  if (!worked) return false;
  const refusal = refusalForRange(id, input, worked.si);
  if (refusal) at.refusals.push(refusal);
  else {
    at.values[input.symbol] = worked.si;
    at.given.add(id);
    at.assumed.add(id);
    at.steps.push(worked);
  }
  return true;
}

const formulas = new Map<
  string,
  { tree: Formula; work: (values: Readonly<Record<string, number>>) => number; symbols: string[] }
>();

function readOnce(text: string) {
  let read = formulas.get(text);
  if (!read) {
    const tree = parseFormula(text);
    read = { tree, work: compile(tree, functions), symbols: symbolsOf(tree) };
    formulas.set(text, read);
  }
  return read;
}

function workStep(step: Step, values: Readonly<Record<string, number>>): WorkedStep | undefined {
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

function workSteps(calculation: Calculation, at: Resolved): WorkedStep[] {
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

const brokenRules = (calculation: Calculation, at: Circumstances): Refusal[] =>
  calculation.rules.filter((rule) => holds(rule.refuse, at, functions)).map(refusalForRule);

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

function readResults(calculation: Calculation, at: Circumstances): WorkedResult[] {
  return Object.entries(calculation.results).flatMap(([id, result]): WorkedResult[] => {
    if (!holds(result.when, at, functions)) return [];
    const value = readResult(result, at);
    return value === undefined ? [] : [{ id, result, value, ...declaredSpread(result, value, at) }];
  });
}

function readResult(result: Result, at: Circumstances): WorkedResult['value'] | undefined {
  switch (result.kind) {
    case 'quantity':
    case 'clock': {
      const value = at.values[result.symbol];
      if (value === undefined) return undefined;
      return Number.isFinite(value) ? value : null;
    }
    case 'flag':
      return holds(result.holds, at, functions);
    case 'label':
      return result.labels.find(([, , when]) => holds(when, at, functions))?.[0];
    case 'list': {
      const last = at.values[result.to];
      if (last === undefined) return undefined;
      const { work } = readOnce(result.formula);
      return Array.from({ length: Math.floor(last) + 1 }, (_, i) => work({ ...at.values, [result.over]: i }));
    }
  }
}

function declaredSpread(
  result: Result,
  value: WorkedResult['value'],
  at: Circumstances,
): { low?: number; high?: number } {
  if (result.kind !== 'quantity' || typeof value !== 'number') return {};
  const low = result.low === undefined ? undefined : at.values[result.low];
  const high = result.high === undefined ? undefined : at.values[result.high];
  if (low !== undefined && high !== undefined) return { low: Math.min(low, high), high: Math.max(low, high) };
  if (result.within === undefined) return {};
  const by = Math.abs(value) * result.within;
  return { low: value - by, high: value + by };
}

function outsideRange({ id, result, value }: WorkedResult): Refusal[] {
  if (result.kind !== 'quantity' || !result.range || typeof value !== 'number') return [];
  const unit = unitNamed(result.range[2]);
  const [low, high] = [toSI(result.range[0], unit), toSI(result.range[1], unit)];
  const slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
  if (value >= low - slack && value <= high + slack) return [];
  return [
    {
      code: 'result-out-of-range',
      input: id,
      text: result.because ?? `The ${result.name} comes out beyond what this method covers.`,
    },
  ];
}

/** Runs every corner of the guessed inputs and widens each result to what the corners give. */
function withSpread(
  calculation: Calculation,
  given: Given,
  inputs: readonly UsedInput[],
  results: WorkedResult[],
): WorkedResult[] {
  const spread = inputs
    .filter((used) => used.low !== undefined && used.high !== undefined)
    .slice(0, MOST_SPREAD_INPUTS);
  if (spread.length === 0) return results;
  const corners = Array.from({ length: 2 ** spread.length }, (_, corner) => {
    const atCorner: Record<string, GivenValue> = { ...given };
    spread.forEach((used, i) => {
      atCorner[used.id] = { si: (corner >> i) & 1 ? used.high! : used.low!, from: used.from };
    });
    const at = resolve(calculation, atCorner);
    if (at.refusals.length > 0) return [];
    workSteps(calculation, at);
    return readResults(calculation, at);
  });
  return results.map((entry) => {
    if (entry.result.kind !== 'quantity' || typeof entry.value !== 'number') return entry;
    const reached = corners.flatMap((corner) => {
      const same = corner.find(({ id }) => id === entry.id);
      const value = same?.value === null ? Number.POSITIVE_INFINITY : same?.value;
      return [value, same?.low, same?.high].filter((x): x is number => typeof x === 'number');
    });
    const all = [entry.value, entry.low ?? entry.value, entry.high ?? entry.value, ...reached];
    const [low, high] = [Math.min(...all), Math.max(...all)];
    return low === high ? entry : { ...entry, low, high };
  });
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
    if (node.kind === 'call') node.args.forEach(visit);
    if (node.kind === 'binary') [node.left, node.right].forEach(visit);
    if (node.kind === 'minus') visit(node.of);
  };
  for (const { formula } of steps) visit(formula);
  return [...names].flatMap((name) => functions.get(name)?.source ?? []);
}
