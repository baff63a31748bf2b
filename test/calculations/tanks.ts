import type { Said } from './worked.js';

/** 150 × 60 cm, 50 cm of water, 12 mm glass, half-humid air: sizes only, so that each test adds its own temperatures. */
export const longTank: Said = {
  humidity: [0.5, 'fraction'],
  length: [150, 'cm'],
  width: [60, 'cm'],
  water_height: [50, 'cm'],
  glass_thickness: [12, 'mm'],
};

export const sump: Said = {
  sump_length: [90, 'cm'],
  sump_width: [45, 'cm'],
  sump_water_height: [25, 'cm'],
  sump_glass_thickness: [10, 'mm'],
};
