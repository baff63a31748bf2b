import { type Condition, caution, quantity, result, step } from '../calculation.js';
import { glueCures, rockOnTheBase } from '../cautions/rock.js';
import { gravity, heavySeawater } from '../constants.js';
import { calculation } from '../define.js';
import { pieceDensity, pieceMass, submergedWeight } from '../inputs/rock-column.js';
import { rows } from '../inputs/rows.js';

const byParts: Condition = { given: 'parts' };
const FALLS = 'b <= 0';
const LEANS_LITTLE = 'theta < theta_0';
const PUSHED_EASILY = 'P < P_0';

export const rockStability = calculation({
  id: 'rock.stability',
  slash: 'structure column',
  title: 'Stability of a rock column',
  question: 'How far may a piece of rockwork lean, and how hard a push topples it under water?',
  part: 'rock and sand',
  cues: [
    'topple',
    'topples',
    'tip over',
    'tips over',
    'tipping',
    'fall over',
    'falls over',
    'fall down',
    'knock over',
    'knock it over',
    'knocked over',
    'push over',
    'push it over',
    'rock stable',
    'stable',
    'stability',
    'rock column',
    'rock pillar',
    'rock tower',
    'rock arch',
    'column stable',
    'unstable',
    'overturn',
    'centre of mass',
    'center of mass',
    'centre of gravity',
    'center of gravity',
  ],
  inputs: {
    parts: rows({
      name: 'parts: mass, height and distance to the base edge of each',
      row: 'part',
      words: ['parts', 'pieces'],
      needed: false,
      ask: 'Of each part: its mass, how high its centre is, and how far that is inside the base edge it would tip over?',
      example: '12 kg 20 cm 14 cm, 6 kg 45 cm 8 cm, base plate 5 kg 1 cm 15 cm',
      suggestions: ['12 kg 20 cm 14 cm, 6 kg 45 cm 8 cm', '8 kg 15 cm 12 cm, 4 kg 40 cm 5 cm, 5 kg 1 cm 15 cm'],
      columns: [
        { symbol: 'm', name: 'mass', unit: 'kg', range: [0.01, 1000] },
        { symbol: 'z', name: 'height of its centre', unit: 'cm', range: [0, 200] },
        { symbol: 'b', name: 'distance inside the base edge', unit: 'cm', range: [-150, 150] },
      ],
      atLeast: 2,
    }),
    mass: quantity('mass', { ...pieceMass, default: { formula: 'sum_i(m_i)' }, needed: { not: byParts } }),
    rock_density: pieceDensity(),
    centre_height: quantity('length', {
      symbol: 'z',
      name: 'height of the centre of mass',
      words: [
        'centre',
        'center',
        'centre of mass',
        'center of mass',
        'centre of gravity',
        'center of gravity',
        'centre height',
        'high centre',
      ],
      range: [0, 2, 'm'],
      aboveLow: true,
      default: { formula: 'sum_i(m_i*z_i)/sum_i(m_i)' },
      needed: { not: byParts },
      ask: 'How high is its centre of mass? Half its height, lower if it is thick at the foot.',
      example: '30 cm or 12 in',
    }),
    edge_distance: quantity('length', {
      symbol: 'b',
      name: 'distance from the plumb line of its centre to the nearest base edge',
      words: ['base edge', 'edge', 'to the edge', 'edge distance', 'from the edge', 'base', 'half the base'],
      range: [-1.5, 1.5, 'm'],
      usual: [1, 60, 'cm'],
      default: { formula: 'sum_i(m_i*b_i)/sum_i(m_i)' },
      needed: { not: byParts },
      ask: 'How far is the nearest edge of its base from the point under its centre of mass? Glued to a plate, the edge of the plate counts.',
      example: '12 cm or 5 in',
    }),
    push_height: quantity('length', {
      symbol: 'h_p',
      name: 'height of the push',
      words: ['push', 'pushed', 'bump', 'bumped', 'push height', 'pushed at', 'top', 'tall'],
      range: [0, 2, 'm'],
      aboveLow: true,
      ask: 'How high could it be pushed? Its top is the worst place.',
      example: '55 cm or 22 in',
    }),
  },
  constants: {
    g: gravity,
    rho_h: heavySeawater,
    theta_0: { value: (25 * Math.PI) / 180, unit: '1', name: 'lean it should take: 25° (common practice)' },
    P_0: { value: 50, unit: 'N', name: 'push it should take: an accidental bump (common practice)' },
  },
  steps: [
    step('theta', 'atan(b/z)', 'angle', 'lean at which it goes over'),
    submergedWeight,
    step('P', 'F*b/h_p', 'force', 'push that topples it under water', 'b > 0'),
    step('b_0', 'max(z*tan(theta_0), P_0*h_p/F)', 'length', 'distance to the edge that meets both'),
  ],
  results: {
    overturning_angle: result('theta', 'angle', 'lean at which it goes over'),
    push_to_topple: result('P', 'force', 'push that topples it under water'),
    submerged_weight: result('F', 'force', 'weight under water'),
    edge_distance_wanted: result('b_0', 'length', 'distance to the edge for 25° and 50 N'),
  },
  headline: [
    {
      text: 'It falls over by itself: its centre of mass is not above its base. The edge must come {edge_distance_wanted:both} out from under the centre.',
      when: FALLS,
    },
    {
      text: 'Within this check: it goes over at a lean of {overturning_angle}, or at a push of {push_to_topple} {push_height} up.',
      when: 'theta >= theta_0 and P >= P_0',
    },
    {
      text: 'Too easy to topple: it leans only {overturning_angle} before it goes, and {push_to_topple} {push_height} up pushes it over. A base that reaches {edge_distance_wanted:both} out is within this check.',
      when: `${LEANS_LITTLE} and ${PUSHED_EASILY}`,
    },
    {
      text: 'Too easy to push over: {push_to_topple} {push_height} up does it. A base that reaches {edge_distance_wanted:both} out is within this check.',
      when: PUSHED_EASILY,
    },
    {
      text: 'It leans only {overturning_angle} before it goes over. A base that reaches {edge_distance_wanted:both} out is within this check.',
    },
  ],
  cautions: [
    caution('stop', 'A falling column breaks panes and what grows on it: do not leave it standing like this.', {
      any: [FALLS, `${LEANS_LITTLE} and ${PUSHED_EASILY}`],
    }),
    rockOnTheBase,
    glueCures,
    caution(
      'note',
      'Gluing it to a plate moves the edge outward: give the distance to the plate’s edge, or the plate as a part of its own.',
      { any: [LEANS_LITTLE, PUSHED_EASILY, FALLS] },
    ),
    caution(
      'note',
      'Under water it weighs about six tenths of its dry weight; corals that grow on it make it heavier at the top.',
    ),
  ],
  sources: [
    'statics: moments about the base edge, buoyancy of the solid volume',
    'lean of 25 to 30° and a push of 50 N as what rockwork should take: common practice, no source',
  ],
  examples: [
    'will my rock column topple: 25 kg, centre 30 cm high, 12 cm to the base edge, pushed at 55 cm',
    'is a 40 lb rock tower stable, center of mass 10 in up, edge 7 in from it, bumped at the top 20 in up',
    'rock arch stability, parts 12 kg 20 cm 14 cm, 6 kg 45 cm 8 cm, base plate 5 kg 1 cm 15 cm, push height 60 cm',
  ],
});
