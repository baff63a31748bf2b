import { caution } from '../calculation.js';

export const secondCutOut = caution(
  'caution',
  'Never trust one thermostat: run heaters through a controller of its own as a second cut-out, set a little above the target.',
);

export const heaterElectrics = caution(
  'caution',
  'Mains power next to salt water can kill: earthed sockets behind a GFCI or RCD, a drip loop on every lead, and local code or a licensed electrician for anything fixed.',
);

export const heaterPlace = caution(
  'caution',
  'Put heaters where flow never stops and the level never drops, and unplug them before a water change: a heater that runs dry can burst.',
);

export const lossIsRough = caution(
  'note',
  'Evaporation carries about half of the heat and is known only roughly: take the loss as right to about a quarter. No measurement on reef tanks was found.',
);

/** @param symbol the coldest room worked out */
export const roomSearchEnds = (symbol: string) =>
  caution(
    'note',
    'A room of −5 °C is the end of this search: what is shown as −5 °C (23 °F) may be colder.',
    `${symbol} <= 268.16`,
  );

/** @param symbol the water temperature worked out */
export const waterSearchEnds = (symbol: string) =>
  caution(
    'note',
    'Water of 95 °C is the end of this search: what is shown as 95 °C (203 °F) would be hotter still.',
    `${symbol} >= 368.14`,
  );
