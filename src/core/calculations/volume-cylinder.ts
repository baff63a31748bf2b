import { quantity, result, step } from '../calculation.js';
import { filledToTheRim, fullTankIsHeavy, readAsInsideSizes, solidsTakeTheirShare } from '../cautions/tank.js';
import { pi } from '../constants.js';
import { calculation } from '../define.js';
import { width } from '../inputs/display.js';
import { heightOrDepth, noInside, noWater, paneInputs, shapeCues, volumeCues } from '../inputs/tank-shape.js';

export const volumeCylinder = calculation({
  id: 'volume.cylinder',
  slash: 'volume cylinder',
  title: 'Water in a round tank',
  question: 'How much water is in a cylinder?',
  part: 'tank',
  cues: [
    'tube aquarium',
    'tube tank',
    ...volumeCues,
    ...shapeCues('cylinder', 'cylindrical', 'round', 'circular', 'drum', 'barrel'),
    'circle',
    'column tank',
    'stock tank',
    'round column',
    'round aquarium',
  ],
  inputs: {
    diameter: quantity('length', {
      ...width,
      symbol: 'D',
      name: 'diameter',
      words: ['diameter', 'across', 'wide', 'dia', 'in diameter', 'across the top', 'diam', 'ft across', 'round is'],
      ask: 'How wide is it across, outside?',
      example: '24 in or 60 cm',
      profile: 'display.diameter',
    }),
    height: heightOrDepth,
    ...paneInputs,
    glass_thickness: quantity('length', {
      ...paneInputs.glass_thickness,
      words: [...(paneInputs.glass_thickness.words ?? []), 'wall'],
    }),
  },
  constants: { pi },
  rules: [noInside('D', 'diameter'), noWater],
  steps: [
    step('A', 'pi*D^2/4', 'area', 'plan area, outside'),
    step('V', 'pi*(D - 2*t)^2/4*(H - t_b - fb)', 'volume', 'water to the water line'),
  ],
  results: {
    plan_area_outside: result('A', 'area', 'plan area, outside'),
    water_volume: result('V', 'volume', 'water to the line', { figures: 4, feeds: 'water.volume' }),
  },
  headline: [{ text: 'It holds {water_volume:both} of water.' }],
  cautions: [readAsInsideSizes, filledToTheRim, solidsTakeTheirShare, fullTankIsHeavy],
  sources: ['geometry; US gallon 231 in³ and imperial gallon 4.54609 L exactly (NIST SP 811)'],
  examples: [
    'how many litres in a cylinder 60 cm across and 60 cm high, 10 mm acrylic, water 4 cm below the rim',
    'round tank 24 in diameter 30 in tall',
  ],
});
