import { type Condition, quantity, type Rule } from '../calculation.js';
import {
  commonFreeboard,
  commonPane,
  freeboard,
  glassThickness,
  height,
  length,
  waterHeight,
  width,
} from './display.js';
import { paneMaterial } from './pane-material.js';
import { humidity } from './room.js';
import { noSumpInside, sumpInputs } from './sump.js';
import { activity, cover, covered } from './surface.js';
import { systemVolume } from './system-water.js';

/** Only a volume is known: the tank gets a common shape, and all that hangs on the shape a range. */
export const shapeGuessed: Condition = {
  all: [
    { given: 'volume' },
    { not: { any: [{ given: 'length' }, { given: 'width' }, { given: 'height' }, { given: 'water_height' }] } },
  ],
};
const heightGivenInstead: Condition = { all: [{ given: 'height' }, { not: { given: 'water_height' } }] };

export const tankTemperature = quantity('temperature', {
  symbol: 'T_w',
  name: 'water temperature',
  words: [
    'water',
    'tank',
    'water at',
    'tank at',
    'tank temp',
    'water temp',
    'kept at',
    'keep at',
    'keep it at',
    'keep the tank at',
    'hold at',
    'target',
    'want',
    'set to',
    'set at',
    'setpoint',
    'temp',
    'temperature',
    'water temperature',
    'tank temperature',
    'keep',
    'keeping',
    'keep the water at',
    'keep water at',
    'hold',
    'hold it at',
    'holding',
    'maintain',
    'maintain it at',
    'stay at',
    'stays at',
    'need',
    'wanted',
    'tank is',
    'water is',
    'tank runs at',
    'runs at',
    'run at',
    'set',
    'set point',
    'goal',
    'aim',
  ],
  range: [10, 35, 'degC'],
  usual: [24, 29, 'degC'],
  ask: 'What temperature is the water kept at?',
  example: '78 F or 25.5 C',
  profile: 'water.temperature',
});

/** The tank as something that gives heat to its room. */
export const tankHeatInputs = {
  humidity,
  activity,
  volume: quantity('volume', { ...systemVolume, needed: false }),
  length: quantity('length', { ...length, needed: { not: shapeGuessed } }),
  width: quantity('length', { ...width, needed: { not: shapeGuessed } }),
  water_height: quantity('length', {
    ...waterHeight,
    needed: { not: { any: [{ given: 'height' }, { given: 'volume' }] } },
  }),
  height: quantity('length', { ...height, needed: false }),
  freeboard: quantity('length', {
    ...freeboard,
    needed: false,
    default: commonFreeboard(heightGivenInstead),
  }),
  glass_thickness: quantity('length', {
    ...glassThickness,
    default: commonPane(),
  }),
  length_to_height: quantity('ratio', {
    symbol: 'r',
    name: 'length over water height',
    words: ['length to height'],
    range: [0.5, 6, '1'],
    needed: false,
    default: {
      value: 2.4,
      unit: '1',
      low: 1,
      high: 4,
      why: 'from a cube to a long low tank, as wide as its water is high (common practice, no source)',
      when: shapeGuessed,
    },
    ask: 'How many times longer than high is the tank?',
    example: '2.4',
  }),
  material: paneMaterial({
    symbols: { k: 'W/(m K)' },
    glass: { k: 1 },
    acrylic: { k: 0.19 },
    source: 'thermal conductivity: EN 572-1 for float glass, a handbook value for cast acrylic (from memory)',
  }),
  surface_area: quantity('area', {
    symbol: 'A_d',
    name: 'open water surface of the display',
    words: ['surface', 'surface area', 'water surface'],
    range: [0.001, 20, 'm2'],
    needed: false,
    ask: 'How large is the open water surface of the display?',
    profile: 'display.surface_area',
  }),
  covered,
  cover,
  ...sumpInputs,
};

/** Heat that equipment puts into the water. */
export const equipmentHeat = quantity('power', {
  symbol: 'G',
  name: 'steady heat from pumps and equipment',
  words: [
    'gains',
    'gain',
    'pumps add',
    'pump heat',
    'equipment heat',
    'steady heat',
    'from pumps',
    'pumps',
    'pump',
    'equipment',
    'pumps give',
    'pumps and equipment',
    'pumps and gear',
    'gear',
    'from equipment',
    'from pumps and equipment',
    'give off',
    'gives off',
    'heat from pumps',
    'other heat',
    'pumps put in',
    'pump adds',
    'return pump adds',
    'of heat',
  ],
  range: [0, 20_000, 'W'],
  usual: [5, 600, 'W'],
  byName: true,
  ask: 'How many watts of heat do pumps and other equipment put into the water?',
  example: '60 W',
  profile: 'heater.gains',
});

/** Against a heater only what runs day and night counts, and nothing unless it is said. */
export const gains = quantity('power', { ...equipmentHeat, default: { value: 0, unit: 'W' } });

export const geometryRules: readonly Rule[] = [
  {
    refuse: { any: ['2*t >= W', '2*t >= L'] },
    because: 'No inside is left between panes that thick: check the unit of the pane thickness.',
    about: 'glass_thickness',
  },
  {
    refuse: 'V_s >= V',
    because: 'The sump alone would hold more than the volume: the volume counts display and sump together.',
    about: 'volume',
  },
  {
    refuse: 'h <= 0',
    because: 'No water is left in the display: check the height and the freeboard.',
    about: 'height',
  },
  noSumpInside,
];
