import { type Condition, caution, quantity, result, type Sentence, step } from '../calculation.js';
import { drainAndBackflow } from '../cautions/reverse-osmosis.js';
import { calculation } from '../define.js';
import { feedTds, rejection } from '../inputs/reverse-osmosis.js';
import { wasteRatioInputs } from '../inputs/waste-ratio.js';

const LITTLE = 'R < 2';
const MUCH = 'R > 6';
const priced: Condition = { given: 'water_price' };

/** A first line with the price and without. */
const withCost = (verdict: string, when?: Condition): Sentence[] => [
  {
    text: `{product_volume} of product sends {waste_volume} down the drain, and the {feed_volume} of tap water costs {cost}${verdict}.`,
    when: when === undefined ? priced : { all: [priced, when] },
  },
  {
    text: `{product_volume} of product sends {waste_volume} down the drain: {feed_volume} of tap water in all${verdict}.`,
    ...(when === undefined ? {} : { when }),
  },
];

export const roWaste = calculation({
  id: 'ro.waste',
  slash: 'topoff ro-waste',
  title: 'Waste water of reverse osmosis',
  question: 'How much tap water goes in, how much down the drain, and what does it cost?',
  part: 'reverse osmosis',
  cues: [
    'waste water',
    'wastewater',
    'how much waste',
    'how much water do i waste',
    'how much water is wasted',
    'down the drain',
    'waste ratio',
    'waste to product',
    'rodi waste',
    'ro waste',
    'reject water',
    'brine water',
    'tap water does it take',
    'tap water do i need',
    'tap water to make',
    'water bill',
    'cost of rodi',
    'cost of ro',
    'rodi cost',
    'cost to make rodi',
    'cost to make ro',
    'recovery rate',
    'waste for',
    '~rodi',
    '~ro',
    '~waste',
    '~wasted',
  ],
  inputs: {
    product_volume: quantity('volume', {
      symbol: 'V_p',
      name: 'product water to be made',
      words: [
        'wastewater for',
        'waste for',
        'waste water for',
        'how much for',
        'make',
        'product',
        'of product',
        'of ro',
        'of rodi',
        'rodi',
        'ro water',
        'making',
      ],
      range: [0, 100_000, 'L'],
      aboveLow: true,
      usual: [5, 2000, 'L'],
      ask: 'How much product water do you want to make?',
      example: '100 L or 30 gal',
    }),
    ...wasteRatioInputs,
    feed_tds: quantity('dissolved', { ...feedTds, needed: false }),
    rejection: quantity('fraction', { ...rejection, needed: false }),
    water_price: quantity('price of water', {
      symbol: 'c',
      name: 'price of tap water, sewage included',
      words: [
        'price',
        'water costs',
        'costs',
        'cost',
        'water price',
        'per m3',
        'tap water costs',
        'at',
        'cubic metre',
        'cubic meter',
      ],
      range: [0, 1000, 'currency/m3'],
      usual: [0.5, 20, 'currency/m3'],
      needed: false,
      ask: 'What does tap water cost, sewage included?',
      example: '3.20 per m3',
      profile: 'ro.water_price',
    }),
  },
  steps: [
    step('V_w', 'V_p*R', 'volume', 'waste'),
    step('V_f', 'V_p*(1 + R)', 'volume', 'tap water in all'),
    step('Y', '1/(1 + R)', 'fraction', 'share of the tap water that becomes product'),
    step('c_p', 'c_f*(1 - r)', 'dissolved', 'TDS of the product'),
    step('c_w', '(c_f - Y*c_p)/(1 - Y)', 'dissolved', 'TDS of the waste: what does not pass stays in it'),
    step('C', 'V_f*c', 'money', 'cost of the tap water'),
    step('c_v', 'c*(1 + R)', 'price of water', 'price of the product by volume'),
  ],
  results: {
    waste_volume: result('V_w', 'volume', 'waste'),
    feed_volume: result('V_f', 'volume', 'tap water in all'),
    recovery: result('Y', 'fraction', 'share that becomes product'),
    waste_tds: result('c_w', 'dissolved', 'TDS of the waste'),
    product_tds: result('c_p', 'dissolved', 'TDS of the product before any resin'),
    cost: result('C', 'money', 'cost of the tap water'),
    product_price: result('c_v', 'price of water', 'price of the product, for the water alone'),
  },
  headline: [
    ...withCost('. That is too little waste for hard water', LITTLE),
    ...withCost('. That is more waste than most units are built for', MUCH),
    ...withCost(''),
  ],
  cautions: [
    caution(
      'caution',
      'Below about two parts of waste to one of product hard water leaves scale on the membrane and shortens its life (common practice).',
      LITTLE,
    ),
    caution(
      'caution',
      'Most units are made for 3 or 4 to 1 (common practice): look for an open flush valve, a wrong restrictor, low pressure or cold water.',
      MUCH,
    ),
    caution('note', 'Read as {R} parts of waste to one of product; turned round, say so.', { given: 'ratio' }),
    caution(
      'note',
      'The label’s ratio is for one pressure and 25 °C. Measure yours: a jug and a minute at each line.',
      { not: { given: 'measured_waste' } },
    ),
    caution(
      'note',
      'Waste is tap water with more in it: for the laundry, the mop or plants that stand salt, never for the tank.',
    ),
    drainAndBackflow,
  ],
  sources: ['balance of water and of what is dissolved in it', 'usual ratios: common practice, no source'],
  examples: [
    'how much waste water for 100 L of rodi at 4:1',
    'how much goes down the drain making 150 gallons of ro at 3 to 1, water costs 3.20 per m3',
    'what is my waste: make 20 L of product, 800 ml of waste and 200 ml of product in the jugs',
  ],
});
