import { quantity } from '../calculation.js';

/** What the return pump really sends up, and every drain must carry down. */
export const returnFlow = quantity('flow', {
  symbol: 'Q_r',
  name: 'return flow',
  words: [
    'return flow',
    'return pump',
    'return',
    'pump',
    'flow',
    'must carry',
    'required',
    'through the sump',
    'return does',
    'whole return flow',
    'pumping',
    'lph return',
    'gph return',
    'return of',
  ],
  range: [0, 100_000, 'L/h'],
  aboveLow: true,
  usual: [200, 15_000, 'L/h'],
  ask: 'How much flow does the return pump really send, at its head?',
  profile: 'return.flow',
});

/** The same where a drain is worked out by itself and compared with it only when it is known. */
export const requiredFlow = quantity('flow', {
  ...returnFlow,
  symbol: 'Q_req',
  name: 'flow it must carry',
  needed: false,
});

/** What the builder would like the pump to send, to set beside what it does. */
export const wantedFlow = quantity('flow', {
  ...returnFlow,
  symbol: 'Q_w',
  name: 'flow wanted',
  words: ['want', 'wanted', 'aim', 'target', 'aiming for', 'would like', 'enough for', 'at least', 'need'],
  ask: 'How much flow do you want at the tank?',
  needed: false,
  profile: undefined,
});
