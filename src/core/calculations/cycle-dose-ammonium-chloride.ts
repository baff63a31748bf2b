import { caution, quantity, result, step } from '../calculation.js';
import { handleChemicals } from '../cautions/chemistry.js';
import { calculation } from '../define.js';
import {
  animalsInWater,
  dosesPlanned,
  measureBeforeDosing,
  neverWithAnimals,
  noAmmoniaOntoAnimals,
  noBleachWithAmmonia,
  riseWanted,
} from '../inputs/nitrogen.js';
import { systemVolume } from '../inputs/system-water.js';
import { ammoniumChloride, MOLAR_MASS_SOURCE, nitrogen } from '../molar-masses.js';

const GRAMS = { metric: 'g', us: 'g' };

export const cycleDoseAmmoniumChloride = calculation({
  id: 'cycle.dose_ammonium_chloride',
  slash: 'cycle dose',
  title: 'Ammonium chloride for a fishless cycle',
  question: 'How many grams of ammonium chloride bring the water to 2 mg/L of ammonia?',
  part: 'cycle',
  cues: [
    'ammonium chloride',
    'nh4cl',
    'ammonium',
    'dose ammonia',
    'ammonia dose',
    'ammonia to dose',
    'ammonia powder',
    'ammonia to start',
    'ammonia for cycling',
    'ammonia to cycle',
    'start the cycle',
    'start cycling',
    'start a cycle',
    'cycle dose',
    'how much ammonia',
    'sal ammoniac',
    'salmiac',
    'salmiak',
    'ammonium salt',
    'ammonia chloride',
    'dry ammonium chloride',
    'ammonium chloride dose',
    'dosing ammonium chloride',
    'ammonium chloride powder',
    'fishless cycle with',
    'fishless cycle',
    'starting a fishless cycle',
    'starting the cycle',
    'starting a cycle',
    'raise ammonia',
    'raise ammonia by',
    'raise ammonia to',
    'get ammonia to',
    'bring ammonia to',
    'bring ammonia up',
    'ammonia up to',
    'grams of ammonium',
    'grams of nh4cl',
    'g of nh4cl',
    'gram of nh4cl',
    'nh 4 cl',
  ],
  inputs: {
    water_volume: systemVolume,
    rise_wanted: riseWanted,
    purity: quantity('fraction', {
      symbol: 'p',
      name: 'purity of the ammonium chloride',
      words: ['purity', 'pure', 'purity of', 'pure grade', 'grade', 'assay', 'percent pure', '% pure'],
      range: [0.5, 1, 'fraction'],
      default: { value: 1, unit: 'fraction', why: 'food or laboratory grade is above 99 %' },
      ask: 'How pure is the ammonium chloride?',
      example: '99 %',
    }),
    doses: dosesPlanned,
    animals: animalsInWater,
  },
  constants: { M: ammoniumChloride, M_N: nitrogen },
  rules: [noAmmoniaOntoAnimals],
  steps: [
    step('m_N', 'V*dN', 'mass', 'nitrogen wanted'),
    step('m', 'm_N*M/(M_N*p)', 'mass', 'ammonium chloride, one nitrogen in each'),
    step('m_k', 'k*m', 'mass', 'for all doses planned'),
  ],
  results: {
    dose_mass: result('m', 'mass', 'ammonium chloride a dose', { units: GRAMS }),
    total_mass: result('m_k', 'mass', 'for all doses planned', { units: GRAMS }),
  },
  headline: [
    {
      text: '{dose_mass} of ammonium chloride raises {water_volume} by {dN}; {total_mass} do for {doses} doses.',
      when: { given: 'doses' },
    },
    { text: '{dose_mass} of ammonium chloride raises {water_volume} by {dN} of ammonia (as nitrogen).' },
  ],
  cautions: [
    neverWithAnimals,
    noBleachWithAmmonia,
    measureBeforeDosing,
    caution(
      'note',
      'A kit that prints NH₃ shows this as 1.22 times as much. No more than 2 mg/L is needed: at pH 8.2 it already holds 0.15 mg/L of free ammonia.',
    ),
    handleChemicals,
  ],
  sources: [
    MOLAR_MASS_SOURCE,
    'dose of 1 to 2 mg/L: common practice; free ammonia slows nitrite oxidisers from about 0.1 to 1 mg/L: Anthonisen et al. 1976 (figures from memory)',
  ],
  examples: [
    'how much ammonium chloride for 400 L to 2 ppm',
    'ammonium chloride dose for a fishless cycle in 75 gal',
    'grams of NH4Cl to get 120 gallons to 1.5 mg/L, 8 doses',
  ],
});
