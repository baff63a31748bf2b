import { quantity, type Rule } from '../calculation.js';
import { bottomThickness, freeboard, glassThickness, height } from './display.js';

/** What people ask of a tank of any shape; the name of the shape decides between them. */
export const volumeCues = [
  'volume',
  'how much water',
  'how many litres',
  'how many liters',
  'how many gallons',
  'gallons is',
  'litres is',
  'capacity',
] as const;

/** A shape's own names, alone and as people put them in a sentence. */
export const shapeCues = (...names: string[]): string[] =>
  names.flatMap((name) => [name, `a ${name}`, `${name} tank`, `a ${name} tank`]);

/** Panes and freeboard of a tank whose sizes may as well be inside sizes, filled to the rim unless somebody says otherwise. */
export const paneInputs = {
  glass_thickness: quantity('length', { ...glassThickness, default: { value: 0, unit: 'mm' } }),
  bottom_thickness: bottomThickness,
  water_height: quantity('length', {
    symbol: 'h_w',
    name: 'height of the water inside',
    words: [
      'of water',
      'water deep',
      'deep',
      'water height',
      'water depth',
      'filled to',
      'full to',
      'water stands',
      'water inside',
      'water is at',
      'water up to',
      'filled',
      'fill it to',
      'filled up to',
      'water at',
      'level inside',
    ],
    range: [0.01, 6, 'm'],
    needed: false,
    ask: 'How high does the water stand, from the inside bottom?',
    example: '20 in or 50 cm',
  }),
  freeboard: quantity('length', { ...freeboard, default: [{ formula: 'H - t_b - h_w' }, { value: 0, unit: 'mm' }] }),
};

/** Of a tank that has no front and back: how deep it is says how high. */
export const heightOrDepth = quantity('length', { ...height, words: [...(height.words ?? []), 'deep', 'depth'] });

/** @param symbol of an outside size with a pane at both ends     @param what its name in the sentence */
export const noInside = (symbol: string, what: string): Rule => ({
  refuse: `2*t >= ${symbol}`,
  because: `No inside is left: twice the pane thickness is more than the ${what}. Check the unit of the glass thickness.`,
  about: 'glass_thickness',
});

export const noWater: Rule = {
  refuse: 'fb + t_b >= H',
  because: 'No water is left: the freeboard and the bottom pane together are as high as the tank.',
  about: 'freeboard',
};
