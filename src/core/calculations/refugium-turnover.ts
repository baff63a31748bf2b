import { caution, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { returnFlow } from '../inputs/return-flow.js';
import { TURNOVER_SOURCE, turnoverConstants } from '../inputs/turnover.js';

export const refugiumTurnover = calculation({
  id: 'refugium.turnover',
  slash: 'return refugium',
  title: 'Flow through the refugium',
  question: 'How many times an hour does the refugium turn over, and what share of the return flow is that?',
  part: 'return',
  cues: [
    'refugium flow',
    'gallon refugium',
    'gal refugium',
    'litre refugium',
    'liter refugium',
    'flow in my refugium',
    'ok through my refugium',
    'refugium turnover',
    'flow through the refugium',
    'flow through my refugium',
    'through the refugium',
    'through my refugium',
    'through a refugium',
    'through the fuge',
    'through my fuge',
    'flow for a refugium',
    'flow in the refugium',
    'fuge flow',
    'flow for my fuge',
    'flow to the refugium',
  ],
  inputs: {
    flow: quantity('flow', {
      symbol: 'Q',
      name: 'flow through the refugium',
      words: ['refugium', 'fuge', 'through the refugium', 'through my refugium', 'refugium flow', 'feed pump', 'tee'],
      range: [0, 100_000, 'L/h'],
      aboveLow: true,
      usual: [50, 5000, 'L/h'],
      ask: 'How much flow goes through the refugium?',
      example: '300 L/h or 80 gph',
      profile: 'refugium.flow',
    }),
    volume: quantity('volume', {
      symbol: 'V',
      name: 'water in the refugium',
      words: ['refugium', 'fuge', 'refugium volume', 'refugium holds', 'gallon refugium', 'litre refugium'],
      range: [0, 10_000, 'L'],
      aboveLow: true,
      usual: [5, 400, 'L'],
      ask: 'How much water does the refugium hold while it runs?',
      example: '45 L or 12 gal',
      profile: 'refugium.volume',
    }),
    return_flow: quantity('flow', {
      ...returnFlow,
      name: 'return flow of the whole system',
      words: ['return', 'return flow', 'return pump', 'whole', 'main pump'],
      needed: false,
    }),
  },
  constants: turnoverConstants,
  rules: [
    {
      refuse: 'Q > 20*Q_r',
      because: 'The refugium would get more than twenty times the return flow: are the two flows swapped?',
      about: 'flow',
    },
  ],
  steps: [
    step('n', 'Q/V', 'turnover', 'times an hour the refugium turns over'),
    step('s', 'Q/Q_r', 'fraction', 'share of the return flow'),
    step('Q_3', 'n_low*V', 'flow', 'flow at 3 times an hour'),
    step('Q_10', 'n_high*V', 'flow', 'flow at 10 times an hour'),
  ],
  results: {
    turnover: result('n', 'turnover', 'times an hour the refugium turns over'),
    share_of_return: result('s', 'fraction', 'share of the return flow'),
    flow_low: result('Q_3', 'flow', 'flow at 3 times an hour'),
    flow_high: result('Q_10', 'flow', 'flow at 10 times an hour'),
  },
  headline: [
    {
      text: 'The refugium turns over {turnover}, slower than the usual 3 to 10: that would be {flow_low} to {flow_high}.',
      when: 'n < n_low',
    },
    { text: 'The refugium turns over {turnover}, within the usual gentle 3 to 10.', when: 'n <= n_high' },
    {
      text: 'The refugium turns over {turnover}, faster than the usual gentle 3 to 10: that would be {flow_low} to {flow_high}.',
    },
  ],
  cautions: [
    caution(
      'note',
      'The rule is only common practice: algae that tumble grow well in much faster water, sand and mud want it slow.',
    ),
    caution('note', 'That is {share_of_return} of the return flow; the rest passes it by.', 's <= 1'),
    caution(
      'caution',
      'That is more than the return pump sends: it works only with a pump of its own that circles within the sump.',
      's > 1',
    ),
    caution(
      'caution',
      'Slow water gathers dirt and may run short of oxygen at night: light it against the display’s hours, and clean it.',
      'n < n_low',
    ),
    caution(
      'caution',
      'A refugium that stands above the sump drains into it in a power cut, and its outlet clogs with algae: count its water in drain back and give it a strainer and a second outlet.',
    ),
  ],
  sources: ['definition: flow over volume', TURNOVER_SOURCE],
  examples: [
    'flow through the refugium 900 L/h, refugium 45 L, return flow 3484 L/h: is that too fast',
    'is 100 gph through my refugium ok, 15 gallon refugium',
    'refugium flow 200 L/h in a 60 L refugium',
  ],
});
