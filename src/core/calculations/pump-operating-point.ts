import { type Condition, caution, flag, quantity, result, step } from '../calculation.js';
import { curveIsGuessed, drainsMustCarryIt, throttleOutletOnly } from '../cautions/return.js';
import { calculation } from '../define.js';
import { insideDiameter, returnFittings, returnLoss, returnPipe } from '../inputs/pipe.js';
import { wantedFlow } from '../inputs/return-flow.js';
import { pumpEnds, QUIET, RETURN_LINE_SOURCES, returnLineConstants, returnLineInputs } from '../inputs/return-line.js';
import { boreAreaStep } from '../inputs/siphon.js';
import { systemVolume } from '../inputs/system-water.js';

const byPoints: Condition = { given: 'curve_points' };
const byEnds: Condition = { not: byPoints };
const plumbing = (loss: string) => `H_s, D, L_p, ${loss}, nu, e`;
const byTheEnds = (loss: string) => `operating_flow(H_max, Q_max, ${plumbing(loss)})`;
const byThePoints = (loss: string) => `sum_i(flow_within(Qa_i, Ha_i, Qb_i, Hb_i, ${plumbing(loss)}))`;

export const pumpOperatingPoint = calculation({
  id: 'pump.operating_point',
  slash: 'return pump',
  title: 'What the return pump really sends',
  question: 'How much water does this return pump really send up, through this pipe and to this height?',
  general: true,
  part: 'return',
  cues: [
    '~return pump',
    '~pump',
    'enough flow',
    'pump give',
    'pump put out',
    'pump push',
    'flow from a',
    'flow from my',
    'gph pump',
    'actual flow',
    'real flow',
    'really get',
    'really send',
    'really pump',
    'really move',
    'head loss',
    '~head pressure',
    '~feet of head',
    '~ft of head',
    '~of head',
    '~at head',
    '~max head',
    'pump curve',
    'operating point',
    'flow at the tank',
    'flow will I get',
    'flow do I get',
    'how much flow from',
    'gph will I get',
    'big enough pump',
    'pump big enough',
    'pump strong enough',
    'what do i really get',
    'what will my return pump deliver',
    'pump deliver',
    'deliver',
    'really deliver',
    'flow is left',
    'left after head loss',
    'after head loss',
    'after head',
    'gph at the tank',
    'lph at the tank',
    'at the tank',
    'trickle',
    'real output',
    'only a trickle',
    'weak return',
    'pump too weak',
    'ft head',
    'lift',
    'gph at #',
    '~head height',
    'pump does',
    'shutoff',
  ],
  inputs: {
    ...pumpEnds,
    static_head: returnLineInputs.static_head,
    pipe: returnPipe,
    inside_diameter: quantity('length', { ...insideDiameter, ask: 'Which pipe is the return line?' }),
    pipe_length: returnLineInputs.pipe_length,
    fittings: returnFittings,
    loss_coefficient: returnLoss,
    wanted_flow: wantedFlow,
    tank_volume: quantity('volume', { ...systemVolume, symbol: 'V_t', needed: false }),
  },
  constants: {
    ...returnLineConstants,
    Q_0: { value: 0, unit: 'm^3/s', name: 'no flow' },
    H_0: { value: 0, unit: 'm', name: 'no head' },
  },
  steps: [
    step('Q', byThePoints('K'), 'flow', 'flow where the pump’s points meet the plumbing'),
    step('Q_low', byThePoints('k_high*K'), 'flow', 'the same if the fittings take the most'),
    step('Q_high', byThePoints('k_low*K'), 'flow', 'the same if the fittings take the least'),
    step('Q', byTheEnds('K'), 'flow', 'flow where the pump curve meets the plumbing', byEnds),
    step(
      'Q_low',
      `flow_within(Q_0, H_max, Q_max, H_0, ${plumbing('k_high*K')})`,
      'flow',
      'the same with a curve that falls straight, and fittings that take the most',
      byEnds,
    ),
    step('Q_high', byTheEnds('k_low*K'), 'flow', 'the same if the fittings take the least', byEnds),
    boreAreaStep,
    step('V', 'Q/A', 'speed', 'speed in the pipe'),
    step('Re', 'V*D/nu', 'ratio', 'Reynolds number', 'Q > 0'),
    step('f', 'friction(Re, e/D)', '1', 'friction factor', 'Q > 0'),
    step('H_f', '(f*L_p/D + K)*V^2/(2*g)', 'length', 'head that pipe and fittings take'),
    step('H', 'H_s + H_f', 'length', 'head the plumbing takes'),
    step('H_p', 'H_max*(1 - (Q/Q_max)^2)', 'length', 'head the pump gives at that flow: the same', {
      all: [byEnds, 'Q > 0'],
    }),
    step('share', 'Q/Q_max', 'fraction', 'share of the label flow', byEnds),
    step('n', 'Q/V_t', 'turnover', 'times an hour the water goes through'),
    step('Q_end', 'sum_i(Qb_i - Qa_i)', 'flow', 'flow at the last point of the curve'),
  ],
  results: {
    flow: result('Q', 'flow', 'flow at the tank', { low: 'Q_low', high: 'Q_high', feeds: 'return.flow' }),
    enough: flag('reaches the flow wanted', 'Q >= Q_w', { given: 'wanted_flow' }),
    share_of_label: result('share', 'fraction', 'share of the label flow', { when: 'Q > 0', figures: 2 }),
    velocity: result('V', 'speed', 'speed in the pipe', { when: 'Q > 0' }),
    operating_head: result('H', 'length', 'head the pump works against', {
      when: 'Q > 0',
      units: { metric: 'm', us: 'ft' },
      feeds: 'return.operating_head',
    }),
    friction_head: result('H_f', 'length', 'of which pipe and fittings', {
      when: 'Q > 0',
      units: { metric: 'm', us: 'ft' },
    }),
    turnover: result('n', 'turnover', 'times an hour the water goes through'),
  },
  headline: [
    {
      text: 'No water reaches the display: {head_max} is the most this pump lifts, and it must lift {static_head}.',
      when: { all: [byEnds, 'Q <= 0'] },
    },
    {
      text: 'No water reaches the display: by its curve this pump does not lift water {static_head}.',
      when: 'Q <= 0',
    },
    {
      text: 'Yes, it reaches {wanted_flow}: it really sends about {flow:range}.',
      when: 'Q_low >= Q_w',
    },
    {
      text: 'By the middle estimate it reaches {wanted_flow}: it really sends about {flow:range}.',
      when: 'Q >= Q_w',
    },
    {
      text: 'By the middle estimate it misses {wanted_flow}: it really sends about {flow:range}.',
      when: 'Q_high >= Q_w and Q < Q_w',
    },
    { text: 'No, it does not reach {wanted_flow}: it really sends about {flow:range}.', when: 'Q < Q_w' },
    {
      text: 'It really sends about {flow:range}, {share_of_label} of its label, so the water goes through {turnover}.',
      when: { all: [byEnds, 'n > 0'] },
    },
    { text: 'It really sends about {flow:range}, {share_of_label} of its label.', when: byEnds },
    { text: 'It really sends about {flow:range}, so the water goes through {turnover}.', when: 'n > 0' },
    { text: 'It really sends about {flow:range} at {operating_head} of head.' },
  ],
  cautions: [
    caution(
      'stop',
      'A pump that moves nothing overheats: it needs a maximum head well above the height, about twice (common practice).',
      'Q <= 0',
    ),
    caution(
      'caution',
      'The water would run at {velocity}, above the ceiling of 2.4 m/s (8 ft/s, common practice): noisy, and most of the pump’s head is spent on the pipe. The next pipe size up gives more flow for nothing.',
      'V > 2.4',
    ),
    caution(
      'note',
      'At {velocity} the line may be heard (quiet is up to 1.5 m/s or 5 ft/s, common practice); the next pipe size up is quieter and gives more flow.',
      'V > 1.5 and V <= 2.4',
    ),
    caution(
      'caution',
      'This is the end of the points you gave: the pump may give more than its last point says.',
      'Q >= Q_end and Q > 0',
    ),
    { ...drainsMustCarryIt, when: 'Q > 0' },
    curveIsGuessed,
    throttleOutletOnly,
    caution(
      'note',
      'Nozzles under water siphon back in a power cut whatever the pump is: drain back works out how much. A check valve is a helper, never the plan.',
    ),
  ],
  sources: [...RETURN_LINE_SOURCES, QUIET],
  examples: [
    'my return pump is rated 1500 gph with 12 ft max head, 50 in up to the tank, 7 ft of 1 in schedule 40 pipe, 3 elbows and a ball valve: how much flow do I really get',
    'return pump 6000 L/h, max head 3.5 m, static head 1.19 m, 27.2 mm bore, 1.8 m of pipe, loss coefficient 7',
    'pump curve 0 gph at 12 ft, 600 gph at 9 ft, 1200 gph at 4 ft. how much flow will I get at 55 in of head through 8 ft of 1 in pvc with 4 elbows',
  ],
});
