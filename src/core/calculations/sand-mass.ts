import { type Condition, caution, quantity, result, step } from '../calculation.js';
import { rockOnTheBase } from '../cautions/rock.js';
import { tiny } from '../constants.js';
import { calculation } from '../define.js';
import { glassThickness, length, width } from '../inputs/display.js';
import { priceOfMass } from '../inputs/price.js';
import { solidInputs } from '../inputs/rock-and-sand.js';
import { SAND_SOURCE, sandBulkDensity, sandKind } from '../inputs/sand.js';
import { noInside } from '../inputs/tank-shape.js';

const noArea: Condition = { not: { given: 'sand_area' } };
const silica: Condition = { is: ['sand_kind', 'silica'] };
const aragonite = sandBulkDensity();

export const sandMass = calculation({
  id: 'sand.mass',
  slash: 'structure sand',
  title: 'Sand for a bed',
  question: 'How much dry sand makes a bed of that depth, or how deep does the sand I have reach?',
  part: 'rock and sand',
  cues: [
    '~sand',
    'how much sand',
    'sand needed',
    'filter sand',
    'crushed coral',
    'sand do I need',
    'sand for',
    'pounds of sand',
    'kilos of sand',
    'kg of sand',
    'lb of sand',
    'lbs of sand',
    'bags of sand',
    'sand bed',
    'amount of sand',
    'weight of the sand',
    'weight of sand',
    'sand weigh',
    'how deep will',
    'how deep would',
    'how deep does',
    'how deep a bed',
    'how deep a sand bed',
    'inch of sand',
    'inches of sand',
    'cm of sand',
    'sand to cover',
  ],
  inputs: {
    length: quantity('length', { ...length, needed: noArea }),
    width: quantity('length', { ...width, needed: noArea }),
    glass_thickness: quantity('length', {
      ...glassThickness,
      needed: false,
      default: { value: 0, unit: 'mm', when: { given: 'length' } },
    }),
    sand_area: quantity('area', {
      ...solidInputs.sand_area,
      needed: false,
      default: { formula: '(L - 2*t)*(W - 2*t)' },
    }),
    depth: quantity('length', {
      ...solidInputs.sand_depth,
      words: [...(solidInputs.sand_depth.words ?? []), 'deep', 'depth', 'layer'],
      needed: { not: { given: 'sand_on_hand' } },
      ask: 'How deep should the sand bed be?',
      example: '1.5 in or 4 cm',
    }),
    sand_kind: sandKind,
    bulk_density: quantity('density', {
      ...aragonite,
      default: [
        { value: 1600, unit: 'kg/m3', low: 1500, high: 1700, why: 'dry silica sand', when: silica },
        {
          value: 1550,
          unit: 'kg/m3',
          low: 1400,
          high: 1650,
          why: 'dry aragonite: grain density less the pores',
        },
      ],
    }),
    sand_on_hand: quantity('mass', {
      symbol: 'm_h',
      name: 'sand you have',
      words: ['have', 'got', 'of sand', 'bought', 'sand on hand'],
      range: [0, 5000, 'kg'],
      aboveLow: true,
      usual: [2, 300, 'kg'],
      needed: false,
      ask: 'How much dry sand do you have?',
      example: '40 lb or 18 kg',
    }),
    bag_mass: quantity('mass', {
      symbol: 'm_b',
      name: 'sand in one bag',
      words: ['bag', 'bags', 'bags of', 'each bag', 'per bag', 'a bag', 'in a bag'],
      range: [0, 100, 'kg'],
      aboveLow: true,
      usual: [2, 30, 'kg'],
      needed: false,
      ask: 'How much sand is in one bag?',
      example: '9 kg or 20 lb',
    }),
    price: priceOfMass('sand'),
  },
  constants: { tiny },
  rules: [noInside('W', 'width'), noInside('L', 'length')],
  steps: [
    step('m_s', 'A_s*d_s*rho_b', 'mass', 'dry sand for the bed'),
    step('d_h', 'm_h/(A_s*rho_b)', 'length', 'depth that your sand reaches'),
    step('m_more', 'm_s - m_h', 'mass', 'still to buy', 'm_s > m_h'),
    step('n_b', 'ceil(m_more/m_b - tiny)', 'count', 'bags still to buy'),
    step('n_b', 'ceil(m_s/m_b - tiny)', 'count', 'bags', { not: { given: 'sand_on_hand' } }),
    step('cost', 'm_more*c_m', 'money', 'cost of what is still to buy'),
    step('cost', 'm_s*c_m', 'money', 'cost', { not: { given: 'sand_on_hand' } }),
  ],
  results: {
    sand_mass: result('m_s', 'mass', 'dry sand for the bed'),
    depth_reached: result('d_h', 'length', 'depth that your sand reaches'),
    sand_to_buy: result('m_more', 'mass', 'still to buy'),
    bags: result('n_b', 'count', 'bags to buy'),
    cost: result('cost', 'money', 'cost'),
  },
  headline: [
    {
      text: 'Not enough: what you have reaches a depth of {depth_reached:both}, and {sand_to_buy:both} is missing.',
      when: 'm_more > 0',
    },
    { text: 'Enough: what you have reaches a depth of {depth_reached:both}.', when: 'd_h >= d_s' },
    { text: 'Your sand reaches a depth of {depth_reached:range}.', when: 'd_h > 0' },
    { text: 'The dry sand for the bed weighs {sand_mass:range}: {bags} bags by the middle of that.', when: 'n_b > 0' },
    { text: 'The dry sand for the bed weighs {sand_mass:range}.' },
  ],
  cautions: [
    rockOnTheBase,
    caution('note', 'Buy a little over the middle: grains settle, and rinsing washes the finest away.', {
      given: 'depth',
    }),
    caution(
      'note',
      'Rock that stands on the base takes its own area out of the bed: under much rock less sand is enough.',
    ),
    caution(
      'note',
      'The rule inches × inches × inches / 20 = pounds takes 1384 kg/m³ and buys about a tenth too little.',
      { given: 'depth' },
    ),
    caution('note', 'The sizes count as inside sizes: tell me how thick the panes are.', 't <= 0'),
  ],
  sources: ['geometry: area times depth times bulk density', SAND_SOURCE],
  examples: [
    'how much sand for a 1.5 inch bed in a 48 x 24 in tank',
    'sand for a 147 x 57 cm tank, 4 cm deep, 9 kg a bag',
    'how deep will 40 lb of sand be in a 36x18 in tank',
  ],
});
