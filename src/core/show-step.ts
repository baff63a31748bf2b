import { type QuantityName, type QuantityRow, quantityTable } from '../../data/quantities.js';
import { compile, type Formula, MEMBER_TEXT, partsOf, printFormula } from './formula.js';
import { functions } from './functions.js';
import type { WorkedStep } from './outcome.js';
import { withFigures } from './quantity/number.js';

const LEAST_FIGURES = 4;
const MOST_FIGURES = 11;

/** Figures of a step's result: what its quantity is read to, a density or a specific gravity finer than the rest. */
function figuresOf({ step, si }: WorkedStep): number {
  const row: QuantityRow | undefined = step.of in quantityTable ? quantityTable[step.of as QuantityName] : undefined;
  const forDecimals =
    row?.decimals === undefined || !(Math.abs(si) >= 1 && Number.isFinite(si))
      ? 0
      : row.decimals + 1 + Math.floor(Math.log10(Math.abs(si)));
  return Math.min(MOST_FIGURES, Math.max(LEAST_FIGURES, row?.figures ?? 0, forDecimals));
}

/** Coherent units as a person reads them: `m^2` becomes m², `W/(m^2 K)` W/(m²·K). */
export const unitText = (unit: string): string =>
  unit === '1' || unit === 'rad'
    ? ''
    : unit
        .replace(/\^2/g, '²')
        .replace(/\^3/g, '³')
        .replace(/\^4/g, '⁴')
        .replace(/(\S) (?=\S)/g, '$1·');

export interface SymbolUnits {
  /** Coherent unit of a symbol. */
  readonly unitOf: (symbol: string) => string;
  readonly isTemperature: (symbol: string) => boolean;
}

/**
 * One step as a line: `A = 2·(1.5 m + 0.6 m)·0.5 m = 2.1 m²`. Numbers get as many digits as it takes for the line, worked
 * again on a pocket calculator, to give the printed result. Temperatures stand in °C where the formula only takes their
 * difference or hands them to a function, in kelvin elsewhere.
 */
export function showStep(worked: WorkedStep, units: SymbolUnits, resultUnit: string): string {
  const { formula, step, si } = worked;
  const kelvin = kelvinSymbols(formula, units.isTemperature);
  const asCelsius = (symbol: string) => units.isTemperature(symbol) && !kelvin.has(symbol);
  const least = figuresOf(worked);
  const wanted = readOff(worked, si);
  const work = compile(formula, functions);
  let numbers: Record<string, string> = {};
  for (let figures = least; figures <= MOST_FIGURES; figures += 1) {
    const rounded: Record<string, number> = {};
    numbers = {};
    for (const [symbol, value] of Object.entries(worked.values)) {
      const offset = asCelsius(symbol) ? 273.15 : 0;
      numbers[symbol] = withFigures(value - offset, figures);
      rounded[symbol] = Number(numbers[symbol]) + offset;
    }
    if (readOff(worked, work(rounded)) === wanted) break;
  }
  const right = printFormula(formula, {
    ...MEMBER_TEXT,
    symbol: (symbol) => {
      const unit = asCelsius(symbol) ? '°C' : unitText(units.unitOf(symbol));
      const text = `${numbers[symbol]!.replace('-', '−')}${unit ? ` ${unit}` : ''}`;
      return unit.includes('/') || text.startsWith('−') ? `(${text})` : text;
    },
    number: (value) => withFigures(value, 12),
  });
  return `${step.symbol} = ${right} = ${showResult(worked, resultUnit)}`;
}

/** The result's number as the line prints it, a temperature in °C. */
function readOff(worked: WorkedStep, si: number): string {
  const figures = figuresOf(worked);
  return worked.step.of === 'temperature' ? withFigures(si - 273.15, figures + 1) : withFigures(si, figures);
}

function showResult(worked: WorkedStep, unit: string): string {
  const number = readOff(worked, worked.si).replace('-', '−');
  const text = worked.step.of === 'temperature' ? '°C' : unitText(unit);
  return text ? `${number} ${text}` : number;
}

/** Temperatures that a formula needs in kelvin: those it multiplies, divides or raises. */
function kelvinSymbols(formula: Formula, isTemperature: (symbol: string) => boolean): Set<string> {
  const kelvin = new Set<string>();
  const visit = (node: Formula, scaled: boolean): void => {
    if (node.kind === 'symbol' && scaled && isTemperature(node.name)) kelvin.add(node.name);
    const takesDifference = node.kind === 'binary' && node.op === '-';
    const handsOver = node.kind === 'call';
    const scales = node.kind === 'binary' && node.op !== '+' && node.op !== '-';
    for (const part of partsOf(node)) visit(part, scales || (scaled && !takesDifference && !handsOver));
  };
  visit(formula, false);
  return kelvin;
}
