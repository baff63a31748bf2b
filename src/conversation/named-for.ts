import type { Calculation, Input, LookupInput } from '../core/calculation.js';
import type { Given } from '../core/outcome.js';

/**
 * A text that names a thing where its number was asked for: "1 inch" to the question which pipe it is names the pipe, not
 * its bore; "18 S" is a latitude on a reef; "none" are the fittings whose loss was asked for.
 * @returns the lookup that sets the number, or undefined when the text names nothing
 */
export function namedFor({ inputs }: Calculation, asked: string, text: string): Given | undefined {
  if (/\b(?:bore|inside|inner|id)\b/i.test(text)) return undefined;
  for (const [id, input] of Object.entries(inputs)) {
    if (input.kind !== 'lookup') continue;
    const found = input.read(text.toLowerCase(), {});
    if (typeof found !== 'string' && (found.inputs?.[asked] !== undefined || isSummed(inputs[asked], input)))
      return { [id]: { text: text.trim(), from: 'message' } };
  }
  return undefined;
}

/** Whether a number is by default worked out of what a list brings. */
function isSummed(asked: Input | undefined, { symbols }: LookupInput): boolean {
  const standing = asked?.kind === 'quantity' ? asked.default : undefined;
  return (
    typeof standing === 'object' &&
    'formula' in standing &&
    Object.keys(symbols ?? {}).some((symbol) => standing.formula.includes(symbol))
  );
}
