import { caution, quantity, result, step } from '../calculation.js';
import { neverDrySaltOntoAnimals } from '../cautions/salt.js';
import { calculation } from '../define.js';
import { salinity, salinityKept } from '../inputs/salinity.js';
import {
  labelRules,
  labelSpreadSteps,
  SALT_MIX_SOURCES,
  saltMixConstants,
  saltMixInputs,
  saltMixSteps,
} from '../inputs/salt-mix.js';
import { waterTemperature } from '../inputs/system-water.js';

export const saltMix = calculation({
  id: 'salt.mix',
  slash: 'salt mix',
  title: 'Salt for a batch of new salt water',
  question: 'How much salt mix makes this much water of this salinity?',
  general: true,
  part: 'water',
  cues: [
    'how much salt',
    'salt mix',
    'mix salt',
    'mixing salt',
    'salt for',
    'salt do i need',
    'kilos of salt',
    'pounds of salt',
    'cups of salt',
    'mix saltwater',
    'mix salt water',
    'make saltwater',
    'new saltwater',
    'batch of saltwater',
    'salt per gallon',
    '~salt',
  ],
  inputs: {
    volume: quantity('volume', {
      symbol: 'V',
      name: 'mixed salt water wanted',
      words: ['saltwater', 'salt water', 'mixed', 'finished', 'make', 'batch', 'barrel', 'bin', 'bucket'],
      range: [0, 100_000, 'L'],
      aboveLow: true,
      usual: [1, 1000, 'L'],
      ask: 'How much salt water do you want to end up with?',
      example: '100 L or 25 gal',
      profile: 'water.volume',
    }),
    fresh_water_volume: quantity('volume', {
      symbol: 'V_0',
      name: 'water you have, to mix the salt into',
      words: ['fresh water', 'freshwater', 'ro water', 'rodi', 'ro/di', 'pure water', 'of fresh', 'of ro'],
      range: [0, 100_000, 'L'],
      aboveLow: true,
      byName: true,
      ask: 'How much water do you have to mix it into?',
    }),
    salinity: salinityKept,
    start_salinity: quantity('salinity', {
      ...salinity,
      symbol: 'S_0',
      name: 'salinity of the water you start from',
      words: ['start', 'starting', 'from', 'already', 'brackish'],
      default: { value: 0, unit: 'g/kg', why: 'fresh water' },
      ask: 'How salty is the water you start from?',
      example: '0 ppt',
    }),
    temperature: waterTemperature,
    ...saltMixInputs,
  },
  oneOf: [['volume'], ['fresh_water_volume']],
  constants: saltMixConstants,
  rules: [
    {
      refuse: 'S <= S_0',
      because:
        'Salt cannot lower a salinity: the water you start from is as salty as you want it, or saltier. To thin it, see salt lower.',
      about: 'salinity',
    },
    {
      refuse: { all: [{ given: 'volume' }, { given: 'fresh_water_volume' }] },
      because: 'Give the salt water you want or the water you have, not both: one follows from the other.',
      about: 'fresh_water_volume',
    },
    ...labelRules,
  ],
  steps: [
    ...saltMixSteps,
    step('M', 'V*rho_sw(S, T)', 'mass', 'mass of the mixed water'),
    step('m', 'M*(S - S_0)/(f - S_0)', 'mass', 'salt mix'),
    step('m_low', 'M*(S - S_0)/(f_high - S_0)', 'mass', 'salt mix if it is as dry as it may be'),
    step('m_high', 'M*(S - S_0)/(f_low - S_0)', 'mass', 'salt mix if it is as damp as it may be'),
    step('M_0', 'V_0*rho_sw(S_0, T)', 'mass', 'mass of the water you start from'),
    step('m', 'M_0*(S - S_0)/(f - S)', 'mass', 'salt mix'),
    step('m_low', 'M_0*(S - S_0)/(f_high - S)', 'mass', 'salt mix if it is as dry as it may be'),
    step('m_high', 'M_0*(S - S_0)/(f_low - S)', 'mass', 'salt mix if it is as damp as it may be'),
    ...labelSpreadSteps,
    step('V_0', '(M - m)/rho_sw(S_0, T)', 'volume', 'water to start from'),
    step('V', '(M_0 + m)/rho_sw(S, T)', 'volume', 'mixed salt water'),
  ],
  results: {
    salt_mass: result('m', 'mass', 'salt mix', { low: 'm_low', high: 'm_high' }),
    salt_mass_low: result('m_low', 'mass', 'salt mix, low end'),
    salt_mass_high: result('m_high', 'mass', 'salt mix, high end'),
    start_water: result('V_0', 'volume', 'water to start from'),
    finished_volume: result('V', 'volume', 'mixed salt water'),
    dry_fraction_used: result('f', 'fraction', 'dissolved salts in a kilogram of the mix'),
  },
  headline: [
    {
      text: 'Mix {salt_mass:both} of salt into {start_water:both} of water for {finished_volume} of {salinity}.',
      when: 'S_0 == 0',
    },
    {
      text: 'Mix {salt_mass:both} of salt into {start_water:both} of water of {start_salinity} for {finished_volume} of {salinity}.',
    },
  ],
  cautions: [
    neverDrySaltOntoAnimals,
    caution(
      'caution',
      'Weigh out {m_low} first, mix until clear, measure at the temperature of use, then add the rest: how dry a mix is differs.',
    ),
    caution(
      'note',
      'How dry your mix is was not given, so the spread is wide: tell me what the label says for a litre or a gallon, and for which salinity.',
      { assumed: 'dry_fraction' },
    ),
    caution('note', 'Both a dry share and a label are known; the dry share was used.', {
      all: [{ given: 'label_rate' }, { given: 'dry_fraction' }],
    }),
    caution(
      'note',
      'Weigh it: cups are 15 % off either way. Roll the closed bucket first, since fines settle, and keep it dry.',
    ),
    caution('note', 'Heat and stir it for as long as the label says, hours to a day, before any animal meets it.'),
  ],
  sources: SALT_MIX_SOURCES,
  examples: [
    'how much salt for 100 L at 35 ppt',
    'how much salt do i need for 55 gal of saltwater at 35 ppt',
    'i have 20 L of RO water, how much salt for 33 ppt',
  ],
});
