import type { QuantityInput, Rule } from './calculation.js';
import { forReading, withFigures } from './quantity/number.js';
import { fromSI, toSI, type UnitRow, unitNamed } from './quantity/units.js';

/** Why a calculation will not answer: which input it is about, and one sentence that says what would be right. */
export interface Refusal {
  readonly code: 'out-of-range' | 'not-whole' | 'unreadable' | 'rule' | 'result-out-of-range';
  readonly input?: string;
  readonly text: string;
}

const plain = (value: number): string => forReading(withFigures(value, 6));
const written = (value: number, unit: UnitRow): string =>
  `${plain(value)}${unit.shown === '' ? '' : unit.shown === '%' || unit.shown === '°' ? unit.shown : ` ${unit.shown}`}`;

/**
 * Judges one number against its input's range.
 * @param said the unit the member used; the sentence answers in it
 * @returns undefined when the value is in range
 */
export function refusalForRange(id: string, input: QuantityInput, si: number, said?: string): Refusal | undefined {
  const [low, high, unitId] = input.range;
  const rangeUnit = unitNamed(unitId);
  const [lowest, highest] = [toSI(low, rangeUnit), toSI(high, rangeUnit)];
  const slack = 1e-9 * Math.max(Math.abs(lowest), Math.abs(highest), 1e-12);
  const inside = si >= lowest - slack && si <= highest + slack && !(input.aboveLow && si <= lowest + slack * 1e-3);
  if (inside && input.whole && Math.abs(si - Math.round(si)) > 1e-9) {
    return { code: 'not-whole', input: id, text: `The ${input.name} must be a whole number; I read ${plain(si)}.` };
  }
  if (inside) return undefined;
  const unit = said === undefined ? rangeUnit : unitNamed(said);
  const bounds = `${plain(fromSI(lowest, unit))} to ${written(fromSI(highest, unit), unit)}`;
  const reading = Number.isFinite(si) ? written(fromSI(si, unit), unit) : 'something that is not a number';
  const slip = likelySlip(input, si, unit);
  return {
    code: 'out-of-range',
    input: id,
    text: `I read the ${input.name} as ${reading}, and this works from ${input.aboveLow ? 'above ' : ''}${bounds}.${slip ? ` ${slip}` : ''}`,
  };
}

/** The likely slip behind a value that is out of range: a declared one, the other temperature scale, a lost decimal point. */
function likelySlip(input: QuantityInput, si: number, said: UnitRow): string | undefined {
  const rangeUnit = unitNamed(input.range[2]);
  const value = fromSI(si, rangeUnit);
  const declared = input.slips?.find(([low, high]) => value >= low && value <= high);
  if (declared) return declared[2];
  const fits = (other: number) => other > toSI(input.range[0], rangeUnit) && other <= toSI(input.range[1], rangeUnit);
  const typed = fromSI(si, said);
  if (input.quantity === 'temperature' && said.id !== 'degF' && fits(toSI(typed, unitNamed('degF')))) {
    return `It looks like °F given as °C: did you mean ${plain(typed)} °F?`;
  }
  if (input.quantity === 'fraction' && said.id !== '%' && typed > 1 && fits(typed / 100))
    return `Did you mean ${plain(typed)}%?`;
  const shifted = [10, 100, 1000].map((by) => typed / by).find((other) => fits(toSI(other, said)));
  if (typed > 0 && shifted !== undefined && said.offset === undefined)
    return `A decimal point may be missing: ${written(shifted, said)}?`;
  return undefined;
}

export const refusalForRule = (rule: Rule): Refusal => ({
  code: 'rule',
  text: rule.because,
  ...(rule.about === undefined ? {} : { input: rule.about }),
});
