import { model } from '../model.js';
import { bisect } from './seawater.js';

const HAMILTON_MORGAN =
  'Hamilton and Morgan 1952, NACA Technical Note 2836: configuration factor of a rectangle, evenly glowing in all directions';

/**
 * Share of a panel's radiant exitance that falls on a small level patch below its middle [1].
 * @param L panel length [m]   @param W panel width [m]   @param d distance [m], above 0
 * @source Hamilton and Morgan 1952, NACA TN 2836. Check: a square seen from half its side, four corners of 0.1385, gives 0.5541.
 */
export function panelFactor(L: number, W: number, d: number): number {
  const X = L / (2 * d);
  const Y = W / (2 * d);
  const [rootX, rootY] = [Math.sqrt(1 + X * X), Math.sqrt(1 + Y * Y)];
  return (2 / Math.PI) * ((X / rootX) * Math.atan(Y / rootX) + (Y / rootY) * Math.atan(X / rootY));
}

const NEAREST = 1e-3;
const FARTHEST = 100;

export const lightModels = [
  model({
    name: 'panel_factor',
    args: { L: 'm', W: 'm', d: 'm' },
    unit: '1',
    meaning:
      'light under the middle of a panel L by W at distance d, as a share of what it gives off per area: (2/pi)*(X/sqrt(1 + X^2)*atan(Y/sqrt(1 + X^2)) + Y/sqrt(1 + Y^2)*atan(X/sqrt(1 + Y^2))), X = L/(2*d), Y = W/(2*d)',
    source: HAMILTON_MORGAN,
    apply: (L = 0, W = 0, d = 1) => panelFactor(L, W, d),
  }),
  model({
    name: 'panel_distance',
    args: { L: 'm', W: 'm', F: '1' },
    unit: 'm',
    meaning: 'distance at which panel_factor is F, found by halving 1 mm to 100 m',
    source: HAMILTON_MORGAN,
    apply: (L = 0, W = 0, F = 0) => bisect((d) => panelFactor(L, W, d), F, NEAREST, FARTHEST),
  }),
];
