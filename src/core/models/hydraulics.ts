import { model } from '../model.js';

const GRAVITY = 9.80665;
const SWAMEE_JAIN =
  'Swamee and Jain 1976, J. Hydraulics Division ASCE 102(5): 657; 64/Re below 2000; straight line between';

/**
 * Darcy friction factor of a round pipe [1].
 * @param Re Reynolds number, above 0
 * @param relative roughness over diameter [1]
 * @source Swamee and Jain 1976 from Re 4000, Hagen-Poiseuille below 2000, a straight line between
 */
export function frictionFactor(Re: number, relative: number): number {
  const turbulent = (R: number) => 0.25 / Math.log10(relative / 3.7 + 5.74 / R ** 0.9) ** 2;
  if (Re <= 2000) return 64 / Re;
  if (Re >= 4000) return turbulent(Re);
  const share = (Re - 2000) / 2000;
  return (1 - share) * (64 / 2000) + share * turbulent(4000);
}

/** Friction factor at the speed that a head drives through a pipe, by repeating until it settles. */
function settledFriction(D: number, L: number, K: number, H: number, nu: number, e: number): number {
  let f = 0.02;
  for (let round = 0; round < 60; round += 1) {
    const V = Math.sqrt((2 * GRAVITY * H) / ((f * L) / D + K));
    const next = frictionFactor((V * D) / nu, e / D);
    if (Math.abs(next - f) < 1e-14) break;
    f = next;
  }
  return f;
}

export const hydraulicModels = [
  model({
    name: 'friction',
    args: { Re: '1', e_over_D: '1' },
    unit: '1',
    meaning:
      'Darcy friction factor at Reynolds number Re: 0.25/log10(e_over_D/3.7 + 5.74/Re^0.9)^2 from 4000 up, 64/Re to 2000, a straight line between',
    source: SWAMEE_JAIN,
    apply: (Re = 0, relative = 0) => frictionFactor(Re, relative),
  }),
  model({
    name: 'siphon_friction',
    args: { D: 'm', L: 'm', K: '1', H: 'm', nu: 'm^2/s', e: 'm' },
    unit: '1',
    meaning:
      'Darcy friction factor at the speed that a head H drives through the pipe: friction(V*D/nu, e/D) with V = sqrt(2*g*H/(f*L/D + K)), repeated until f settles',
    source: SWAMEE_JAIN,
    apply: (D = 0, L = 0, K = 0, H = 0, nu = 0, e = 0) => settledFriction(D, L, K, H, nu, e),
  }),
  model({
    name: 'kindsvater_carter_head',
    args: { Q: 'm^3/s', b: 'm', P: 'm' },
    unit: 'm',
    meaning:
      'head that carries Q over a thin full-width weir of length b and sill height P: Q = (2/3)*sqrt(2*g)*(0.602 + 0.075*h/P)*(b - 0.001)*(h + 0.001)^1.5, solved for h by halving',
    source: 'Kindsvater and Carter 1957, J. Hydraulics Division ASCE 83(6)',
    apply: (Q = 0, b = 0, P = 1) => {
      const flow = (h: number) =>
        (2 / 3) * Math.sqrt(2 * GRAVITY) * (0.602 + (0.075 * h) / P) * (b - 0.001) * (h + 0.001) ** 1.5;
      let [low, high] = [0, 2];
      if (flow(low) >= Q) return 0;
      for (let i = 0; i < 60; i += 1) {
        const middle = (low + high) / 2;
        if (flow(middle) < Q) low = middle;
        else high = middle;
      }
      return (low + high) / 2;
    },
  }),
];
