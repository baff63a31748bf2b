import { type Condition, caution, choice, quantity, result, step } from '../calculation.js';
import { floorHidden } from '../cautions/floor.js';
import { gravity } from '../constants.js';
import { calculation } from '../define.js';
import { length, width } from '../inputs/display.js';

const across: Condition = { is: ['joist_direction', 'across'] };
const along: Condition = { is: ['joist_direction', 'along'] };
const noCount: Condition = { not: { given: 'joist_count' } };

/** More than half of what the code allows for everything in the room (common practice, no source). */
const MUCH = 'r_M > 0.5';
const TOO_MUCH = 'r_M > 1';
/** A joist is seldom cut off at its end, and its end is seldom looked at: a question for an engineer, not a refusal. */
const END_TOO_MUCH = 'r_R > 1';
/** Where a suspended floor is a question for an engineer whatever the ratios say (common practice, no source). */
const HEAVY = 'M > 500';

export const floorJoist = calculation({
  id: 'floor.joist',
  slash: 'structure floor',
  title: 'A tank on floor joists',
  question: 'How hard does the tank bend the joists, against what the code lets a room put on them?',
  part: 'getting it in',
  cues: [
    'joist',
    'joists',
    'floor joists',
    'floor hold',
    'floor holds',
    'floor carry',
    'floor take',
    'floor support',
    'floor handle',
    'floor strong enough',
    'will my floor',
    'can my floor',
    'suspended floor',
    'wooden floor',
    'wood floor',
    'upstairs',
    'beams',
    'floor beams',
  ],
  inputs: {
    total_mass: quantity('mass', {
      symbol: 'M',
      name: 'everything, filled',
      words: ['weighs', 'total', 'tank', 'full', 'filled', 'full weight', 'all together', 'weight'],
      range: [1, 20_000, 'kg'],
      usual: [50, 3000, 'kg'],
      ask: 'How much does everything weigh, filled? If you do not know, ask me first what your tank weighs full.',
      example: '1700 lb or 770 kg',
      profile: 'stand.full_mass',
    }),
    joist_direction: choice({
      name: 'how the joists run under the tank',
      words: ['joists', 'beams', 'they run'],
      byName: true,
      needed: false,
      ask: 'Do the joists run across the tank, front to back, or along it?',
      options: {
        across: {
          label: 'across the tank, front to back under it',
          words: ['across', 'perpendicular', 'at right angles', 'crosswise', 'front to back'],
        },
        along: { label: 'along the tank, parallel to its length', words: ['along', 'parallel', 'lengthwise'] },
      },
      profile: 'stand.joist_direction',
    }),
    joist_spacing: quantity('length', {
      symbol: 's',
      name: 'joist spacing, middle to middle',
      words: ['spacing', 'spaced', 'on centre', 'on center', 'centres', 'centers', 'o.c.', 'oc', 'apart'],
      range: [0.2, 0.8, 'm'],
      usual: [30, 65, 'cm'],
      default: { value: 0.4064, unit: 'm', why: '16 in, the common spacing; look before you trust it' },
      ask: 'How far apart are the joists, middle to middle?',
      example: '16 in or 40 cm',
      profile: 'room.joist_spacing',
    }),
    length: quantity('length', { ...length, needed: { all: [across, noCount] } }),
    width: quantity('length', { ...width, needed: { all: [along, noCount] } }),
    joist_count: quantity('count', {
      symbol: 'n',
      name: 'joists that carry it',
      words: ['joists', 'joist', 'beams', 'joists under it', 'floor joists'],
      range: [1, 60, 'count'],
      whole: true,
      default: [
        { formula: 'max(1, floor(L/s))', when: across },
        { formula: 'max(1, floor(W/s))', when: along },
      ],
      needed: { not: { given: 'joist_direction' } },
      ask: 'How many joists does it stand on? Or tell me whether they run across the tank or along it.',
      example: '5, or across',
    }),
    joist_span: quantity('length', {
      symbol: 'l',
      name: 'joist span, from support to support',
      words: ['span', 'spans', 'spanning', 'joist span', 'joist length', 'long joists', 'joists'],
      range: [1, 8, 'm'],
      usual: [2, 7, 'm'],
      ask: 'How far do the joists span, from wall or beam to wall or beam?',
      example: '12 ft or 3.6 m',
      profile: 'room.joist_span',
    }),
    wall_gap: quantity('length', {
      symbol: 'a',
      name: 'gap between the tank and the wall that the joists rest on',
      words: [
        'gap',
        'wall gap',
        'from the wall',
        'off the wall',
        'away from the wall',
        'to the wall',
        'behind it',
        'gap to the wall',
      ],
      range: [0, 8, 'm'],
      usual: [0, 4, 'm'],
      ask: 'How far is the tank from the wall that the joists rest on?',
      example: '2 in or 5 cm',
      profile: 'stand.wall_gap',
    }),
    load_depth: quantity('length', {
      symbol: 'c',
      name: 'length of joist under the tank',
      words: ['stand depth', 'deep stand', 'load depth', 'under the tank', 'deep', 'wide', 'depth'],
      range: [0.1, 8, 'm'],
      usual: [0.3, 2.5, 'm'],
      default: [
        { formula: 'W', when: across },
        { formula: 'L', when: along },
      ],
      ask: 'How much of each joist does the stand cover: its depth front to back where the joists run across it?',
      example: '18 in or 45 cm',
    }),
    live_load: quantity('pressure', {
      symbol: 'q_d',
      name: 'live load the floor was designed for',
      words: ['live load', 'design load', 'code load', 'designed for', 'rated for'],
      range: [0.5, 12, 'kN/m2'],
      units: { metric: 'kN/m2', us: 'psf' },
      default: {
        value: 40,
        unit: 'psf',
        why: 'rooms under US codes; sleeping rooms have 30 psf (1.44 kN/m²), European homes 1.5 to 2.0 kN/m²',
      },
      ask: 'Which live load was the floor designed for?',
      example: '40 psf or 1.9 kN/m2',
      profile: 'room.live_load',
    }),
  },
  constants: { g: gravity },
  rules: [
    {
      refuse: 'a + c > l',
      because: 'The tank would stand beyond the end of the joists: gap and depth together are more than the span.',
      about: 'load_depth',
    },
  ],
  steps: [
    step('F', 'M*g/n', 'force', 'weight on each joist, if they share it'),
    step('R', 'F*(l - a - c/2)/l', 'force', 'what the near end of a joist carries'),
    step('R_far', 'F - R', 'force', 'what its far end carries'),
    step('M_j', 'R*(a + R*c/(2*F))', 'moment', 'largest bending moment in a joist, where the shear is nothing'),
    step('M_d', 'q_d*s*l^2/8', 'moment', 'bending moment of the design live load'),
    step('r_M', 'M_j/M_d', 'ratio', 'bending against design'),
    step('r_R', 'max(R, R_far)/(q_d*s*l/2)', 'ratio', 'end of the joist against design'),
    step('M_mid', 'F*(l/4 - c/8)', 'moment', 'bending moment if the tank stood in mid-span'),
    step('r_mid', 'M_mid/M_d', 'ratio', 'bending against design, in mid-span'),
  ],
  results: {
    moment_ratio: result('r_M', 'fraction', 'bending against the design live load', { figures: 2 }),
    end_ratio: result('r_R', 'fraction', 'joist end against the design live load', { figures: 2 }),
    joist_moment: result('M_j', 'moment', 'bending moment in each joist'),
    design_live_moment: result('M_d', 'moment', 'bending moment of the design live load'),
    end_load: result('R', 'force', 'load on the near end of each joist'),
    moment_ratio_mid_span: result('r_mid', 'fraction', 'bending if it stood in mid-span', { figures: 2 }),
  },
  headline: [
    {
      text: 'Outside this check: it bends each joist with {moment_ratio} of all the load the code plans for there. Ask a structural engineer before it is filled.',
      when: TOO_MUCH,
    },
    {
      text: 'Ask a structural engineer: bending is {moment_ratio} of what the code plans for a full room, but the end of each joist takes {end_ratio} of it.',
      when: END_TOO_MUCH,
    },
    {
      text: 'Ask a structural engineer: it bends each joist with {moment_ratio} of what the code plans for a full room, and a tank never leaves.',
      when: MUCH,
    },
    {
      text: 'Ask a structural engineer: at {total_mass} no rule of thumb decides, though it bends each joist with only {moment_ratio} of what the code plans for a full room and loads its end with {end_ratio}.',
      when: HEAVY,
    },
    {
      text: 'Within this check: it bends each joist with {moment_ratio} of what the code plans for a full room, and loads its end with {end_ratio}.',
    },
  ],
  cautions: [
    caution('stop', 'Do not fill it on this floor before somebody who may sign for it has looked.', TOO_MUCH),
    floorHidden,
    caution(
      'caution',
      'So near the wall the end of each joist takes {end_ratio} of what it was planned for: see that it rests fully on sound wood or masonry.',
      'r_R > 0.7 and r_R <= 1',
    ),
    caution(
      'note',
      'Against the wall that carries the joists they bend least: in mid-span it would be {moment_ratio_mid_span}.',
      { all: ['r_mid > 1.2*r_M', { not: END_TOO_MUCH }, { not: along }] },
    ),
    caution(
      'caution',
      'Along the joists one or two of them carry it all: measure which, and think of turning the tank.',
      along,
    ),
    caution(
      'note',
      'People, furniture and the floor itself come on top. Wood creeps under a load that stays; US wood design takes a tenth off for that.',
    ),
  ],
  sources: [
    'statics of a simply supported beam with a partial uniform load',
    '40 psf (1.92 kN/m²) for rooms, 30 psf for sleeping rooms: IRC Table R301.5, ASCE 7 Table 4.3-1; 1.5 to 2.0 kN/m²: EN 1991-1-1 category A (from memory)',
    'factor 0.9 for permanent load on wood: US practice (from memory); half of the design moment and 500 kg as the call for an engineer: common practice, no source',
  ],
  examples: [
    'will my floor hold it: 1700 lb on 5 joists, 12 ft span, 2 in from the wall, stand 18 in deep',
    '797 kg filled, joists run across, span 3.6 m, spacing 40 cm, 5 cm from the wall, 150 x 60 cm tank',
    'floor joists: total 900 kg, 4 joists spanning 4 m, mid room 1.5 m from the wall, 60 cm deep',
  ],
});
