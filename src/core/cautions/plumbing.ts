import { caution } from '../calculation.js';

export const testDrainsBeforeTrust = caution(
  'caution',
  'Before you trust it: run it on water alone, shut the main drain by hand, stand there, and watch where the water goes. Fixed plumbing follows local code and the maker’s drawings.',
);
