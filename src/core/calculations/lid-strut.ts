import { type Condition, caution, flag, type LookupInput, lookup, quantity, result, step } from '../calculation.js';
import { gravity } from '../constants.js';
import { calculation } from '../define.js';
import { LENGTH_UNIT, metres, NUMBER } from '../inputs/length-text.js';

const millimetres = { metric: 'mm', us: 'in' };
const MOUNTS = ['lid_mount_along', 'body_mount_x', 'body_mount_y'] as const;
/** One of them means that struts are to be worked out: then all of them are asked for. */
const mounting: Condition = {
  any: [...MOUNTS, 'open_angle', 'lid_mount_off', 'strut_rating', 'strut_shortest', 'strut_stroke'].map((given) => ({
    given,
  })),
};
const mount = { range: [-2, 2, 'm'] as const, units: millimetres };

/** "22 cm below the hinge": so far down, said without a minus. */
function saidBelow(name: string, thing: string, target: string): LookupInput {
  const pattern = new RegExp(
    `-?${NUMBER}\\s*${LENGTH_UNIT}\\s+(?:below|under|beneath|down from)\\s+(?:the |its )?${thing}(?![a-z])`,
  );
  const example = `22 cm below the ${thing}`;
  return lookup({
    name,
    words: [],
    ask: `How far below the ${thing} is it?`,
    example,
    needed: false,
    suggestions: [example, `9 in below the ${thing}`],
    pattern,
    read(text) {
      const [, value, unit] = text.toLowerCase().match(pattern) ?? [];
      if (value === undefined || unit === undefined)
        return `I can't read “${text}” as a place below: ${example} would do.`;
      return { reading: `${value} ${unit} below the ${thing}`, inputs: { [target]: -metres(value, unit) }, said: true };
    },
  });
}

const rated: Condition = { given: 'strut_rating' };
const HEAVY = 'F_h > F_one';
/** Least lever arm at which a strut still turns the lid rather than pull at its hinge. */
const OVER_CENTRE = 'r_min < 0.005';

