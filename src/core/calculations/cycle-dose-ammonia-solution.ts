import { caution, choice, quantity, result, step } from '../calculation.js';
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
import { ammonia, MOLAR_MASS_SOURCE, nitrogen } from '../molar-masses.js';

const ML = { metric: 'mL', us: 'mL' };

export const cycleDoseAmmoniaSolution = calculation({
  id: 'cycle.dose_ammonia_solution',
  slash: 'cycle ammonia-solution',
  title: 'Ammonia solution for a fishless cycle',
  question: 'How many millilitres of household ammonia of a known strength bring the water to 2 mg/L?',
  part: 'cycle',
  cues: [
    'household ammonia',
    'ammonia solution',
    'liquid ammonia',
    'bottle of ammonia',
    'ammonia bottle',
    'ammonium hydroxide',
    'clear ammonia',
    'pure ammonia',
    '% ammonia',
    'percent ammonia',
    'ml of ammonia',
    'mls of ammonia',
    'drops of ammonia',
    'janitorial ammonia',
  ],
  inputs: {
    water_volume: systemVolume,
    rise_wanted: riseWanted,
    ammonia_mass_percent: quantity('fraction', {
      symbol: 'w',
      name: 'strength of the solution, ammonia by mass',
      words: ['strength', 'ammonia', 'solution', 'household ammonia', 'bottle', 'percent'],
      range: [0.01, 0.3, 'fraction'],
      usual: [0.01, 0.3, 'fraction'],
      ask: 'How strong is the ammonia, in per cent by mass? It stands on the label or the safety sheet.',
      example: '10 %',
    }),
    solution_density: quantity('density', {
      symbol: 'rho',
      name: 'density of the solution',
      words: ['density'],
      range: [880, 1000, 'kg/m3'],
      default: { formula: 'rho_ammonia(w)' },
      needed: false,
      ask: 'How dense is the solution?',
      example: '0.9575 g/mL',
    }),
    doses: dosesPlanned,
    additives: choice({
      name: 'what else is in it',
      ask: 'Is anything else in it: perfume, colour, soap?',
      default: 'none',
      options: {
        none: { label: 'nothing but ammonia and water', words: ['unscented', 'no additives', 'pure', 'clear'] },
        soap: {
          label: 'perfume or soap',
          words: [
            'scented',
            'lemon',
            'foams',
            'foamy',
            'sudsy',
            'suds',
            'soapy',
            'detergent',
            'surfactant',
            'perfume',
            'foaming',
          ],
        },
      },
    }),
    animals: animalsInWater,
  },
  constants: { M: ammonia, M_N: nitrogen },
  rules: [
    noAmmoniaOntoAnimals,
    {
      refuse: { is: ['additives', 'soap'] },
      because:
        'Not that one: perfume and soap stay in the rock. Use unscented ammonia that makes no lasting foam when shaken, or ammonium chloride (cycle dose).',
      about: 'additives',
    },
  ],
  steps: [
    step('m_N', 'V*dN', 'mass', 'nitrogen wanted'),
    step('m', 'm_N*M/M_N', 'mass', 'ammonia, one nitrogen in each'),
    step('v', 'm/(w*rho)', 'volume', 'solution that holds it'),
    step('v_k', 'k*v', 'volume', 'for all doses planned'),
  ],
  results: {
    dose_volume: result('v', 'volume', 'solution a dose', { units: ML }),
    total_volume: result('v_k', 'volume', 'for all doses planned', { units: ML }),
  },
  headline: [
    {
      text: '{dose_volume} of that ammonia raises {water_volume} by {dN}; {total_volume} do for {doses} doses.',
      when: { given: 'doses' },
    },
    { text: '{dose_volume} of {ammonia_mass_percent} ammonia raises {water_volume} by {dN} (as nitrogen).' },
  ],
  cautions: [
    neverWithAnimals,
    noBleachWithAmmonia,
    caution(
      'stop',
      'Above 10 % it burns skin, eyes and lungs: only for people trained with it. Buy weaker ammonia, or use ammonium chloride.',
      'w > 0.1000001',
    ),
    measureBeforeDosing,
    caution(
      'caution',
      'Corrosive, and the fumes bite: open a window, gloves and goggles, out of reach of children. Shake it first: lasting foam means soap, do not use it.',
    ),
  ],
  sources: [MOLAR_MASS_SOURCE, 'dose of 1 to 2 mg/L: common practice, no published source found'],
  examples: [
    'how much 10% household ammonia for 400 L to 2 ppm',
    'ml of ammonia solution 5 percent for 100 gal',
    'bottle of ammonia is 8 %, 250 L tank, how much to reach 2 mg/L',
  ],
});
