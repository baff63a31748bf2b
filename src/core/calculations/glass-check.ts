import { type Condition, caution, choice, quantity, result, step } from '../calculation.js';
import { neverDrillTempered, notTheAveragePane } from '../cautions/glass.js';
import { calculation } from '../define.js';
import { glassThickness, height, length, waterHeight, width } from '../inputs/display.js';
import { LONG_LOAD_LIMIT, STRENGTH_SOURCES, strengthConstants } from '../inputs/glass-strength.js';
import { paneMaterial } from '../inputs/pane-material.js';

const free: Condition = { is: ['top_edge', 'top_free'] };
const supported: Condition = { is: ['top_edge', 'top_supported'] };
const { profile: _, ...waterOverPane } = waterHeight;
/** The table of the plate runs from here to there. */
const END_IN_TABLE = 'r_e >= 0.5 and r_e <= 4';
const BEYOND = 'That is beyond this check: a tank builder with a proper calculation is the next stop.';

/**
 * A pane between the two sides and the bottom of its tank. The row of coefficients that is widely copied for this
 * (0.085, 0.1156, 0.16, 0.26, 0.32, 0.35, 0.37) belongs to a pane held at all four edges; on a rimless tank it says too
 * little by 1.35 times at length over height 1.5 and by 1.8 times at 3. So the top edge is asked for, and each way of
 * holding it has its own row.
 */
