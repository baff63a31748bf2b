import { caution, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { returnFlow } from '../inputs/return-flow.js';
import { THIN_SHEET, WEIR_SOURCE, weirConstants } from '../inputs/weir.js';

export const overflowWeir = calculation({
  id: 'overflow.weir',
  slash: 'drain weir',
  title: 'Water level over an overflow weir',
  question: 'How high does the water stand over the overflow at this flow?',
  part: 'drains',
  cues: [
    'weir',
    'overflow',
    'over the weir',
    'overflow length',
    'overflow teeth',
    'overflow comb',
    'overflow box',
    'over the overflow',
    'coast to coast',
    'overflow wide enough',
    'overflow long enough',
    'surface skimming',
  ],
  inputs: {
    flow: returnFlow,
    length: quantity('length', {
      symbol: 'b_o',
      name: 'length of the overflow edge',
      words: ['weir', 'overflow', 'weir length', 'overflow length', 'edge', 'comb', 'teeth', 'long'],
      range: [0.01, 6, 'm'],
      usual: [10, 200, 'cm'],
      ask: 'How long is the edge that the water spills over?',
      example: '16 in or 40 cm',
      profile: 'overflow.length',
    }),
    open_fraction: quantity('fraction', {
      symbol: 's',
      name: 'open share of the edge (teeth take the rest)',
      words: ['open', 'open share', 'slots', 'teeth'],
      range: [0, 1, 'fraction'],
      aboveLow: true,
      usual: [0.3, 1, 'fraction'],
      default: { value: 1, unit: 'fraction', why: 'a plain edge without teeth' },
      ask: 'How much of the edge is open? A plain edge is 100 %.',
      example: '60 %',
      profile: 'overflow.open_share',
    }),
    sill_height: quantity('length', {
      symbol: 'P_s',
      name: 'height of the edge above the tank floor',
      words: ['sill', 'sill height', 'edge above the floor', 'weir height'],
      range: [0.02, 2, 'm'],
      default: { value: 0.45, unit: 'm', why: 'hardly matters' },
      ask: 'How high is the edge above the floor of the tank?',
      profile: 'overflow.sill_height',
    }),
  },
  constants: {
    ...weirConstants,
    u: { value: THIN_SHEET, unit: '1', name: 'spread of a thin sheet, our judgement' },
  },
  steps: [
    step('b', 'b_o*s', 'length', 'clear length the water spills over'),
    step('h', '(Q_r/(C_w*b))^(2/3)', 'length', 'water level above the edge'),
    step('h_2', 'kindsvater_carter_head(Q_r, b, P_s)', 'length', 'the same by a second formula'),
    step('h_low', 'min((1 - u)*h, h_2)', 'length', 'low end'),
    step('h_high', 'max((1 + u)*h, h_2)', 'length', 'high end'),
  ],
  results: {
    head: result('h', 'length', 'water level above the edge', {
      units: { metric: 'mm', us: 'in' },
      low: 'h_low',
      high: 'h_high',
      range: [0.001, 0.3, 'm'],
      because:
        'That comes out beyond what a weir formula covers, 1 mm to 30 cm of water over the edge: a thinner sheet breaks into drops, and no tank’s overflow takes a thicker one. Check the flow and the length.',
    }),
    head_kindsvater_carter: result('h_2', 'length', 'the same by a second formula', {
      units: { metric: 'mm', us: 'in' },
      within: THIN_SHEET,
    }),
    effective_length: result('b', 'length', 'clear length'),
  },
  headline: [{ text: 'Water stands {head:range} above the overflow edge at {flow}.' }],
  cautions: [
    caution(
      'stop',
      'That is more than most tanks have from overflow to rim: lengthen the edge, open the teeth or send less flow.',
      'h > 0.04',
    ),
    caution(
      'note',
      'Thinner skims better and is quieter; the trade rule of 65 US gal/h an inch comes to 13 mm (1/2 in).',
      'h > 0.015 and h <= 0.04',
    ),
    caution(
      'caution',
      'Teeth that drown turn into holes, and the level climbs fast: watch that the water stays below their tops, and keep algae and snails out of them.',
      's < 1',
    ),
    caution(
      'note',
      'Add this to the height of the edge for the running level, and to the water that drains back when the pump stops.',
    ),
    caution(
      'note',
      'A sheet thinner than 30 mm clings to the edge and to slime: both formulas were checked on thicker ones, so the spread is our judgement.',
      'h < 0.03',
    ),
  ],
  sources: [WEIR_SOURCE],
  examples: [
    '1000 gph over a 16 inch toothed weir, 60% open: how high does the water stand',
    'is a 33 cm overflow long enough for 3500 L/h',
  ],
});
