import { type Condition, caution, quantity, result, step } from '../calculation.js';
import { oneStrangeReading } from '../cautions/chemistry.js';
import { calculation } from '../define.js';
import { ALKALINITY_WORDS, alkalinity } from '../inputs/alkalinity.js';
import { SALINITY_WORDS, salinityKept } from '../inputs/salinity.js';
import { waterTemperature } from '../inputs/system-water.js';

const MEQ = { metric: 'meq/L', us: 'meq/L' };
const allGiven: Condition = {
  all: [{ given: 'calcium_reading' }, { given: 'magnesium_reading' }, { given: 'alkalinity_reading' }],
};
const anyGiven: Condition = {
  any: [{ given: 'calcium_reading' }, { given: 'magnesium_reading' }, { given: 'alkalinity_reading' }],
};
/** All three below natural water of 35 by one share, within five hundredths of their mean. */
const DILUTE = 'z < 0.95 and d <= 0.05';
/** Alkalinity far from natural water's 6.6 dKH and from the 7 to 9 that reefs are kept at (common practice): below 5.3, above 12. */
const ALKALINITY_LOW = 'q_A < 0.8';
const ALKALINITY_HIGH = 'q_A > 1.85';
const PROPORTION = 'q_Ca >= 0.9 and q_Ca <= 1.1 and q_Mg >= 0.9 and q_Mg <= 1.1';