export const glassCheck = calculation({
  id: 'glass.check',
  slash: 'structure pane',
  title: 'Strength of a pane',
  question: 'Is the glass of this pane thick enough for the water behind it?',
  part: 'glass and lid',
  cues: [
    'thickness do i need',
    'thick enough',
    'glass thick enough',
    'glass thick',
    'how thick',
    'how thick should',
    'how thick must',
    'how thick does the glass',
    'thickness of glass',
    'what thickness',
    'what glass thickness',
    'glass thickness for',
    'thickness do I need',
    'glass do I need',
    'glass strong enough',
    'pane strong enough',
    'front pane',
    'rimless',
    'glass enough',
    'mm enough',
    'mm glass enough',
    'glass hold',
    'glass safe',
    'safety factor',
    'glass break',
    'glass bow',
    'pane bow',
    'bowing',
    'eurobraced',
    'braced',
  ],
  inputs: {
    length: quantity('length', {
      ...length,
      name: 'length of the pane',
      words: [...(length.words ?? []), 'pane length', 'pane'],
      ask: 'How long is the pane between the two that hold its ends? The length of the tank will do.',
      example: '120 cm or 48 in',
    }),
    width: quantity('length', { ...width, needed: false }),
    height: quantity('length', { ...height, needed: false }),
    glass_thickness: quantity('length', {
      ...glassThickness,
      // “How thick must the glass be for 6 ft” says nothing about the 6 ft: only a pane that is named with its size counts.
      words: ['mm', 'inch', 'in'].flatMap((unit) => [
        `${unit} glass`,
        `${unit} thick`,
        `${unit} pane`,
        `${unit} panes`,
      ]),
      range: [4, 30, 'mm'],
      needed: false,
      slips: [
        [0, 3.999999, 'Thinner glass carries no reef tank: check the unit.'],
        [30.000001, 400, 'Panes are measured in millimetres or fractions of an inch: 12 mm, 1/2 in.'],
      ],
    }),
    water_height: quantity('length', {
      ...waterOverPane,
      name: 'water height behind the pane',
      words: [...(waterHeight.words ?? []), 'water', 'filled to'],
      range: [0.1, 0.9, 'm'],
      slips: [[0.900001, 6, BEYOND]],
      default: [{ formula: 'H - t' }, { formula: 'H' }],
      ask: 'How high is the water behind the pane? Use the full height of the pane: one day it is filled to the rim.',
    }),
    top_edge: choice({
      name: 'top edge of the pane',
      words: ['top edge'],
      ask: 'Is the top edge free (rimless), or held along its whole length by a brace or rim?',
      options: {
        top_free: {
          label: 'free, rimless',
          words: [
            'rimless',
            'frameless',
            'free',
            'unbraced',
            'no brace',
            'no braces',
            'no bracing',
            'without a brace',
            'without brace',
            'without bracing',
            'not braced',
            'open top',
            'cross brace',
            'cross braced',
          ],
        },
        top_supported: {
          label: 'held along its whole length',
          words: ['braced', 'eurobraced', 'euro braced', 'euro brace', 'eurobrace', 'rimmed', 'framed', 'with a rim'],
        },
      },
      profile: 'display.top_edge',
    }),
    material: paneMaterial(),
  },
  constants: {
    ...strengthConstants,
    E_g: { value: 70e9, unit: 'Pa', name: 'stiffness of float glass (EN 572-1)' },
  },
  rules: [
    {
      refuse: 'W > L',
      because: 'The pane checked is the longer one, and the width is more than the length: swap the two.',
      about: 'length',
    },
    {
      refuse: { is: ['material', 'acrylic'] },
      because: 'The plate table is for glass: acrylic creeps and bows for years, so no check is offered for it.',
      about: 'material',
    },
    {
      refuse: 'r < 0.5',
      because:
        'The pane is less than half as long as its water is high, below the table: were length and height swapped?',
      about: 'length',
    },
    {
      refuse: 'r > 4',
      because:
        'The pane is more than four times as long as its water is high, beyond the table: a tank builder is the next stop, or check the units.',
      about: 'length',
    },
  ],
  steps: [
    step('r', 'L/h', 'ratio', 'length over water height'),
    step('beta', 'beta_top_free(r)', 'ratio', 'stress coefficient, top edge free', free),
    step('beta', 'beta_top_supported(r)', 'ratio', 'stress coefficient, top edge held', supported),
    step('p', 'rho_h*g*h', 'pressure', 'water pressure at the bottom'),
    step('sigma', 'beta*p*(h/t)^2', 'pressure', 'largest bending stress in the pane'),
    step('n', 'sigma_b/sigma', 'ratio', 'safety factor'),
    step('t_n', 'h*sqrt(beta*p/(sigma_b/n_0))', 'length', 'thickness for the usual factor'),
    step('t_s', 'next_sheet(t_n)', 'length', 'next thickness that glass is sold in'),
    step('r_e', 'W/h', 'ratio', 'end pane: length over water height'),
    step('beta_e', 'beta_top_free(r_e)', 'ratio', 'stress coefficient of the end pane', { all: [free, END_IN_TABLE] }),
    step('beta_e', 'beta_top_supported(r_e)', 'ratio', 'stress coefficient of the end pane', {
      all: [supported, END_IN_TABLE],
    }),
    step('n_e', 'sigma_b/(beta_e*p*(h/t)^2)', 'ratio', 'safety factor of the end panes'),
    step('alpha', 'alpha_top_free(r)', 'ratio', 'deflection coefficient, middle of the free edge', free),
    step('alpha', 'alpha_top_supported(r)', 'ratio', 'deflection coefficient, top edge held', supported),
    step('w', 'alpha*p*h^4/(E_g*t^3)', 'length', 'how far the pane bows'),
  ],
  results: {
    safety_factor: result('n', 'ratio', 'safety factor', { figures: 2 }),
    thickness_for_3_8: result('t_n', 'length', 'thickness for a factor of 3.8', { units: { metric: 'mm', us: 'in' } }),
    sheet_thickness: result('t_s', 'length', 'next thickness that glass is sold in', {
      units: { metric: 'mm', us: 'mm' },
      when: 't_n <= 0.025',
    }),
    end_safety_factor: result('n_e', 'ratio', 'safety factor of the end panes', { figures: 2 }),
    bending_stress: result('sigma', 'pressure', 'largest bending stress', { units: { metric: 'MPa', us: 'MPa' } }),
    deflection: result('w', 'length', 'how far it bows', { units: { metric: 'mm', us: 'in' }, figures: 2 }),
    length_to_height: result('r', 'ratio', 'length over water height'),
    stress_coefficient: result('beta', 'ratio', 'stress coefficient'),
    bottom_pressure: result('p', 'pressure', 'water pressure at the bottom'),
  },
  headline: [
    {
      text: 'Outside this check: {glass_thickness} gives a safety factor of {safety_factor}, where 3.8 is usual and takes {thickness_for_3_8}.',
      when: 'n < n_0',
    },
    {
      text: 'Within this check: {glass_thickness} gives a safety factor of {safety_factor}; the usual 3.8 takes {thickness_for_3_8}.',
      when: 'n >= n_0',
    },
    {
      text: 'A safety factor of 3.8 takes {thickness_for_3_8} of glass: {sheet_thickness} is the next that is sold.',
      when: 't_n <= 0.025',
    },
    { text: 'A safety factor of 3.8 takes {thickness_for_3_8} of glass, more than plain sheets come in.' },
  ],
  cautions: [
    caution(
      'stop',
      'The stress is also above what the European standard allows annealed glass under a load that stays, 7.25 MPa: do not fill this tank without a builder’s word.',
      `sigma > ${LONG_LOAD_LIMIT}`,
    ),
    caution(
      'caution',
      'Below the usual factor a small flaw has less room: a brace along the top, less water or thicker glass brings it back.',
      `n < n_0 and sigma <= ${LONG_LOAD_LIMIT}`,
    ),
    caution(
      'note',
      'A rimless pane this long is worst near its lower corners, where it twists, and not in the middle of its top edge.',
      { all: [free, 'r > 2.5'] },
    ),
    caution(
      'note',
      'Held means all along: a rim or a strip glued on its whole length. Cross braces in places count as free.',
      supported,
    ),
    caution(
      'note',
      'A bow of more than half its thickness is beyond thin-plate theory; it bows less than this says.',
      'w > 0.5*t',
    ),
    notTheAveragePane,
    neverDrillTempered,
  ],
  sources: STRENGTH_SOURCES,
  examples: [
    'is 12 mm glass thick enough for a rimless tank 120 cm long with 48 cm of water',
    'how thick should the glass be for a rimless 150x60x55 cm tank',
    'braced 72x18x21 in tank in 1/2 in glass, is the glass strong enough',
  ],
});
