import { type Condition, quantity, type Rule, type Step, step } from '../calculation.js';
import { freeboard } from './display.js';
import { boxArea, displaySurface, displaySurfaceStep } from './display-surface.js';

export const returnArea = quantity('area', {
  symbol: 'A_r',
  name: 'plan area of the return chamber',
  words: [
    'return chamber',
    'return area',
    'return section',
    'pump chamber',
    'return compartment',
    'chamber area',
    'section area',
    'pump section',
    'pump compartment',
    'return chamber area',
  ],
  range: [0.001, 5, 'm2'],
  ask: 'What is the plan area of the return chamber?',
  example: '160 sq in or 0.1 m2',
  profile: 'sump.return_area',
});

const unless = (id: string | undefined): Condition[] => (id === undefined ? [] : [{ not: { given: id } }]);

/** @param instead the input that makes the chamber's sizes needless: the water in it */
export const returnChamber = (instead?: string) => {
  const unknown: Condition = { all: unless(instead) };
  const sizes: Condition = { all: [...unless(instead), ...unless('return_area')] };
  return {
    return_area: quantity('area', { ...returnArea, needed: false }),
    chamber_length: quantity('length', {
      symbol: 'l_r',
      name: 'inside length of the return chamber',
      words: [
        'return chamber',
        'chamber',
        'return section',
        'return compartment',
        'pump chamber',
        'chamber is',
        'section is',
        'pump section',
        'compartment',
        'chamber of',
        'return chamber is',
      ],
      range: [0.02, 3, 'm'],
      usual: [5, 90, 'cm'],
      needed: sizes,
      ask: 'How large is the return chamber inside, length by width?',
      example: '10 x 16 in or 24 x 43 cm',
      profile: 'sump.return_length',
    }),
    chamber_width: quantity('length', {
      symbol: 'w_r',
      name: 'inside width of the return chamber, front to back',
      words: ['return width', 'chamber width', 'wide', 'front to back', 'width', 'in wide', 'cm wide'],
      range: [0.02, 3, 'm'],
      usual: [10, 90, 'cm'],
      needed: sizes,
      byName: true,
      ask: 'How wide is the return chamber inside, front to back?',
      example: '16 in or 43 cm',
      profile: 'sump.inside_width',
    }),
    running_level: quantity('length', {
      symbol: 'z_r',
      name: 'running level of the return chamber',
      words: [
        'running level',
        'level',
        'return level',
        'chamber level',
        'runs at',
        'running at',
        'return chamber at',
        'of water',
        'deep',
        'in water',
        'cm water',
        'inches of water',
        'inch water',
        'water level',
        'water at',
        'at',
        'water in it',
        'water stands',
        'return level is',
        'section at',
        'water in the chamber',
        'long water',
        'wide water',
      ],
      range: [0.01, 1.5, 'm'],
      usual: [8, 45, 'cm'],
      needed: unknown,
      ask: 'How high does the water stand in the return chamber while it runs?',
      example: '7 in or 17 cm',
      profile: 'return.level',
    }),
    pump_inlet: quantity('length', {
      symbol: 'z_i',
      name: 'height of the pump’s inlet',
      words: [
        'inlet',
        'pump inlet',
        'intake',
        'pump intake',
        'inlet at',
        'inlet is',
        'above the floor',
        'above the chamber floor',
        'off the floor',
        'pump intake at',
      ],
      range: [0, 1, 'm'],
      usual: [1, 15, 'cm'],
      needed: false,
      ask: 'How high is the top of the pump’s inlet above the floor of the chamber?',
      example: '2 in or 5 cm',
      profile: 'return.pump_inlet',
    }),
    dry_level: quantity('length', {
      symbol: 'z_d',
      name: 'level at which the pump sucks air',
      words: [
        'dry level',
        'sucks air',
        'dry',
        'runs dry at',
        'down to',
        'air at',
        'dry at',
        'sucking air at',
        'suck air at',
        'sucks air below',
        'air below',
        'goes dry at',
        'runs dry below',
        'minimum level',
      ],
      range: [0, 1.2, 'm'],
      usual: [2, 20, 'cm'],
      needed: false,
      default: [
        { formula: 'z_i + z_v', when: unknown },
        {
          value: 6,
          unit: 'cm',
          low: 3,
          high: 9,
          why: 'a pump on the floor; 2 cm above its inlet it sucks air (our guess)',
          when: unknown,
        },
      ],
      ask: 'At which level does the pump begin to suck air, about 2 cm above its inlet?',
      example: '2.5 in or 6 cm',
      profile: 'return.dry_level',
    }),
    upstream_heads_volume: quantity('volume', {
      symbol: 'V_h',
      name: 'water over the baffles that runs on into the chamber',
      words: [
        'heads',
        'over the baffles',
        'upstream',
        'upstream heads',
        'other chambers',
        'above the baffles',
        'runs after',
        'runs in after',
        'still runs in',
      ],
      range: [0, 500, 'L'],
      usual: [0.5, 30, 'L'],
      needed: false,
      default: { value: 0, unit: 'L', why: 'none was given', when: unknown },
      ask: 'How much water stands above the lips of the baffles and still runs into the return chamber?',
      example: '3 L or 0.8 gal',
      profile: 'sump.heads_volume',
    }),
  };
};

