import { type Condition, caution, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { bottomThickness, freeboard, glassThickness, height, length, width } from '../inputs/display.js';
import { SOLID_SOURCES, solidInputs, solidSteps } from '../inputs/rock-and-sand.js';
import { noSumpInside, sumpInputs } from '../inputs/sump.js';
import { noInside, noWater } from '../inputs/tank-shape.js';

/** The display is worked out from its sizes. */
const bySize: Condition = { given: 'length' };

export const volumeSystem = calculation({
  id: 'volume.system',
  slash: 'volume system',
  title: 'Water in the whole system',
  question: 'How much water is really in the system: display, sump and pipes, less rock and sand?',
  part: 'tank',
  cues: [
    'how many litres',
    'how many liters',
    'how many gallons',
    'litres system',
    'gallons system',
    'how much water',
    'system volume',
    'whole system',
    'total volume',
    'total system',
    'total water',
    'system water',
    'real volume',
    'real water volume',
    'net water',
    'water in my system',
    'really in the system',
    'tank and sump',
    'display and sump',
    'dosing volume',
  ],
  inputs: {
    length: quantity('length', { ...length, needed: { not: { given: 'display_volume' } } }),
    width: quantity('length', { ...width, needed: { not: { given: 'display_volume' } } }),
    height: quantity('length', { ...height, needed: { not: { given: 'display_volume' } } }),
    glass_thickness: quantity('length', {
      ...glassThickness,
      needed: false,
      default: { value: 0, unit: 'mm', when: { any: [bySize, { given: 'sump_length' }] } },
    }),
    bottom_thickness: quantity('length', {
      ...bottomThickness,
      needed: false,
      default: { same: 'glass_thickness', when: bySize },
    }),
    freeboard: quantity('length', { ...freeboard, needed: false, default: { value: 0, unit: 'mm', when: bySize } }),
    display_volume: quantity('volume', {
      symbol: 'V_d',
      name: 'water in the display, to the line',
      words: ['display', 'display volume', 'display holds', 'tank holds'],
      range: [0.5, 50_000, 'L'],
      usual: [20, 4000, 'L'],
      default: { formula: '(L - 2*t)*(W - 2*t)*(H - t_b - fb)' },
      needed: false,
      ask: 'How much water is in the display up to the water line?',
      profile: 'display.water_volume',
    }),
    ...sumpInputs,
    sump_glass_thickness: quantity('length', { ...sumpInputs.sump_glass_thickness, needed: false }),
    sump_volume: quantity('volume', {
      symbol: 'V_s',
      name: 'water in the sump while it runs',
      words: ['sump', 'sump volume', 'sump holds', 'in the sump', 'sump water'],
      range: [0, 20_000, 'L'],
      usual: [5, 1000, 'L'],
      default: { formula: '(L_s - 2*t_s)*(W_s - 2*t_s)*h_s' },
      needed: { not: { given: 'sump_length' } },
      ask: 'How much water runs in the sump? 0 if there is none.',
      example: '80 L or 20 gal',
      profile: 'sump.running_volume',
    }),
    overflow_box_volume: quantity('volume', {
      symbol: 'V_b',
      name: 'water in an overflow box outside the tank',
      words: ['overflow', 'overflow box', 'box', 'weir box'],
      range: [0, 2000, 'L'],
      usual: [1, 60, 'L'],
      needed: false,
      ask: 'How much water is in the overflow box outside the tank?',
      profile: 'overflow.volume',
    }),
    pipe_volume: quantity('volume', {
      symbol: 'V_p',
      name: 'water in pipes, reactors and the rest',
      words: ['pipes', 'plumbing', 'reactors', 'in the pipes'],
      range: [0, 2000, 'L'],
      usual: [0.5, 40, 'L'],
      needed: false,
      ask: 'How much water is in pipes, reactors and the rest?',
      profile: 'return.pipe_volume',
    }),
    ...solidInputs,
  },
  rules: [
    noInside('W', 'width'),
    noInside('L', 'length'),
    noWater,
    noSumpInside,
    {
      refuse: 'V_solid >= V_d + V_s',
      because: 'Rock and sand would take more room than there is water: check the units of both.',
      about: 'rock_mass',
    },
  ],
  steps: [
    step('V_side', 'V_b + V_p', 'volume', 'water beside display and sump'),
    step('V_side', 'V_b', 'volume', 'water beside display and sump'),
    step('V_side', 'V_p', 'volume', 'water beside display and sump'),
    step('V_all', 'V_d + V_s + V_side', 'volume', 'water without rock and sand'),
    step('V_all', 'V_d + V_s', 'volume', 'water without rock and sand'),
    ...solidSteps,
    step('V', 'V_all - V_solid', 'volume', 'water in the system'),
    step('V', 'V_all', 'volume', 'water in the system'),
  ],
  results: {
    system_volume: result('V', 'volume', 'water in the system', { feeds: 'water.volume' }),
    display_water: result('V_d', 'volume', 'in the display, to the line'),
    sump_water: result('V_s', 'volume', 'in the sump'),
    displacement: result('V_solid', 'volume', 'taken by rock and sand'),
  },
  headline: [{ text: 'The real water volume in the system is {system_volume:both}.' }],
  cautions: [
    caution(
      'note',
      'No rock was counted: if there is any, tell me its dry weight, since it takes about 0.37 L for each kilogram.',
      {
        not: { given: 'rock_mass' },
      },
    ),
    caution(
      'note',
      'No glass thickness was given, so the sizes count as inside sizes: tell me how thick the panes are.',
      't == 0',
    ),
    caution(
      'note',
      'No freeboard was given, so the display counts as filled to the rim: tell me how far below it the water stands.',
      'fb == 0',
    ),
    caution(
      'note',
      'The sump counts with one water height. Where its chambers stand at different levels, add them up with volume sump and give me that.',
      { given: 'sump_length' },
    ),
    caution(
      'note',
      'An overflow box inside the tank is counted as full to the display’s line, which says a little too much; one outside is not counted unless you give it.',
      { not: { given: 'overflow_box_volume' } },
    ),
    caution('note', 'Use this number, not the size on the label, for dosing, salt and heaters.'),
  ],
  sources: ['geometry: sum of the parts', ...SOLID_SOURCES],
  examples: [
    'total system volume: 150x60x55 cm tank, 12 mm glass, 4 cm below the rim, 80 L in the sump, 60 kg rock',
    'real water volume, display 100 gal, sump 20 gal, 90 lb rock',
  ],
});
