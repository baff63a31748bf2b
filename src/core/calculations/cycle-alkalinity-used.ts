import { caution, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { alkalinityNow } from '../inputs/alkalinity.js';
import { systemVolume } from '../inputs/system-water.js';
import { MOLAR_MASS_SOURCE, nitrogen, oxygen, sodiumBicarbonate } from '../molar-masses.js';

const CACO3 = { metric: 'mg/L CaCO3', us: 'mg/L CaCO3' };

export const cycleAlkalinityUsed = calculation({
  id: 'cycle.alkalinity_used',
  slash: 'cycle alkalinity',
  title: 'Alkalinity and oxygen used by the cycle',
  question: 'How much alkalinity and oxygen does it take to turn ammonia into nitrate?',
  part: 'cycle',
  cues: [
    'nitrifying',
    'lower my alkalinity',
    'alkalinity used by',
    'alkalinity used by the cycle',
    'alkalinity does the cycle',
    'alk does the cycle',
    'cycle use alkalinity',
    'cycling use',
    'cycle eat',
    'nitrification use',
    'nitrification alkalinity',
    'alkalinity for nitrification',
    'alkalinity while cycling',
    'alk during cycle',
    'alkalinity during the cycle',
    'alkalinity to oxidise',
    'alkalinity to oxidize',
    'oxygen used',
    'oxygen for nitrification',
    'ammonia use up alkalinity',
    'acid from',
    'cycling eat',
    'how much alk',
    'how much alkalinity',
    'use up while cycling',
    'eat up alk',
    'eat alk',
    'use up alk',
    'nitrification',
  ],
  inputs: {
    nitrogen_oxidised: quantity('dissolved', {
      symbol: 'N',
      name: 'ammonia turned into nitrate, as nitrogen',
      words: ['ammonia', 'nitrogen', 'dosed', 'oxidised', 'oxidized', 'dose', 'of ammonia'],
      range: [0, 200, 'mg/L'],
      aboveLow: true,
      usual: [0.5, 60, 'mg/L'],
      ask: 'How much ammonia was or will be turned into nitrate, as nitrogen?',
      example: '2 mg/L',
    }),
    alkalinity_now: alkalinityNow,
    water_volume: quantity('volume', { ...systemVolume, needed: false }),
  },
  constants: {
    M_N: nitrogen,
    M_O2: oxygen,
    M_b: sodiumBicarbonate,
    // 7 dKH in equivalents.
    A_floor: { value: 140 / 56.077, unit: 'mol/m^3', name: 'alkalinity to stay above, 7 dKH' },
  },
  steps: [
    step('n', 'N/M_N', 'amount in water', 'nitrogen, moles'),
    step('B', '2*n', 'alkalinity', 'alkalinity used, two acids from each ammonium'),
    step('O', '2*n*M_O2', 'dissolved', 'oxygen used, two for each ammonium'),
    step('A_end', 'A_1 - B', 'alkalinity', 'alkalinity afterwards'),
    step('m_b', 'V*B*M_b', 'mass', 'sodium bicarbonate that makes up for it'),
  ],
  results: {
    alkalinity_used: result('B', 'alkalinity', 'alkalinity used', { figures: 2 }),
    alkalinity_used_caco3: result('B', 'alkalinity', 'alkalinity used, as calcium carbonate', { units: CACO3 }),
    oxygen_used: result('O', 'dissolved', 'oxygen used'),
    alkalinity_after: result('A_end', 'alkalinity', 'alkalinity afterwards'),
    bicarbonate_mass: result('m_b', 'mass', 'sodium bicarbonate that makes up for it', {
      units: { metric: 'g', us: 'g' },
    }),
  },
  headline: [
    {
      text: 'More than is there: {nitrogen_oxidised} of ammonia would use {alkalinity_used} of the {alkalinity_now}, and the cycle stops when it runs out. Refill first.',
      when: 'A_end <= 0',
    },
    {
      text: 'It uses {alkalinity_used} and leaves {alkalinity_after}, under the 7 dKH that a cycle should keep (common practice): refill first.',
      when: 'A_end < A_floor',
    },
    { text: 'It uses {alkalinity_used} and leaves {alkalinity_after}, which is enough.', when: 'A_end >= A_floor' },
    {
      text: 'Turning {nitrogen_oxidised} of ammonia into nitrate uses {alkalinity_used} of alkalinity and {oxygen_used} of oxygen.',
    },
  ],
  cautions: [
    caution(
      'caution',
      'Water in balance with air holds only about 7 mg/L of oxygen: air must replace what this takes, so keep the surface moving.',
      'O > 0.003',
    ),
    caution('note', 'Keep it above 7 dKH while cycling, and test it weekly; water dose says how much to add.'),
    caution('note', 'Growth of the bacteria is not counted; it saves a little of both.'),
  ],
  sources: ['NH₄⁺ + 2 O₂ → NO₃⁻ + 2 H⁺ + H₂O: stoichiometry', MOLAR_MASS_SOURCE],
  examples: [
    'how much alkalinity does the cycle use for 2 ppm ammonia',
    'alkalinity used by the cycle after 10 mg/L ammonia, alk now 8 dKH',
    'nitrification alkalinity for 4 mg/L of ammonia in 400 L',
  ],
});