export const lidStrut = calculation({
  id: 'lid.strut',
  slash: 'structure lid-strut',
  title: 'Gas struts for a lid',
  question: 'Does a lid need gas struts, and which force and stroke?',
  part: 'glass and lid',
  cues: [
    'strut',
    'struts',
    'gas strut',
    'gas struts',
    'gas spring',
    'gas springs',
    'gas shock',
    'gas shocks',
    'lift support',
    'lift supports',
    'lid lift',
    'lid too heavy',
    'heavy lid',
    'lift the lid',
    'open the lid',
    'opening the lid',
    'hold the lid',
    'lid open',
    'hinged lid',
    'hinged canopy',
    'canopy lid',
    'canopy flap',
    '~lid',
    'lb lid',
    'kg lid',
    'lid weighs',
    '~hinge',
    '~hinged',
    '~canopy',
    '~hood',
  ],
  inputs: {
    mass: quantity('mass', {
      symbol: 'm',
      name: 'weight of the lid with all on it',
      words: ['lid', 'lid weighs', 'weighs', 'heavy', 'canopy', 'flap', 'hood', 'weight'],
      range: [0, 200, 'kg'],
      aboveLow: true,
      usual: [1, 60, 'kg'],
      ask: 'How heavy is the lid, with lights and everything else that moves with it?',
      example: '60 lb or 27 kg',
      profile: 'lid.mass',
    }),
    lid_depth: quantity('length', {
      symbol: 'd',
      name: 'depth of the lid, hinge to front edge',
      words: ['deep', 'depth', 'lid depth', 'front to back', 'hinge to front', 'front edge'],
      range: [0.05, 2, 'm'],
      usual: [15, 120, 'cm'],
      ask: 'How deep is the lid, from the hinge to its front edge?',
      example: '44 cm or 18 in',
      profile: 'lid.depth',
    }),
    cg_distance: quantity('length', {
      symbol: 'r',
      name: 'centre of the weight from the hinge',
      words: ['centre', 'center', 'centre of gravity', 'center of gravity', 'cg', 'centre of mass', 'balance point'],
      range: [0, 2, 'm'],
      aboveLow: true,
      usual: [5, 80, 'cm'],
      default: { formula: 'd/2' },
      needed: false,
      ask: 'How far from the hinge is the lid’s centre of weight?',
      example: '22 cm or 9 in',
      profile: 'lid.cg_distance',
    }),
    cg_off: quantity('length', {
      symbol: 'o',
      name: 'centre of the weight above the line of the lid, minus if below',
      words: ['centre below', 'center below', 'cg off'],
      range: [-1, 1, 'm'],
      units: millimetres,
      default: { value: 0, unit: 'm', why: 'a flat lid; lights hung under it count as below', when: mounting },
      needed: false,
      ask: 'How far is the centre of weight above the line from hinge to front edge, minus if below?',
      example: '-5 cm',
      profile: 'lid.cg_off',
    }),
    open_angle: quantity('angle', {
      symbol: 't',
      name: 'angle of the open lid',
      words: ['opens to', 'open to', 'opens', 'open', 'opening angle', 'open angle', 'degrees', 'angle'],
      range: [10, 110, 'deg'],
      needed: mounting,
      ask: 'How far does the lid open, from closed?',
      example: '80 degrees',
      profile: 'lid.open_angle',
    }),
    struts: quantity('count', {
      symbol: 'n',
      name: 'struts',
      words: ['struts', 'strut', 'gas struts', 'springs', 'shocks', 'of them'],
      range: [1, 4, 'count'],
      whole: true,
      slips: [[0, 0, 'At least one strut is needed to work its force out.']],
      default: { value: 2, unit: 'count', why: 'one a side, so that the lid does not twist', when: mounting },
      needed: false,
      ask: 'How many struts hold it?',
      example: '2',
      profile: 'lid.struts',
    }),
    lid_mount_along: quantity('length', {
      ...mount,
      symbol: 'u',
      name: 'mount on the lid, along it from the hinge',
      words: [
        'lid mount',
        'mounted on the lid',
        'mount on the lid',
        'along the lid',
        'on the lid',
        'lid end',
        'lid bracket',
      ],
      range: [0.01, 2, 'm'],
      needed: mounting,
      ask: 'How far from the hinge, along the lid, is the strut held on the lid?',
      example: '18 cm or 7 in',
      profile: 'lid.mount_along',
    }),
    lid_mount_below: saidBelow('mount below the line of the lid', 'lid', 'lid_mount_off'),
    lid_mount_off: quantity('length', {
      ...mount,
      symbol: 'v',
      name: 'mount on the lid above its line, minus if below',
      words: ['lid mount off', 'off the lid', 'below the lid', 'under the lid'],
      default: { value: 0, unit: 'm', why: 'in line with the hinge', when: mounting },
      needed: false,
      ask: 'How far above the line from hinge to front edge is that mount, minus if below?',
      example: '-2 cm or -1 in',
      profile: 'lid.mount_off',
    }),
    body_mount_x: quantity('length', {
      ...mount,
      symbol: 'x_f',
      name: 'mount on the body, in front of the hinge',
      words: ['body mount', 'in front of the hinge', 'forward of the hinge', 'body end', 'body bracket'],
      needed: mounting,
      ask: 'How far in front of the hinge is the strut held on the body?',
      example: '2 cm or 1 in',
      profile: 'lid.body_mount_x',
    }),
    body_mount_below: saidBelow('mount on the body below the hinge', 'hinge', 'body_mount_y'),
    body_mount_y: quantity('length', {
      ...mount,
      symbol: 'y_f',
      name: 'mount on the body above the hinge, minus if below',
      usual: [-80, -3, 'cm'],
      words: ['body mount height', 'body mount down', 'below the hinge', 'under the hinge', 'down from the hinge'],
      needed: mounting,
      ask: 'How far above the hinge is that mount on the body, minus if below?',
      example: '-22 cm or -9 in',
      profile: 'lid.body_mount_y',
    }),
    margin: quantity('ratio', {
      symbol: 'q',
      name: 'margin on the force',
      words: ['margin', 'reserve', 'extra force'],
      range: [1.1, 1.3, '1'],
      default: { value: 1.15, unit: '1', why: 'common practice: struts lose force with age and cold', when: mounting },
      needed: false,
      ask: 'How much more than the largest force should a strut give?',
      example: '1.15',
    }),
    strut_rating: quantity('force', {
      symbol: 'F_r',
      name: 'force of the struts you have, each',
      words: ['rated', 'rating', 'newton', 'newtons', 'strong', 'strut force', 'each', 'pounds force'],
      range: [1, 5000, 'N'],
      needed: false,
      ask: 'Which force is printed on one strut?',
      example: '250 N or 56 lbf',
    }),
    strut_shortest: quantity('length', {
      symbol: 'b',
      name: 'length of the strut pushed right in',
      words: ['compressed', 'pushed in', 'closed length', 'shortest'],
      range: [0.03, 2, 'm'],
      units: millimetres,
      needed: { given: 'strut_stroke' },
      ask: 'How long is the strut between its two ends when it is pushed right in?',
      example: '240 mm or 9.5 in',
    }),
    strut_stroke: quantity('length', {
      symbol: 'k',
      name: 'stroke of the strut',
      words: ['stroke', 'travel'],
      range: [0.01, 1.5, 'm'],
      units: millimetres,
      needed: { given: 'strut_shortest' },
      ask: 'How long is the stroke of the strut?',
      example: '150 mm or 6 in',
    }),
  },
  constants: {
    g: gravity,
    F_one: { value: 111.2055, unit: 'N', name: 'what one hand lifts with ease, 25 lbf (common practice)' },
  },
  rules: [
    {
      refuse: 'r > d',
      because: 'The centre of weight cannot be farther from the hinge than the front edge: are the two swapped?',
      about: 'cg_distance',
    },
    {
      refuse: 'u > d',
      because: 'The mount on the lid is beyond its front edge: check the unit.',
      about: 'lid_mount_along',
    },
    {
      refuse: 'A_c < 0',
      because:
        'Held like that a strut pushes the closed lid shut: the mount on the body belongs below the line from the hinge to the mount on the lid. Is a minus missing?',
      about: 'body_mount_y',
    },
    {
      refuse: { all: ['A_c >= 0', OVER_CENTRE] },
      because:
        'Somewhere in the opening the strut points at the hinge, within 5 mm, and goes over centre: move a mount away from that line, or open less far.',
      about: 'open_angle',
    },
  ],
  steps: [
    step('F_h', 'm*g*r/d', 'force', 'lift at the front edge without struts'),
    step('s_c', 'sqrt((u - x_f)^2 + (v - y_f)^2)', 'length', 'strut, lid closed'),
    step('A_c', '(v*x_f - u*y_f)/s_c', 'length', 'lever arm of the strut, lid closed'),
    step('F_c', 'm*g*r/(n*A_c)', 'force', 'force in each strut, lid closed'),
    step('x_o', 'u*cos(t) - v*sin(t)', 'length', 'mount on the lid, open, in front of the hinge'),
    step('y_o', 'u*sin(t) + v*cos(t)', 'length', 'mount on the lid, open, above the hinge'),
    step('s_o', 'sqrt((x_o - x_f)^2 + (y_o - y_f)^2)', 'length', 'strut, lid open'),
    step('A_o', '(y_o*x_f - x_o*y_f)/s_o', 'length', 'lever arm of the strut, lid open'),
    step('F_o', 'm*g*(r*cos(t) - o*sin(t))/(n*A_o)', 'force', 'force in each strut, lid open'),
    step('r_min', 'least_strut_arm(u, v, x_f, y_f, t)', 'length', 'least lever arm on the way'),
    step('x_w', 'worst_lid_angle(m, r, o, n, u, v, x_f, y_f, t)', 'angle', 'angle of the largest force'),
    step(
      'F_w',
      'largest_strut_force(m, r, o, n, u, v, x_f, y_f, t)',
      'force',
      'largest force in each strut on the way',
    ),
    step('F_b', 'q*F_w', 'force', 'force to buy, each'),
    step('k_n', 's_o - s_c', 'length', 'stroke that the opening takes'),
    step('F_e', 'F_r', 'force', 'force of the struts', rated),
    step('F_e', 'F_b', 'force', 'force of the struts'),
    step('F_s', '(n*F_e*A_c - m*g*r)/d', 'force', 'push at the front edge of the closed lid, up'),
    step('e_c', 's_c - b', 'length', 'stroke left when closed'),
    step('e_o', 'b + k - s_o', 'length', 'stroke left when open'),
  ],
  results: {
    needs_struts: flag('heavy for one hand: struts or a second person', HEAVY),
    hand_force_without_struts: result('F_h', 'force', 'lift at the front edge without struts'),
    rating_each_with_margin: result('F_b', 'force', 'force to buy, each'),
    stroke_needed: result('k_n', 'length', 'stroke that the opening takes', { units: millimetres }),
    force_each_largest: result('F_w', 'force', 'largest force in each strut'),
    angle_of_largest: result('x_w', 'angle', 'at a lid angle of', { decimals: 0 }),
    force_each_closed: result('F_c', 'force', 'force in each strut, lid closed'),
    force_each_open: result('F_o', 'force', 'force in each strut, lid open'),
    strut_length_closed: result('s_c', 'length', 'strut between its ends, lid closed', { units: millimetres }),
    strut_length_open: result('s_o', 'length', 'strut between its ends, lid open', { units: millimetres }),
    moment_arm_closed: result('A_c', 'length', 'lever arm, lid closed', { units: millimetres }),
    moment_arm_open: result('A_o', 'length', 'lever arm, lid open', { units: millimetres }),
    push_when_closed: result('F_s', 'force', 'push up at the front edge of the closed lid, at least', {
      when: 'F_s > 0',
    }),
    strong_enough: flag('strong enough over the whole opening', 'F_r >= F_w', rated),
    length_fits: flag('length and stroke fit', 'e_c >= 0 and e_o >= 0', { given: 'strut_stroke' }),
  },
  headline: [
    {
      text: 'They do not fit: lid closed and open, the strut is {strut_length_closed:both} and {strut_length_open:both} between its ends, and yours cannot reach both.',
      when: { any: ['e_c < 0', 'e_o < 0'] },
    },
    {
      text: 'Too strong: {strut_rating} each pushes the closed lid up with {push_when_closed} at its front edge, more than a hand holds down; hinges and screws tear. {rating_each_with_margin:both} each is enough.',
      when: { all: ['F_r >= F_b', 'F_s > F_one'] },
    },
    {
      text: 'Within this check: {strut_rating} each holds the lid over its whole opening, which takes up to {force_each_largest:both} each, and leaves the margin.',
      when: 'F_r >= F_b',
    },
    {
      text: 'Just strong enough: the opening takes up to {force_each_largest:both} each, at {angle_of_largest}, and {strut_rating} leaves little for age and cold; buy {rating_each_with_margin:both}.',
      when: 'F_r >= F_w',
    },
    {
      text: 'Too weak: {strut_rating} each drops the lid around {angle_of_largest}, where it takes {force_each_largest:both} each; buy {rating_each_with_margin:both}.',
      when: rated,
    },
    {
      text: 'It needs help, and {struts} × {rating_each_with_margin:both} with a stroke of at least {stroke_needed:both} hold it over the whole opening; without, its front edge takes {hand_force_without_struts:both}.',
      when: { all: [HEAVY, 'F_b > 0'] },
    },
    {
      text: 'One hand lifts it, {hand_force_without_struts:both} at the front edge; to stay open it takes {struts} × {rating_each_with_margin:both} with a stroke of at least {stroke_needed:both}.',
      when: 'F_b > 0',
    },
    {
      text: 'Yes, it needs struts or a second person: its front edge takes {hand_force_without_struts:both} to lift, and one hand lifts about 111 N (25 lbf) with ease.',
      when: HEAVY,
    },
    {
      text: 'One hand lifts it: its front edge takes {hand_force_without_struts:both}, and up to about 111 N (25 lbf) is easy.',
    },
  ],
  cautions: [
    caution(
      'stop',
      'Never reach under a lid that only struts hold: set a mechanical prop before any work below it. Struts fail without warning, and a weak one drops the lid on hands.',
      'F_w > 0',
    ),
    caution(
      'caution',
      'A lid that drops crushes fingers: a stay or a mechanical prop holds it while anybody works below.',
      { not: mounting },
    ),
    caution(
      'caution',
      'Closed, it is pushed up with {push_when_closed} at the front edge, and a strut pushes 20 to 60 % harder when it is pushed in: give it a catch, and hinges and screws that stand the pull.',
      'F_s > 0',
    ),
    caution(
      'caution',
      'Half as strong again as it needs to be: struts like that bend the lid, tear at its hinges and may not let it shut. Take the force to buy.',
      'F_r > 1.5*F_w',
    ),
    caution(
      'note',
      'Past upright the lid leans back and pulls at the struts: a stop or a strap holds it, not the strut’s rod.',
      'F_o < 0',
    ),
    caution(
      'caution',
      'Lid and strut close like scissors: keep fingers, and children’s, away from the mounts and the hinge.',
      'F_w > 0',
    ),
    caution(
      'note',
      'Salt eats steel struts, and they lose some force a year and about 0.3 % a kelvin in the cold: stainless ones, checked yearly, replaced in pairs.',
      'F_w > 0',
    ),
    caution(
      'note',
      'Tell me how far it opens and where the strut is held on the lid and on the body, and I work out force and stroke.',
      { all: [HEAVY, { not: mounting }] },
    ),
  ],
  sources: [
    'statics: moments about the hinge; the lever arm equals the change of the strut’s length with the angle (virtual work)',
    '25 lbf for one hand, a margin of 1.1 to 1.3, 20 to 60 % more when pushed in: common practice, no source; 0.3 % a kelvin is the gas law',
  ],
  examples: [
    'does a 60 lb lid, 44 cm deep, need gas struts',
    'gas struts for a 27 kg lid 44 cm deep, opens to 80 degrees, lid mount 18 cm from the hinge, body mount 2 cm in front of the hinge and 22 cm below the hinge',
    'my canopy lid weighs 8 kg and is 30 cm deep, can I lift the lid with one hand',
  ],
});
