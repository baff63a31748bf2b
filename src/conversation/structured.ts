import { quantityTable } from '../../data/quantities.js';
import type { Calculation, Input } from '../core/calculation.js';
import type { Given, GivenValue } from '../core/outcome.js';
import { withArticle } from '../core/quantity/number.js';
import { isUnit, toSI, type UnitRow, unitNamed } from '../core/quantity/units.js';
import { unitsNamed } from '../language/unit-words.js';

/** What a structured call's inputs came to: values, inputs whose unit leaves open what is meant, and sentences about the rest. */
export interface ReadInputs {
  readonly given: Given;
  readonly ask: readonly string[];
  readonly problems: readonly string[];
}

/** The unit of a bare number: metric, as the catalogue lists it. */
export function catalogueUnit(input: Input & { kind: 'quantity' }): UnitRow {
  return unitNamed(input.units?.metric ?? quantityTable[input.quantity].metric);
}

/**
 * Reads the inputs of a structured call: a text with its unit, a bare number in the catalogue's unit, or
 * `{"value": 64, "unit": "degF"}`.
 * @param readText turns a text into a value of that input, or a sentence about what is wrong with it
 */
export async function readInputs(
  calculation: Calculation,
  inputs: Readonly<Record<string, unknown>>,
  readText: (input: Input, text: string) => Promise<GivenValue | { readonly problem: string } | 'ask'>,
): Promise<ReadInputs> {
  const given: Record<string, GivenValue> = {};
  const ask: string[] = [];
  const problems: string[] = [];
  for (const [id, raw] of Object.entries(inputs)) {
    const { value, unit } =
      typeof raw === 'object' && raw !== null && 'value' in raw
        ? (raw as { value: unknown; unit?: unknown })
        : { value: raw, unit: undefined };
    const meant = inputMeant(calculation, id, typeof value === 'string' ? `${value} ${unit ?? ''}` : unit);
    const input = meant === undefined ? undefined : calculation.inputs[meant];
    if (meant === undefined || !input) {
      problems.push(`${calculation.id} has no input ${id}. It takes: ${Object.keys(calculation.inputs).join(', ')}.`);
      continue;
    }
    const read = await readOne(input, value, unit, readText);
    if (read === 'ask') ask.push(id);
    else if ('problem' in read) problems.push(read.problem);
    else given[meant] = read;
  }
  return { given, ask, problems };
}

/** The input that an id names; where it takes either of two quantities, the one that the unit belongs to. */
function inputMeant({ inputs }: Calculation, id: string, unit: unknown): string | undefined {
  const own = Object.hasOwn(inputs, id) ? id : undefined;
  const others = Object.entries(inputs).flatMap(([name, { standsFor }]) => (standsFor === id ? [name] : []));
  if (others.length === 0 || typeof unit !== 'string') return own ?? others[0];
  const named = unitsNamed(unit.replace(/^[\d\s.,+-]+/, '')).concat(isUnit(unit) ? unitNamed(unit) : []);
  const fits = (name: string) => {
    const input = inputs[name];
    return input?.kind === 'quantity' && named.some(({ quantities }) => quantities.includes(input.quantity));
  };
  return [...(own === undefined ? [] : [own]), ...others].find(fits) ?? own ?? others[0];
}

type ReadOne = GivenValue | { readonly problem: string } | 'ask';

async function readOne(
  input: Input,
  value: unknown,
  unit: unknown,
  readText: (input: Input, text: string) => Promise<ReadOne>,
): Promise<ReadOne> {
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  if (input.kind === 'lookup' && Array.isArray(value))
    return { text: typeof unit === 'string' ? `${text} ${unit.replace(/[[\]]/g, '')}` : text, from: 'message' };
  if (input.kind !== 'quantity') {
    const declared =
      input.kind === 'choice' ? Object.hasOwn(input.options, text) : typeof value !== 'string' || input.kind !== 'date';
    return declared ? { text, from: 'message' } : readText(input, text);
  }
  if (typeof value === 'number') return numberOf(input, value, unit);
  if (PLAIN_NUMBER.test(text)) return numberOf(input, Number(text), unit);
  return readText(input, typeof unit === 'string' ? `${text} ${unit}` : text);
}

/** "64" is no less a bare number than 64. */
const PLAIN_NUMBER = /^\s*[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?\s*$/i;

function numberOf(input: Input & { kind: 'quantity' }, value: number, unit: unknown): ReadOne {
  const own = catalogueUnit(input);
  const plain = unit === undefined || unit === null || unit === '1';
  if (plain) return { si: toSI(value, own), unit: own.id, from: 'message' };
  const row = typeof unit === 'string' ? unitNamedAs(unit, input) : undefined;
  if (!row) return 'ask';
  const plainKinds =
    row.quantities.some((name) => quantityTable[name].si === '1') && quantityTable[input.quantity].si === '1';
  const difference = input.quantity === 'temperature difference' && row.quantities.includes('temperature');
  if (difference) return { si: value * row.factor, unit: `${row.id}_difference`, from: 'message' };
  if (!row.quantities.includes(input.quantity) && !plainKinds) {
    if (row.loose) return 'ask';
    return {
      problem: `The ${input.name} is ${withArticle(input.quantity)}; ${row.shown || row.id} is a unit of ${row.quantities[0]}. ${quantityTable[input.quantity].example} would be right.`,
    };
  }
  return { si: toSI(value, row), unit: row.id, from: 'message' };
}

/** A unit by its id in the catalogue, or as people write it. */
function unitNamedAs(text: string, input: Input & { kind: 'quantity' }): UnitRow | undefined {
  if (isUnit(text)) return unitNamed(text);
  const units = unitsNamed(text);
  return units.find(({ quantities }) => quantities.includes(input.quantity)) ?? units[0];
}