/** @param instead the input that makes the tank's sizes needless: the room itself */
export const displayRoom = (instead?: string) => {
  const unknown: Condition = { all: unless(instead) };
  const sizes: Condition = { all: [...unless(instead), ...unless('display_area')] };
  return {
    ...displaySurface,
    length: quantity('length', { ...displaySurface.length, needed: sizes }),
    width: quantity('length', { ...displaySurface.width, needed: sizes }),
    freeboard: quantity('length', {
      ...freeboard,
      needed: unknown,
      ask: 'How far below the rim does the water of the display stand while it runs?',
    }),
    box_area: quantity('area', {
      ...boxArea,
      needed: false,
      default: { value: 0, unit: 'm2', why: 'none was given', when: unknown },
    }),
    box_free_volume: quantity('volume', {
      symbol: 'V_bf',
      name: 'room in the overflow box up to the display’s water',
      words: [
        'box room',
        'box free',
        'free in the box',
        'overflow box takes',
        'room in the box',
        'room in the overflow box',
        'box has room',
      ],
      range: [0, 200, 'L'],
      usual: [0.5, 30, 'L'],
      needed: false,
      default: { value: 0, unit: 'L', why: 'none was given', when: unknown },
      ask: 'How much more water can the overflow box take?',
      example: '3 L or 0.8 gal',
      profile: 'overflow.free_volume',
    }),
  };
};

export const chamberConstants = {
  z_v: { value: 0.02, unit: 'm', name: 'water over an inlet below which it sucks air (common practice)' },
};

export const chamberSteps: readonly Step[] = [
  step('A_r', 'l_r*w_r', 'area', 'plan area of the return chamber'),
  step('V_u', 'A_r*(z_r - z_d) + V_h', 'volume', 'water the pump can send up before it sucks air'),
  displaySurfaceStep,
  step('V_f', 'A_d*fb + V_bf', 'volume', 'room in the display up to its rim'),
];

export const chamberRules: readonly Rule[] = [
  {
    refuse: 'A_r > A_d',
    because: 'The return chamber would be larger than the display: are the two sizes swapped, or is a unit wrong?',
    about: 'chamber_length',
  },
  {
    refuse: 'z_r <= z_d',
    because: 'The return chamber would run below the level at which its pump sucks air: check the two levels.',
    about: 'running_level',
  },
  {
    refuse: { any: ['2*t >= W', '2*t >= L'] },
    because: 'No inside is left between panes that thick: check the unit of the pane thickness.',
    about: 'glass_thickness',
  },
];
