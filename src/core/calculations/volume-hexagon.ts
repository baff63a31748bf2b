import { quantity, result, step } from '../calculation.js';
import { filledToTheRim, fullTankIsHeavy, readAsInsideSizes, solidsTakeTheirShare } from '../cautions/tank.js';
import { calculation } from '../define.js';
import { width } from '../inputs/display.js';
import { heightOrDepth, noInside, noWater, paneInputs, shapeCues, volumeCues } from '../inputs/tank-shape.js';

export const volumeHexagon = calculation({
  id: 'volume.hexagon',
  slash: 'volume hexagon',
  title: 'Water in a hexagonal tank',
  question: 'How much water is in a tank with six equal sides?',
  part: 'tank',
  cues: [
    ...volumeCues,
    ...shapeCues('hexagon', 'hexagonal', 'hex', 'six sided', 'six equal sides'),
    '6 sided',
    'six sides',
    '6 sides',
    'hexagon aquarium',
    'hex aquarium',
  ],
  inputs: {
    across_flats: quantity('length', {
      ...width,
      symbol: 'f',
      name: 'across flats, side to opposite side',
      words: [
        'across flats',
        'across',
        'across the flats',
        'flat to flat',
        'wide',
        'side to side',
        'flats',
        'between flats',
        'flat side',
        'flat side to flat side',
        'opposite side',
        'to opposite side',
        'opposite panes',
        'pane to pane',
        'between the panes',
        'opposite panes are',
        'opposite sides are',
        'panes are',
        'sides are',
      ],
      ask: 'How wide is it from one side to the opposite side?',
      example: '24 in or 60 cm',
      profile: 'display.across_flats',
    }),
    height: heightOrDepth,
    ...paneInputs,
  },
  rules: [noInside('f', 'width across flats'), noWater],
  steps: [
    step('side', 'f/sqrt(3)', 'length', 'one side, outside'),
    step('A', 'sqrt(3)/2*f^2', 'area', 'plan area, outside'),
    step('V', 'sqrt(3)/2*(f - 2*t)^2*(H - t_b - fb)', 'volume', 'water to the water line'),
  ],
  results: {
    side: result('side', 'length', 'one side, outside'),
    plan_area_outside: result('A', 'area', 'plan area, outside'),
    water_volume: result('V', 'volume', 'water to the line', { figures: 4, feeds: 'water.volume' }),
  },
  headline: [{ text: 'It holds {water_volume:both} of water.' }],
  cautions: [readAsInsideSizes, filledToTheRim, solidsTakeTheirShare, fullTankIsHeavy],
  sources: ['geometry of the regular hexagon'],
  examples: [
    'volume of a hexagon tank 60 cm across flats, 60 cm high, 8 mm glass, 3 cm below the rim',
    'hex tank 20 in across and 24 in tall, how much water',
  ],
});
