import { choice } from '../calculation.js';
import { MOLAR_MASS_SOURCE } from '../molar-masses.js';

/** How an ammonia kit counts; the ratio turns its reading into nitrogen. A free-ammonia kit stands apart: it is not multiplied. */
export const ammoniaReadingForm = choice({
  name: 'what the kit reports',
  ask: 'What does the kit report: total ammonia as nitrogen (NH3-N, TAN), as NH3, as NH4, or the free ammonia alone?',
  options: {
    nitrogen: {
      label: 'total, as nitrogen (N)',
      words: ['as n', 'as nitrogen', 'nh3 n', 'nh4 n', 'tan', 'ammonia nitrogen', 'total ammonia nitrogen', 'nitrogen'],
      gives: { g: 1 },
    },
    nh3: { label: 'total, as NH3', words: ['as nh3', 'nh3'], gives: { g: 14.007 / 17.031 } },
    nh4: { label: 'total, as NH4', words: ['as nh4', 'nh4', 'ammonium'], gives: { g: 14.007 / 18.039 } },
    free_only: {
      label: 'free ammonia alone, as NH3',
      words: [
        'free ammonia kit',
        'free ammonia test',
        'free ammonia alone',
        'free ammonia only',
        'reads free',
        'reports free',
        'gas permeable',
      ],
    },
  },
  symbols: { g: '1' },
  source: MOLAR_MASS_SOURCE,
});
