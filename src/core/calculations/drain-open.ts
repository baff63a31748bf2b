import { caution, label, quantity, result, step } from '../calculation.js';
import { airInThePipe, sparePath, strainers } from '../cautions/drains.js';
import { gravity, pi } from '../constants.js';
import { calculation } from '../define.js';
import { insideDiameter, pipe } from '../inputs/pipe.js';
import { ORIFICE_SOURCE, orificeConstants, THIN_SHEET, WEIR_SOURCE, weirConstants } from '../inputs/weir.js';

export const drainOpen = calculation({
  id: 'drain.open',
  slash: 'drain open',
  title: 'Flow into an open standpipe',
  question: 'How much does an open-ended standpipe take at this water level over its rim?',
  part: 'drains',
  cues: [
    'open pipe end',
    'open vertical pipe',
    'falls into an open',
    'over its rim',
    'open pipe',
    'standpipe',
    'open channel',
    'open drain',
    'open standpipe',
    'over the rim of the pipe',
    'above the pipe',
    'stand pipe',
  ],
  inputs: {
    pipe,
    inside_diameter: insideDiameter,
    head: quantity('length', {
      symbol: 'h',
      name: 'water level above the rim of the pipe',
      words: [
        'over the rim',
        'above the rim',
        'over the pipe',
        'above the pipe',
        'over the standpipe',
        'head',
        'of water over',
        'above',
      ],
      range: [0, 0.5, 'm'],
      aboveLow: true,
      usual: [2, 100, 'mm'],
      units: { metric: 'mm', us: 'in' },
      ask: 'How high does the water stand above the rim of the pipe?',
      example: '1 in or 20 mm',
    }),
  },
  constants: { ...weirConstants, ...orificeConstants, g: gravity, pi },
  steps: [
    step('Q_w', 'C_w*pi*D*h^1.5', 'flow', 'over the rim as a weir'),
    step('Q_o', 'C_o*pi*D^2/4*sqrt(2*g*h)', 'flow', 'into the mouth as an orifice'),
    step('Q', 'min(Q_w, Q_o)', 'flow', 'what the inlet takes'),
  ],
  results: {
    inlet_capacity: result('Q', 'flow', 'what the inlet takes', { within: THIN_SHEET }),
    weir_flow: result('Q_w', 'flow', 'over the rim as a weir'),
    orifice_flow: result('Q_o', 'flow', 'into the mouth as an orifice'),
    control: label('what limits it', [
      ['weir', 'the rim, as a weir', 'Q_w <= Q_o'],
      ['orifice', 'the mouth, as an orifice'],
    ]),
  },
  headline: [
    {
      text: 'With {head} of water over its rim the standpipe takes {inlet_capacity:range}, held back by its rim.',
      when: 'Q_w <= Q_o',
    },
    {
      text: 'With {head} of water over its rim the standpipe takes {inlet_capacity:range}, held back by its mouth: more water over it helps little.',
    },
  ],
  cautions: [
    caution(
      'note',
      'This is the inlet alone: what falls quietly down the pipe is less (see drain stack), and more than that gurgles, surges or runs full.',
    ),
    airInThePipe,
    sparePath,
    strainers,
  ],
  sources: [WEIR_SOURCE, ORIFICE_SOURCE],
  examples: [
    'how much does a 1-1/2 in schedule 40 open standpipe take with 1 in of water over the rim',
    'open channel standpipe, 34 mm bore, 5 mm over the rim',
  ],
});
