import { caution, flag, quantity, result, step } from '../calculation.js';
import { sparePath, strainers } from '../cautions/drains.js';
import { testDrainsBeforeTrust } from '../cautions/plumbing.js';
import { calculation } from '../define.js';
import { fittings, insideDiameter, lossCoefficient, pipe } from '../inputs/pipe.js';
import { requiredFlow } from '../inputs/return-flow.js';
import { boreAreaStep, FULL_PIPE_SOURCES, fullPipeSteps, pipeFlowConstants, siphonInputs } from '../inputs/siphon.js';

export const drainClog = calculation({
  id: 'drain.clog',
  slash: 'drain clog',
  title: 'A drain that clogs',
  question: 'How much does a full-siphon drain still carry when part of it is blocked?',
  part: 'drains',
  cues: [
    'percent blocked',
    '# percent blocked',
    'of the bore blocked',
    'blocks # of it',
    'partly blocked',
    'still goes through',
    'flow left',
    'still carry',
    'clog',
    'clogs',
    'clogged',
    'blocked',
    'blockage',
    'half blocked',
    'snail in the drain',
    'snail in the pipe',
    'plugged',
  ],
  inputs: {
    pipe,
    inside_diameter: insideDiameter,
    ...siphonInputs,
    fittings,
    loss_coefficient: lossCoefficient,
    blocked: quantity('fraction', {
      symbol: 'x',
      name: 'share of the bore that is blocked',
      words: ['blocked', 'clogged', 'plugged', 'closed off', 'shut'],
      range: [0, 1, 'fraction'],
      usual: [0.1, 0.95, 'fraction'],
      ask: 'How much of the bore is blocked?',
      example: '50 %',
    }),
    valve_loss: quantity('ratio', {
      symbol: 'K_v',
      name: 'loss coefficient of the trim valve',
      words: ['valve loss', 'trim valve', 'valve k'],
      range: [0, 1000, '1'],
      default: { value: 0, unit: '1', why: 'a valve that stands wide open' },
      ask: 'What is the loss coefficient of the trim valve as it stands? The siphon calculation works it out.',
      example: '17',
      profile: 'drain.valve_loss',
    }),
    required_flow: requiredFlow,
  },
  constants: pipeFlowConstants,
  rules: [
    {
      refuse: 'x >= 1',
      because:
        'A drain that is shut altogether carries nothing: what matters then is the emergency drain (drain emergency).',
      about: 'blocked',
    },
  ],
  steps: [
    boreAreaStep,
    step('K_b', '((1 + 0.707*sqrt(x) - (1 - x))/(1 - x))^2', 'ratio', 'loss coefficient of the blockage'),
    step('K_clean', 'K + K_v', 'ratio', 'losses of the clean line with its valve'),
    ...fullPipeSteps('K_clean', '_clean', 'clean'),
    step('K_clog', 'K_clean + K_b', 'ratio', 'losses with the blockage'),
    ...fullPipeSteps('K_clog', '_clog', 'clogged'),
    step('left', 'Q_clog/Q_clean', 'fraction', 'share of the flow that is left'),
  ],
  results: {
    flow_clogged: result('Q_clog', 'flow', 'flow with the blockage'),
    flow_clean: result('Q_clean', 'flow', 'flow when clean'),
    flow_left: result('left', 'fraction', 'share of the flow that is left', { figures: 2 }),
    blockage_loss: result('K_b', 'ratio', 'loss coefficient of the blockage'),
    carries_return_flow: flag('still carries the return flow', 'Q_clog >= Q_req', { given: 'required_flow' }),
  },
  headline: [
    {
      text: '{blocked} blocked, it still carries {flow_clogged:both}, {flow_left} of what it did, and the {required_flow} that it must.',
      when: 'Q_clog >= Q_req',
    },
    {
      text: '{blocked} blocked, it carries {flow_clogged:both}, {flow_left} of what it did and less than the {required_flow} it must: the rest goes to the other drains or over the rim.',
      when: 'Q_clog < Q_req',
    },
    { text: '{blocked} blocked, it still carries {flow_clogged:both}, {flow_left} of what it did.' },
  ],
  cautions: [
    caution(
      'stop',
      'What this drain no longer takes, {required_flow} less {flow_clogged}, must find the emergency drain: check that it can (drain emergency).',
      'Q_clog < Q_req',
    ),
    caution(
      'caution',
      'Its valve holds this siphon back more than the clog does, so the clog stays hidden until the pipe is nearly shut: clean it by the calendar, not by what you see.',
      'K_v > K_b',
    ),
    caution('note', 'An open drain has no head to spare: it loses flow in step with the blockage.'),
    sparePath,
    strainers,
    testDrainsBeforeTrust,
  ],
  sources: [
    'blockage as a sharp-edged hole in the pipe: Idelchik, Handbook of Hydraulic Resistance (from memory)',
    ...FULL_PIPE_SOURCES,
  ],
  examples: [
    'what does a 1 in schedule 40 siphon still carry when it is 50% blocked, 30 in drop, 40 in of pipe, 2 elbows, gate valve',
    'clogged siphon drain 75% blocked, 34 mm bore, 1.02 m drop, 1.2 m of pipe, loss coefficient 3.6, valve loss 17',
  ],
});
