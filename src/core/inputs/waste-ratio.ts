import { type Condition, choice, type Lookup, lookup, quantity } from '../calculation.js';

const PAIR = /(\d+(?:\.\d+)?)\s*(?::|to|-to-|\/)\s*(\d+(?:\.\d+)?)/;
/** Written as one to so many, either of the two may be the waste. */
const UNCLEAR = 'R_s < 1';
const measured: Condition = { given: 'measured_waste' };

/** `4:1` as people say it. With the larger number first that is the waste; otherwise it must be asked. */
const wasteRatioText = lookup({
  name: 'ratio as said, such as 4:1',
  words: ['ratio'],
  ask: 'What is the ratio of waste to product?',
  example: '4:1',
  needed: false,
  suggestions: ['4:1', '3:1', '2:1', '1:1'],
  symbols: { R_s: '1' },
  pattern: new RegExp(`(?<![\\d.])${PAIR.source}(?!\\d|\\.\\d)`),
  read(text): Lookup | string {
    const [, first, second] = text.match(PAIR) ?? [];
    if (Number(first) > 0 && Number(second) > 0)
      return {
        reading: `${first} to ${second}`,
        symbols: { R_s: { si: Number(first) / Number(second), name: 'first number over the second', said: true } },
      };
    return `“${text}” is no ratio I can read: write waste to product, such as 4:1.`;
  },
});

const collected = (symbol: string, name: string, words: readonly string[]) =>
  quantity('volume', {
    symbol,
    name,
    words,
    range: [0, 1000, 'L'],
    aboveLow: true,
    usual: [0.05, 20, 'L'],
    needed: false,
    ask: `How much ${name}?`,
    example: '800 mL',
  });

/** Waste to one of product, as a number, as said, or from what ran into two jugs in the same time. */
export const wasteRatioInputs = {
  ratio: wasteRatioText,
  ratio_order: choice({
    name: 'which number of the ratio is the waste',
    ask: 'Which of the two numbers is the waste?',
    needed: UNCLEAR,
    options: {
      waste_first: {
        label: 'the first is waste',
        words: [
          'first',
          'waste first',
          'waste to product',
          'waste to good',
          'waste to pure',
          'waste to ro',
          'to 1 waste',
          'reject to product',
          'drain to product',
        ],
        gives: { o: 1 },
      },
      product_first: {
        label: 'the second is waste',
        words: [
          'second',
          'product first',
          'product to waste',
          'pure to waste',
          'good to waste',
          'waste second',
          'product to reject',
          'ro to waste',
          'good water to waste',
          'clean to waste',
          'pure to drain',
        ],
        gives: { o: -1 },
      },
    },
    symbols: { o: '1' },
  }),
  measured_waste: collected('V_jw', 'waste ran into a jug', [
    'waste jug',
    'of waste',
    'waste for every',
    'waste for',
    'waste collected',
    'measured waste',
    'ml waste',
    'l waste',
    'litres waste',
    'liters waste',
    'gal waste',
    'waste and',
    'caught',
    'waste side',
    'waste line',
    'ml of waste',
  ]),
  measured_product: quantity('volume', {
    ...collected('V_jp', 'product ran into a jug in the same time', [
      'product jug',
      'of good water',
      'good water',
      'of good',
      'of pure',
      'product collected',
      'measured product',
      'ml product',
      'l product',
      'litre product',
      'liter product',
      'gal product',
      'product side',
      'product line',
      'l good',
      'l pure',
      'ml of product',
    ]),
    needed: measured,
  }),
  waste_ratio: quantity('ratio', {
    symbol: 'R',
    name: 'waste to one of product',
    words: [
      'ratio',
      'waste ratio',
      'waste to product',
      'parts waste',
      'parts of waste',
      'times as much waste',
      'waste for every',
      'waste ratio is',
      'ratio is',
      'ratio of',
      'of waste per',
      'to 1 waste',
      'waste per',
      'parts waste for each',
      'waste for each part',
      'waste for each',
      'parts waste for',
      'parts of waste for',
      'waste for one',
      'parts waste to',
    ],
    range: [0.3, 20, '1'],
    usual: [1, 8, '1'],
    slips: [
      [
        0,
        0.3,
        'The ratio looks turned round: four parts of waste to one of product is 4. With so little waste a membrane fouls at once.',
      ],
      [20, 1e6, 'So much waste means that the flow restrictor is missing, or the flush valve is open.'],
    ],
    needed: { not: { any: [{ given: 'ratio' }, measured] } },
    default: [{ formula: 'V_jw/V_jp' }, { formula: 'R_s', when: 'R_s >= 1' }, { formula: 'R_s^o' }],
    ask: 'How many parts of waste come with one part of product? A jug and a minute at each line tell.',
    example: '4',
    profile: 'ro.waste_ratio',
  }),
};
