import { caution, quantity, result, step } from '../calculation.js';
import { drainsMustCarryIt } from '../cautions/return.js';
import { tradeSizes } from '../cautions/tank.js';
import { calculation } from '../define.js';
import { systemVolume } from '../inputs/system-water.js';
import { TURNOVER_SOURCE } from '../inputs/turnover.js';

export const pumpFlowNeeded = calculation({
  id: 'pump.flow_needed',
  slash: 'return flow',
  title: 'Return flow to aim for',
  question: 'How much return flow turns this much water over so many times an hour?',
  part: 'return',
  cues: [
    'return flow',
    'flow needed',
    'flow do I need',
    'flow should',
    'how much flow should',
    'gph do I need',
    'how much return flow',
    'what return flow',
    'what size pump for',
    'what size return pump',
    'size return pump do I need',
    'return pump do I need',
    'flow do I want',
    'return pump for my',
    'which return pump',
    'return pump for a',
    'flow for a',
  ],
  inputs: {
    volume: systemVolume,
    turnover: quantity('turnover', {
      symbol: 'n',
      name: 'times an hour the water should go through',
      words: ['turnover', 'turnovers', 'times an hour', 'times per hour', 'times', 'turns', 'x'],
      range: [0.5, 40, '1/h'],
      usual: [2, 15, '1/h'],
      default: {
        value: 5,
        unit: '1/h',
        low: 3,
        high: 10,
        why: 'common practice, no source; 3 to 5 where other pumps move the display',
      },
      ask: 'How many times an hour should the water go through?',
      example: '5 times an hour',
    }),
  },
  constants: { n_10: { value: 10 / 3600, unit: '1/s', name: '10 times an hour' } },
  steps: [step('Q', 'V*n', 'flow', 'flow that must arrive at the tank')],
  results: { flow: result('Q', 'flow', 'flow that must arrive at the tank') },
  headline: [
    {
      text: 'Aim for about {flow:range}, arriving at the tank: {turnover} through the sump.',
      when: { assumed: 'turnover' },
    },
    { text: 'It takes {flow:both} at the tank for {turnover}.' },
  ],
  cautions: [
    caution(
      'caution',
      'That is flow at your height and through your pipe. A pump’s label is its flow at no height at all, often half as much again or double: return pump works out what arrives.',
    ),
    caution('note', 'More than 10 times an hour is mostly noise and bubbles (common practice, no source).', 'n > n_10'),
    drainsMustCarryIt,
    tradeSizes,
  ],
  sources: ['definition: volume times turnover', TURNOVER_SOURCE],
  examples: [
    'how much return flow do I need for 125 gal at 6 times an hour',
    'what size return pump for 90 gallons',
    'which return pump for 400 litres at 8x per hour',
  ],
});
