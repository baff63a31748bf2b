import type { Calculation, LookupInput } from '../core/calculation.js';
import type { Given } from '../core/outcome.js';

/**
 * A text that names a thing where its number was asked for: "1 inch" to the question which pipe it is names the pipe, not
 * its bore; "18 S" is a latitude on a reef.
 * @returns the lookup that sets the number, or undefined when the text names nothing
 */
export function namedFor({ inputs }: Calculation, asked: string, text: string): Given | undefined {
  if (/\b(?:bore|inside|inner|id)\b/i.test(text)) return undefined;
  for (const [id, input] of Object.entries(inputs)) {
    const found = input.kind === 'lookup' ? input.read(text.toLowerCase(), {}) : '';
    if (typeof found !== 'string' && found.inputs?.[asked] !== undefined)
      return { [id]: { text: text.trim(), from: 'message' } };
  }
  return undefined;
}

/** The list that a number is summed up from: the fittings whose loss was asked for. */
export function listBehind({ inputs }: Calculation, asked: string): readonly [string, LookupInput] | undefined {
  const input = inputs[asked];
  const standing = input?.kind === 'quantity' ? input.default : undefined;
  if (typeof standing !== 'object' || !('formula' in standing)) return undefined;
  for (const [id, list] of Object.entries(inputs)) {
    if (list.kind !== 'lookup') continue;
    if (Object.keys(list.symbols ?? {}).some((symbol) => standing.formula.includes(symbol))) return [id, list];
  }
  return undefined;
}
