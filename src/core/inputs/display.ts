import { type Condition, type Default, quantity } from '../calculation.js';

/** The display tank's own numbers, shared by every calculation that asks for them. Sizes are outside sizes unless glass is nothing. */
export const length = quantity('length', {
  symbol: 'L',
  name: 'tank length',
  words: ['length', 'long', 'wide left to right', 'left to right'],
  range: [0.03, 6, 'm'],
  ask: 'How long is the tank, end to end?',
  profile: 'display.length',
  slips: [[6, 1e6, 'That is longer than a room: check the unit.']],
});

export const width = quantity('length', {
  symbol: 'W',
  name: 'tank width, front to back',
  words: ['width', 'wide', 'front to back', 'depth front to back', 'deep front to back'],
  range: [0.03, 6, 'm'],
  ask: 'How wide is the tank, front to back?',
  example: '24 in or 60 cm',
  profile: 'display.width',
});

export const height = quantity('length', {
  symbol: 'H',
  name: 'tank height',
  words: ['height', 'high', 'tall'],
  range: [0.03, 6, 'm'],
  ask: 'How high is the tank, outside bottom to rim?',
  example: '22 in or 55 cm',
  profile: 'display.height',
});

export const glassThickness = quantity('length', {
  symbol: 't',
  name: 'pane thickness',
  words: ['glass', 'pane', 'panes', 'thick', 'thickness', 'glass thickness', 'acrylic'],
  range: [0, 0.4, 'm'],
  usual: [3, 40, 'mm'],
  units: { metric: 'mm', us: 'in' },
  ask: 'How thick are the panes?',
  example: '12 mm or 1/2 in',
  profile: 'display.glass_thickness',
});

/** For a tank whose panes nobody has measured. */
export const commonPane = (when?: Condition): Default => ({
  value: 10,
  unit: 'mm',
  low: 6,
  high: 15,
  why: 'a common pane, no source',
  ...(when === undefined ? {} : { when }),
});

export const bottomThickness = quantity('length', {
  symbol: 't_b',
  name: 'bottom thickness',
  words: ['bottom', 'base', 'bottom pane', 'bottom glass'],
  range: [0, 0.4, 'm'],
  usual: [3, 40, 'mm'],
  units: { metric: 'mm', us: 'in' },
  default: { same: 'glass_thickness' },
  byName: true,
  ask: 'How thick is the bottom pane?',
  example: '15 mm or 5/8 in',
  profile: 'display.bottom_thickness',
});

export const freeboard = quantity('length', {
  symbol: 'fb',
  name: 'freeboard, rim to water',
  words: [
    'freeboard',
    'below the rim',
    'under the rim',
    'below rim',
    'from the rim',
    'below the top',
    'under the top',
    'rim to water',
    'water to rim',
    'water to the rim',
    'from water to rim',
    'to the rim',
    'water sits',
    'water level',
    'water line',
    'waterline',
    'down from',
    'inches down',
    'cm down',
    'mm down',
    'inch below',
    'inches below',
    'cm below',
    'from the top',
    'from top',
    'below top',
    'under the edge',
    'below the edge',
    'inch down',
  ],
  range: [0, 0.3, 'm'],
  usual: [0.5, 12, 'cm'],
  ask: 'How far below the rim does the water stand?',
  example: '4 cm or 1.5 in',
  profile: 'display.freeboard',
});

/** For a water line that nobody has measured. */
export const commonFreeboard = (when: Condition): Default => ({
  value: 3,
  unit: 'cm',
  low: 1,
  high: 6,
  why: 'common practice, no source',
  when,
});

export const waterHeight = quantity('length', {
  symbol: 'h',
  name: 'water height in the tank',
  words: ['water height', 'of water', 'water depth', 'deep', 'water level'],
  range: [0.02, 2, 'm'],
  ask: 'How high does the water stand in the tank?',
  example: '20 in or 50 cm',
  profile: 'display.water_height',
});
