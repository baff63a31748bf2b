import { type Condition, caution, flag, quantity, result, step } from '../calculation.js';
import { measureTheWay, padTheFace } from '../cautions/carrying.js';
import { calculation } from '../define.js';
import { height, length, width } from '../inputs/display.js';
import { corridor1, corridor2, corridorsAlike } from '../inputs/way-in.js';

const TURNS = 'c >= 0 and s <= a and s <= b';
/** Carried in along one corridor and away sideways along the other, without turning. */
const SLIDES: Condition = { any: ['s <= a and l <= b', 's <= b and l <= a'] };
const PASSES: Condition = { any: [TURNS, SLIDES] };
const ON_SIDE: Condition = {
  any: ['c_s >= 0 and s_s <= a and s_s <= b', 's_s <= a and l_s <= b', 's_s <= b and l_s <= a'],
};
/** Enough to say how long a thing may be. */
const wayKnown: Condition = { all: [{ given: 'width' }, { given: 'corridor_1' }, { given: 'corridor_2' }] };
const noLength: Condition = { not: { given: 'length' } };
/** What hands and packing take, low end. */
const LITTLE_ROOM = 0.05;

export const moveCorner = calculation({
  id: 'move.corner',
  slash: 'structure corner',
  title: 'Round the corner',
  question: 'Does the tank turn a right-angled corner between two corridors?',
  part: 'getting it in',
  cues: [
    'round the corner',
    'around the corner',
    'round a corner',
    'around a corner',
    'turn the corner',
    'turn a corner',
    'make the turn',
    'the turn',
    'corner of the corridor',
    'corner in the hall',
    'down the hall',
    'in the hall',
    'hall corner',
    '90 degree turn',
    'right angle turn',
    'longest tank that turns',
    'L shaped',
    '~hallway',
    '~landing',
    '~passage',
    'get round the corner',
    'get around the corner',
    'get round a corner',
    'go around a',
    'go round the corner',
    'round the bend',
    'around the bend',
    'the bend',
    'before the turn',
    'after the turn',
    'before the corner',
    'after the corner',
    'wont turn',
    'does it turn',
    'tank turn',
    'turns into a',
    'degree turn',
    'hallway corner',
    'corridors',
    'makes a turn',
    'make a turn',
    'making the turn',
    'narrow hallway',
    'hall turn',
    'turn in the hall',
    'stuck in the hall',
    'do we get stuck',
    'get round',
    'get around',
    'can we get round',
    'stairs landing',
    'stair landing',
    'turns 90',
    'turns 90 degrees',
    'hallway turn',
    'hallway that turns',
    'round the turn',
    'around the turn',
    'round that corner',
    'hall 1',
    'hall 2',
    'l shaped hall',
    'bend in the hall',
    'tight corner',
    'tight turn',
    'dogleg',
    'kink in the hall',
    '~corridor',
    '~hall',
    '~bend',
  ],
  wording:
    /\b(?:round|around|turns?|get|fits?)\b.*\b(?:hall|corridor|corner|bend)|\b(?:hall|corridor).*\b(?:round|around|turns?)\b/,
  inputs: {
    length: quantity('length', {
      ...length,
      needed: { not: wayKnown },
      ask: 'How long is it, with packing and handles?',
    }),
    width: quantity('length', { ...width, ask: 'How wide is it, front to back?' }),
    corridors: corridorsAlike,
    corridor_1: corridor1,
    corridor_2: corridor2,
    height: quantity('length', { ...height, needed: false }),
  },
  steps: [
    step('l', 'max(L, W)', 'length', 'longer side in plan'),
    step('s', 'min(L, W)', 'length', 'shorter side in plan'),
    step('s', 'W', 'length', 'shorter side in plan'),
    step('r', 'room_round_corner(a, b, l)', 'length', 'width that is free beside that length, at the tightest angle'),
    step('c', 'r - s', 'length', 'room left over'),
    step('short', 's - r', 'length', 'lacking', 'c < 0'),
    step('l_max', 'longest_round_corner(a, b, s)', 'length', 'longest of that width that turns', 's <= a and s <= b'),
    step('l_s', 'max(L, H)', 'length', 'longer side in plan, on its side'),
    step('s_s', 'min(L, H)', 'length', 'shorter side in plan, on its side'),
    step('c_s', 'room_round_corner(a, b, l_s) - s_s', 'length', 'room left over, on its side'),
  ],
  results: {
    passes: flag('gets round', PASSES, { given: 'length' }),
    corner_clearance: result('c', 'length', 'room left over where it is tightest'),
    longest_that_turns: result('l_max', 'length', 'longest of that width that turns', {
      units: { metric: 'm', us: 'in' },
    }),
    passes_on_its_side: flag('gets round on its side', ON_SIDE, { all: [{ given: 'length' }, { given: 'height' }] }),
    corner_clearance_on_its_side: result('c_s', 'length', 'room left over, on its side'),
  },
  headline: [
    {
      text: 'At {width} wide, up to {longest_that_turns:both} long turns this corner, with nothing to spare.',
      when: { all: [noLength, 'l_max > 0'] },
    },
    {
      text: 'Yes, it turns the corner with {corner_clearance:both} to spare where it is tightest; up to {longest_that_turns:both} long would.',
      when: `${TURNS} and c >= ${LITTLE_ROOM}`,
    },
    {
      text: 'Yes without turning it: carried in lengthwise along the one corridor and away sideways along the other.',
      when: SLIDES,
    },
    {
      text: 'Only just: it turns with {corner_clearance:both} left, less than hands and packing take.',
      when: TURNS,
    },
    {
      text: 'Not upright, but it gets round turned on its side, its height lying flat.',
      when: ON_SIDE,
    },
    {
      text: 'No: it is {short} too wide for its length to turn; at this width up to {longest_that_turns:both} long gets round.',
      when: 'l_max > 0',
    },
    { text: 'No: at {s} it is wider than the narrower corridor.' },
  ],
  cautions: [
    caution('note', 'Give me its height and I also try it on its side; on end it needs the ceiling (structure tilt).', {
      all: [{ given: 'length' }, { not: PASSES }, { not: { given: 'height' } }],
    }),
    caution('note', 'Stood on end it turns almost anywhere, if the ceiling lets it: structure tilt works that out.', {
      all: [{ not: PASSES }, { not: ON_SIDE }, { given: 'height' }],
    }),
    { ...padTheFace, when: { all: [{ not: PASSES }, ON_SIDE] } },
    caution(
      'caution',
      'Less than 5 cm (2 in) is left: that is a scraped wall or a chipped edge. Try it with a cardboard template of the full size first.',
      { all: [TURNS, `c < ${LITTLE_ROOM}`, { not: SLIDES }] },
    ),
    measureTheWay,
    caution(
      'note',
      'Stairs, doors at the corner and railings are not in this: it is a level corner between bare walls.',
    ),
  ],
  sources: ['exact geometry of a rectangle that slides round a right-angled corner'],
  examples: [
    'can a 72x18 in tank turn the corner between two 36 in hallways, 36 in and 36 in',
    'will a 180x60 cm tank go round the corner from a 100 cm corridor into a 120 cm corridor',
    'getting a 5 ft by 2 ft tank around a corner: hall is 40 in, other hallway is 44 in',
  ],
});
