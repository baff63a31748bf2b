import { quantity, result, step } from '../calculation.js';
import { filledToTheRim, fullTankIsHeavy, readAsInsideSizes, solidsTakeTheirShare } from '../cautions/tank.js';
import { calculation } from '../define.js';
import { height, length, width } from '../inputs/display.js';
import { noInside, noWater, paneInputs, shapeCues, volumeCues } from '../inputs/tank-shape.js';

export const volumeBowFront = calculation({
  id: 'volume.bow_front',
  slash: 'volume bow-front',
  title: 'Water in a bow-front tank',
  question: 'How much water is in a tank with a curved front?',
  part: 'tank',
  cues: [...volumeCues, ...shapeCues('bow front', 'bowfront', 'curved front', 'bowed front', 'bow fronted')],
  inputs: {
    length,
    width_end: quantity('length', {
      ...width,
      symbol: 'w_e',
      name: 'width at the ends, front to back',
      words: ['ends', 'at the ends', 'end', 'sides', 'at the sides', 'end width'],
      ask: 'How wide is it at the ends, front to back?',
      example: '16 in or 40 cm',
      profile: 'display.width_end',
    }),
    width_centre: quantity('length', {
      ...width,
      symbol: 'w_c',
      name: 'width in the middle, front to back',
      words: ['middle', 'centre', 'center', 'in the middle', 'at the bow', 'widest'],
      ask: 'How wide is it in the middle, front to back?',
      example: '22 in or 55 cm',
      profile: 'display.width_centre',
    }),
    height,
    ...paneInputs,
  },
  rules: [
    {
      refuse: 'w_c <= w_e',
      because: 'A bow front is wider in the middle than at the ends: are the two swapped?',
      about: 'width_centre',
    },
    {
      refuse: 'w_c - w_e < 0.005*L',
      because:
        'The front bows out less than a two-hundredth of the length, less than a tape reads: take it for a rectangular tank.',
      about: 'width_centre',
    },
    {
      refuse: 'w_c - w_e > L/2',
      because: 'The bow comes out further than half the length, more than a half circle: check the two widths.',
      about: 'width_centre',
    },
    noInside('w_e', 'width at the ends'),
    noInside('L', 'length'),
    noWater,
  ],
  steps: [
    step('s', 'w_c - w_e', 'length', 'how far the front bows out'),
    step('R', '(L^2/4 + s^2)/(2*s)', 'length', 'radius of the front'),
    step('A', 'L*w_e + R^2*acos((R - s)/R) - (R - s)*sqrt(2*R*s - s^2)', 'area', 'plan area, outside'),
    step('R_i', 'R - t', 'length', 'radius of the front, inside'),
    step('a', 'L/2 - t', 'length', 'half the inside length'),
    step(
      'A_i',
      'a*sqrt(R_i^2 - a^2) + R_i^2*asin(a/R_i) + 2*a*(w_c - R - t)',
      'area',
      'plan area between the panes, the inner arc about the same centre',
    ),
    step('V', 'A_i*(H - t_b - fb)', 'volume', 'water to the water line'),
  ],
  results: {
    radius: result('R', 'length', 'radius of the front'),
    plan_area: result('A', 'area', 'plan area, outside'),
    water_volume: result('V', 'volume', 'water to the line', { figures: 4, feeds: 'water.volume' }),
  },
  headline: [{ text: 'It holds {water_volume:both} of water.' }],
  cautions: [readAsInsideSizes, filledToTheRim, solidsTakeTheirShare, fullTankIsHeavy],
  sources: ['geometry of circular segments, the front an arc of a circle'],
  examples: [
    'how much water is in a bow front 91 cm long, 30 cm at the ends, 40 cm in the middle, 50 cm high, 8 mm glass, 3 cm below the rim',
    'bowfront volume: 48 in long, 16 in at the ends, 22 in in the middle, 23 in tall',
  ],
});
