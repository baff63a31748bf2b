import { caution } from '../calculation.js';

export const tradeSizes = caution('note', 'A trade size (“a 90 gallon tank”) is a label, not a volume: measure.');

export const fullTankIsHeavy = caution(
  'caution',
  'Filled, this weighs more than a kilogram a litre with its glass and rock. Whether the floor carries it is a question for its joists, not for a pressure: ask a structural engineer when in doubt.',
);
