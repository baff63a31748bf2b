import { caution } from '../calculation.js';

export const pullThePlug = caution(
  'caution',
  'Test it: stand there, pull the plug of the return pump, and watch where the sump stops. Do it again after every change of the plumbing.',
);

export const holesClog = caution(
  'caution',
  'Siphon-break holes clog: clean them monthly. A check valve is a helper, never the plan.',
);

export const othersEmptyToo = caution(
  'note',
  'Skimmers, reactors and a raised refugium that drain into the sump come on top: add their water to the pipes.',
);
