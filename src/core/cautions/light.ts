import { caution } from '../calculation.js';

export const changeLightSlowly = caution(
  'caution',
  'Change light in small steps and one thing at a time. If corals pale, shrink or stay closed after more light, go back to the last step and wait a week.',
);

export const shieldEyes = caution(
  'caution',
  'Never look into bright blue, violet or UV LEDs (blue-light and UV hazard, IEC 62471): shield your eyes and work with the lamp dimmed or off.',
);

export const lampOverWater = caution(
  'caution',
  'A lamp over water needs a guard or cover, a second tether, a drip loop and a GFCI/RCD; no driver or power strip under or over open water. Fixed wiring is a licensed electrician’s work under local code.',
);

export const letLampBreathe = caution(
  'note',
  'Do not block a lamp’s fan or vents. A lamp hung lower runs hotter and catches more splash.',
);

export const timersHaveLimits = caution(
  'note',
  'LED drivers draw a surge that can weld a small timer’s contacts: use a timer with a motor or ballast rating, plugged in above the waterline with a drip loop behind a GFCI/RCD.',
);

export const clocksJump = caution(
  'note',
  'At daylight saving a timer that doesn’t know stays an hour off; mechanical timers lag with every power cut, and connected lamps may run on UTC. Check the clocks then.',
);

export const meterUnderBlue = caution(
  'note',
  'Under blue LEDs a meter can be tens of percent off, and a sensor calibrated in air reads low under water: apply the maker’s corrections.',
);

export const readingIsForOnePlace = caution(
  'note',
  'Light differs 2 to 5 times from place to place in a tank: this is for the spot where the reading was taken, pumps running.',
);
