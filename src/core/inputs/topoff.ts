import { quantity } from '../calculation.js';

/** Above this no home membrane runs. */
export const topoffConstants = {
  q_fast: { value: 60e-3 / 3600, unit: 'm^3/s', name: '60 L/h, more than home membranes give' },
};

/** What runs in while the top-off is open. */
const topoffRate = quantity('flow', {
  symbol: 'q',
  name: 'rate of the open top-off',
  words: [
    'top off',
    'topoff',
    'top up',
    'ato',
    'auto top off',
    'membrane',
    'ro',
    'rodi',
    'ro di',
    'ro line',
    'solenoid',
    'float valve',
    'adds',
    'fills at',
    'rate',
    'stuck',
  ],
  range: [0, 2000, 'L/h'],
  aboveLow: true,
  usual: [2, 400, 'L/h'],
  slips: [[2000, 1e9, 'That is more than a garden tap gives: is it litres or gallons a day?']],
  ask: 'How fast does water run in while the top-off is open? A membrane gives about what its label says a day.',
  example: '75 gal a day or 12 L/h',
  profile: 'topoff.rate',
});

/** What leaves by evaporation, which the top-off makes good. */
export const evaporation = quantity('water a day', {
  symbol: 'E',
  name: 'water that evaporates',
  words: ['evaporation', 'evaporates', 'evaporating', 'evap', 'top off', 'topoff', 'lose'],
  range: [0, 500, 'L/day'],
  aboveLow: true,
  ask: 'How much water evaporates a day? It is what you top off.',
  profile: 'water.evaporation',
});

/** The same where it only slows a flood. */
export const evaporationMeanwhile = quantity('water a day', {
  ...evaporation,
  words: ['evaporation', 'evaporates', 'evaporating', 'evap', 'lose'],
  aboveLow: false,
  usual: [0.5, 60, 'L/day'],
  default: { value: 0, unit: 'L/day', why: 'left out, which is on the cautious side' },
});

export const reservoirVolume = quantity('volume', {
  symbol: 'R',
  name: 'water in the top-off reservoir when full',
  words: [
    'reservoir',
    'ato reservoir',
    'top off reservoir',
    'top off container',
    'container',
    'jug',
    'bucket',
    'barrel',
    'tub',
    'bin',
    'ato tank',
  ],
  range: [0, 5000, 'L'],
  aboveLow: true,
  usual: [3, 250, 'L'],
  ask: 'How much water does the top-off reservoir hold?',
  example: '5 gal or 20 L',
  profile: 'topoff.reservoir_volume',
});

/** A controller that shuts the top-off after so long, whatever its sensor says. */
export const runTimeLimit = quantity('time', {
  symbol: 't_l',
  name: 'run-time limit of the top-off',
  words: [
    'run time limit',
    'run time',
    'runtime',
    'timeout',
    'time out',
    'cut off after',
    'max run',
    'limit',
    'shuts off after',
  ],
  range: [0, 24, 'h'],
  aboveLow: true,
  usual: [1, 120, 'min'],
  units: { metric: 'min', us: 'min' },
  needed: false,
  ask: 'After how long does the controller shut the top-off, whatever the sensor says?',
  example: '20 min',
  profile: 'topoff.run_time_limit',
});

/** Where top-off water comes from: a line that never ends, or a reservoir with a pump. */
export const topoffSource = {
  topoff_rate: quantity('flow', {
    ...topoffRate,
    default: {
      value: 30,
      unit: 'L/h',
      low: 5,
      high: 200,
      why: 'a small pump in the reservoir (our guess)',
      when: { given: 'reservoir_volume' },
    },
  }),
  reservoir_volume: quantity('volume', { ...reservoirVolume, needed: false }),
};
