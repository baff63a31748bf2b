import { caution } from '../calculation.js';

export const rockOnTheBase = caution(
  'caution',
  'Rock stands on the base or on a pad before the sand goes in: burrowers undermine what stands on sand, and nothing should lean on a pane.',
);

export const glueCures = caution(
  'note',
  'Glue and mortar hold only once they have cured, for as long as their maker says: do not trust a joint before that.',
);
