import { caution } from '../calculation.js';

/** For anything weighed out and dissolved by hand. */
export const handleChemicals = caution(
  'note',
  'Gloves and eye protection; add the solid to water, never water to the solid; food grade or better, no perfume or anticaking agent; out of reach of children.',
);

export const oneStrangeReading = caution(
  'note',
  'One strange reading is a kit error until a second test repeats it: test again before you act.',
);
