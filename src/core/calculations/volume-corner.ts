import { quantity, result, step } from '../calculation.js';
import { filledToTheRim, fullTankIsHeavy, readAsInsideSizes, solidsTakeTheirShare } from '../cautions/tank.js';
import { calculation } from '../define.js';
import { height, width } from '../inputs/display.js';
import { noInside, noWater, paneInputs, shapeCues, volumeCues } from '../inputs/tank-shape.js';

export const volumeCorner = calculation({
  id: 'volume.corner',
  slash: 'volume corner',
  title: 'Water in a corner tank with a cut front',
  question: 'How much water is in a square tank whose front corner is cut off?',
  part: 'tank',
  cues: [...volumeCues, ...shapeCues('corner', 'pentagon', 'five sided', 'cut corner', 'diamond', 'delta')],
  inputs: {
    side: quantity('length', {
      ...width,
      symbol: 'a',
      name: 'back side, corner to corner',
      words: ['sides', 'side', 'back side', 'along the wall', 'each side'],
      ask: 'How long is the tank along each wall?',
      example: '24 in or 60 cm',
      profile: 'display.side',
    }),
    cut: quantity('length', {
      symbol: 'c',
      name: 'leg of the cut-off corner',
      words: ['cut', 'cut off', 'leg', 'cut leg', 'missing', 'corner cut'],
      range: [0.01, 6, 'm'],
      ask: 'How much of each front side does the cut take away?',
      example: '10 in or 25 cm',
      profile: 'display.cut',
    }),
    height,
    ...paneInputs,
  },
  rules: [
    {
      refuse: 'c >= a',
      because: 'The cut takes away the whole side: are the side and the cut swapped?',
      about: 'cut',
    },
    noInside('a', 'side'),
    noWater,
    {
      refuse: { any: ['c_i >= a_i', 'c_i < 0'] },
      because:
        'With panes that thick the inside is no square with a cut corner any more: check the cut and the pane thickness.',
      about: 'cut',
    },
  ],
  steps: [
    step('A', 'a^2 - c^2/2', 'area', 'plan area, outside'),
    step('a_i', 'a - 2*t', 'length', 'inside side'),
    step('c_i', 'c - (2 - sqrt(2))*t', 'length', 'inside leg of the cut'),
    step('V', '(a_i^2 - c_i^2/2)*(H - t_b - fb)', 'volume', 'water to the water line'),
  ],
  results: {
    plan_area_outside: result('A', 'area', 'plan area, outside'),
    water_volume: result('V', 'volume', 'water to the line', { figures: 4, feeds: 'water.volume' }),
  },
  headline: [{ text: 'It holds {water_volume:both} of water.' }],
  cautions: [readAsInsideSizes, filledToTheRim, solidsTakeTheirShare, fullTankIsHeavy],
  sources: ['geometry: a square less a triangle, panes set in by their thickness'],
  examples: [
    'how many gallons is a corner tank with 24 in sides, 10 in cut, 22 in high, 1/4 in glass, 1 in below the rim',
    'corner tank volume, 60 cm sides, cut 25 cm, 55 cm tall',
  ],
});
