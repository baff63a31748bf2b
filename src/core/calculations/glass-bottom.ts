import { caution, quantity, result, step } from '../calculation.js';
import { neverDrillTempered, notTheAveragePane } from '../cautions/glass.js';
import { calculation } from '../define.js';
import { bottomThickness, glassThickness, length, waterHeight, width } from '../inputs/display.js';
import { LONG_LOAD_LIMIT, STRENGTH_SOURCES, strengthConstants } from '../inputs/glass-strength.js';
import { paneMaterial } from '../inputs/pane-material.js';

export const glassBottom = calculation({
  id: 'glass.bottom',
  slash: 'structure bottom',
  title: 'Strength of a bottom pane that rests on its rim',
  question: 'Is a bottom pane thick enough that is held only along its edges?',
  part: 'glass and lid',
  cues: [
    'bottom sits on its rim',
    'rests on the rim',
    'rim only',
    'strong enough',
    'bottom pane',
    'bottom glass',
    'base pane',
    'bottom thick enough',
    'thick bottom',
    'thick a bottom',
    'how thick a bottom',
    'bottom do I need',
    'edges only',
    'sits on its edges',
    'thick should the bottom',
    'thick must the bottom',
    'bottom strong enough',
    'bottom hold',
    'floating bottom',
    'floating base',
    'perimeter supported',
    'supported at the edges',
    'supported only at the rim',
    'rests on its rim',
    'rests on its edges',
    'held at its edges',
    'bottom of the tank',
  ],
  inputs: {
    length,
    width,
    water_height: quantity('length', {
      ...waterHeight,
      words: [...(waterHeight.words ?? []), 'water', 'filled to'],
      range: [0.05, 0.9, 'm'],
    }),
    pane_thickness: quantity('length', {
      ...glassThickness,
      name: 'thickness of the sides',
      words: ['sides'],
      needed: false,
      symbol: 't_p',
    }),
    glass_thickness: quantity('length', {
      ...bottomThickness,
      symbol: 't',
      range: [4, 40, 'mm'],
      words: [...(bottomThickness.words ?? []), 'glass', 'thick', 'pane'],
      default: { same: 'pane_thickness' },
      needed: false,
    }),
    material: paneMaterial(),
  },
  constants: strengthConstants,
  rules: [
    {
      refuse: { is: ['material', 'acrylic'] },
      because: 'The plate table is for glass: acrylic creeps and bows for years, so no check is offered for it.',
      about: 'material',
    },
    {
      refuse: 'r > 5',
      because: 'The bottom is more than five times as long as wide, beyond the table: check the units.',
      about: 'length',
    },
  ],
  steps: [
    step('a', 'max(L, W)', 'length', 'longer side'),
    step('b', 'min(L, W)', 'length', 'shorter side'),
    step('r', 'a/b', 'ratio', 'longer over shorter side'),
    step('beta', 'beta_four_edges(r)', 'ratio', 'stress coefficient'),
    step('p', 'rho_h*g*h', 'pressure', 'water pressure on the bottom'),
    step('sigma', 'beta*p*(b/t)^2', 'pressure', 'largest bending stress in the bottom'),
    step('n', 'sigma_b/sigma', 'ratio', 'safety factor'),
    step('t_n', 'b*sqrt(beta*p/(sigma_b/n_0))', 'length', 'thickness for the usual factor'),
    step('t_s', 'next_sheet(t_n)', 'length', 'next thickness that glass is sold in'),
  ],
  results: {
    safety_factor: result('n', 'ratio', 'safety factor', { figures: 2 }),
    thickness_for_3_8: result('t_n', 'length', 'thickness for a factor of 3.8', { units: { metric: 'mm', us: 'in' } }),
    sheet_thickness: result('t_s', 'length', 'next thickness that glass is sold in', {
      units: { metric: 'mm', us: 'mm' },
      when: 't_n <= 0.025',
    }),
    bending_stress: result('sigma', 'pressure', 'largest bending stress', { units: { metric: 'MPa', us: 'MPa' } }),
    stress_coefficient: result('beta', 'ratio', 'stress coefficient'),
    bottom_pressure: result('p', 'pressure', 'water pressure on the bottom'),
  },
  headline: [
    {
      text: 'Outside this check: held at its edges alone, a bottom of {glass_thickness} has a safety factor of {safety_factor}, where 3.8 is usual and takes {thickness_for_3_8}.',
      when: 'n < n_0',
    },
    {
      text: 'Within this check: held at its edges alone, a bottom of {glass_thickness} has a safety factor of {safety_factor}; the usual 3.8 takes {thickness_for_3_8}.',
      when: 'n >= n_0',
    },
    {
      text: 'Held at its edges alone, the bottom takes {thickness_for_3_8} of glass for a factor of 3.8: {sheet_thickness} is the next that is sold.',
      when: 't_n <= 0.025',
    },
    {
      text: 'Held at its edges alone, the bottom takes {thickness_for_3_8} of glass for a factor of 3.8, more than plain sheets come in.',
    },
  ],
  cautions: [
    caution(
      'stop',
      'The stress is also above what the European standard allows annealed glass under a load that stays, 7.25 MPa: do not fill it on its rim.',
      `sigma > ${LONG_LOAD_LIMIT}`,
    ),
    caution(
      'note',
      'On a flat, stiff top with a foam sheet under the whole pane the bottom hardly bends, and this does not apply. A tank with a plastic rim that lifts the bottom must not get foam: ask its maker.',
    ),
    caution(
      'caution',
      'Rock is not in this: it stands on points, and a fall breaks a bottom that carries the water with ease. Spread it on a pad.',
    ),
    caution('caution', 'Holes for drains weaken a bottom where they are: none are reckoned here.'),
    notTheAveragePane,
    neverDrillTempered,
  ],
  sources: STRENGTH_SOURCES,
  examples: [
    'bottom pane held at its edges, 120x50 cm, 12 mm, 48 cm of water: strong enough?',
    'how thick should the bottom glass be for 100 x 50 cm with 45 cm of water',
    'floating base 48x24 in, bottom 3/4 in, 22 in of water',
  ],
});
