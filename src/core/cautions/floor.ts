import { caution } from '../calculation.js';

/** Pressure over a footprint and the figure a floor is designed for are not the same kind of number. */
export const pressureProvesNothing = caution(
  'note',
  'Floors are designed for about 1.9 kN/m² (40 psf) over the whole room at once. Every filled tank is above that under its own feet: being above proves nothing by itself, being below proves nothing either. Joists decide (structure floor).',
);

export const floorHidden = caution(
  'caution',
  'Size and grade of the joists, holes, notches, rot and what they rest on are not in this. Local code and a structural engineer outrank it; on an upper storey, in an old house or if anything is unknown, ask one first.',
);
