import { caution } from '../calculation.js';

/** Wherever a unit runs by itself. */
export const floodsStartHere = caution(
  'caution',
  'Floods start here: a float valve with an automatic shut-off, a leak sensor in a tray, and never a container that fills unwatched.',
);

export const drainAndBackflow = caution(
  'note',
  'The waste line ends with an air gap above the drain; for a saddle valve or a tee in the supply ask a plumber and keep to the local backflow rules.',
);

/** What a TDS meter cannot see. */
export const meterBlind = caution(
  'note',
  'A TDS meter does not see chlorine, silicate or ammonia: test the water after the carbon for total chlorine, and product made from chloraminated tap water for ammonia.',
);