export const alkalinityNaturalLevels = calculation({
  id: 'alkalinity.natural_levels',
  slash: 'water natural',
  title: 'Natural calcium, magnesium and alkalinity',
  question: 'What would natural seawater of this salinity hold, and are my own readings in proportion?',
  part: 'chemistry',
  cues: [
    'natural levels',
    'natural seawater',
    'nsw',
    'natural sea water',
    'in proportion',
    'in balance',
    'are my numbers',
    'my numbers ok',
    'parameters ok',
    'are my levels',
    'calcium alk and mag',
    'calcium magnesium alkalinity',
    'what should my calcium be',
    'what should calcium',
    'what should my magnesium',
    '~magnesium',
    '~calcium',
    'natural level',
    'natural levels of',
    'natural concentration',
    'natural values',
    'nsw levels',
    'sea water contain',
    'seawater contain',
    'seawater hold',
    'natural seawater hold',
    'ca and mg',
    'ca mg alk',
    'calcium and magnesium',
    'mg and ca',
    'should ca',
    'should mg',
    'should mag',
    'should calcium',
    'should magnesium',
    'should my alk',
    'what should ca',
    'what should mg',
    'what should mag',
    'proportions',
    'in proportion to',
    'balanced',
    'are they balanced',
    'out of balance',
    'are my params',
    'my params',
    'my parameters',
    'are my parameters',
    'params ok',
    'params in',
    'low for # ppt',
    'high for # ppt',
    'low for # water',
    'right for # ppt',
    'for # ppt water',
    'calcium low',
    'calcium high',
    'magnesium low',
    'magnesium high',
    'magnesium too low',
    'magnesium too high',
    'calcium too low',
    'calcium too high',
    'mag too low',
    'mag low',
    'mag high',
    '~mag',
    '~natural',
  ],
  inputs: {
    salinity: quantity('salinity', {
      ...salinityKept,
      words: [...SALINITY_WORDS, 'at', 'for', 'seawater', 'water of'],
    }),
    // What a tank is kept at, narrower than the formula's own range.
    temperature: quantity('temperature', { ...waterTemperature, range: [10, 35, 'degC'] }),
    calcium_reading: quantity('dissolved', {
      symbol: 'C_Ca',
      name: 'calcium of your water',
      words: ['calcium', 'ca', 'ca is', 'calcium is', 'calcium reads', 'calcium level', 'ca level', 'calc'],
      range: [0, 1000, 'mg/L'],
      usual: [300, 550, 'mg/L'],
      needed: false,
      ask: 'What does your calcium test read?',
      example: '420 ppm',
    }),
    magnesium_reading: quantity('dissolved', {
      symbol: 'C_Mg',
      name: 'magnesium of your water',
      words: [
        'magnesium',
        'mag',
        'mg',
        'mg is',
        'mag is',
        'magnesium is',
        'magnesium reads',
        'magnesium level',
        'mag level',
      ],
      range: [0, 2500, 'mg/L'],
      usual: [1000, 1600, 'mg/L'],
      needed: false,
      ask: 'What does your magnesium test read?',
      example: '1300 ppm',
    }),
    alkalinity_reading: quantity('alkalinity', {
      ...alkalinity,
      name: 'alkalinity of your water',
      words: [...ALKALINITY_WORDS, 'alk is', 'kh is', 'kh at', 'alkalinity is'],
      needed: false,
      ask: 'What does your alkalinity test read?',
    }),
  },
  constants: {
    S_0: { value: 0.035, unit: '1', name: 'salinity of the reference composition' },
    w_Ca: { value: 412.1e-6, unit: 'kg/kg', name: 'calcium in a kilogram of reference seawater' },
    w_Mg: { value: 1283.7e-6, unit: 'kg/kg', name: 'magnesium in a kilogram of reference seawater' },
    b_A: { value: 2.304e-3, unit: 'mol/kg', name: 'alkalinity of a kilogram of reference seawater' },
  },
  rules: [
    {
      refuse: 'S < 0.02',
      because:
        'Below 20 ppt it is brackish water, which is not seawater thinned by rule: give a salinity of 20 to 42 ppt.',
      about: 'salinity',
    },
  ],
  steps: [
    step('rho', 'rho_sw(S, T)', 'density', 'density of the water'),
    step('Ca', 'w_Ca*(S/S_0)*rho', 'dissolved', 'natural calcium'),
    step('Mg', 'w_Mg*(S/S_0)*rho', 'dissolved', 'natural magnesium'),
    step('A_n', 'b_A*(S/S_0)*rho', 'alkalinity', 'natural alkalinity'),
    step('q_Ca', 'C_Ca/Ca', 'ratio', 'your calcium over natural'),
    step('q_Mg', 'C_Mg/Mg', 'ratio', 'your magnesium over natural'),
    step('q_A', 'A/A_n', 'ratio', 'your alkalinity over natural'),
    step('rho_0', 'rho_sw(S_0, T)', 'density', 'density at 35', allGiven),
    step('z_Ca', 'C_Ca/(w_Ca*rho_0)', 'ratio', 'your calcium over that of natural water of 35'),
    step('z_Mg', 'C_Mg/(w_Mg*rho_0)', 'ratio', 'your magnesium over that of natural water of 35'),
    step('z_A', 'A/(b_A*rho_0)', 'ratio', 'your alkalinity over that of natural water of 35'),
    step('z', '(z_Ca + z_Mg + z_A)/3', 'ratio', 'mean of the three'),
    step('d', 'max(abs(z_Ca - z), abs(z_Mg - z), abs(z_A - z))', 'ratio', 'how far the three lie apart'),
  ],
  results: {
    calcium: result('Ca', 'dissolved', 'natural calcium', { figures: 3 }),
    magnesium: result('Mg', 'dissolved', 'natural magnesium', { figures: 4 }),
    alkalinity: result('A_n', 'alkalinity', 'natural alkalinity', { units: MEQ }),
    alkalinity_dkh: result('A_n', 'alkalinity', 'natural alkalinity in dKH', { decimals: 1 }),
    calcium_share: result('q_Ca', 'fraction', 'your calcium over natural'),
    magnesium_share: result('q_Mg', 'fraction', 'your magnesium over natural'),
    alkalinity_share: result('q_A', 'fraction', 'your alkalinity over natural'),
  },
  headline: [
    {
      text: 'All three are low by one share, which is what thin water looks like: measure the salinity again and raise that, dose nothing. At {salinity} natural water has {calcium} calcium, {magnesium} magnesium, {alkalinity_dkh}.',
      when: DILUTE,
    },
    {
      text: 'Alkalinity is low: {alkalinity_share} of natural water at {salinity}, which has {alkalinity_dkh}; calcium stands at {calcium_share} and magnesium at {magnesium_share}.',
      when: { all: ['q_Ca > 0 and q_Mg > 0', ALKALINITY_LOW] },
    },
    {
      text: 'Alkalinity is high: {alkalinity_share} of natural water at {salinity}, which has {alkalinity_dkh}; calcium stands at {calcium_share} and magnesium at {magnesium_share}.',
      when: { all: ['q_Ca > 0 and q_Mg > 0', ALKALINITY_HIGH] },
    },
    {
      text: 'In proportion: calcium stands at {calcium_share} and magnesium at {magnesium_share} of natural water at {salinity}, which has {calcium}, {magnesium} and {alkalinity_dkh}.',
      when: PROPORTION,
    },
    {
      text: 'Out of proportion: calcium stands at {calcium_share} and magnesium at {magnesium_share} of natural water at {salinity}, which has {calcium}, {magnesium} and {alkalinity_dkh}.',
      when: 'q_Ca > 0 and q_Mg > 0',
    },
    {
      text: 'Natural water of {salinity} has {calcium} calcium, {magnesium} magnesium and {alkalinity_dkh}: your calcium stands at {calcium_share} of it.',
      when: { given: 'calcium_reading' },
    },
    {
      text: 'Natural water of {salinity} has {calcium} calcium, {magnesium} magnesium and {alkalinity_dkh}: your magnesium stands at {magnesium_share} of it.',
      when: { given: 'magnesium_reading' },
    },
    {
      text: 'Natural water of {salinity} has {calcium} calcium, {magnesium} magnesium and {alkalinity_dkh}: your alkalinity stands at {alkalinity_share} of it.',
      when: { given: 'alkalinity_reading' },
    },
    {
      text: 'Natural seawater of {salinity} has {calcium} calcium, {magnesium} magnesium and {alkalinity_dkh} of alkalinity.',
    },
  ],
  cautions: [
    caution(
      'caution',
      'Magnesium is below 1150 mg/L while calcium and alkalinity are high: they fall out of such water. Raise the magnesium first.',
      'C_Mg < 1.15 and q_Ca > 1.05 and q_A > 1.3',
    ),
    caution('caution', 'The salinity is off 35: bring that right first, every level moves with it.', {
      any: ['S < 0.034', 'S > 0.0365'],
    }),
    caution(
      'note',
      'Reefs are usually kept at 7 to 9 dKH, above natural, with calcium 400 to 450 and magnesium 1250 to 1400 mg/L (common practice).',
    ),
    caution('note', 'Papers print mg/kg, kits mg/L: 2.3 % apart in seawater.', { not: anyGiven }),
    { ...oneStrangeReading, when: anyGiven },
  ],
  sources: [
    'reference composition: Millero et al. 2008, Deep-Sea Research I 55: 50 (mole amounts from memory; their mass and charge add up)',
  ],
  examples: [
    'natural levels of calcium and magnesium at 33 ppt',
    'are my numbers in proportion: calcium 420 ppm, magnesium 1300 ppm, alk 8 dKH, salinity 35 ppt',
    'what should my calcium be at salinity 34 ppt, mine is 390 ppm',
  ],
});
