import { type Condition, caution, choice, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { kitZero } from '../inputs/nitrogen.js';
import { MOLAR_MASS_SOURCE, nitrogen } from '../molar-masses.js';

/** Nitrate kits count nitrite as well, and harder than nitrate. */
const USABLE = 'n <= 0.0005';
const UNUSABLE: Condition = { not: USABLE };
const nitrateReading = { range: [0, 500, 'mg/L'], usual: [0, 200, 'mg/L'] } as const;

export const cycleNitrogenBalance = calculation({
  id: 'cycle.nitrogen_balance',
  slash: 'cycle balance',
  title: 'Nitrogen dosed and found',
  question: 'Did the nitrogen that was dosed arrive as nitrate?',
  part: 'cycle',
  cues: [
    'where did my ammonia go',
    'did it all become nitrate',
    'nitrogen add up',
    'nitrogen balance',
    'arrive as nitrate',
    'ammonia to nitrate',
    'turn into nitrate',
    'turned into nitrate',
    'become nitrate',
    'became nitrate',
    'end up as nitrate',
    'where did my nitrogen',
    'where did the ammonia go',
    'where did all the ammonia',
    'nitrogen dosed',
    'nitrogen recovery',
    'nitrate went from',
    'nitrate rose',
  ],
  inputs: {
    nitrogen_dosed: quantity('dissolved', {
      symbol: 'N_d',
      name: 'ammonia dosed in all, as nitrogen',
      words: ['dosed', 'dosed in all', 'dosed in total', 'added', 'total dose', 'nitrogen'],
      range: [0, 200, 'mg/L'],
      aboveLow: true,
      usual: [0.5, 60, 'mg/L'],
      ask: 'How much ammonia was dosed in all, as nitrogen?',
      example: '6 mg/L',
    }),
    total_ammonia_nitrogen_end: quantity('dissolved', {
      symbol: 'a',
      name: 'total ammonia at the end, as nitrogen',
      words: ['ammonia', 'tan', 'ammonia now'],
      range: [0, 20, 'mg/L'],
      ask: 'What does the ammonia test read now, as nitrogen?',
      example: '0 mg/L',
    }),
    nitrite_nitrogen_end: quantity('dissolved', {
      symbol: 'n',
      name: 'nitrite at the end, as nitrogen',
      words: ['nitrite', 'no2', 'nitrite now'],
      range: [0, 60, 'mg/L'],
      ask: 'What does the nitrite test read now, as nitrogen?',
      example: '0 mg/L',
    }),
    nitrate_start: quantity('dissolved', {
      ...nitrateReading,
      symbol: 'c_1',
      name: 'nitrate at the start',
      words: ['nitrate from', 'nitrate was', 'from', 'start', 'started at', 'nitrate at the start', 'nitrate'],
      ask: 'What did the nitrate test read before the first dose?',
      example: '0.2 mg/L',
    }),
    nitrate_end: quantity('dissolved', {
      ...nitrateReading,
      symbol: 'c_2',
      name: 'nitrate at the end',
      words: ['to', 'nitrate now', 'nitrate is', 'now', 'end', 'nitrate at the end'],
      ask: 'What does the nitrate test read now?',
      example: '22 mg/L',
    }),
    nitrate_form: choice({
      name: 'nitrate counted as',
      ask: 'Does your kit count nitrate as NO3 or as nitrogen (N)?',
      default: 'as_no3',
      options: {
        as_no3: { label: 'NO3, the ion', gives: { M: 0.062004 } },
        as_nitrogen: {
          label: 'nitrogen (N)',
          words: ['nitrate n', 'no3 n', 'nitrate nitrogen'],
          gives: { M: 0.014007 },
        },
      },
      symbols: { M: 'kg/mol' },
      source: MOLAR_MASS_SOURCE,
    }),
  },
  constants: { M_N: nitrogen },
  steps: [
    step('N_3', '(c_2 - c_1)*M_N/M', 'dissolved', 'nitrogen that came as nitrate'),
    step('N_0', 'a + n', 'dissolved', 'nitrogen still ammonia and nitrite'),
    step('N_f', 'N_0 + N_3', 'dissolved', 'nitrogen found', USABLE),
    step('q', 'N_f/N_d', 'ratio', 'found over dosed', USABLE),
  ],
  results: {
    nitrogen_found: result('N_f', 'dissolved', 'nitrogen found'),
    recovery: result('q', 'ratio', 'found over dosed', { figures: 2 }),
    nitrogen_not_nitrate: result('N_0', 'dissolved', 'still ammonia and nitrite'),
  },
  headline: [
    {
      text: 'The nitrate reading cannot be used yet: nitrite at {n} counts in it, and harder. {nitrogen_not_nitrate} of the {nitrogen_dosed} dosed is still ammonia and nitrite; try again when nitrite is below 0.5.',
      when: UNUSABLE,
    },
    {
      text: 'In balance: {nitrogen_found} of the {nitrogen_dosed} dosed is found ({recovery} of it), as near as kits can tell.',
      when: 'q >= 0.7 and q <= 1.2',
    },
    {
      text: 'Less is found than was dosed, {recovery} of it: algae took it, bacteria without air did, water was changed, or a dose was smaller than thought.',
      when: 'q < 0.7',
    },
    {
      text: 'More is found than was dosed, {recovery} times: rock or food gives off ammonia too, or the nitrate kit counts nitrite.',
    },
  ],
  cautions: [
    caution('note', 'Kits are good to about 20 %: between 0.7 and 1.2 nothing can be read into it (common practice).'),
    caution(
      'note',
      'Nitrate is counted as NO₃; a kit that prints nitrate-N shows 4.43 times less: say so if yours does.',
      {
        assumed: 'nitrate_form',
      },
    ),
    { ...kitZero, when: { any: ['a <= 0', 'n <= 0'] } },
  ],
  sources: [
    'mass balance of nitrogen',
    'limits of 0.7 and 1.2, and of 0.5 mg/L of nitrite: common practice, no published source found',
  ],
  examples: [
    'did my ammonia turn into nitrate? dosed 6 mg/L, ammonia 0, nitrite 0, nitrate from 0.2 to 22 ppm',
    'nitrogen balance: dosed 8 ppm in all, ammonia 0 ppm, nitrite 2 ppm, nitrate from 0 to 50 ppm',
    'where did the ammonia go: dosed 10 ppm, nitrate from 5 to 20 ppm, ammonia 0, nitrite 0',
  ],
});
