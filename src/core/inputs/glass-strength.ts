import { gravity, heavySeawater } from '../constants.js';

/** What an annealed float pane is judged by. */
export const strengthConstants = {
  g: gravity,
  rho_h: heavySeawater,
  sigma_b: { value: 19.2e6, unit: 'Pa', name: 'bending strength of float glass taken here (common practice)' },
  n_0: { value: 3.8, unit: '1', name: 'usual safety factor (common practice)' },
};

/** 0.29*45/1.8 MPa: annealed glass under a load that stays. */
export const LONG_LOAD_LIMIT = 7_250_000;

export const STRENGTH_SOURCES = [
  'bending strength 19.2 MPa and a factor of 3.8: common practice, no source',
  'annealed glass under permanent load, 0.29*45/1.8 = 7.25 MPa: EN 16612 (from memory)',
];
