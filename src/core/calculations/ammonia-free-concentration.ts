import { type Condition, caution, quantity, result, step } from '../calculation.js';
import { neverRaiseThePh, phDecides } from '../cautions/free-ammonia.js';
import { calculation } from '../define.js';
import {
  FREE_AMMONIA_SOURCES,
  freeAmmoniaConstants,
  freeAmmoniaInputs,
  freeShareSteps,
  THRESHOLD_SOURCES,
} from '../inputs/free-ammonia.js';
import { ammoniaReadingForm } from '../inputs/kit-form.js';
import { kitZero, totalAmmonia } from '../inputs/nitrogen.js';
import { ammonia, nitrogen } from '../molar-masses.js';

/** A kit that reads the free part is not multiplied again. */
const free: Condition = { all: [{ given: 'ammonia' }, { is: ['form', 'free_only'] }] };
const water = ['ph', 'temperature'];
/** As nitrogen, in kg/m³: look into it from 0.02 mg/L on, act from 0.1. */
const HIGH = 'c_N > 0.0001';
const RAISED = 'c_N > 0.00002';

export const ammoniaFreeConcentration = calculation({
  id: 'ammonia.free_concentration',
  slash: 'water free-ammonia',
  title: 'Free ammonia of a test',
  question: 'How much free, poisonous ammonia does an ammonia reading mean at this pH and temperature?',
  part: 'chemistry',
  general: true,
  cues: [
    'free ammonia',
    'toxic ammonia',
    'un-ionized ammonia',
    'unionized ammonia',
    'un-ionised ammonia',
    'unionised ammonia',
    'ammonia deadly',
    'ammonia dangerous',
    'ammonia toxic',
    'ammonia bad',
    'ammonia too high',
    'ammonia safe',
    'ammonia ok',
    'is ammonia',
    'ammonia at ph',
    'ppm ammonia at',
    'will ammonia',
    'ammonia kill',
    'ammonia reads',
    'ammonia reading',
    'ammonia emergency',
    'ammonia spike',
    'at ph',
    '~dangerous',
    '~deadly',
    '~toxic',
    '~ammonia',
  ],
  inputs: {
    total_ammonia_nitrogen: quantity('dissolved', {
      ...totalAmmonia,
      symbol: 'N',
      name: 'total ammonia, as nitrogen',
      words: ['tan', 'total ammonia nitrogen', 'ammonia nitrogen', 'nh3 n', 'nh4 n'],
      ask: 'What is the total ammonia, as nitrogen?',
      example: '0.5 mg/L',
    }),
    ammonia: quantity('dissolved', {
      ...totalAmmonia,
      name: 'ammonia reading',
      words: ['ammonia', 'reads', 'reading', 'nh3', 'nh4', 'test'],
    }),
    form: ammoniaReadingForm,
    ...freeAmmoniaInputs,
  },
  oneOf: [
    ['ammonia', 'form', ...water],
    ['total_ammonia_nitrogen', ...water],
  ],
  constants: { ...freeAmmoniaConstants, M_N: nitrogen, M_A: ammonia },
  steps: [
    ...freeShareSteps,
    step('N', 'a*g', 'dissolved', 'total ammonia, as nitrogen'),
    step('c_N', 'a*M_N/M_A', 'dissolved', 'free ammonia that the kit reports, as nitrogen', free),
    step('N', 'c_N/f', 'dissolved', 'total ammonia, as nitrogen, that goes with it', free),
    step('c_N', 'N*f', 'dissolved', 'free ammonia, as nitrogen'),
    step('c_low', 'N*f_low', 'dissolved', 'free ammonia, low end', { not: free }),
    step('c_high', 'N*f_high', 'dissolved', 'free ammonia, high end', { not: free }),
    step('c', 'c_N*M_A/M_N', 'dissolved', 'free ammonia, as NH₃'),
  ],
  results: {
    free_ammonia_nitrogen: result('c_N', 'dissolved', 'free ammonia, as nitrogen', {
      low: 'c_low',
      high: 'c_high',
      figures: 2,
    }),
    free_ammonia: result('c', 'dissolved', 'free ammonia, as NH₃', { figures: 2 }),
    free_fraction: result('f', 'fraction', 'free share of the ammonia', { low: 'f_low', high: 'f_high', figures: 2 }),
    total_as_nitrogen: result('N', 'dissolved', 'total ammonia, as nitrogen'),
  },
  headline: [
    {
      text: 'Act now: free ammonia is {free_ammonia_nitrogen:range} as nitrogen, above the 0.1 at which to change water first and calculate later.',
      when: HIGH,
    },
    {
      text: 'Free ammonia is {free_ammonia_nitrogen:range} as nitrogen: above the 0.02 from which to look for the cause, below the 0.1 at which to act at once.',
      when: RAISED,
    },
    {
      text: 'The kit finds no ammonia, so no free ammonia follows from it.',
      when: 'N <= 0',
    },
    {
      text: 'Free ammonia is {free_ammonia_nitrogen:range} as nitrogen: within this check, which looks for a cause from 0.02 on.',
    },
  ],
  cautions: [
    caution(
      'stop',
      'Change water now (matched in temperature, salinity and no higher in pH), feed nothing, add air, and ask a person who keeps such animals; gasping or lying animals are for a veterinarian.',
      HIGH,
    ),
    caution(
      'caution',
      'Look for the cause: a dead animal, too much food, a filter that stopped, a tank that is not cycled. Test again in hours, not days.',
      { all: [RAISED, { not: HIGH }] },
    ),
    caution('caution', 'By the high end of the range it is above 0.1: treat it as that.', {
      all: ['c_high > 0.0001', { not: HIGH }],
    }),
    { ...neverRaiseThePh, when: RAISED },
    caution('note', 'The kit reads free ammonia, so it is not multiplied again.', free),
    { ...phDecides, when: { all: ['N > 0', { not: free }] } },
    { ...kitZero, when: 'N <= 0' },
    caution(
      'note',
      'Ammonia that a conditioner holds bound still colours most kits, and conditioners wear off: ask what your kit sees.',
      'N > 0',
    ),
  ],
  sources: [...FREE_AMMONIA_SOURCES, ...THRESHOLD_SOURCES],
  examples: [
    'is 0.5 ppm ammonia as NH3 dangerous at pH 8.2 and 78F',
    'free ammonia for TAN 1 mg/L, pH 8.1, 25 C, 35 ppt',
    'my ammonia reading is 0.25 ppm as nitrogen, pH 8.3, 26 °C: is the ammonia toxic',
  ],
});
