import { caution, quantity, result, step } from '../calculation.js';
import {
  allAtOnce,
  fasterThanPractice,
  measureTwice,
  moderatePace,
  neverDrySaltOntoAnimals,
} from '../cautions/salt.js';
import { calculation } from '../define.js';
import { salinityNow, salinityTarget } from '../inputs/salinity.js';
import { paceConstants, paceInputs, paceSteps } from '../inputs/salinity-pace.js';
import { labelRules, labelSpreadSteps, saltMixConstants, saltMixInputs, saltMixSteps } from '../inputs/salt-mix.js';
import { systemVolume, waterTemperature } from '../inputs/system-water.js';

export const saltRaise = calculation({
  id: 'salt.raise',
  slash: 'salt raise',
  title: 'Raising the salinity with salt mix',
  question: 'How much salt mix brings the system up to the salinity wanted, and how fast?',
  part: 'water',
  cues: [
    'get to',
    'salinity is',
    'bring up',
    'bring it up',
    'too low',
    'want 35',
    'low salinity',
    'raise salinity',
    'raise the salinity',
    'raise my salinity',
    'bring salinity up',
    'bring the salinity up',
    'increase salinity',
    'increase the salinity',
    'salinity too low',
    'salinity is low',
    'low salinity',
    'salinity dropped',
    'add salt',
    'salt to raise',
    'how much salt to raise',
    'how much salt to bring',
  ],
  inputs: {
    volume: systemVolume,
    salinity: salinityNow,
    target: salinityTarget,
    temperature: waterTemperature,
    ...saltMixInputs,
    bucket_volume: quantity('volume', {
      symbol: 'V_b',
      name: 'tank water taken out to dissolve it in, each day',
      words: ['bucket', 'removed', 'dissolve', 'dissolved in', 'taken out', 'jug'],
      range: [0, 10_000, 'L'],
      aboveLow: true,
      usual: [2, 60, 'L'],
      needed: false,
      ask: 'How much tank water do you take out to dissolve the salt in?',
      example: '20 L or 5 gal',
    }),
    ...paceInputs,
  },
  constants: { ...saltMixConstants, ...paceConstants },
  rules: [
    {
      refuse: 'S_2 <= S_1',
      because: 'The salinity wanted is not above the present one: to bring it down, see salt lower.',
      about: 'target',
    },
    {
      refuse: 'V_b >= V',
      because: 'The bucket is as large as the system: check both volumes.',
      about: 'bucket_volume',
    },
    ...labelRules,
  ],
  steps: [
    ...saltMixSteps,
    step('rho_1', 'rho_sw(S_1, T)', 'density', 'density of the tank water'),
    step('M', 'V*rho_1', 'mass', 'mass of the tank water'),
    step('m', 'M*(S_2 - S_1)/(f - S_2)', 'mass', 'salt mix'),
    step('m_low', 'M*(S_2 - S_1)/(f_high - S_2)', 'mass', 'salt mix if it is as dry as it may be'),
    step('m_high', 'M*(S_2 - S_1)/(f_low - S_2)', 'mass', 'salt mix if it is as damp as it may be'),
    ...labelSpreadSteps,
    step('dV', '(M + m)/rho_sw(S_2, T) - V', 'volume', 'rise of the water volume'),
    ...paceSteps,
    step('m_d', 'm/n', 'mass', 'salt mix a day'),
    step('M_b', 'V_b*rho_1', 'mass', 'mass of the water in the bucket'),
    step('S_b', '(M_b*S_1 + f*m_d)/(M_b + m_d)', 'salinity', 'salinity in the bucket'),
  ],
  results: {
    salt_mass: result('m', 'mass', 'salt mix', { low: 'm_low', high: 'm_high' }),
    salt_mass_low: result('m_low', 'mass', 'salt mix, low end'),
    salt_mass_high: result('m_high', 'mass', 'salt mix, high end'),
    days: result('t', 'time', 'time to take', { units: { metric: 'day', us: 'day' } }),
    salt_per_day: result('m_d', 'mass', 'salt mix a day'),
    volume_gain: result('dV', 'volume', 'rise of the water volume'),
    bucket_salinity: result('S_b', 'salinity', 'salinity in the bucket'),
  },
  headline: [
    {
      text: '{salt_mass:both} of salt mix in all brings {volume} from {salinity} to {target}: {salt_per_day:both} a day for {days}.',
      when: 'n > 1',
    },
    { text: '{salt_mass:both} of salt mix brings {volume} from {salinity} to {target}.' },
  ],
  cautions: [
    neverDrySaltOntoAnimals,
    measureTwice,
    allAtOnce,
    fasterThanPractice,
    moderatePace,
    caution(
      'caution',
      'The bucket would stand at {bucket_salinity}: take more tank water, so that it stays under about 70 ppt (common practice).',
      'S_b > 0.07',
    ),
    caution(
      'note',
      'Dissolve it in tank water that you took out and return that slowly into strong flow, away from animals. Or let evaporation do it: top off with salt water for some days, then go back to fresh.',
    ),
    caution(
      'note',
      'How dry your mix is was not given, so the spread is wide: add nine tenths, measure, then add the rest.',
      { assumed: 'dry_fraction' },
    ),
  ],
  sources: [
    'mass balance of salt and water; salinity counted in grams a kilogram, 0.5 % below the true mass of salt',
    'dry share of salt mixes: hydrate water of reference seawater weighed out as salts (Millero et al. 2008, amounts from memory)',
  ],
  examples: [
    'raise salinity from 32 to 35 ppt in a 400 L system, 20 L bucket',
    'how much salt to raise the salinity from 30 ppt to 35 ppt in 75 gal, empty tank',
  ],
});
