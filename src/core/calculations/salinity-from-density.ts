import { caution, quantity, result, step } from '../calculation.js';
import { secondMethod } from '../cautions/salinity.js';
import { calculation } from '../define.js';
import { againstReef, densityRules, sampleTemperature } from '../inputs/salinity.js';

export const salinityFromDensity = calculation({
  id: 'salinity.from_density',
  slash: 'salinity from-density',
  title: 'Salinity from a weighed density',
  question: 'What salinity has water of this density?',
  part: 'water',
  cues: [
    'density',
    'salinity from density',
    'weighed a litre',
    'weighed a liter',
    'litre weighs',
    'liter weighs',
    'kg/m3',
    'g/ml',
    'grams per ml',
    'how salty',
    'what salinity',
    'which salinity',
    'how many ppt',
    'density to ppt',
    'density to salinity',
    'density of #',
    'sample weighs',
    'litre of tank water',
    'liter of tank water',
    'liter of water weighs',
    'litre of water weighs',
    'kg m3',
    'kg per m3',
    'g cc',
    'g cm3',
    'weighs # kg',
    'weighs # g',
  ],
  inputs: {
    density: quantity('density', {
      symbol: 'rho',
      name: 'density of the water',
      words: ['density', 'weighs', 'weighed', 'litre', 'liter'],
      range: [990, 1040, 'kg/m3'],
      usual: [1005, 1032, 'kg/m3'],
      slips: [
        [0.98, 1.05, 'That looks like g/mL, which is 1000 times as much in kg/m³; or like a specific gravity.'],
        [20, 45, 'That looks like a salinity in ppt already.'],
      ],
      ask: 'Which density did you find?',
      example: '1023.3 kg/m3 or 1.0233 g/mL',
    }),
    temperature: sampleTemperature,
  },
  rules: densityRules('density'),
  steps: [
    step('S', 'S_of_density(rho, T)', 'salinity', 'salinity with that density'),
    step('SG', 'rho/rho_w(T)', 'specific gravity', 'specific gravity, sample and pure water at that temperature'),
  ],
  results: {
    salinity: result('S', 'salinity', 'salinity', { range: [0, 42, 'g/kg'] }),
    specific_gravity: result('SG', 'specific gravity', 'specific gravity, both at that temperature'),
  },
  headline: againstReef('Water of {density} at {temperature} has a salinity of {salinity}'),
  cautions: [
    caution(
      'caution',
      'A kitchen scale and a measuring jug are good to about 1 %, which is 13 ppt either way: only a volumetric flask and a fine balance make this worth something.',
    ),
    caution(
      'note',
      'Weighed in air, a litre seems about 1.05 g light (the buoyancy of air), which is 1.4 ppt: add it to the weight if you have not.',
    ),
    secondMethod,
  ],
  sources: ['EOS-80 solved for the salinity'],
  examples: [
    'my water has a density of 1022.2 kg/m3 at 22 C, what salinity is it',
    'salinity from density 1.0233 g/ml at 77F',
  ],
});
