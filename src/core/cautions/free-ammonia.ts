import { caution } from '../calculation.js';

export const phDecides = caution(
  'note',
  'The pH decides: 0.1 more is 1.24 times as much free ammonia, 0.2 more 1.5 times. Calibrate the meter; the range covers the formulas and pH scales, not a wrong reading.',
);

export const neverRaiseThePh = caution(
  'caution',
  'Do not raise the pH while there is ammonia: a buffer dose from 8.0 to 8.4 more than doubles the free part.',
);
