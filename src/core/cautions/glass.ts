import { caution } from '../calculation.js';

export const notTheAveragePane = caution(
  'caution',
  'A check of plain new glass, not a design: chips, scratches, an uneven stand, old silicone and lifting break tanks, and nothing here looks at the joints. Fill it outside or on a drained floor first and leave it for days.',
);

export const neverDrillTempered = caution(
  'note',
  'Tempered panes cannot be drilled or cut, and are not what this is about.',
);
