import { caution } from '../calculation.js';

export const topoffIsPlumbing = caution(
  'note',
  'A valve on a live water line is plumbing: local code, its backflow rules and a licensed plumber come first.',
);

export const testTheCutOff = caution(
  'caution',
  'Test it standing there: lift the floats by hand, shut the drains with the pump on, and see what really stops the water.',
);

/** For calculations with the top-off rate `q`. 60 L/h is four times a large membrane. */
export const tooFastForMembrane = caution(
  'note',
  'That is fast for a membrane line: membranes are rated in gallons a day, not an hour. A pump from a reservoir may well be that fast.',
  'q > q_fast',
);
