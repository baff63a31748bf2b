import { type Condition, quantity, type Step, step } from '../calculation.js';
import { commonPane, glassThickness, length, width } from './display.js';

const areaMissing: Condition = { not: { given: 'display_area' } };

/** The water surface of the display, or the sizes of the tank that it follows from. */
export const displaySurface = {
  display_area: quantity('area', {
    symbol: 'A_d',
    name: 'water surface of the display',
    words: [
      'display area',
      'surface',
      'surface area',
      'water surface',
      'display',
      'display surface',
      'tank surface',
      'surface of',
      'tank area',
    ],
    range: [0.01, 20, 'm2'],
    needed: false,
    ask: 'How large is the water surface of the display?',
    profile: 'display.surface_area',
  }),
  length: quantity('length', { ...length, needed: areaMissing }),
  width: quantity('length', { ...width, needed: areaMissing }),
  glass_thickness: quantity('length', {
    ...glassThickness,
    needed: false,
    default: commonPane(areaMissing),
  }),
};

export const displaySurfaceStep: Step = step('A_d', '(L - 2*t)*(W - 2*t)', 'area', 'water surface of the display');

export const boxArea = quantity('area', {
  symbol: 'A_b',
  name: 'plan area of the overflow box',
  words: ['overflow box', 'box', 'box area', 'overflow', 'overflow box of', 'overflow box is', 'box is', 'weir box'],
  range: [0, 2, 'm2'],
  usual: [0.003, 0.2, 'm2'],
  ask: 'What is the inside plan area of the overflow box? 0 if there is none.',
  example: '54 sq in or 0.036 m2',
  profile: 'overflow.area',
});
