import { caution } from '../calculation.js';

export const drainsMustCarryIt = caution(
  'caution',
  'Every drop that goes up must come down: the drains must carry this flow, and the emergency drain all of it alone.',
);

export const throttleOutletOnly = caution(
  'note',
  'Turn a pump down at its setting or with a valve behind it, never on its inlet, and keep sponges off the inlet.',
);

export const curveIsGuessed = caution(
  'note',
  'The curve between the two label numbers is guessed, and a controllable pump follows it only at full setting: points from the maker’s chart are better, and slime will take some of it.',
  { not: { given: 'curve_points' } },
);

export const waterAndMains = caution(
  'caution',
  'Water and mains together kill: put the pump on a GFCI or RCD with a drip loop, and unplug it before a hand goes in.',
);
