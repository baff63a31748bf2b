import { caution, quantity, result, step } from '../calculation.js';
import { sparePath, strainers } from '../cautions/drains.js';
import { calculation } from '../define.js';
import { insideDiameter, pipe } from '../inputs/pipe.js';

export const drainStack = calculation({
  id: 'drain.stack',
  slash: 'drain stack',
  title: 'Quiet flow down a vertical pipe',
  question: 'How much falls down a vertical pipe with air in its middle, before it gurgles?',
  part: 'drains',
  cues: [
    'before it starts gurgling',
    'starts gurgling',
    'fall down a vertical',
    'quiet',
    'silent',
    'gurgle',
    'gurgling',
    'noisy drain',
    'air core',
    'vertical drain',
    'without gurgling',
    'drain noise',
    'downpipe',
  ],
  inputs: {
    pipe,
    inside_diameter: insideDiameter,
    fill: quantity('fraction', {
      symbol: 'x',
      name: 'share of the pipe filled with water',
      words: ['full', 'filled', 'fill', 'water share'],
      range: [0.2, 0.34, 'fraction'],
      default: {
        value: 7 / 24,
        unit: 'fraction',
        low: 1 / 4,
        high: 1 / 3,
        why: 'the design value for quiet stacks, between a quarter and a third',
      },
      ask: 'How full may the pipe be?',
      example: '25 %',
    }),
  },
  constants: {
    q_1: { value: 31.46, unit: 'm^3/s', name: 'flow of a full pipe of one metre bore (27.8 US gal/min at one inch)' },
    D_1: { value: 1, unit: 'm', name: 'one metre' },
    v_1: { value: 0.9144, unit: 'm/s', name: 'speed at 1 US gal/min in an inch: 3.0 ft/s' },
    q_g: { value: 6.30902e-5, unit: 'm^3/s', name: 'one US gallon a minute' },
    d_i: { value: 0.0254, unit: 'm', name: 'one inch' },
  },
  steps: [
    step('Q', 'q_1*x^(5/3)*(D/D_1)^(8/3)', 'flow', 'what falls quietly'),
    step('v', 'v_1*((Q/q_g)/(D/d_i))^0.4', 'speed', 'speed it falls at'),
  ],
  results: {
    flow: result('Q', 'flow', 'what falls quietly', { figures: 2 }),
    terminal_velocity: result('v', 'speed', 'speed it falls at'),
  },
  headline: [{ text: 'What falls quietly down this pipe, with air in its middle, is about {flow:range}.' }],
  cautions: [
    caution(
      'note',
      'Above this the air core breaks: the drain gurgles, surges, or primes and runs full like a siphon.',
    ),
    caution(
      'note',
      'It holds for a straight vertical pipe, measured on stacks of building drains of 2 in and more: smaller pipes, elbows and horizontal runs carry less.',
    ),
    sparePath,
    strainers,
  ],
  sources: ['Wyly and Eaton 1961, NBS Monograph 31: capacity and terminal speed of drainage stacks'],
  examples: [
    'how much can a 1 inch schedule 40 standpipe drain without gurgling',
    'quiet flow down a vertical 40 mm PN 16 pipe, 25% full',
  ],
});
