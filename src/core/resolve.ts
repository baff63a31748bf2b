import { quantityTable } from '../../data/quantities.js';
import {
  type Calculation,
  type Default,
  defaultsOf,
  type From,
  type Input,
  type QuantityInput,
} from './calculation.js';
import { type Circumstances, holds } from './condition.js';
import { functions } from './functions.js';
import type { Given, GivenValue, UsedInput, WorkedStep } from './outcome.js';
import { readClock } from './quantity/clock-text.js';
import { dayOfYear } from './quantity/date-text.js';
import { toSI, unitNamed } from './quantity/units.js';
import { type Refusal, refusalForRange } from './refusal.js';
import { workStep } from './work-steps.js';

/** The inputs of one run with everything that follows from them before the first step. */
export interface Resolved extends Circumstances {
  readonly values: Record<string, number>;
  readonly given: Set<string>;
  readonly assumed: Set<string>;
  readonly choices: Record<string, string>;
  readonly inputs: UsedInput[];
  readonly steps: WorkedStep[];
  readonly refusals: Refusal[];
  readonly sources: string[];
}

/** Takes what was given, looks up what tables say, and fills in the defaults. What cannot be goes to `refusals`. */
export function resolve(calculation: Calculation, given: Given): Resolved {
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
  if (input.kind !== 'quantity') return false;
  return defaultsOf(input).some(
    (fallback) => holds(fallback.when, at, functions) && applyOne(calculation, at, id, input, fallback),
  );
}

function applyOne(
  calculation: Calculation,
  at: Resolved,
  id: string,
  input: QuantityInput,
  fallback: Default,
): boolean {
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
