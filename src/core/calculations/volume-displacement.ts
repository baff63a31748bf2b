import { caution, quantity, result, step } from '../calculation.js';
import { rockOnTheBase } from '../cautions/rock.js';
import { calculation } from '../define.js';
import { glassThickness, length, width } from '../inputs/display.js';
import { SOLID_SOURCES, solidInputs, solidSteps } from '../inputs/rock-and-sand.js';
import { noInside } from '../inputs/tank-shape.js';

export const volumeDisplacement = calculation({
  id: 'volume.displacement',
  slash: 'volume displacement',
  title: 'Water that rock and sand displace',
  question: 'How much water do rock and sand take away?',
  part: 'tank',
  cues: [
    'displace',
    'of rock',
    'of sand',
    'sand displace',
    'rock displace',
    'how much does it displace',
    'displaces',
    'displacement',
    'displaced',
    'rock take up',
    'rock takes up',
    'take away',
    'rock and sand',
    'after rock',
    'with rock',
    'actual volume',
    'net volume',
    'less rock',
  ],
  inputs: {
    ...solidInputs,
    length: quantity('length', { ...length, needed: false }),
    width: quantity('length', { ...width, needed: false }),
    glass_thickness: quantity('length', {
      ...glassThickness,
      needed: false,
      default: { value: 0, unit: 'mm', when: { all: [{ given: 'length' }, { given: 'sand_depth' }] } },
    }),
    gross_volume: quantity('volume', {
      symbol: 'V_g',
      name: 'display water without rock and sand',
      words: ['gross', 'empty', 'display', 'tank', 'volume', 'holds', 'without rock'],
      range: [0.5, 50_000, 'L'],
      usual: [20, 4000, 'L'],
      needed: false,
      ask: 'How much water would it hold without rock and sand?',
      profile: 'display.water_volume',
    }),
  },
  oneOf: [['rock_mass'], ['sand_depth']],
  rules: [
    noInside('W', 'width'),
    noInside('L', 'length'),
    {
      refuse: 'V_solid >= V_g',
      because: 'Rock and sand would take more room than there is water: check the units of both.',
      about: 'gross_volume',
    },
  ],
  steps: [...solidSteps, step('V', 'V_g - V_solid', 'volume', 'water that is left')],
  results: {
    rock_displacement: result('V_rock', 'volume', 'water that the rock displaces'),
    sand_displacement: result('V_sand', 'volume', 'water that the sand displaces'),
    displacement: result('V_solid', 'volume', 'water displaced altogether'),
    actual_volume: result('V', 'volume', 'water that is left', { figures: 4 }),
  },
  headline: [
    { text: 'That displaces {displacement:both}, so {actual_volume:both} of water is left.', when: 'V > 0' },
    { text: 'That displaces {displacement:both} of water.' },
  ],
  cautions: [
    caution(
      'note',
      'Weigh or look up the rock dry: wet rock carries water and counts too much. Open pores fill with water, so the density is that of the mineral.',
      { given: 'rock_mass' },
    ),
    caution('note', 'Tell me how much the tank holds and I take this off.', { not: { given: 'gross_volume' } }),
    { ...rockOnTheBase, when: { given: 'rock_mass' } },
    caution('note', 'Rock in the sump counts against the sump, not against the display.', { given: 'rock_mass' }),
  ],
  sources: SOLID_SOURCES,
  examples: [
    'how much water do 60 kg of rock and 3 cm of sand displace in a 150 x 60 cm tank',
    '120 lb of rock in 125 gallons, how much does it displace',
  ],
});
