import { type Amount, amountAt, beginsAmount, isPartOfWord } from './amounts.js';
import { labelledSizes, placesOf, type Size, sizesFrom } from './joined-sizes.js';
import { unmeasuredAt } from './no-measurements.js';
import { pairFrom } from './number-pairs.js';
import { qualified } from './qualifiers.js';

/** A number seen in a text, with the units it may carry. Without units it is a bare number. */
export interface Mention extends Amount {
  /** The ends of a range that was said, in the same units. Of "under 30 min" only one. */
  readonly low?: number;
  readonly high?: number;
  /** "about": the value is kept, the reply says so. */
  readonly about?: boolean;
  /** 2 of `2x300w`. */
  readonly count?: number;
  /** Place in joined sizes, `72x18x21`. */
  readonly group?: { readonly id: number; readonly index: number; readonly size: number };
  /** "5 degrees colder": a difference, never a temperature. */
  readonly difference?: boolean;
}

/** More than this in one message is a table, not a question. */
export const MOST_MENTIONS = 60;

/** Every measurement and bare number of a folded text, in order. */
export function measurementsIn(text: string): Mention[] {
  const found: Mention[] = [];
  for (let index = 0; index < text.length && found.length < MOST_MENTIONS; ) {
    const end = beginsAmount(text, index) ? (unmeasuredAt(text, index) ?? readAt(text, index, found)) : undefined;
    index = end ?? index + 1;
  }
  return found;
}

/** Reads what begins at a place: joined sizes, two amounts with a joint, or one. @returns where it ends */
function readAt(text: string, start: number, found: Mention[]): number | undefined {
  const first = amountAt(text, start);
  const sizes = first ? sizesFrom(text, first) : labelledSizes(text, start);
  if (sizes) {
    found.push(...grouped(sizes));
    return sizes.at(-1)!.end;
  }
  if (!first || isPartOfWord(text, first)) return undefined;
  const { mentions, end } = pairFrom(text, first) ?? { mentions: [first], end: first.end };
  found.push(...(mentions.length === 1 ? [qualified(text, mentions[0]!)] : mentions));
  return end;
}

function grouped(sizes: readonly Size[]): Mention[] {
  const places = placesOf(sizes);
  return sizes.map(({ axis: _, ...size }, i) => ({
    ...size,
    group: { id: sizes[0]!.start, index: places[i]!, size: sizes.length },
  }));
}
