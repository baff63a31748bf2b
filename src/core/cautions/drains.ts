import { caution } from '../calculation.js';

export const sparePath = caution(
  'caution',
  'A drain with no spare path floods the display at the pump’s rate when it clogs: keep an emergency drain that can take all of the flow.',
);

export const strainers = caution(
  'note',
  'Put a strainer on every inlet, keep snails and algae off it, and leave no valve where somebody can shut it by mistake.',
);

export const airInThePipe = caution(
  'note',
  'Air in the pipe moves the flow of an open drain by about 20 % either way.',
);
