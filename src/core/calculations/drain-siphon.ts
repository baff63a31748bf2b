import { caution, result, step } from '../calculation.js';
import { testDrainsBeforeTrust } from '../cautions/plumbing.js';
import { calculation } from '../define.js';
import { fittings, insideDiameter, lossCoefficient, pipe } from '../inputs/pipe.js';
import { requiredFlow } from '../inputs/return-flow.js';
import { FULL_PIPE_SOURCES, pipeFlowConstants, siphonInputs, siphonSteps } from '../inputs/siphon.js';

export const drainSiphon = calculation({
  id: 'drain.siphon',
  slash: 'drain siphon',
  title: 'Flow of a full-siphon drain',
  question: 'How much does this drain carry when it runs full of water, its end below the sump surface?',
  general: true,
  part: 'drains',
  cues: [
    '~pipe',
    'siphon',
    '~drain',
    'gph through',
    'flow through',
    'through a pipe',
    'full siphon',
    'drain flow',
    'drain capacity',
    'how much will the drain',
    'drain carry',
    'drain handle',
    'drain line',
    'main drain',
    'siphon drain',
    'siphon capacity',
    'full siphon capacity',
    'siphon carry',
    'siphon handle',
    'siphon flow',
    'siphon take',
    'drain enough',
    'drain enough for',
    'drain big enough',
    'drain pipe enough',
    'capacity of my drain',
    'how much can my drain',
    'flow through siphon',
    'flow will a',
    'drain do',
    '~how much flow',
  ],
  inputs: {
    pipe,
    inside_diameter: insideDiameter,
    ...siphonInputs,
    fittings,
    loss_coefficient: lossCoefficient,
    required_flow: requiredFlow,
  },
  constants: pipeFlowConstants,
  steps: [
    ...siphonSteps,
    step('V_req', 'Q_req/A', 'speed', 'speed at the flow it must carry'),
    step('ratio', 'Q/Q_req', 'ratio', 'capacity over the flow it must carry'),
    step('f_req', 'friction(V_req*D/nu, e/D)', '1', 'friction factor at that speed'),
    step('K_v', '2*g*H/V_req^2 - (f_req*L_p/D + K)', 'ratio', 'loss the trim valve must add'),
  ],
  results: {
    flow: result('Q', 'flow', 'flow at full siphon', { figures: 3 }),
    velocity: result('V', 'speed', 'speed in the pipe'),
    reynolds: result('Re', 'ratio', 'Reynolds number'),
    capacity_ratio: result('ratio', 'ratio', 'capacity over the flow it must carry'),
    valve_loss_to_trim: result('K_v', 'ratio', 'loss coefficient the valve must add to trim it', { when: 'ratio > 1' }),
  },
  headline: [
    {
      text: 'Wide open, this drain carries {flow:both}: {capacity_ratio} times the {required_flow} it must pass.',
      when: 'ratio >= 1',
    },
    {
      text: 'Wide open, this drain carries only {flow:both}, less than the {required_flow} it must pass.',
      when: 'ratio < 1',
    },
    { text: 'Running full, this drain carries {flow:both}.' },
  ],
  cautions: [
    caution(
      'stop',
      'The drain cannot carry the return flow: the display would rise to its rim. Use a larger pipe or less flow.',
      'ratio < 1',
    ),
    caution(
      'caution',
      'Aim for at least 1.5 times the return flow (common practice), so that slime and a wrong guess of the fittings do not eat the margin.',
      'ratio >= 1 and ratio < 1.5',
    ),
    caution('note', 'A wrong guess of the fittings by 40 % moves this flow by about −13 to +22 %.'),
    caution(
      'caution',
      'A trimmed siphon hides a clog until it is nearly shut, and a drain with no spare path floods the display at the pump’s rate: plan an emergency drain.',
    ),
    testDrainsBeforeTrust,
  ],
  sources: FULL_PIPE_SOURCES,
  examples: [
    'how much flow can a 1 inch schedule 40 full siphon drain handle with a 30 in drop, 40 inches of pipe, 2 elbows and a gate valve',
  ],
});
