import { drainSiphon } from './drain-siphon.js';
import { volumeRectangular } from './volume-rectangular.js';

export const calculations = [drainSiphon, volumeRectangular];
