import { type Condition, caution, quantity, type Result, result, type Step, step } from '../calculation.js';
import { curveIsGuessed, drainsMustCarryIt, throttleOutletOnly } from '../cautions/return.js';
import { calculation } from '../define.js';
import { insideDiameter, returnFittings, returnLoss, returnPipe } from '../inputs/pipe.js';
import {
  outletInputs,
  pumpEnds,
  QUIET,
  RETURN_LINE_SOURCES,
  returnLineConstants,
  returnLineInputs,
} from '../inputs/return-line.js';

const { k_low: _, k_high: __, pi, ...constants } = returnLineConstants;
const differ: Condition = { given: 'outlet_sizes' };
const { curve_points: ___, ...ends } = pumpEnds;

/** Outlets that differ may be up to eight. */
const each = Array.from({ length: 8 }, (_, k) => k + 1);
const share = (i: number): Step =>
  step(`Q_${i}`, `Q*outlet_conductance(D_${i}, L_b, K_b, nu, e)/G`, 'flow', `flow of outlet ${i}`);
const shareResult = (i: number): [string, Result] => [
  `flow_outlet_${i}`,
  result(`Q_${i}`, 'flow', `flow of outlet ${i}`),
];

export const pumpSplit = calculation({
  id: 'pump.split',
  slash: 'return split',
  title: 'One pump, several outlets',
  question: 'How much flow do several return outlets give together, and how is it shared?',
  part: 'return',
  cues: [
    'outlets',
    'outlets off',
    'outlets from',
    'outlets on',
    'off one return',
    'two outlets',
    'return outlets',
    'split the return',
    'split return',
    'split between',
    'dual return',
    'two returns',
    'two nozzles',
    'return nozzles',
    'manifold',
    'per outlet',
    'each outlet',
    'each nozzle',
    'flow per nozzle',
    'splits into',
    'return splits',
    'tee off',
    'teed',
    "tee'd",
    'teed off',
    'one pump two',
    'three outlets',
    'four outlets',
    'dual outlet',
    'feeds two',
    'feeds two returns',
    'two returns on one pump',
    'comes out of each',
    'out of each',
    'does each get',
    'what does each',
    'each of my',
    'flow shared',
    'is the flow shared',
    'flow is shared',
    'nozzles',
    'flow per outlet',
    'dual returns on one pump',
    'returns on one pump',
    'flow each',
    'flow each outlet',
    'feeds # outlets',
    'into # outlets',
    'of # nozzles',
    'of # outlets',
    'each outlet give',
    'each outlet get',
    'each nozzle get',
    'split my return',
    'mm outlets',
    'in outlets',
    'inch outlets',
    'goes to two',
    'at each',
    'how much at each',
    'split to',
    'flow split',
  ],
  wording: /\b(?:each|per) (?:outlet|nozzle|return|branch)|\b(?:split|shared)\b/,
  inputs: {
    flow_max: quantity('flow', { ...ends.flow_max, needed: undefined }),
    head_max: quantity('length', {
      ...ends.head_max,
      needed: undefined,
      ask: 'What is the maximum head of the pump, the height at which its flow stops?',
      example: '3.5 m or 12 ft',
    }),
    static_head: returnLineInputs.static_head,
    ...outletInputs,
    pipe: returnPipe,
    inside_diameter: quantity('length', {
      ...insideDiameter,
      name: 'bore of the riser',
      words: ['riser bore'],
      ask: 'Which pipe is the riser?',
    }),
    pipe_length: quantity('length', {
      ...returnLineInputs.pipe_length,
      ask: 'How long is the return pipe up to the split?',
    }),
    fittings: returnFittings,
    loss_coefficient: quantity('ratio', {
      ...returnLoss,
      range: [0, 30, '1'],
      name: 'loss coefficient of the riser’s fittings',
      ask: 'Which fittings are on the riser, up to the split?',
    }),
  },
  constants: { ...constants, pi, one: { value: 1, unit: '1', name: 'the exit, which stands at the outlets' } },
  steps: [
    step('K_r', 'sum_i(n_i*K_i) - one', 'ratio', 'loss of the riser’s fittings, without the exit'),
    step('K_r', 'K', 'ratio', 'loss of the riser’s fittings'),
    step('G', 'sum_i(outlet_conductance(D_i, L_b, K_b, nu, e))', 'm^2.5/s', 'conductance of all outlets', differ),
    step('G', 'n_o*outlet_conductance(D_b, L_b, K_b, nu, e)', 'm^2.5/s', 'conductance of all outlets'),
    step('Q', 'split_flow(H_max, Q_max, H_s, D, L_p, K_r, G, nu, e)', 'flow', 'flow of all outlets together'),
    step('h_b', '(Q/G)^2', 'length', 'head that the outlets take'),
    step('V_r', 'Q/(pi*D^2/4)', 'speed', 'speed in the riser'),
    step('Q_o', 'Q/n_o', 'flow', 'flow of each outlet', { not: differ }),
    step('V_o', 'Q_o/(pi*D_b^2/4)', 'speed', 'speed in each outlet'),
    ...each.map(share),
  ],
  results: {
    flow: result('Q', 'flow', 'flow of all outlets together', { feeds: 'return.flow' }),
    flow_per_outlet: result('Q_o', 'flow', 'flow of each outlet'),
    outlet_velocity: result('V_o', 'speed', 'speed in each outlet', { when: 'Q > 0' }),
    riser_velocity: result('V_r', 'speed', 'speed in the riser', { when: 'Q > 0' }),
    ...Object.fromEntries(each.map(shareResult)),
  },
  headline: [
    {
      text: 'No water reaches the outlets: {head_max} is the most this pump lifts, and it must lift {static_head}.',
      when: 'Q <= 0',
    },
    {
      text: 'The first outlet gives {flow_outlet_1}, the second {flow_outlet_2}; together that is {flow:range}.',
      when: { all: [differ, { not: 'Q_3 >= 0' }] },
    },
    {
      text: 'Together the outlets give {flow:range}; the first {flow_outlet_1}, the rest as listed below.',
      when: differ,
    },
    { text: 'The one outlet gives {flow:range}, at {outlet_velocity}.', when: 'n_o <= 1' },
    {
      text: 'Each of the {outlets} outlets gives {flow_per_outlet} at {outlet_velocity}; together that is {flow:range}.',
    },
  ],
  cautions: [
    caution(
      'stop',
      'A pump that moves nothing overheats: it needs a maximum head well above the height, about twice (common practice).',
      'Q <= 0',
    ),
    caution(
      'caution',
      'Outlets share evenly only when their pipes are alike: a longer branch or one more elbow gives less. Give each a valve behind the split.',
    ),
    caution(
      'note',
      'The riser is the narrow part: at {riser_velocity} it takes more than the 1.5 m/s (5 ft/s) that is quiet; a wider riser gives all outlets more.',
      'V_r > 1.5',
    ),
    { ...drainsMustCarryIt, when: 'Q > 0' },
    { ...curveIsGuessed, when: 'Q > 0' },
    throttleOutletOnly,
    caution(
      'note',
      'The deepest outlet decides how much siphons back in a power cut: give every one its own hole just under the surface.',
    ),
  ],
  sources: [...RETURN_LINE_SOURCES, 'parallel outlets share one head', QUIET],
  examples: [
    'one riser and two 3/4 in outlets: pump 2000 gph max, 13 ft max head, 55 in up, 5 ft of 1 in pvc riser, 2 elbows. how much from each outlet',
    'split the return into 2 outlets of 21.2 mm bore, max head 4 m, max flow 8000 L/h, static head 1.4 m, 1.6 m of 32 mm riser, loss coefficient 3',
    'return pump 5000 L/h max head 3 m, 1.2 m up, 1.5 m of 32 mm pipe, 2 elbows, outlets 25 mm and 20 mm: what does each outlet give',
  ],
});
