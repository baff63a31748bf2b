import { caution } from '../calculation.js';

/** Said with everything that is plugged in beside salt water. */
export const residualCurrent = caution(
  'caution',
  'Everything that touches water runs through residual-current protection (a 4 to 6 mA ground-fault breaker, or a 30 mA residual-current device), split over two so that one trip does not stop everything; press its test button monthly.',
);

export const dripLoops = caution(
  'note',
  'A drip loop on every lead, sockets above and beside the water and never under it: salt water follows a cable.',
);

export const licensedWiring = caution(
  'note',
  'Local rules and the makers’ instructions outrank this; a new circuit or a changed socket is a licensed electrician’s work.',
);

export const noStripsInChain = caution(
  'caution',
  'Never plug one power strip into another: the first cord carries all of it, and its plug is what burns.',
);
