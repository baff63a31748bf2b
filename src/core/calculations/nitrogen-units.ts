import { type Condition, caution, choice, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { ammonia, ammonium, MOLAR_MASS_SOURCE, nitrate, nitrite, nitrogen } from '../molar-masses.js';

const of = (species: string): Condition => ({ is: ['species', species] });
const as = (form: string): Condition => ({ is: ['form', form] });
const byMoles: Condition = { given: 'concentration_molar' };
const asNitrogen: Condition = as('nitrogen');
const ofAmmonia = of('ammonia');

/**
 * The longest wording found decides, so that a message that names both what it has and what it wants, “10 ppm NO3 as
 * nitrogen”, is read by what it has.
 */
const ION = ['no3', 'no2'].flatMap((ion) => [
  ion,
  `as ${ion}`,
  `nitrate as ${ion}`,
  `nitrite as ${ion}`,
  `${ion} as nitrogen`,
  `${ion} to nitrogen`,
  `${ion} in nitrogen`,
  `${ion} as n`,
  `${ion} to n`,
  `${ion} to ${ion} n`,
  `${ion} as ${ion} n`,
]);
const NITROGEN = [
  'as n',
  'as nitrogen',
  'tan',
  'ammonia nitrogen',
  'nitrate nitrogen',
  'nitrite nitrogen',
  'nitrate n',
  'nitrite n',
  ...['no3', 'no2', 'nh3', 'nh4'].flatMap((ion) => [
    `${ion} n`,
    `${ion} n as ${ion}`,
    `${ion} n to ${ion}`,
    `${ion} n in ${ion}`,
  ]),
];

export const nitrogenUnits = calculation({
  id: 'nitrogen.units',
  slash: 'water nitrogen',
  title: 'Ammonia, nitrite and nitrate in other units',
  question: 'What is a reading of ammonia, nitrite or nitrate as nitrogen, as the ion, and in micromoles?',
  part: 'chemistry',
  cues: [
    'nitrate nitrogen',
    'nitrite nitrogen',
    '~as nitrogen',
    '~as n',
    'to nitrogen',
    'no3 n',
    'no2 n',
    'nh4 n',
    'nh3 n',
    'as no3',
    'to no3',
    'in no3',
    'as no2',
    'to no2',
    'in no2',
    '~as nh4',
    '~as nh3',
    'that as nitrogen',
    'what is that as',
    'convert nitrate',
    'convert nitrite',
    'convert no3',
    'convert ammonia',
    'nitrate in umol',
    'nitrate in micromol',
    'nitrate units',
    'nitrogen units',
    'nitrate as',
    'is that nitrate',
    'nitrogen or',
    'n or no3',
    'no3 or n',
    'micromolar',
    'in umol',
    'in micromol',
    '~umol',
    'to ppm',
    'nitrate to',
  ],
  inputs: {
    concentration: quantity('dissolved', {
      symbol: 'c',
      name: 'reading',
      words: ['nitrate', 'nitrite', 'ammonia', 'no3', 'no2', 'nh3', 'nh4', 'reading', 'reads', 'convert', 'is'],
      range: [0, 500, 'mg/L'],
      usual: [0.01, 200, 'mg/L'],
      ask: 'What is the reading?',
      example: '10 mg/L, or 160 µmol/L',
    }),
    concentration_molar: quantity('amount in water', {
      symbol: 'm',
      name: 'reading in micromoles',
      words: ['micromol', 'umol', 'micromolar'],
      range: [0, 36_000, 'umol/L'],
      standsFor: 'concentration',
      needed: false,
      ask: 'What is the reading in micromoles a litre?',
      example: '160 µmol/L',
    }),
    species: choice({
      name: 'what was measured',
      ask: 'Is that ammonia, nitrite or nitrate?',
      options: {
        ammonia: { label: 'ammonia', words: ['nh3', 'nh4', 'ammonium', 'tan', 'nh3 n', 'nh4 n'] },
        nitrite: { label: 'nitrite', words: ['no2', 'no2 n'] },
        nitrate: { label: 'nitrate', words: ['no3', 'no3 n'] },
      },
    }),
    form: choice({
      name: 'how the kit counts it',
      ask: 'Does the kit count it as nitrogen (N), or as the whole ion (NO3, NO2; for ammonia NH3 or NH4)?',
      needed: { not: byMoles },
      options: {
        ion: { label: 'the ion: NO3 or NO2', words: ION },
        nitrogen: { label: 'nitrogen (N)', words: NITROGEN },
        nh3: { label: 'NH3', words: ['as nh3', 'ammonia as nh3', 'nh3 as nitrogen', 'nh3 to nitrogen'] },
        nh4: { label: 'NH4', words: ['as nh4', 'ammonium', 'ammonia as nh4', 'nh4 as nitrogen', 'nh4 to nitrogen'] },
      },
    }),
  },
  oneOf: [
    ['concentration', 'species', 'form'],
    ['concentration_molar', 'species'],
  ],
  constants: { M_N: nitrogen, M_NO3: nitrate, M_NO2: nitrite, M_NH4: ammonium, M_NH3: ammonia },
  rules: [
    {
      refuse: { all: [{ not: ofAmmonia }, { any: [as('nh3'), as('nh4')] }, { given: 'species' }] },
      because: 'NH3 and NH4 are ways to count ammonia; nitrate and nitrite count as the ion or as nitrogen.',
      about: 'form',
    },
  ],
  steps: [
    step('N', 'm*M_N', 'dissolved', 'as nitrogen', byMoles),
    step('N', 'c', 'dissolved', 'as nitrogen', asNitrogen),
    step('N', 'c*M_N/M_NO3', 'dissolved', 'as nitrogen', of('nitrate')),
    step('N', 'c*M_N/M_NO2', 'dissolved', 'as nitrogen', of('nitrite')),
    step('N', 'c*M_N/M_NH3', 'dissolved', 'as nitrogen', as('nh3')),
    step('N', 'c*M_N/M_NH4', 'dissolved', 'as nitrogen', ofAmmonia),
    step('i', 'N*M_NO3/M_N', 'dissolved', 'as NO₃', of('nitrate')),
    step('i', 'N*M_NO2/M_N', 'dissolved', 'as NO₂', of('nitrite')),
    step('i', 'N*M_NH4/M_N', 'dissolved', 'as NH₄', ofAmmonia),
    step('i_3', 'N*M_NH3/M_N', 'dissolved', 'as NH₃', ofAmmonia),
    step('u', 'N/M_N', 'amount in water', 'moles of it, and of nitrogen'),
  ],
  results: {
    as_nitrogen: result('N', 'dissolved', 'as nitrogen (N)'),
    as_ion: result('i', 'dissolved', 'as the ion: NO₃, NO₂ or NH₄'),
    as_nh3: result('i_3', 'dissolved', 'as NH₃'),
    micromolar: result('u', 'amount in water', 'in micromoles'),
  },
  headline: [
    {
      text: 'Ammonia: {as_nitrogen} as nitrogen is {as_nh3} as NH₃, {as_ion} as NH₄, or {micromolar}.',
      when: ofAmmonia,
    },
    { text: 'Nitrite: {as_nitrogen} as nitrogen is {as_ion} as NO₂, or {micromolar}.', when: of('nitrite') },
    { text: 'Nitrate: {as_nitrogen} as nitrogen is {as_ion} as NO₃, or {micromolar}.' },
  ],
  cautions: [
    caution(
      'note',
      'Read the kit’s leaflet: the same water reads 10 on a nitrate-nitrogen kit and 44 on a NO₃ kit, and low-range kits often count nitrogen.',
      of('nitrate'),
    ),
    caution(
      'note',
      'Nitrate kits count nitrite too, and harder than nitrate: with nitrite about, do not believe the nitrate.',
      of('nitrate'),
    ),
    caution('note', 'Nitrite read as NO₂ is 3.28 times the same water read as nitrogen.', of('nitrite')),
    caution(
      'note',
      'This is total ammonia. How much of it is the free, poisonous form depends on the pH: water free-ammonia works that out.',
      ofAmmonia,
    ),
    caution('note', 'A kit that reads free ammonia alone is another thing: do not convert it as total.', ofAmmonia),
    caution(
      'note',
      'A paper’s mg/kg (or ppm by mass) of seawater is 2.3 % less than mg/L for the same water.',
      'c > 0',
    ),
  ],
  sources: [MOLAR_MASS_SOURCE],
  examples: [
    'what is 10 ppm nitrate nitrogen as NO3',
    'convert 0.25 mg/L nitrite as NO2 to nitrogen',
    'my kit says 2 ppm ammonia as NH4, what is that as nitrogen',
  ],
});
