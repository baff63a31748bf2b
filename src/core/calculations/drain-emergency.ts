import { caution, flag, quantity, result, step } from '../calculation.js';
import { testDrainsBeforeTrust } from '../cautions/plumbing.js';
import { calculation } from '../define.js';
import { fittings, insideDiameter, lossCoefficient, pipe } from '../inputs/pipe.js';
import { returnFlow } from '../inputs/return-flow.js';
import { FULL_PIPE_SOURCES, pipeFlowConstants, siphonInputs, siphonSteps } from '../inputs/siphon.js';
import { ORIFICE_SOURCE, orificeConstants, THIN_SHEET, WEIR_SOURCE, weirConstants } from '../inputs/weir.js';

const millimetres = { metric: 'mm', us: 'in' };

export const drainEmergency = calculation({
  id: 'drain.emergency',
  slash: 'drain emergency',
  title: 'Emergency drain',
  question: 'Does the emergency drain alone take the whole return flow before the tank runs over?',
  part: 'drains',
  cues: [
    'other drains plug',
    'emergency drain',
    'emergency standpipe',
    'emergency pipe',
    'emergency',
    'backup drain',
    'spare drain',
    'third drain',
    'dry drain',
    'safety drain',
  ],
  inputs: {
    pipe,
    inside_diameter: insideDiameter,
    flow: returnFlow,
    head_available: quantity('length', {
      symbol: 'h_a',
      name: 'room from the drain’s rim to the tank rim',
      words: [
        'below rim',
        'below the rim',
        'under the rim',
        'from the rim',
        'available',
        'head available',
        'to the rim',
        'to spare',
        'room',
      ],
      range: [0, 0.5, 'm'],
      aboveLow: true,
      usual: [5, 150, 'mm'],
      ask: 'How far is the rim of the emergency drain below the rim of the tank or the overflow box?',
      example: '1.5 in or 4 cm',
      profile: 'drain.emergency_head',
    }),
    ...siphonInputs,
    fittings,
    loss_coefficient: lossCoefficient,
  },
  constants: { ...pipeFlowConstants, ...weirConstants, ...orificeConstants },
  steps: [
    step('h_w', '(Q_r/(C_w*pi*D))^(2/3)', 'length', 'water over its rim, as a weir'),
    step('h_o', '(Q_r/(C_o*pi*D^2/4))^2/(2*g)', 'length', 'water over its mouth, as an orifice that air holds back'),
    step('h_v', 'max(h_w, h_o)', 'length', 'water needed while air stands in the pipe'),
    ...siphonSteps,
  ],
  results: {
    passes_vented: flag('takes the flow even with air in the pipe', 'h_a >= h_v and Q >= Q_r'),
    passes_if_it_primes: flag('takes the flow once it runs full', 'Q >= Q_r'),
    head_needed_weir: result('h_w', 'length', 'water over its rim before it runs full', {
      units: millimetres,
      within: THIN_SHEET,
    }),
    head_needed_vented: result('h_v', 'length', 'water needed with air in the pipe', {
      units: millimetres,
      within: THIN_SHEET,
    }),
    full_bore_flow: result('Q', 'flow', 'flow once it runs full'),
  },
  headline: [
    {
      text: 'It passes: even with air in the pipe the emergency drain takes {flow} with {head_needed_vented} of water over it, and has {head_available}.',
      when: 'h_a >= h_v and Q >= Q_r',
    },
    {
      text: 'Only if it primes: with air in the pipe it needs {head_needed_vented} and has {head_available}; running full it would carry {full_bore_flow:both}.',
      when: 'Q >= Q_r and h_a >= h_w',
    },
    {
      text: 'Hardly: the water would reach the rim before {flow} runs over the edge of the pipe, which takes {head_needed_weir}; only a pipe that primes early could save it.',
      when: 'Q >= Q_r',
    },
    { text: 'It does not pass: even running full it carries {full_bore_flow:both}, less than {flow}.' },
  ],
  cautions: [
    caution(
      'stop',
      'The display or the box would run over when the main drain shuts: use a larger pipe, lower its rim or send less flow.',
      {
        any: ['Q < Q_r', 'h_a < h_w'],
      },
    ),
    caution(
      'caution',
      'Do not trust it before you have seen it prime: shut the main drain by hand at full flow, stand there, and watch the level.',
      'h_a < h_v and Q >= Q_r',
    ),
    caution(
      'caution',
      'It is close: these heads are good to about 15 % (our judgement), and the room it has is within that.',
      'h_a >= h_v and h_a < 1.15*h_v and Q >= Q_r',
    ),
    caution(
      'note',
      'Leave it open at the top of its pipe, dry, without a valve and without anything shared with the main drain.',
    ),
    caution(
      'caution',
      'An emergency drain that runs is an alarm: find the clog the same day. A sensor at its rim tells you.',
    ),
    testDrainsBeforeTrust,
  ],
  sources: [WEIR_SOURCE, ORIFICE_SOURCE, ...FULL_PIPE_SOURCES],
  examples: [
    'will a 1 in schedule 40 emergency drain take 600 gph with 1.5 in below the rim, 30 in drop, 40 in of pipe, 2 elbows',
    'emergency drain 34 mm bore, 3484 L/h, 6 cm to the rim, drop 1.02 m, 1.2 m of pipe, loss coefficient 3.2',
  ],
});
