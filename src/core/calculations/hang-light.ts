import { type Condition, caution, flag, lookup, quantity, result, step } from '../calculation.js';
import { lampOverWater } from '../cautions/light.js';
import { gravity, tiny } from '../constants.js';
import { calculation } from '../define.js';

const PLUMB =
  /(?:hang(?:s|ing)?|run(?:ning)?|go(?:es|ing)?) straight|straight (?:down|up)|(?:straight|plumb|vertical) (?:wires|cables|chains)|(?:wires|cables|chains) (?:are |hang )?(?:plumb|vertical)/;

/** "2 wires straight down": no lean at all. */
const straightDown = lookup({
  name: 'wires that hang plumb',
  words: ['straight down', 'plumb', 'vertical'],
  ask: 'Do the wires hang straight down?',
  example: 'straight down',
  needed: false,
  suggestions: ['straight down'],
  pattern: PLUMB,
  read: (text) =>
    PLUMB.test(text.toLowerCase())
      ? { reading: 'straight down', inputs: { angle: 0 }, said: true }
      : `I can't read “${text}” as how the wires hang: straight down would do, or the angle from plumb.`,
});
const rated: Condition = { given: 'wire_rating' };
const HOLDS = 'W >= WLL*(1 - tiny)';
const angleKnown: Condition = { any: [{ given: 'angle' }, { all: [{ given: 'sideways' }, { given: 'drop' }] }] };

