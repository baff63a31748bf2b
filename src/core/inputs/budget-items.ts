import { type Lookup, lookup } from '../calculation.js';
import { MOST_TERMS } from '../sum.js';

const RIGHT = 'write each as how many at what price, or its name and price: 2 heaters at 75, tank 900';
const MOST_PRICE = 1_000_000;
const MOST_QUANTITY = 10_000;
const NUMBER = /\d+(?:,\d{3})*(?:\.\d+)?/g;

interface Item {
  readonly name: string;
  readonly quantity: number;
  readonly price: number;
}

/** `2 heaters at 75`, `tank 900`, `20 x 4.50`: the last number is the price, one before it the count. */
function itemIn(text: string): Item | undefined {
  const numbers = [...text.matchAll(NUMBER)].map(([digits]) => Number(digits.replace(/,/g, '')));
  const price = numbers.at(-1);
  if (price === undefined || numbers.length > 2) return undefined;
  const name = text.replace(NUMBER, ' ').replace(/[$€£@×*]|\b(?:at|for|x|each|of|and|a|kg|lb|the)\b/g, ' ');
  return { name: name.replace(/\s+/g, ' ').trim(), quantity: numbers.length === 2 ? numbers[0]! : 1, price };
}

/** Items of a structured list, `[[1, 900], [2, 75]]`. */
const listed = (text: string): (Item | undefined)[] =>
  [...text.matchAll(/\[\s*(\d+(?:\.\d+)?)\s*,\s*(\d+(?:\.\d+)?)\s*\]/g)].map(([, quantity, price]) => ({
    name: '',
    quantity: Number(quantity),
    price: Number(price),
  }));

function read(text: string): Lookup | string {
  const items = /^\s*\[/.test(text)
    ? listed(text)
    : text
        .toLowerCase()
        .split(/,(?!\d{3})|;|\n|\+|\band\b/)
        .filter((part) => part.trim() !== '')
        .map(itemIn);
  if (items.length === 0 || items.includes(undefined))
    return `“${text}” holds something I cannot read as an item: ${RIGHT}.`;
  if (items.length > MOST_TERMS)
    return `I take up to ${MOST_TERMS} lines, and that is ${items.length}: the shopping list takes more.`;
  const known = items.filter((item) => item !== undefined);
  if (known.some(({ quantity, price }) => quantity > MOST_QUANTITY || price > MOST_PRICE))
    return `A line has up to ${MOST_QUANTITY} of a thing at up to ${MOST_PRICE} each: ${RIGHT}.`;
  return {
    reading: known
      .map(({ name, quantity, price }) => `${quantity} ${name} at ${price}`.replace(/\s+/g, ' '))
      .join('; '),
    symbols: Object.fromEntries(
      known.flatMap(({ name, quantity, price }, i) => [
        [`n_${i + 1}`, { si: quantity, name: `how many: ${name || `line ${i + 1}`}`, said: true }],
        [`c_${i + 1}`, { si: price, name: `price: ${name || `line ${i + 1}`}`, said: true }],
      ]),
    ),
  };
}

/** What a list of items follows. */
const BEFORE_ITEMS = [
  'budget',
  'builds? costs?',
  'build (?:come|comes|add|adds up)',
  'cost of (?:(?:the|my|our|this)(?: whole)? build|everything|it all)',
  'adds? (?:it )?(?:all )?up',
  'total(?: build)?(?: costs?| price)?',
  'grand total',
  'comes? to',
  'altogether',
  'shopping(?: list)?(?: total)?',
].join('|');
/** What ends it. */
const AFTER_ITEMS = 'tax|sales tax|vat|gst|contingency|reserve|surprises';

const PRICE = '[$€£]?\\d+(?:[.,]\\d+)*(?![\\d.,]*\\s?%)';
const AT_PRICE = `(?:\\s(?:at|x|@)\\s${PRICE})`;
const NAMED_ITEM = `(?:\\d+\\s)?[a-z][a-z ]{1,24}:?\\s${PRICE}(?:\\s(?:kg|lbs?))?${AT_PRICE}?`;
/** Lists that nothing announces: three things with their prices after a stop, lines with colons, counts with prices. */
const UNANNOUNCED = [
  `(?<=[:,.?!;]\\s)${NAMED_ITEM}(?:,\\s(?:and\\s)?${NAMED_ITEM}){2,}`,
  `[a-z][a-z ]{1,24}:\\s${PRICE}${AT_PRICE}?(?:,?\\s[a-z][a-z ]{1,24}:\\s${PRICE}${AT_PRICE}?){2,}`,
  `(?<![\\d.,])\\d+${AT_PRICE}(?:,\\s(?:and\\s)?\\d+${AT_PRICE})+`,
].join('|');

/** What is bought: how many of each and the price of one, in the member's own money. */
export const budgetItems = lookup({
  name: 'what is bought, how many and the price of each',
  words: ['items'],
  ask: 'What do you buy: how many of each, and at what price each?',
  example: '2 heaters at 75, tank 900, 20 kg rock at 4.50',
  suggestions: ['1 at 900, 2 at 75, 20 at 4.50', 'tank 900, 3 x 45, stand 380'],
  symbols: { n_i: '1', c_i: 'currency' },
  pattern: new RegExp(
    `(?<=\\b(?:${BEFORE_ITEMS})\\b(?: for| of| is| to)?:?\\s+)(?!(?:for|of|is|to|my|our|the|this|total|build|costs?|price|list)\\b)[a-z0-9$€£].*?(?=,?\\s*(?:and |plus |with |incl |including |keep |keeping )*(?:\\d+(?:\\.\\d+)? ?%|(?:${AFTER_ITEMS})\\b)|[?.!]?$)|${UNANNOUNCED}`,
  ),
  read,
});
