import { model } from '../model.js';

const REFERENCE = 298.15;
/** Activation temperatures [K] of the flow through a membrane, below and above 25 °C. */
const COLD = 3020;
const WARM = 2640;

export const membraneModels = [
  model({
    name: 'membrane_factor',
    args: { T: 'temperature' },
    unit: '1',
    meaning:
      'flow of a reverse-osmosis membrane over its flow at 25 °C: exp(B*(1/298.15 - 1/T)), B 3020 K below 25 °C and 2640 K above',
    source: 'a usual temperature factor of membrane makers’ normalisation sheets (from memory)',
    apply: (T = REFERENCE) => Math.exp((T < REFERENCE ? COLD : WARM) * (1 / REFERENCE - 1 / T)),
  }),
];
