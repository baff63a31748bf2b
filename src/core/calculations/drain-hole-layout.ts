import { caution, choice, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { glassThickness } from '../inputs/display.js';

const millimetres = { metric: 'mm', us: 'in' };

export const drainHoleLayout = calculation({
  id: 'drain.hole_layout',
  slash: 'drain hole-layout',
  title: 'Where holes may sit in a pane',
  question: 'How far must drilled holes stay from the edges, the corners and each other?',
  part: 'drains',
  cues: [
    'drilled holes',
    'distance from the hole',
    'spacing between',
    'min distance',
    'hole to edge',
    'hole size',
    'drill',
    'drilling',
    'drill a hole',
    'holes in the glass',
    'hole in the glass',
    'hole spacing',
    'bulkhead hole',
    'hole from the edge',
    'distance from the edge',
  ],
  inputs: {
    glass_thickness: quantity('length', { ...glassThickness, range: [3, 40, 'mm'] }),
    hole_diameter: quantity('length', {
      symbol: 'd',
      name: 'hole diameter, from the maker’s drawing',
      words: ['hole', 'holes', 'hole diameter', 'drill bit', 'hole saw', 'bit', 'bulkhead'],
      range: [5, 200, 'mm'],
      usual: [20, 90, 'mm'],
      units: millimetres,
      ask: 'Which hole does the maker’s drawing of your bulkhead ask for? Makers differ, so there is no standard to look up.',
      example: '50 mm or 1-3/4 in',
    }),
    glass_kind: choice({
      name: 'kind of glass',
      words: ['kind of glass', 'tempered', 'annealed'],
      ask: 'Is the pane annealed or tempered?',
      default: 'unknown',
      options: {
        annealed: { label: 'annealed', words: ['annealed', 'float glass', 'not tempered'] },
        tempered: { label: 'tempered', words: ['tempered', 'toughened', 'safety glass'] },
        unknown: { label: 'not known', words: ['not sure', 'unknown', 'no idea'] },
      },
    }),
  },
  rules: [
    {
      refuse: { is: ['glass_kind', 'tempered'] },
      because:
        'Tempered glass cannot be drilled: it bursts into crumbs at the first scratch of the bit. Ask the maker which panes are tempered.',
      about: 'glass_kind',
    },
  ],
  steps: [
    step('a', '2*t', 'length', 'edge of the hole to the edge of the pane'),
    step('b', '2*t', 'length', 'edge of a hole to edge of the next'),
    step('c', '6*t', 'length', 'edge of the hole to a corner'),
    step('a_p', 'max(d, a)', 'length', 'one hole diameter, and no less than the least'),
  ],
  results: {
    edge_distance_common_practice: result('a_p', 'length', 'hole to edge of the pane, common practice', {
      units: millimetres,
    }),
    edge_distance_least: result('a', 'length', 'hole to edge of the pane, at least', { units: millimetres }),
    between_holes_least: result('b', 'length', 'hole to hole, at least', { units: millimetres }),
    corner_distance_least: result('c', 'length', 'hole to corner, at least', { units: millimetres }),
  },
  headline: [
    {
      text: 'Keep {edge_distance_common_practice:both} of glass between hole and edge, and never less than {edge_distance_least}; {between_holes_least} between holes and {corner_distance_least} to a corner.',
    },
  ],
  cautions: [
    caution(
      'stop',
      'Find out first whether the pane is tempered: tempered glass bursts when it is drilled. Polarised light is a hint only; the maker’s word counts.',
      { is: ['glass_kind', 'unknown'] },
    ),
    caution(
      'note',
      'All of these run from the rim of the hole, not from its centre: add half of {hole_diameter} to mark the centre. The nut and the wall of the box need room as well.',
    ),
    caution(
      'note',
      'The least distances are rules for holes made before toughening; keep to the larger ones in a pane that carries water.',
    ),
    caution(
      'caution',
      'Drill wet, with goggles and gloves, the pane flat and backed, no hammer action and hardly any pressure; a glazier does it for little money.',
    ),
    caution(
      'caution',
      'Water-test outside or over a drain for days before the tank goes where it stays: drilled panes fail at chips.',
    ),
  ],
  sources: [
    'EN 12150-1, least distances of holes: two panes’ thickness to an edge and between holes, six to a corner (from memory)',
    'one hole diameter to the edge: common practice, no source',
  ],
  examples: [
    'how far from the edge can I drill a 50 mm hole in 12 mm glass',
    'hole spacing for a 1-3/4 in hole, 1/2 in glass, annealed',
  ],
});
