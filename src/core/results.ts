import type { Calculation, Result, Sentence } from './calculation.js';
import { type Circumstances, holds } from './condition.js';
import { functions } from './functions.js';
import type { Corner, Given, GivenValue, OtherVerdict, UsedInput, WorkedResult } from './outcome.js';
import { toSI, unitNamed } from './quantity/units.js';
import type { Refusal } from './refusal.js';
import { resolve } from './resolve.js';
import { brokenRules, readOnce, workSteps } from './work-steps.js';

/** Spread inputs beyond this many are left at their middle when a range is worked out (every corner is run). */
const MOST_SPREAD_INPUTS = 6;

/** The results that hold, in SI. */
export function readResults(calculation: Calculation, at: Circumstances): WorkedResult[] {
  return Object.entries(calculation.results).flatMap(([id, result]): WorkedResult[] => {
    if (!holds(result.when, at, functions)) return [];
    const value = readResult(result, at);
    return value === undefined
      ? []
      : [{ id: result.standsFor ?? id, result, value, ...declaredSpread(result, value, at) }];
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
  if (low !== undefined && high !== undefined)
    return { low: Math.min(low, high, value), high: Math.max(low, high, value) };
  if (result.within === undefined) return {};
  const by = Math.abs(value) * result.within;
  return { low: value - by, high: value + by };
}

/** A refusal for a result beyond what its method covers. */
export function outsideRange({ id, result, value }: WorkedResult): Refusal[] {
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

/** Runs every corner of the guessed inputs. */
export function cornersOf(calculation: Calculation, given: Given, inputs: readonly UsedInput[]): Corner[] {
  const spread = inputs
    .filter((used) => used.low !== undefined && used.high !== undefined)
    .slice(0, MOST_SPREAD_INPUTS);
  if (spread.length === 0) return [];
  return Array.from({ length: 2 ** spread.length }, (_, corner): Corner => {
    const atCorner: Record<string, GivenValue> = { ...given };
    spread.forEach((used, i) => {
      atCorner[used.id] = { si: (corner >> i) & 1 ? used.high! : used.low!, from: used.from };
    });
    const at = resolve(calculation, atCorner);
    if (at.refusals.length === 0) {
      workSteps(calculation, at);
      at.refusals.push(...brokenRules(calculation, at));
    }
    const results = at.refusals.length > 0 ? [] : readResults(calculation, at);
    return { inputs: at.inputs, at, results, refusals: at.refusals };
  });
}

/** Widens each result to what the corners give. */
export function withSpread(results: readonly WorkedResult[], corners: readonly Corner[]): WorkedResult[] {
  return results.map((entry) => {
    if (entry.result.kind !== 'quantity' || typeof entry.value !== 'number') return entry;
    const reached = corners.flatMap((corner) => {
      const same = corner.results.find(({ id }) => id === entry.id);
      const value = same?.value === null ? Number.POSITIVE_INFINITY : same?.value;
      return [value, same?.low, same?.high].filter((x): x is number => typeof x === 'number');
    });
    const all = [entry.value, entry.low ?? entry.value, entry.high ?? entry.value, ...reached];
    const [low, high] = [Math.min(...all), Math.max(...all)];
    return low === high ? entry : { ...entry, low, high };
  });
}

/** What would be said at a corner and is not said in the middle: another verdict, a stop, or that nothing works there. */
export function otherVerdicts(calculation: Calculation, at: Circumstances, corners: readonly Corner[]): OtherVerdict[] {
  const told = (where: Circumstances): readonly Sentence[] => {
    const headline = calculation.headline.find(({ when }) => holds(when, where, functions));
    const stops = calculation.cautions.filter(({ level, when }) => level === 'stop' && holds(when, where, functions));
    return headline ? [headline, ...stops] : stops;
  };
  const said = new Set(told(at));
  const others = new Map<Sentence | string, OtherVerdict>();
  for (const corner of corners) {
    const [refusal] = corner.refusals;
    if (refusal) others.set(refusal.text, { refusal: refusal.text });
    else
      for (const sentence of told(corner.at))
        if (!said.has(sentence) && !others.has(sentence)) others.set(sentence, { sentence, corner });
  }
  return [...others.values()];
}
