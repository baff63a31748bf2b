import { model } from '../model.js';
import { seawaterDensity } from './seawater.js';

/**
 * Volume of tank water [m³] to swap for as much new water, so that the mixture has a wanted salinity: the salt and the mass
 * of what goes out and what comes in balance.
 * @param V water in the system [m³]      @param S1, S2, Sn salinity now, wanted and of the new water [kg/kg]
 */
function swapVolume(V: number, S1: number, S2: number, Sn: number, kelvin: number): number {
  const [now, fresh] = [seawaterDensity(S1, kelvin), seawaterDensity(Sn, kelvin)];
  return (V * now * (S1 - S2)) / (now * (S1 - S2) + fresh * (S2 - Sn));
}

export const waterSwapModels = [
  model({
    name: 'swap_in_steps',
    args: { V: 'm^3', S_1: '1', S_2: '1', S_n: '1', n: '1', T: 'temperature' },
    unit: 'm^3',
    meaning:
      'water swapped altogether when n swaps of V take the salinity from S_1 to S_2 by equal steps: the sum of V*rho_sw(a, T)*(a − b)/(rho_sw(a, T)*(a − b) + rho_sw(S_n, T)*(b − S_n)) from a to b in each',
    source: 'mass balance of salt and water',
    apply: (V = 0, S1 = 0, S2 = 0, Sn = 0, n = 1, T = 0) => {
      const salinityAfter = (steps: number) => S1 + ((S2 - S1) * steps) / n;
      let total = 0;
      for (let i = 0; i < n; i += 1) total += swapVolume(V, salinityAfter(i), salinityAfter(i + 1), Sn, T);
      return total;
    },
  }),
];
