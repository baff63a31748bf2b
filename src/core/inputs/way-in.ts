import { lookup, quantity } from '../calculation.js';
import { LENGTH_UNIT, metres, NUMBER } from './length-text.js';

/** What the way to the tank's place leaves free: doors, corridors, ceilings. All are clear widths, measured at the narrowest. */
const opening = { range: [0.1, 10, 'm'], usual: [40, 400, 'cm'] } as const;

export const doorWidth = quantity('length', {
  ...opening,
  symbol: 'w_d',
  name: 'clear width of the door',
  words: [
    'door',
    'doorway',
    'door width',
    'opening',
    'wide door',
    'through',
    'entrance',
    'gate',
    'hatch',
    'doorframe',
    'door frame',
    'clear width',
    'door opening',
    'in door',
    'cm door',
    'inch door',
    'door only',
    'wide doorway',
    'wide opening',
    'door is',
    'doorway clear',
    'clear width is',
    'door width is',
    'doorway is',
    'opening is',
    'doorway width',
    'wide in the door',
    'elevator door',
    'lift door',
    'front door',
    'back door',
    'patio door',
    'garage door',
    'tur',
    'doors',
  ],
  default: { value: 0.76, unit: 'm', low: 0.7, high: 0.86, why: 'a common inside door, no source: measure yours' },
  ask: 'How wide is the opening, with the door leaf as it will be?',
  example: '30 in or 76 cm',
  profile: 'way_in.door_width',
});

export const doorHeight = quantity('length', {
  ...opening,
  symbol: 'h_d',
  name: 'clear height of the door',
  words: [
    'door height',
    'door is high',
    'high door',
    'tall door',
    'opening height',
    'door high',
    'and height',
    'door height is',
    'high',
  ],
  default: { value: 2, unit: 'm', low: 1.95, high: 2.1, why: 'a common inside door, no source: measure yours' },
  ask: 'How high is the opening?',
  example: '80 in or 200 cm',
  profile: 'way_in.door_height',
});

export const corridor1 = quantity('length', {
  ...opening,
  symbol: 'a',
  name: 'width of the corridor before the corner',
  words: [
    'corridor',
    'hallway',
    'hall',
    'passage',
    'landing',
    'from a',
    'corridors',
    'hallways',
    'first corridor',
    'one corridor',
    'hall is',
    'before the corner',
    'before the turn',
    'before it',
    'before the bend',
    'corridor 1',
    'hallway is',
    'in hallways',
    'hall before',
    'down a',
    'wide hallway',
    'wide corridor',
    'first part',
    'first hallway',
    'hall 1',
    'hallway 1',
    'hall one',
    'corridor one',
    'on one side',
    'narrow hallway',
    'first hall',
    'passageway',
    'narrow hall',
    'hall width',
  ],
  ask: 'How wide is the corridor before the corner, wall to wall at the skirting?',
  example: '36 in or 90 cm',
  profile: 'way_in.corridor_1',
});

export const corridor2 = quantity('length', {
  ...opening,
  symbol: 'b',
  name: 'width of the corridor after the corner',
  words: [
    'into',
    'second corridor',
    'other corridor',
    'the other',
    'next corridor',
    'turning into',
    'after the corner',
    'after the turn',
    'after it',
    'after the bend',
    'corridor 2',
    'turns into',
    'into a',
    'second hallway',
    'other hallway',
    'next hallway',
    'into corridor',
    'into hallway',
    'second part',
    'other part',
    'next part',
    'hall 2',
    'hallway 2',
    'hall two',
    'corridor two',
    'on the other side',
    'and then',
    'second hall',
    'other hall',
    'on the other',
  ],
  ask: 'How wide is the corridor after the corner?',
  example: '48 in or 120 cm',
  profile: 'way_in.corridor_2',
});

