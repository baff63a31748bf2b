import { caution } from '../calculation.js';

export const secondMethod = caution(
  'caution',
  'Check against a 35 ppt standard or a second instrument before you change the tank: a wrong reading is the commonest cause.',
);
