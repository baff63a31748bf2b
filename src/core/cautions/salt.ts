import { caution } from '../calculation.js';

export const neverDrySaltOntoAnimals = caution(
  'stop',
  'Never put dry salt or half-dissolved mix into water with animals: it burns them. Dissolve it apart, and pour salt into water, never water onto salt.',
);

const measureTwice = caution(
  'caution',
  'Measure again with a second instrument before you correct anything: a wrong reading is the commonest cause.',
);

const moderatePace = caution(
  'caution',
  'One ppt a day is common practice with corals and invertebrates (no published source found); take half for echinoderms and new arrivals, and never go faster to make up for a slow drift. After an accident some hours old, ask a person who keeps such animals.',
  { all: [{ is: ['stocked', 'yes'] }, 'v*day <= 0.001001'] },
);

const allAtOnce = caution(
  'caution',
  'Reckoned for a system without animals, so in one go. With animals, 1 ppt a day at most (common practice).',
  { is: ['stocked', 'no'] },
);

const fasterThanPractice = caution(
  'caution',
  'More than 1 ppt a day is faster than common practice with corals and invertebrates; echinoderms and new arrivals stand half of it. Fish alone may take 2 downward.',
  { all: [{ is: ['stocked', 'yes'] }, 'v*day > 0.001001'] },
);

/** For a system whose salinity is brought up or down. */
export const beforeCorrecting = [measureTwice, allAtOnce, fasterThanPractice, moderatePace];
