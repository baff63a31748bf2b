import { z } from 'zod/mini';
import { forReading, withDecimals } from '../core/quantity/number.js';
import type { Reply } from '../core/reply.js';
import { numberAt } from '../language/number-words.js';
import { capital } from '../render/text.js';
import type { Tank } from './ports.js';
import { notice, refusal } from './replies.js';
import { type Listed, tankList } from './tank-list.js';
import { tankFor } from './tank-names.js';
import { currentTank, type Turn } from './turn.js';

/** Parts of the build that a shopping list is totalled by, and the words that put an item under one. */
const PARTS: Readonly<Record<string, RegExp>> = {
  'tank and stand': /\b(?:tank|aquarium|stand|cabinet|sump|glass|acrylic|foam|levell?ing|silicone)\b/,
  plumbing:
    /\b(?:pipe|elbow|bulkhead|valve|union|tee|coupling|overflow|strainer|plumbing|solvent|cement|hose|nozzle|drain)s?\b/,
  'return and flow': /\b(?:pump|wavemaker|powerhead|return|circulation)s?\b/,
  'rock and sand': /\b(?:rock|sand|aragonite|mortar|glue)\b/,
  'heat and cooling': /\b(?:heater|chiller|fan|thermostat|thermometer|controller)s?\b/,
  light: /\b(?:light|lamp|led|fixture|mount|hanging)s?\b/,
  'top-off and water':
    /\b(?:top-?off|ato|reverse|osmosis|ro|rodi|membrane|float|reservoir|resin|carbon|filter|skimmer)s?\b/,
  'salt and chemistry':
    /\b(?:salt|test|kit|refractometer|hydrometer|bicarbonate|calcium|magnesium|ammonia|ammonium)s?\b/,
  electrics: /\b(?:socket|outlet|gfci|rcd|timer|extension|cord|power strip|battery|ups)s?\b/,
  lid: /\b(?:lid|net|strut|hinge)s?\b/,
  animals: /\b(?:fish|coral|clownfish|snail|crab|shrimp|food)s?\b/,
};
export const PURCHASE_PARTS = [...Object.keys(PARTS), 'other'] as const;

const partOf = (item: string): string =>
  Object.entries(PARTS).find(([, words]) => words.test(item.toLowerCase()))?.[0] ?? 'other';

const purchase = z.object({
  item: z.string(),
  quantity: z.number(),
  price: z.optional(z.number()),
  part: z.string(),
  bought: z.optional(z.string()),
});
/** One item of the shopping list; the price is for one of it, in the member's own money. */
export type Purchase = z.infer<typeof purchase>;

const list = tankList<Purchase>('purchase', purchase);

const money = (amount: number): string => forReading(withDecimals(amount, 2));

/** Items and prices that a person could mean; beyond them a comma or a unit slipped. */
const MOST_PRICE = 1e6;
const MOST_QUANTITY = 10_000;

export interface Said {
  readonly item: string;
  readonly quantity: number;
  /** A number was said, "1 heater" or "two heaters", rather than "the heaters". */
  readonly counted?: boolean;
  /** For one of them. */
  readonly price?: number;
  /** For all of them, however many there are. */
  readonly total?: number;
}

const NUMBER = String.raw`\d+(?:,\d{3})*(?:\.\d+)?`;
const numberIn = (text: string): number => Number(text.replace(/,(?=\d{3})/g, ''));

/**
 * `2 heaters at 45 each`, `a return pump for 80`, `glue`. "for 90" is the price of them all, "at 45", "45 each" of one.
 * @returns undefined when no item is named
 */
