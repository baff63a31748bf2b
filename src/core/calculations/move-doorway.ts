import { caution, flag, label, quantity, result, step } from '../calculation.js';
import { measureTheWay, padTheFace } from '../cautions/carrying.js';
import { calculation } from '../define.js';
import { height, length, width } from '../inputs/display.js';
import { doorHeight, doorSizes, doorWidth } from '../inputs/way-in.js';

const PASSES = 'p >= a + 2*cl and q >= b + 2*cl';
/** End first and standing as it will stand: the shorter plan side across the door, the height up it. */
const UPRIGHT = 'w_d >= s + 2*cl and h_d >= H + 2*cl';

export const moveDoorway = calculation({
  id: 'move.doorway',
  slash: 'structure doorway',
  title: 'Through the door',
  question: 'Does the tank or stand go straight through a door?',
  part: 'getting it in',
  cues: [
    'through the door',
    'through a door',
    'through my door',
    'through the doorway',
    'through a doorway',
    'through the front door',
    'through an opening',
    'through the opening',
    'fit through',
    'fits through',
    'go through',
    'goes through',
    'get through',
    'pass through',
    'fit thru',
    '~through',
    'thru the door',
    '~thru',
    'wide door',
    'in door',
    'cm door',
    'door wide enough',
    'doorway',
    'doorways',
    'door frame',
    'front door',
    'patio door',
    '~door',
  ],
  inputs: {
    length: quantity('length', { ...length, ask: 'How long is what goes through, with its packing?' }),
    width: quantity('length', { ...width, ask: 'How wide is it, front to back?' }),
    height: quantity('length', { ...height, ask: 'How high is it?' }),
    door_sizes: doorSizes,
    door_width: doorWidth,
    door_height: doorHeight,
    clearance: quantity('length', {
      symbol: 'cl',
      name: 'room to keep on each side',
      words: ['clearance', 'room each side', 'each side', 'per side', 'to spare', 'finger room', 'padding', 'play'],
      range: [0, 0.3, 'm'],
      usual: [0.5, 10, 'cm'],
      default: { value: 1, unit: 'cm', why: 'a blanket’s thickness; fingers want more' },
      ask: 'How much room should stay free on each side?',
      example: '1 in or 2 cm',
    }),
  },
  steps: [
    step('a', 'min(L, W, H)', 'length', 'smallest size'),
    step('b', 'max(min(L, W), min(max(L, W), H))', 'length', 'middle size'),
    step('p', 'min(w_d, h_d)', 'length', 'smaller side of the opening'),
    step('q', 'max(w_d, h_d)', 'length', 'larger side of the opening'),
    step('gap', 'min(p - a, q - b)', 'length', 'room left over, both sides together'),
    step('short', '2*cl - gap', 'length', 'lacking', 'gap < 2*cl'),
    step('s', 'min(L, W)', 'length', 'shorter side as it stands'),
    step('o', 'a + 2*cl', 'length', 'narrowest opening that would do'),
  ],
  results: {
    passes_straight: flag('goes straight through', PASSES),
    tightest_gap: result('gap', 'length', 'room left over where it is tightest, both sides together'),
    way_round: label(
      'way to carry it',
      [
        ['upright', 'upright, end first', UPRIGHT],
        ['turned', 'turned on its side or end', PASSES],
      ],
      PASSES,
    ),
    narrowest_opening: result('o', 'length', 'narrowest opening that would do'),
  },
  headline: [
    {
      text: 'Yes, it goes through upright and end first, with {tightest_gap:both} to spare where it is tightest, both sides together.',
      when: { all: [PASSES, UPRIGHT] },
    },
    {
      text: 'Yes, but only turned on its side or end: then {tightest_gap:both} is left where it is tightest, both sides together.',
      when: PASSES,
    },
    {
      text: 'Only bare: it goes through with {tightest_gap:both} left in all, less than {clearance} on each side.',
      when: 'gap >= 0',
    },
    { text: 'No, it does not go through any way round: {short} is lacking, the room at its sides counted.' },
  ],
  cautions: [
    caution(
      'caution',
      'Neither door size was measured: take both at the narrowest, door leaf and handle included, before you rely on this.',
      { all: [{ assumed: 'door_width' }, { assumed: 'door_height' }] },
    ),
    caution(
      'note',
      'A door taken off its hinges gives its thickness and the handle back, usually 4 to 8 cm; stops and architrave can come off too.',
      'gap < 0.08',
    ),
    caution(
      'note',
      'Straight through is not the whole way: in a corridor it must turn in front of the door (structure corner).',
      PASSES,
    ),
    { ...padTheFace, when: { all: [PASSES, { not: UPRIGHT }] } },
    measureTheWay,
  ],
  sources: ['geometry: the two smaller sides against the two sides of the opening, square to it'],
  examples: [
    'will a 72x18x21 in tank fit through a 30 in door',
    'does a 150x75x80 cm tank go through a door 73 cm wide',
    'can a 4 ft x 2 ft x 2 ft aquarium get through a 32 inch doorway with 1 inch clearance',
  ],
});