export const hangLight = calculation({
  id: 'hang.light',
  slash: 'structure hang',
  title: 'Wires that carry a light',
  question: 'What must each wire carry when a light hangs from the ceiling?',
  part: 'glass and lid',
  cues: [
    'wires',
    'hanging wire',
    'hanging wires',
    'hanging kit',
    'hang kit',
    'suspension kit',
    'suspension cable',
    'suspension wire',
    'suspend',
    'suspended from',
    'hang from the ceiling',
    'hang my light from',
    'hang the light from',
    'hang from ceiling',
    'hung from the ceiling',
    'hang my lights from',
    'ceiling hook',
    'ceiling hooks',
    'hooks',
    'wire strength',
    'strong a wire',
    'strong wire',
    'cables hold',
    'cables',
    'steel cable',
    'wire rope',
    'wire hold',
    'wires hold',
  ],
  inputs: {
    mass: quantity('mass', {
      symbol: 'm',
      name: 'weight of what hangs, drivers and mounts included',
      words: ['light', 'lights', 'lamp', 'fixture', 'weighs', 'heavy', 'light bar', 'bar', 'canopy', 'rack'],
      range: [0, 200, 'kg'],
      aboveLow: true,
      usual: [0.5, 60, 'kg'],
      ask: 'How heavy is the light, with its drivers and its mount?',
      example: '8 kg or 18 lb',
      profile: 'light.mass',
    }),
    wires: quantity('count', {
      symbol: 'n',
      name: 'wires that carry it',
      words: ['wires', 'wire', 'cables', 'cable', 'hooks', 'chains', 'hangers', 'points', 'ropes'],
      range: [1, 12, 'count'],
      whole: true,
      slips: [[0, 0, 'At least one wire carries it.']],
      ask: 'On how many wires does it hang?',
      example: '4',
      profile: 'light.wires',
    }),
    lean: straightDown,
    angle: quantity('angle', {
      symbol: 'x',
      name: 'lean of the wires from plumb',
      words: ['angle', 'lean', 'from plumb', 'from vertical', 'off vertical', 'slant', 'degrees'],
      range: [0, 60, 'deg'],
      needed: { not: angleKnown },
      default: { formula: 'atan(k/h)', when: { all: [{ given: 'sideways' }, { given: 'drop' }] } },
      slips: [[60.000001, 90, 'Beyond 60° from plumb the pull doubles and more: hang it steeper. 0 is straight down.']],
      ask: 'How far do the wires lean from plumb, 0 if they hang straight down?',
      example: '0 or 20 degrees',
    }),
    drop: quantity('length', {
      symbol: 'h',
      name: 'ceiling to light',
      words: ['drop', 'below the ceiling', 'under the ceiling', 'ceiling to light', 'from the ceiling down'],
      range: [0.05, 10, 'm'],
      needed: { given: 'sideways' },
      ask: 'How far is it from the ceiling down to the light?',
      example: '40 in or 1 m',
    }),
    sideways: quantity('length', {
      symbol: 'k',
      name: 'hook off the point above the light’s end',
      words: ['sideways', 'to the side', 'off to the side', 'offset', 'hooks off'],
      range: [0, 10, 'm'],
      needed: false,
      ask: 'How far to the side of the light’s mount is the hook in the ceiling?',
      example: '8 in or 20 cm',
    }),
    safety: quantity('ratio', {
      symbol: 'f',
      name: 'working load over pull',
      words: ['safety', 'safety factor', 'factor', 'times the load', 'margin'],
      range: [1, 15, '1'],
      default: { value: 5, unit: '1', why: 'common rigging practice, no source' },
      ask: 'How many times its pull should a wire be rated for?',
      example: '5',
    }),
    wire_rating: quantity('mass', {
      symbol: 'W_r',
      name: 'rating of one wire and its hook',
      words: [
        'rated',
        'rating',
        'rated for',
        'rated at',
        'wire rating',
        'good for',
        'working load',
        'each rated',
        'WLL',
      ],
      range: [0.1, 5000, 'kg'],
      needed: false,
      ask: 'What load is one wire rated for, its gripper and hook included?',
      example: '20 kg or 50 lb',
    }),
  },
  constants: { g: gravity, tiny },
  steps: [
    step('T', 'm*g/(n*cos(x))', 'force', 'pull in each wire, all alike'),
    step('WLL', 'f*T', 'force', 'working load to ask for in each wire'),
    step('m_W', 'WLL/g', 'mass', 'working load as makers write it'),
    step('S', 'T*sin(x)', 'force', 'sideways pull on each hook'),
    step('T_2', 'm*g/(2*cos(x))', 'force', 'pull if only two wires carry', 'n > 2'),
    step('f_2', 'WLL/T_2', 'ratio', 'working load over that pull'),
    step('W', 'W_r*g', 'force', 'what one wire is rated for'),
    step('f_r', 'W/T', 'ratio', 'rating over pull'),
  ],
  results: {
    working_load_needed: result('WLL', 'force', 'working load to ask for in each wire'),
    working_load_as_mass: result('m_W', 'mass', 'that load as makers write it'),
    wire_tension: result('T', 'force', 'pull in each wire, all alike'),
    sideways_pull: result('S', 'force', 'sideways pull on each hook', { when: 'x > 0' }),
    tension_if_two_carry: result('T_2', 'force', 'pull if only two wires carry'),
    rating_holds: flag('rated for it', HOLDS, rated),
    rating_over_pull: result('f_r', 'ratio', 'rating over pull', { figures: 2 }),
  },
  headline: [
    {
      text: 'Within this check: a wire rated for {wire_rating} is good for {rating_over_pull} times its pull of {wire_tension:both}, and {safety} are asked for.',
      when: HOLDS,
    },
    {
      text: 'Too weak by this check: a wire rated for {wire_rating} is good for {rating_over_pull} times its pull, and {safety} are asked for; take {working_load_as_mass:both} each.',
      when: rated,
    },
    {
      text: 'Each wire, gripper and hook should be rated for {working_load_as_mass:both}: {safety} times its pull of {wire_tension}.',
    },
  ],
  cautions: [
    caution(
      'stop',
      'Even its share of the weight is more than the wire is rated for: do not hang it on that.',
      'W < T',
    ),
    caution(
      'caution',
      'Screw hooks into joists or use anchors made for that ceiling, each for the whole working load: plasterboard alone carries nothing that hangs for years. If you cannot tell what is above it, ask a builder.',
    ),
    caution(
      'caution',
      'On a stiff light two wires can end up carrying everything: then {tension_if_two_carry} each, and the load asked for is {f_2} times that. Level it so that all are taut.',
      'n > 2',
    ),
    caution('caution', 'On one wire nothing is left when it goes: use two or more.', 'n <= 1'),
    caution(
      'note',
      'Wires that lean pull the hooks sideways with {sideways_pull} each and the light’s ends inward: a hook or gripper rated for a straight pull may hold less.',
      'x > 0.35',
    ),
    lampOverWater,
    caution('note', 'Salt air eats plated hooks and crimps: take stainless ones, and look at them once a year.'),
  ],
  sources: [
    'statics: the upright parts of the pulls carry the weight',
    'working load 5 times the pull: common rigging practice, no source',
  ],
  examples: [
    'hanging a 12 kg light bar on four wires at 20 degrees, how strong must each be',
    'hang my lights from the ceiling: 18 lb fixture, 2 wires straight down',
    'are 2 cables rated for 50 lb each enough to suspend a 25 lb light, angle 10 degrees',
  ],
});