export function purchaseIn(text: string): Said | undefined {
  const folded = text
    .trim()
    .replace(/[$€£]\s*/g, '')
    .replace(/\s*(?:dollars?|euros?|pounds sterling|bucks|usd|eur|gbp)\b/gi, '');
  const priced = folded.match(
    new RegExp(
      `^(.+?)(?:,|\\s)+(at|for|@|costs?|about|roughly|price)?:?\\s*(${NUMBER})(?:\\s*(each|apiece|a piece|per piece|ea))?\\.?$`,
      'i',
    ),
  );
  const isPriced = priced !== null && (priced[2] !== undefined || priced[4] !== undefined);
  const phrase = (isPriced ? priced[1]! : folded).trim();
  const counted = phrase.match(
    /^(?:(\d+)\s*(?:x|×)?|(an?|one|two|three|four|five|six|eight|ten|a dozen|a pair of))\s+(.+)$/i,
  );
  const item = (counted?.[3] ?? phrase)
    .replace(/^(?:the|my|some)\s+/i, '')
    .replace(/[.!]+$/, '')
    .trim();
  if (item === '') return undefined;
  // "A heater" is one: no number stands in it.
  const quantity = counted?.[1] ? Number(counted[1]) : (numberAt(counted?.[2]?.toLowerCase() ?? '', 0)?.value ?? 1);
  const said = {
    item,
    quantity,
    counted: counted?.[1] !== undefined || /^(?:one|two|three|four|five|six|eight|ten)$/i.test(counted?.[2] ?? ''),
  };
  if (!isPriced) return said;
  const amount = numberIn(priced[3]!);
  const forAll = priced[2]?.toLowerCase() === 'for' && priced[4] === undefined;
  return { ...said, ...(forAll ? { total: amount } : { price: amount }) };
}

const shownItem = ({ item, quantity, price }: { item: string; quantity: number; price?: number | undefined }): string =>
  `${quantity === 1 ? '' : `${quantity} × `}${item}${price === undefined ? ', no price yet' : quantity === 1 ? `, ${money(price)}` : `, ${money(price)} each`}`;

/** Puts an item on the current tank's list. */
export async function buy(turn: Turn, said: Said, part?: string): Promise<Reply> {
  const { item, quantity } = said;
  const price = said.price ?? (said.total === undefined ? undefined : said.total / quantity);
  if (!(quantity > 0 && quantity <= MOST_QUANTITY && Number.isInteger(quantity)))
    return refusal(
      turn.speaker,
      `A quantity is a whole number from 1 to ${forReading(String(MOST_QUANTITY))}: nothing was added.`,
    );
  if (price !== undefined && !(price >= 0 && price <= MOST_PRICE))
    return refusal(
      turn.speaker,
      `A price is a number from 0 to ${forReading(String(MOST_PRICE))}, in your own money: nothing was added.`,
    );
  const { tank } = await tankFor(turn, undefined);
  const chosen = part ?? partOf(item);
  await list.add(turn, tank, [{ item, quantity, ...(price === undefined ? {} : { price }), part: chosen }]);
  return shopping(turn, tank, `Added to ${chosen}: ${shownItem({ item, quantity, price })}.`);
}

async function listed(turn: Turn): Promise<Listed<Purchase>[]> {
  const tank = currentTank(turn);
  return tank ? list.read(turn, tank) : [];
}

const named = (entries: readonly Listed<Purchase>[], text: string): Listed<Purchase>[] => {
  const wanted = text
    .trim()
    .toLowerCase()
    .replace(/^(?:the|my|a|an) /, '')
    .replace(/s$/, '');
  const exact = entries.filter(({ value }) => value.item.toLowerCase().replace(/s$/, '') === wanted);
  return exact.length > 0 ? exact : entries.filter(({ value }) => value.item.toLowerCase().includes(wanted));
};

