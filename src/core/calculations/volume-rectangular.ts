import { result, step } from '../calculation.js';
import {
  filledToTheRim,
  fullTankIsHeavy,
  readAsInsideSizes,
  solidsTakeTheirShare,
  tradeSizes,
} from '../cautions/tank.js';
import { calculation } from '../define.js';
import { height, length, width } from '../inputs/display.js';
import { noInside, noWater, paneInputs, volumeCues } from '../inputs/tank-shape.js';

export const volumeRectangular = calculation({
  id: 'volume.rectangular',
  slash: 'volume rectangular',
  title: 'Water in a rectangular tank',
  question: 'How much water is really in it, inside the glass and up to the water line?',
  general: true,
  part: 'tank',
  cues: [
    '~litres',
    '~liters',
    '~gallons',
    ...volumeCues,
    'rectangular',
    'rectangle',
    '~hold',
    'really in my display',
    'really in my tank',
    'really in it',
    'real volume of my tank',
    'fits in my tank',
    'water fits',
    'fill the tank',
    'to fill it',
    'water in it',
    '~tank holds',
    '~display holds',
    'box shaped',
    'standard tank',
    'footer',
    'gallonage',
    'true gallonage',
    'litrage',
    'true gallons',
    'true volume',
    'actual gallonage',
  ],
  inputs: {
    length,
    width,
    height,
    ...paneInputs,
  },
  rules: [noInside('W', 'width'), noInside('L', 'length'), noWater],
  steps: [
    step('V_out', 'L*W*H', 'volume', 'box measured outside'),
    step('V_in', '(L - 2*t)*(W - 2*t)*(H - t_b)', 'volume', 'inside, full to the rim'),
    step('V', '(L - 2*t)*(W - 2*t)*(H - t_b - fb)', 'volume', 'water to the water line'),
  ],
  results: {
    volume_outside: result('V_out', 'volume', 'box measured outside'),
    volume_inside: result('V_in', 'volume', 'inside, to the rim'),
    water_volume: result('V', 'volume', 'water to the line', { figures: 4, feeds: 'water.volume' }),
  },
  headline: [{ text: 'It holds {water_volume:both} of water.' }],
  cautions: [readAsInsideSizes, filledToTheRim, solidsTakeTheirShare, tradeSizes, fullTankIsHeavy],
  sources: ['geometry; US gallon 231 in³ and imperial gallon 4.54609 L exactly (NIST SP 811)'],
  examples: [
    'how much water is in a 150x60x55 cm tank with 12 mm glass, water 4 cm below the rim',
    'how many gallons is a 48 x 24 x 20 in tank',
    'volume of a 4 ft x 18 in x 2 ft tank, 10 mm glass',
  ],
});
