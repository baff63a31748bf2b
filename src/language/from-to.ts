import type { Input } from '../core/calculation.js';
import type { Mention } from './measurements.js';
import { isQuantity } from './sizes.js';

const BETWEEN = /\s+(?:up )?to\s+|\s*->\s*/;

const says = (input: Input, word: string): boolean => (input.words ?? []).includes(word);

/** Quantities of which a question has a start and an end: an input said with "from" and another said with "to". */
function changingQuantities(inputs: Readonly<Record<string, Input>>): ReadonlySet<string> {
  const quantities = (word: string) =>
    Object.values(inputs).flatMap((input) => (isQuantity(input) && says(input, word) ? [input.quantity] : []));
  const ends = new Set<string>(quantities('to'));
  return new Set(quantities('from').filter((quantity) => ends.has(quantity)));
}

/** "62 to 78 °F", asked of what changes, is a start and an end; of anything else it is a range. */
export function withStartAndEnd(
  mentions: readonly Mention[],
  inputs: Readonly<Record<string, Input>>,
  text: string,
): Mention[] {
  const changing = changingQuantities(inputs);
  return mentions.flatMap((mention) => {
    const { start, end, units, low, high } = mention;
    if (low === undefined || high === undefined) return [mention];
    const between = text.slice(start, end).match(BETWEEN);
    if (!between || !units.some(({ quantities }) => quantities.some((name) => changing.has(name)))) return [mention];
    const middle = start + between.index!;
    return [
      { start, end: middle, value: low, units },
      { start: middle + between[0].length, end, value: high, units },
    ];
  });
}