/** The one entry that a text means, or a reply that says why there is none. */
async function entryNamed(
  turn: Turn,
  text: string,
): Promise<{ tank: Tank; entry: Listed<Purchase> } | { problem: Reply }> {
  const tank = currentTank(turn);
  const entries = await listed(turn);
  const found = named(entries, text);
  if (tank && found.length === 1) return { tank, entry: found[0]! };
  const unbought = found.filter(({ value }) => value.bought === undefined);
  if (tank && unbought.length === 1) return { tank, entry: unbought[0]! };
  const items = (found.length > 0 ? found : entries).map(({ value }) => value.item).join('; ');
  return {
    problem: refusal(
      turn.speaker,
      found.length > 0 ? `Several items are called that: say which.` : `“${text.trim()}” is not on the shopping list.`,
      items === '' ? {} : { body: `On it: ${items}.` },
    ),
  };
}

/** Marks an item as bought, with what it cost where that is said. */
export async function bought(
  turn: Turn,
  text: string,
  day: string,
  paid: Pick<Said, 'price' | 'total'> & { readonly quantity?: number },
): Promise<Reply> {
  const found = await entryNamed(turn, text);
  if ('problem' in found) return found.problem;
  const { tank, entry } = found;
  // "Bought one heater" of two: the other stays to be bought.
  const some = paid.quantity !== undefined && paid.quantity > 0 && paid.quantity < entry.value.quantity;
  const quantity = some ? paid.quantity! : entry.value.quantity;
  const price = paid.price ?? (paid.total === undefined ? undefined : paid.total / quantity);
  const value = { ...entry.value, quantity, bought: day, ...(price === undefined ? {} : { price }) };
  if (some) await list.add(turn, tank, [{ ...entry.value, quantity: entry.value.quantity - quantity }]);
  await list.change(turn, tank, entry.id, value);
  return shopping(turn, tank, `Bought: ${shownItem(value)}.`);
}

/** Takes an item off the list. */
export async function drop(turn: Turn, text: string): Promise<Reply> {
  const found = await entryNamed(turn, text);
  if ('problem' in found) return found.problem;
  await list.remove(turn, found.tank, found.entry.id);
  return shopping(turn, found.tank, `Taken off the list: ${found.entry.value.item}.`);
}

/** Whether anything is on the current tank's list. */
export const hasList = async (turn: Turn): Promise<boolean> => (await listed(turn)).length > 0;

/** Whether an item of that name is on the current tank's list. */
export const isListed = async (turn: Turn, text: string): Promise<boolean> =>
  named(await listed(turn), text).length > 0;

const cost = ({ quantity, price = 0 }: Purchase): number => quantity * price;
const total = (values: readonly Purchase[]): number => values.reduce((sum, value) => sum + cost(value), 0);

/** The current tank's list with its totals by part of the build. */
export async function shopping(turn: Turn, tank: Tank | undefined, first?: string): Promise<Reply> {
  const values = tank ? (await list.read(turn, tank)).map(({ value }) => value) : [];
  if (!tank || values.length === 0)
    return notice(
      turn.speaker,
      first ?? 'The shopping list is empty: say, for example, “add 2 heaters at 45 to my shopping list”.',
      { private: true },
    );
  const open = values.filter(({ bought: day }) => day === undefined);
  const unpriced = values.filter(({ price }) => price === undefined).length;
  const sum = `Spent ${money(total(values) - total(open))}, still to buy ${money(total(open))}, together ${money(total(values))}${unpriced > 0 ? ` without ${unpriced} ${unpriced === 1 ? 'item that has' : 'items that have'} no price yet` : ''}.`;
  const parts = PURCHASE_PARTS.filter((part) => values.some((value) => value.part === part));
  const lines = parts.flatMap((part) => {
    const own = values.filter((value) => value.part === part);
    return [
      `${capital(part)}: ${money(total(own))}`,
      ...own.map((value) => `  ${value.bought ? `bought: ` : ''}${shownItem(value)}`),
    ];
  });
  return notice(turn.speaker, first ?? sum, {
    body: [
      ...(first ? [sum] : []),
      ...lines,
      'Prices are in your own money; keep 10 to 15 % back for what was forgotten (common practice).',
    ].join('\n'),
    private: true,
  });
}