export const ceiling = quantity('length', {
  symbol: 'h_c',
  name: 'height of the ceiling',
  words: [
    'ceiling',
    'ceilings',
    'headroom',
    'elevator',
    'lift car',
    'stairwell',
    'room height',
    'ceiling height',
    'ceiling is',
    'ceiling of',
    'height of the room',
    'ft ceiling',
    'foot ceilings',
    'cm ceiling',
    'm ceiling',
    'room is high',
    'room is',
    'room height is',
    'm high room',
    'cm high room',
    'room high',
    'ceiling in the hallway',
    'hallway is high',
    'staircase',
    'ceiling at',
    'lowest point',
    'clearance above',
  ],
  range: [0.5, 20, 'm'],
  usual: [180, 400, 'cm'],
  ask: 'How high is the ceiling at its lowest, lamps and beams counted?',
  example: '8 ft or 240 cm',
  profile: 'way_in.ceiling',
});

const TIMES = '(?:x|×|by)';
const BY = `${NUMBER}\\s*${LENGTH_UNIT}?\\s*${TIMES}\\s*${NUMBER}\\s*${LENGTH_UNIT}(?![a-z\\d])`;
/** Two sizes beside the word, no third before or behind them. */
const DOOR = '(?:door(?:way)?|opening|hatch|entrance)';
const DOOR_SIZES = [
  `(?<![\\d.])(?<!${TIMES}\\s*)${BY}\\s*(?:clear\\s+)?${DOOR}`,
  `${DOOR}(?:\\s+(?:is|of|measures))?:?\\s+${BY}(?!\\s*${TIMES})`,
];

/** "a 73 x 198 cm doorway": width and height in one. */
export const doorSizes = lookup({
  name: 'width and height of the door, in one',
  words: ['door size', 'size of the door'],
  ask: 'How wide and how high is the opening?',
  example: '73 x 198 cm door',
  needed: false,
  suggestions: ['30 x 80 in door', '73 x 198 cm door', '86 x 205 cm door'],
  pattern: new RegExp(DOOR_SIZES.join('|')),
  read(text) {
    const match = DOOR_SIZES.map((pattern) => text.toLowerCase().match(pattern)).find((found) => found !== null);
    if (!match) return `I can't read “${text}” as the sizes of a door: 73 x 198 cm door would do.`;
    const [, width, widthUnit, height, heightUnit] = match;
    return {
      reading: `${width} ${widthUnit ?? heightUnit} by ${height} ${heightUnit}`,
      inputs: { door_width: metres(width!, widthUnit ?? heightUnit!), door_height: metres(height!, heightUnit!) },
      said: true,
    };
  },
});

const HALLS = '(?:corridors|hallways|halls|passages|passageways)';
const ALIKE = [
  `(?:two|2|both)\\s+${NUMBER}\\s*${LENGTH_UNIT}\\s+(?:wide\\s+)?${HALLS}`,
  `(?:both|two|2)\\s+${HALLS}\\s+(?:are\\s+)?${NUMBER}\\s*${LENGTH_UNIT}(?![a-z\\d])`,
  `${HALLS}\\s+(?:are\\s+)?both\\s+${NUMBER}\\s*${LENGTH_UNIT}(?![a-z\\d])`,
  `${NUMBER}\\s*${LENGTH_UNIT}\\s+(?:wide\\s+)?${HALLS}\\s+(?:on\\s+)?both\\s+(?:sides|ways|ends)`,
];

/** "two 36 in hallways": both of one width. */
export const corridorsAlike = lookup({
  name: 'both corridors, in one',
  words: ['both corridors', 'both hallways'],
  ask: 'How wide are both corridors?',
  example: 'two 36 in corridors',
  needed: false,
  suggestions: ['two 36 in corridors', 'two 90 cm corridors', 'two 1 m corridors'],
  pattern: new RegExp(ALIKE.join('|')),
  read(text) {
    const match = ALIKE.map((pattern) => text.toLowerCase().match(pattern)).find((found) => found !== null);
    if (!match) return `I can't read “${text}” as the width of both corridors: two 36 in corridors would do.`;
    const [, width, unit] = match;
    const both = metres(width!, unit!);
    return { reading: `${width} ${unit} each`, inputs: { corridor_1: both, corridor_2: both }, said: true };
  },
});
