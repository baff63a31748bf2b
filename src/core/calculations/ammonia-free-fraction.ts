import { caution, result, step } from '../calculation.js';
import { neverRaiseThePh, phDecides } from '../cautions/free-ammonia.js';
import { calculation } from '../define.js';
import {
  FREE_AMMONIA_SOURCES,
  freeAmmoniaConstants,
  freeAmmoniaInputs,
  freeShareSteps,
  THRESHOLD_SOURCES,
} from '../inputs/free-ammonia.js';

export const ammoniaFreeFraction = calculation({
  id: 'ammonia.free_fraction',
  slash: 'water free-ammonia-share',
  title: 'Free share of the ammonia',
  question: 'What share of the ammonia is the free, poisonous form at this pH, temperature and salinity?',
  part: 'chemistry',
  cues: [
    'what percent',
    'what share',
    'what fraction',
    'at ph',
    '~toxic',
    '~free',
    'share of ammonia',
    'share of the ammonia',
    'percent of ammonia',
    'percent of the ammonia',
    'fraction of ammonia',
    'fraction of the ammonia',
    'how much of the ammonia',
    'how much of my ammonia',
    'ammonia is free',
    'ammonia is toxic',
    'ammonia is un-ionized',
    'ammonia is unionized',
    'free ammonia percent',
    'free ammonia percentage',
    'toxic share',
    'toxic fraction',
    'un-ionised share',
    'unionized fraction',
    'free share',
    'which ammonia is dangerous',
    'what total ammonia is',
  ],
  inputs: freeAmmoniaInputs,
  constants: {
    ...freeAmmoniaConstants,
    c_1: { value: 0.00002, unit: 'kg/m^3', name: 'free ammonia nitrogen to look into, 0.02 mg/L' },
    c_2: { value: 0.0001, unit: 'kg/m^3', name: 'free ammonia nitrogen to act on, 0.1 mg/L' },
    up: { value: 0.2, unit: '1', name: 'how far off a pH may well be read' },
  },
  steps: [
    ...freeShareSteps,
    step('f_up', '1/(1 + 10^(pK - pH - up))', 'fraction', 'free share with the pH 0.2 higher'),
    step('N_1', 'c_1/f', 'dissolved', 'total ammonia, as nitrogen, to look into'),
    step('N_2', 'c_2/f', 'dissolved', 'total ammonia, as nitrogen, to act on'),
  ],
  results: {
    free_fraction: result('f', 'fraction', 'free share of the ammonia', { low: 'f_low', high: 'f_high', figures: 2 }),
    free_fraction_low: result('f_low', 'fraction', 'free share, low end', { figures: 2 }),
    free_fraction_high: result('f_high', 'fraction', 'free share, high end', { figures: 2 }),
    free_fraction_ph_up: result('f_up', 'fraction', 'free share with the pH 0.2 higher', { figures: 2 }),
    total_to_look_into: result('N_1', 'dissolved', 'total ammonia, as nitrogen, that makes 0.02 mg/L free', {
      figures: 2,
    }),
    total_to_act_on: result('N_2', 'dissolved', 'total ammonia, as nitrogen, that makes 0.1 mg/L free', { figures: 2 }),
  },
  headline: [
    {
      text: 'The free, poisonous share of the ammonia is {free_fraction:range}, more than a tenth: look into it from {total_to_look_into} of total ammonia (as nitrogen) on, act at once from {total_to_act_on}.',
      when: 'f > 0.1',
    },
    {
      text: 'The free, poisonous share of the ammonia is {free_fraction:range}: look into it from {total_to_look_into} of total ammonia (as nitrogen) on, act at once from {total_to_act_on}.',
    },
  ],
  cautions: [
    phDecides,
    { ...neverRaiseThePh, when: 'f > 0.03' },
    caution('note', 'Salinity was not given and taken as 35 ppt; tables for fresh water are a fifth too high for it.', {
      assumed: 'salinity',
    }),
    caution(
      'note',
      'Below 5 ppt this form leaves what it was made for; fresh water has tables of its own.',
      'S < 0.005',
    ),
    caution(
      'note',
      'Arithmetic, no diagnosis: sick animals are for a veterinarian or a person who keeps such animals.',
    ),
  ],
  sources: [...FREE_AMMONIA_SOURCES, ...THRESHOLD_SOURCES],
  examples: [
    'what percent of ammonia is toxic at pH 8.2, 78F, 35 ppt',
    'how much of the ammonia is free at ph 7.8 and 24 C',
    'free share of ammonia: pH 8.4, 26 °C, salinity 33 ppt',
  ],
});
