import { caution, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { absoluteSalinityStep, salinity } from '../inputs/salinity.js';
import { waterTemperature } from '../inputs/system-water.js';

export const salinityUnits = calculation({
  id: 'salinity.units',
  slash: 'salinity units',
  title: 'Salinity by mass and by volume',
  question: 'How much is a salinity in grams per litre, or the other way round?',
  part: 'water',
  cues: [
    'ppt into',
    'into grams per liter',
    'into grams per litre',
    'into g/l',
    'same as',
    'g/l',
    'ppt in g/l',
    'ppt to g/l',
    'g/l in ppt',
    'g/l to ppt',
    'in grams per litre',
    'in grams per liter',
    'in g/l',
    'grams per litre in ppt',
    'mg/l salt',
    'g/l of salt',
    'salinity units',
    'convert salinity',
  ],
  inputs: {
    salinity,
    concentration: quantity('concentration', {
      symbol: 'c',
      name: 'salt per volume',
      words: ['concentration', 'g/l', 'grams per litre', 'grams per liter', 'mg/l'],
      range: [0, 45, 'g/L'],
      slips: [[200, 450, 'A decimal point may be missing: 350 is written for 35.0 g/L.']],
      ask: 'Which salinity, or how many grams a litre?',
      example: '35 ppt or 35 g/L',
    }),
    temperature: waterTemperature,
  },
  oneOf: [['salinity'], ['concentration']],
  rules: [
    {
      refuse: { all: [{ given: 'salinity' }, { given: 'concentration' }] },
      because: 'Give the salinity by mass or the salt per volume, not both: one follows from the other.',
      about: 'concentration',
    },
  ],
  steps: [
    step('S', 'S_of_concentration(c, T)', 'salinity', 'salinity at which a litre holds that much'),
    step('rho', 'rho_sw(S, T)', 'density', 'density'),
    step('c', 'S*rho', 'concentration', 'salt per volume'),
    absoluteSalinityStep,
  ],
  results: {
    salinity: result('S', 'salinity', 'salinity', {
      range: [0, 42, 'g/kg'],
      because: 'The salinity comes out above 42 ppt, where the density formula ends.',
    }),
    concentration: result('c', 'concentration', 'salt per volume'),
    density: result('rho', 'density', 'density'),
    absolute_salinity: result('S_A', 'salinity', 'true mass of salt', { decimals: 2 }),
  },
  headline: [
    { text: '{concentration} of salt is a salinity of {salinity}.', when: { given: 'concentration' } },
    { text: 'Water of {salinity} holds {concentration} of salt.' },
  ],
  cautions: [
    caution(
      'note',
      'ppt, PSU, ‰ and g/kg are one number here, grams in a kilogram of water; grams in a litre are 2.3 % more at 35 ppt because seawater is denser.',
    ),
    caution(
      'note',
      'The “ppm” of a test kit is milligrams a litre, that of a chemist milligrams a kilogram; the TDS scale of a pocket meter is neither in seawater.',
    ),
  ],
  sources: ['concentration as salinity times density (definition)', 'reference composition: Millero et al. 2008'],
  examples: ['how much is 35 ppt in g/l', 'convert salinity 34.5 g/l to ppt at 78F'],
});
