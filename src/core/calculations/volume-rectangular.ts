import { caution, quantity, result, step } from '../calculation.js';
import { fullTankIsHeavy, tradeSizes } from '../cautions/tank.js';
import { calculation } from '../define.js';
import { bottomThickness, freeboard, glassThickness, height, length, width } from '../inputs/display.js';

export const volumeRectangular = calculation({
  id: 'volume.rectangular',
  slash: 'volume rectangular',
  title: 'Water in a rectangular tank',
  question: 'How much water is really in it, inside the glass and up to the water line?',
  part: 'tank',
  cues: [
    'volume',
    'how much water',
    'how many litres',
    'how many liters',
    'how many gallons',
    'gallons is',
    'litres is',
    'capacity',
    'rectangular',
  ],
  inputs: {
    length,
    width,
    height,
    glass_thickness: quantity('length', { ...glassThickness, default: { value: 0, unit: 'mm' } }),
    bottom_thickness: bottomThickness,
    freeboard: quantity('length', { ...freeboard, default: { value: 0, unit: 'mm' } }),
  },
  rules: [
    {
      refuse: '2*t >= W',
      because:
        'No inside is left: twice the pane thickness is more than the width. Check the unit of the glass thickness.',
      about: 'glass_thickness',
    },
    {
      refuse: '2*t >= L',
      because:
        'No inside is left: twice the pane thickness is more than the length. Check the unit of the glass thickness.',
      about: 'glass_thickness',
    },
    {
      refuse: 'fb + t_b >= H',
      because: 'No water is left: the freeboard and the bottom pane together are as high as the tank.',
      about: 'freeboard',
    },
  ],
  steps: [
    step('V_out', 'L*W*H', 'volume', 'box measured outside'),
    step('V_in', '(L - 2*t)*(W - 2*t)*(H - t_b)', 'volume', 'inside, full to the rim'),
    step('V', '(L - 2*t)*(W - 2*t)*(H - t_b - fb)', 'volume', 'water to the water line'),
  ],
  results: {
    volume_outside: result('V_out', 'volume', 'box measured outside'),
    volume_inside: result('V_in', 'volume', 'inside, to the rim'),
    water_volume: result('V', 'volume', 'water to the line', { figures: 4 }),
  },
  headline: [{ text: 'It holds {water_volume:both} of water.' }],
  cautions: [
    caution(
      'note',
      'No glass thickness was given, so these count as inside sizes. Outside sizes hold less: tell me how thick the panes are.',
      't == 0',
    ),
    caution(
      'note',
      'No freeboard was given, so this is filled to the rim: tell me how far below it the water stands.',
      'fb == 0',
    ),
    caution('note', 'Rock, sand and an overflow box take their share of this: see volume displacement.'),
    tradeSizes,
    fullTankIsHeavy,
  ],
  sources: ['geometry; US gallon 231 in³ and imperial gallon 4.54609 L exactly (NIST SP 811)'],
  examples: ['how much water is in a 150x60x55 cm tank with 12 mm glass, water 4 cm below the rim'],
});
