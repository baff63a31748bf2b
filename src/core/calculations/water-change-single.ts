import { quantity, result, step } from '../calculation.js';
import { ammoniaFirst, bigChange, emergency, kitNoise, matchedWater, rockReleases } from '../cautions/water-change.js';
import { calculation } from '../define.js';
import { systemVolume } from '../inputs/system-water.js';
import { before, diluted, fraction, newWater, newWaterBelow } from '../inputs/water-change.js';

export const waterChangeSingle = calculation({
  id: 'water_change.single',
  slash: 'water change',
  title: 'One water change',
  question: 'Where does nitrate or phosphate land after one water change?',
  general: true,
  part: 'water',
  cues: [
    'water change',
    'a water change',
    'one water change',
    'percent water change',
    'gallon water change',
    'litre water change',
    'change out',
    'nitrate after',
    'nitrate land',
    'phosphate after',
    '~nitrate',
    '~phosphate',
  ],
  inputs: {
    before,
    diluted,
    fraction: quantity('fraction', {
      ...fraction,
      default: { formula: 'V_x/V' },
      needed: { not: { given: 'change_volume' } },
    }),
    new_water: newWater,
    change_volume: quantity('volume', {
      symbol: 'V_x',
      name: 'water that is changed',
      words: ['change', 'changed', 'out', 'swap', 'replace', 'take out', 'out of', 'change out', 'water change'],
      range: [0, 100_000, 'L'],
      aboveLow: true,
      usual: [5, 1000, 'L'],
      needed: false,
      ask: 'How much water do you change?',
      example: '15 gal or 60 L',
    }),
    volume: quantity('volume', { ...systemVolume, needed: { given: 'change_volume' } }),
  },
  rules: [
    {
      refuse: 'V_x > V*1.000000001',
      because: 'More water is changed than the system holds: are the two swapped?',
      about: 'change_volume',
    },
    newWaterBelow(),
  ],
  steps: [
    step('V_out', 'f*V', 'volume', 'water that is changed', { not: { given: 'change_volume' } }),
    step('c_2', '(1 - f)*c_1 + f*c_n', 'dissolved', 'reading after the change'),
    step('d', 'c_2 - c_1', 'dissolved', 'change of the reading'),
    step('r', '1 - c_2/c_1', 'fraction', 'share that is gone', 'c_1 > 0'),
  ],
  results: {
    after: result('c_2', 'dissolved', 'reading after the change'),
    change: result('d', 'dissolved', 'change of the reading'),
    reduction: result('r', 'fraction', 'share that is gone'),
    fraction: result('f', 'fraction', 'share of the water'),
    total_water: result('V_out', 'volume', 'new water it takes'),
  },
  headline: [
    { text: 'A change of {fraction} takes it from {before} to {after}, using {total_water}.', when: 'V_out > 0' },
    { text: 'A change of {fraction} takes it from {before} to {after}.' },
  ],
  cautions: [emergency, bigChange, matchedWater, ammoniaFirst, rockReleases, kitNoise],
  sources: ['mass balance of a well-mixed tank'],
  examples: [
    'nitrate 40, 20 % water change, new water 2 ppm',
    '15 gal water change out of a 90 gal system, phosphate is 0.24 mg/L',
    'where does 60 ppm nitrate land after a 25% water change',
  ],
});
