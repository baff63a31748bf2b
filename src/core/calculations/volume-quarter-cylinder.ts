import { quantity, result, step } from '../calculation.js';
import { filledToTheRim, fullTankIsHeavy, readAsInsideSizes, solidsTakeTheirShare } from '../cautions/tank.js';
import { pi } from '../constants.js';
import { calculation } from '../define.js';
import { width } from '../inputs/display.js';
import { heightOrDepth, noWater, paneInputs, shapeCues, volumeCues } from '../inputs/tank-shape.js';

export const volumeQuarterCylinder = calculation({
  id: 'volume.quarter_cylinder',
  slash: 'volume quarter-cylinder',
  title: 'Water in a quarter-round corner tank',
  question: 'How much water is in a quarter of a cylinder, two straight sides and a round front?',
  part: 'tank',
  cues: [
    'round front',
    ...volumeCues,
    ...shapeCues('quarter cylinder', 'quarter round', 'quarter circle', 'quarter'),
    'pie shaped',
    'pie shape',
    'pie slice',
    'slice of pie',
    'slice of a pie',
    'pizza slice',
    'wedge',
    'quarter of a circle',
    'quarter of a cylinder',
    'rounded corner tank',
    'corner tank with a round front',
    'curved corner tank',
    'corner tank with a curved front',
    'corner tank has a curved front',
    'corner tank has a round front',
  ],
  inputs: {
    radius: quantity('length', {
      ...width,
      symbol: 'R',
      name: 'straight side, corner to front',
      words: [
        'radius',
        'sides',
        'side',
        'straight side',
        'each side',
        'straight sides',
        'each straight side',
        'on each side',
        'along each wall',
        'along the wall',
        'on the wall',
        'walls',
        'each wall',
        'from the corner',
        'straight edge',
      ],
      ask: 'How long is a straight side, from the corner to the front?',
      example: '28 in or 70 cm',
      profile: 'display.radius',
    }),
    height: heightOrDepth,
    ...paneInputs,
  },
  constants: { pi },
  rules: [
    {
      refuse: '(1 + sqrt(2))*t >= R',
      because: 'No inside is left between the back panes and the front: check the unit of the glass thickness.',
      about: 'glass_thickness',
    },
    noWater,
  ],
  steps: [
    step('A', 'pi*R^2/4', 'area', 'plan area, outside'),
    step('r', 'R - t', 'length', 'radius of the front, inside'),
    step(
      'A_i',
      'r^2*(acos(t/r) - asin(t/r))/2 - t*sqrt(r^2 - t^2) + t^2',
      'area',
      'plan area between the panes, the inner arc about the same corner',
    ),
    step('V', 'A_i*(H - t_b - fb)', 'volume', 'water to the water line'),
  ],
  results: {
    plan_area_outside: result('A', 'area', 'plan area, outside'),
    water_volume: result('V', 'volume', 'water to the line', { figures: 4, feeds: 'water.volume' }),
  },
  headline: [{ text: 'It holds {water_volume:both} of water.' }],
  cautions: [readAsInsideSizes, filledToTheRim, solidsTakeTheirShare, fullTankIsHeavy],
  sources: ['geometry of circular segments, the front a quarter of a circle about the back corner'],
  examples: [
    'volume of a quarter cylinder with 70 cm sides, 60 cm high, 10 mm glass, 4 cm below the rim',
    'quarter round tank, 28 in sides and 24 in tall, how many gallons',
  ],
});
