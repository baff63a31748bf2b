import { caution, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { returnFlow } from '../inputs/return-flow.js';
import { systemVolume } from '../inputs/system-water.js';
import { TURNOVER_SOURCE, turnoverConstants } from '../inputs/turnover.js';

export const pumpTurnover = calculation({
  id: 'pump.turnover',
  slash: 'return turnover',
  title: 'How often the water goes through the sump',
  question: 'How many times an hour does the return flow turn the water over?',
  part: 'return',
  cues: [
    'turnover',
    'what is my turnover',
    'whats my turnover',
    'my turnover',
    'turnover with',
    'too much turnover',
    'enough turnover',
    'many times an hour',
    'turn over',
    'turns over',
    'turnover rate',
    'turns the tank over',
    'times an hour',
    'times per hour',
    'tank volumes an hour',
    'is my turnover',
    'turn over rate',
    'how many times turn over',
    'many times per hour',
    'how many times per hour',
    'how many times an hour',
    'times every hour',
    'how often does the water',
    'how often',
    'go through the sump',
    'goes through the sump',
    'turn over how often',
    'turnovers per hour',
    'turnovers an hour',
    'turnover per hour',
  ],
  wording: /\b(?:gph|lph|l h|litres|liters|gallons)\b.*\bturn ?overs?$/,
  inputs: { flow: returnFlow, volume: systemVolume },
  constants: turnoverConstants,
  steps: [
    step('n', 'Q_r/V', 'turnover', 'times an hour the water goes through'),
    step('t', 'V/Q_r', 'time', 'time for one volume'),
    step('Q_3', 'n_low*V', 'flow', 'flow at the low end of common practice'),
    step('Q_10', 'n_high*V', 'flow', 'flow at the high end'),
  ],
  results: {
    turnover: result('n', 'turnover', 'times an hour the water goes through'),
    turnover_time: result('t', 'time', 'time for one volume', { units: { metric: 'min', us: 'min' } }),
    flow_low: result('Q_3', 'flow', 'flow at 3 times an hour'),
    flow_high: result('Q_10', 'flow', 'flow at 10 times an hour'),
  },
  headline: [
    {
      text: 'The water goes through {turnover}, less than the usual 3 to 10: {flow_low} would be 3 times an hour.',
      when: 'n < n_low',
    },
    { text: 'The water goes through {turnover}, within the usual 3 to 10.', when: 'n <= n_high' },
    { text: 'The water goes through {turnover}, more than the usual 3 to 10: {flow_high} would be 10 times an hour.' },
  ],
  cautions: [
    caution('note', '3 to 5 is enough where other pumps move the display (common practice, no source).'),
    caution(
      'caution',
      'Little flow also carries little heat and oxygen between sump and display: check that heater and skimmer in the sump still serve the display.',
      'n < n_low',
    ),
    caution(
      'caution',
      'So much flow makes noise and bubbles, and every drain must carry it, the emergency drain alone as well.',
      'n > n_high',
    ),
    caution(
      'note',
      'Count the flow that arrives, not the label: return pump works it out, or time how long the return takes to fill a bucket.',
    ),
  ],
  sources: ['definition: flow over volume', TURNOVER_SOURCE],
  examples: [
    'what is my turnover with 900 gph through a 125 gal system',
    '3484 L/h return flow, 473 L: how many times an hour does it turn over',
    'is 5000 L/h too much turnover for 300 litres',
  ],
});
