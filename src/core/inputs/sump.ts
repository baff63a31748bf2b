import { type Condition, quantity, type Rule } from '../calculation.js';

const withSump: Condition = { given: 'sump_length' };

/** The sump's outside sizes and the height its water stands at. All may be left out: then there is no sump. */
export const sumpInputs = {
  sump_length: quantity('length', {
    symbol: 'L_s',
    name: 'sump length',
    words: ['sump', 'sump length', 'sump long'],
    range: [0.1, 4, 'm'],
    needed: false,
    ask: 'How long is the sump?',
    example: '36 in or 90 cm',
    profile: 'sump.length',
  }),
  sump_width: quantity('length', {
    symbol: 'W_s',
    name: 'sump width, front to back',
    words: ['sump width', 'sump wide'],
    range: [0.1, 2, 'm'],
    needed: withSump,
    ask: 'How wide is the sump, front to back?',
    example: '16 in or 40 cm',
    profile: 'sump.width',
  }),
  sump_water_height: quantity('length', {
    symbol: 'h_s',
    name: 'water height in the sump',
    words: ['sump water', 'sump level', 'sump water height', 'water in the sump', 'sump runs at'],
    range: [0.02, 1.5, 'm'],
    needed: withSump,
    ask: 'How high does the water stand in the sump while it runs?',
    example: '10 in or 25 cm',
    profile: 'sump.water_height',
  }),
  sump_glass_thickness: quantity('length', {
    symbol: 't_s',
    name: 'pane thickness of the sump',
    words: ['sump glass', 'sump pane', 'sump panes'],
    range: [0, 0.4, 'm'],
    usual: [3, 20, 'mm'],
    units: { metric: 'mm', us: 'in' },
    needed: withSump,
    default: { same: 'glass_thickness', when: withSump },
    ask: 'How thick are the panes of the sump?',
    example: '6 mm or 1/4 in',
    profile: 'sump.glass_thickness',
  }),
};

export const noSumpInside: Rule = {
  refuse: { any: ['2*t_s >= W_s', '2*t_s >= L_s'] },
  because: 'No inside is left in the sump between panes that thick: check the unit.',
  about: 'sump_glass_thickness',
};
