import { caution, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { bottomThickness, height, length, width } from '../inputs/display.js';
import { carryingPane, PANES, paneDensityInputs } from '../inputs/pane-weight.js';
import { noInside } from '../inputs/tank-shape.js';

/** What one person lifts at best, NIOSH 94-110: two of them 46 kg. */
const TOO_HEAVY_FOR_TWO = 'm_t > 46';

export const weightTank = calculation({
  id: 'weight.tank',
  slash: 'structure tank-weight',
  title: 'Weight of the empty tank',
  question: 'How much do the panes of the tank weigh, without water?',
  part: 'getting it in',
  cues: [
    'glass weigh',
    'no water in it',
    'bare tank',
    'weight of the empty tank',
    'weight of an empty',
    'empty weight',
    'weigh empty',
    'weighs empty',
    'empty tank weigh',
    'empty tank weighs',
    'tank weigh empty',
    'does my tank weigh empty',
    'will my tank weigh empty',
    'weight empty',
    'heavy empty',
    'heavy is the empty',
    'heavy is it empty',
    'how heavy is it empty',
    'does it weigh empty',
    'how heavy is the empty',
    'how heavy is an empty',
    'how heavy is the tank empty',
    'weighs without water',
    'weigh without water',
    'how heavy is the glass',
    'does the glass weigh',
    'the tank alone',
    'tank by itself',
    'weight of the glass',
    'weight of the panes',
    'weight of the tank',
    'acrylic tank weigh',
    'glass tank weigh',
    'empty',
    'empty tank',
    'tank empty',
    'without water',
    'panes weigh',
    'weigh dry',
  ],
  inputs: {
    length,
    width,
    height,
    glass_thickness: carryingPane,
    bottom_thickness: quantity('length', { ...bottomThickness, needed: false }),
    ...paneDensityInputs,
    brace_width: quantity('length', {
      symbol: 'b',
      name: 'width of the bracing strips along the rim',
      words: ['brace', 'bracing', 'eurobrace', 'euro brace', 'strips', 'bracing strips'],
      range: [0, 0.5, 'm'],
      usual: [3, 20, 'cm'],
      needed: false,
      ask: 'How wide are the bracing strips that run round the rim?',
      example: '6 cm or 2.5 in',
      profile: 'display.brace_width',
    }),
    brace_thickness: quantity('length', {
      ...carryingPane,
      symbol: 't_e',
      name: 'thickness of the bracing strips',
      words: ['brace thickness', 'strip thickness'],
      needed: false,
      default: { same: 'glass_thickness', when: { given: 'brace_width' } },
      ask: 'How thick are the bracing strips?',
      profile: 'display.brace_thickness',
    }),
  },
  rules: [
    noInside('W', 'width'),
    noInside('L', 'length'),
    {
      refuse: 't_b >= H',
      because: 'The bottom pane is as thick as the tank is high: check the two units.',
      about: 'bottom_thickness',
    },
    {
      refuse: { any: ['2*b > W - 2*t', '2*b > L - 2*t'] },
      because: 'The bracing strips are wider than the opening: give the width of one strip.',
      about: 'brace_width',
    },
  ],
  steps: [
    step('V_p', PANES, 'volume', 'glass or acrylic in the panes'),
    step('V_e', '2*b*((L - 2*t) + (W - 2*t) - 2*b)*t_e', 'volume', 'in the bracing strips'),
    ...['rho_p', 'rho_m'].flatMap((rho) => [
      step('m_t', `${rho}*(V_p + V_e)`, 'mass', 'empty tank'),
      step('m_t', `${rho}*V_p`, 'mass', 'empty tank'),
    ]),
  ],
  results: {
    tank_mass: result('m_t', 'mass', 'empty tank', { feeds: 'display.mass' }),
    pane_volume: result('V_p', 'volume', 'glass or acrylic in the panes'),
    brace_volume: result('V_e', 'volume', 'in the bracing strips'),
  },
  headline: [
    {
      text: 'Empty, the tank weighs {tank_mass:both}: more than two people should carry.',
      when: TOO_HEAVY_FOR_TWO,
    },
    { text: 'Empty, the tank weighs {tank_mass:both}.' },
  ],
  cautions: [
    caution(
      'caution',
      'Lift it from below, never by a brace and never with water in it; gloves and closed shoes, because a cut edge takes fingers.',
    ),
    caution(
      'note',
      'Two people can be expected to lift 46 kg (101 lb) at the very best: for this, suction cups, straps or a dolly, and more hands.',
      TOO_HEAVY_FOR_TWO,
    ),
    caution('note', 'The bottom counts as thick as the sides. Many tanks have a thicker one: tell me if yours has.', {
      assumed: 'bottom_thickness',
    }),
    caution('note', 'Silicone, trim, a lid and an overflow box come on top.'),
  ],
  sources: [
    'geometry: outside less inside, whichever way the panes lap',
    '23 kg a person under the best conditions: revised lifting equation, NIOSH publication 94-110',
  ],
  examples: [
    'how much does a 72x18x21 in tank weigh empty, 1/2 in glass',
    'empty weight of a 120x50x50 cm acrylic tank with 12 mm panes',
    'how heavy is the empty tank: 150 x 60 x 55 cm, 12 mm glass, 15 mm bottom',
  ],
});
