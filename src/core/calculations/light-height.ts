import { type Condition, caution, quantity, result, step } from '../calculation.js';
import { changeLightSlowly, lampOverWater, shieldEyes } from '../cautions/light.js';
import { calculation } from '../define.js';
import { lampMove } from '../inputs/lamp-move.js';
import { ppfd } from '../inputs/light.js';

const distance = {
  range: [0.05, 3, 'm'],
  slips: [[-1e9, 0.05, 'Nearer than 5 cm none of these laws holds.']],
  usual: [10, 150, 'cm'],
} as const;
const starting: Condition = { given: 'start_fraction' };

export const lightHeight = calculation({
  id: 'light.height',
  slash: 'light height',
  title: 'Light after moving the lamp',
  question: 'I raise or lower the lamp: what happens to the light at the coral?',
  part: 'light',
  cues: [
    'raise the lamp',
    'raise my lamp',
    'raise the light',
    'raise my light',
    'lower the lamp',
    'lower the light',
    'lower my light',
    'move the light',
    'hang the light',
    'higher',
    'hang it',
    'lamp height',
    'light height',
    'mounting height',
    'inverse square',
    'par',
  ],
  inputs: {
    ppfd_1: quantity('photon flux', {
      ...ppfd,
      symbol: 'p_1',
      name: 'PPFD (“PAR”) at the coral now',
      words: ['par', 'ppfd', 'umol', 'now', 'reads'],
    }),
    move: lampMove,
    distance_1: quantity('length', {
      ...distance,
      symbol: 'd_1',
      name: 'lamp to coral now',
      words: ['from', 'currently', 'hangs at', 'lamp at'],
      ask: 'How far is the lamp from the coral now, water included?',
      example: '10 in or 25 cm',
    }),
    distance_2: quantity('length', {
      ...distance,
      symbol: 'd_2',
      name: 'lamp to coral afterwards',
      words: ['to', 'up to', 'down to', 'afterwards', 'new'],
      ask: 'How far will it be afterwards?',
      example: '20 in or 50 cm',
    }),
    final_distance: quantity('length', {
      ...distance,
      symbol: 'd',
      name: 'lamp to coral in the end',
      words: ['final', 'in the end', 'end up', 'finally'],
      ask: 'How far from the coral will the lamp hang in the end?',
      example: '12 in or 30 cm',
    }),
    start_fraction: quantity('fraction', {
      symbol: 'f',
      name: 'share of that light to start with',
      words: ['start', 'start at', 'of the light', 'begin'],
      range: [0.05, 1, 'fraction'],
      usual: [0.2, 0.9, 'fraction'],
      ask: 'With which share of the final light do you start?',
      example: '50 %',
    }),
    panel_length: quantity('length', {
      symbol: 'L',
      name: 'length of the glowing panel',
      words: ['panel', 'panel length', 'lamp length', 'lamp is', 'fixture'],
      range: [0.01, 3, 'm'],
      needed: { given: 'panel_width' },
      ask: 'How long is the glowing part of the lamp?',
      example: '48 in or 120 cm',
      profile: 'light.panel_length',
    }),
    panel_width: quantity('length', {
      symbol: 'W',
      name: 'width of the glowing panel',
      words: ['panel width', 'lamp width'],
      range: [0.01, 3, 'm'],
      needed: { given: 'panel_length' },
      ask: 'How wide is the glowing part of the lamp?',
      example: '12 in or 30 cm',
      profile: 'light.panel_width',
    }),
  },
  oneOf: [
    ['ppfd_1', 'distance_1', 'distance_2'],
    ['final_distance', 'start_fraction'],
  ],
  steps: [
    step('p_point', 'p_1*(d_1/d_2)^2', 'photon flux', 'afterwards, if the lamp acts as a point'),
    step('p_line', 'p_1*d_1/d_2', 'photon flux', 'afterwards, if it acts as a long row'),
    step('F_1', 'panel_factor(L, W, d_1)', 'ratio', 'panel factor now'),
    step('F_2', 'panel_factor(L, W, d_2)', 'ratio', 'panel factor afterwards'),
    step('p_panel', 'p_1*F_2/F_1', 'photon flux', 'afterwards, if it acts as an even panel'),
    step('p_low', 'min(p_point, p_line, p_panel)', 'photon flux', 'lowest of these'),
    step('p_low', 'min(p_point, p_line)', 'photon flux', 'lowest of these'),
    step('p_high', 'max(p_point, p_line, p_panel)', 'photon flux', 'highest of these'),
    step('p_high', 'max(p_point, p_line)', 'photon flux', 'highest of these'),
    step('d_point', 'd/sqrt(f)', 'length', 'start, if the lamp acts as a point'),
    step('d_line', 'd/f', 'length', 'start, if it acts as a long row'),
    step('F', 'f*panel_factor(L, W, d)', 'ratio', 'panel factor at the start'),
    step('d_panel', 'panel_distance(L, W, F)', 'length', 'start, if it acts as an even panel'),
  ],
  results: {
    ppfd_2_point: result('p_point', 'photon flux', 'afterwards, as a point'),
    ppfd_2_line: result('p_line', 'photon flux', 'afterwards, as a long row'),
    ppfd_2_panel: result('p_panel', 'photon flux', 'afterwards, as an even panel'),
    ppfd_2_low: result('p_low', 'photon flux', 'lowest of these'),
    ppfd_2_high: result('p_high', 'photon flux', 'highest of these'),
    start_distance_point_source: result('d_point', 'length', 'start distance, as a point'),
    start_distance_line_source: result('d_line', 'length', 'start distance, as a long row'),
    start_distance_panel: result('d_panel', 'length', 'start distance, as an even panel'),
  },
  headline: [
    {
      text: 'Moved from {distance_1} to {distance_2}, {ppfd_1} becomes about {ppfd_2_low} to {ppfd_2_high}.',
      when: 'p_high > 0',
    },
    {
      text: 'Start about {start_distance_panel:both} from the coral; between {start_distance_point_source} as a point and {start_distance_line_source} as a long row.',
      when: 'd_panel > 0',
    },
    {
      text: 'Start {start_distance_point_source:both} to {start_distance_line_source:both} from the coral.',
    },
  ],
  cautions: [
    caution(
      'caution',
      'Lowering a lamp is an increase: halving the distance can double to quadruple the light. Go down in small steps, over weeks; it also runs hotter there and catches more splash.',
      { any: ['d_2 < d_1', starting] },
    ),
    caution(
      'note',
      'Glass walls, ripple and reflection hold up more light than any of these laws, and a lensed cluster acts as a point only beyond about five times its size: measure after moving.',
    ),
    caution('note', 'Give the length and width of the lamp and I also work it out as an even panel.', {
      not: { given: 'panel_length' },
    }),
    changeLightSlowly,
    lampOverWater,
    shieldEyes,
  ],
  sources: ['inverse square law of a point, inverse law of a long row; panel: Lambertian rectangle'],
  examples: [
    'I raise the light from 25 cm to 50 cm above the coral, 200 PAR now, what happens',
    'lower the lamp from 20 in to 14 in, it is 110 PAR now',
    'hang the light for acclimation: 30 cm final distance, start at 50 % of the light',
  ],
});
