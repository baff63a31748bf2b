import { caution } from '../calculation.js';
import { harmful } from '../inputs/water-change.js';

export const matchedWater = caution(
  'caution',
  'Match temperature within 1 °C, salinity within 0.5 ppt and alkalinity, and switch heaters and pumps off before the level falls below them.',
);

export const emergency = caution(
  'stop',
  'With animals in the water this is an emergency: change half of it now with matched water, feed nothing, aerate, find the cause, test again in hours, and ask a person who keeps such animals. Reckon afterwards.',
  harmful,
);

export const bigChange = caution(
  'caution',
  'More than 30 % at once wants matched water and a reason (common practice): a fast fall of nitrate starves corals.',
  { all: ['f > 0.3', { not: harmful }] },
);

export const ammoniaFirst = caution(
  'note',
  'Animals gasping, or ammonia showing: change water first and reckon later.',
  { not: harmful },
);

/** Test kits scatter more than a small change moves them. */
export const kitNoise = caution(
  'note',
  'Kits read within about 20 %, and say nitrate either as NO₃ or as nitrogen (4.43 times less): compare readings of one kit.',
);

export const rockReleases = caution(
  'note',
  'Rock and sand give phosphate back within days (nitrate little): the real fall is smaller than the mixing says (common practice).',
);
