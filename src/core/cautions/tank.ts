import { caution } from '../calculation.js';

export const tradeSizes = caution('note', 'A trade size (“a 90 gallon tank”) is a label, not a volume: measure.');

export const fullTankIsHeavy = caution(
  'caution',
  'Filled, this weighs more than a kilogram a litre with its glass and rock. Whether the floor carries it is a question for its joists, not for a pressure: ask a structural engineer when in doubt.',
);

/** For calculations with the pane thickness `t`, the freeboard `fb`. */
export const readAsInsideSizes = caution(
  'note',
  'No glass thickness was given, so these count as inside sizes. Outside sizes hold less: tell me how thick the panes are.',
  't == 0',
);

export const filledToTheRim = caution(
  'note',
  'No freeboard was given, so this is filled to the rim: tell me how far below it the water stands.',
  'fb == 0',
);

export const solidsTakeTheirShare = caution(
  'note',
  'Rock, sand and an overflow box take their share of this: volume displacement takes them off, volume system adds the sump.',
);
