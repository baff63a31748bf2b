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

/** A pipe as the friction formulas take it: bore [m], length [m], loss coefficient of its fittings [1]. */
interface Line {
  readonly D: number;
  readonly L: number;
  readonly K: number;
}

/** Head [m] that a line takes at a flow [m³/s]; nu kinematic viscosity [m²/s], e roughness [m]. */
function lineHead(Q: number, { D, L, K }: Line, nu: number, e: number): number {
  if (Q <= 0) return 0;
  const V = (4 * Q) / (Math.PI * D ** 2);
  return ((frictionFactor((V * D) / nu, e / D) * L) / D + K) * (V ** 2 / (2 * GRAVITY));
}

/** Largest flow [m³/s] between two at which a falling pump curve still gives the head that the plumbing takes. */
function meeting(pump: (Q: number) => number, plumbing: (Q: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  if (pump(low) <= plumbing(low)) return low;
  if (pump(high) >= plumbing(high)) return high;
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (pump(middle) > plumbing(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Head [m] of a pump by the parabola through its greatest head without flow and its greatest flow without head. */
const parabola = (H_max: number, Q_max: number) => (Q: number) => H_max * (1 - (Q / Q_max) ** 2);

/** A speed that return outlets are commonly laid out for; friction hardly changes around it. */
const OUTLET_SPEED = 1.5;

const DARCY = 'Darcy-Weisbach with minor losses';
const PARABOLA = 'common practice where the maker gives only the two ends of the curve';

export const hydraulicModels = [
  model({
    name: 'operating_flow',
    args: { H_max: 'm', Q_max: 'm^3/s', H_s: 'm', D: 'm', L: 'm', K: '1', nu: 'm^2/s', e: 'm' },
    unit: 'm^3/s',
    meaning:
      'flow Q at which the pump curve H_max*(1 - (Q/Q_max)^2) meets the plumbing, H_s + (f*L/D + K)*V^2/(2*g) with V = 4*Q/(pi*D^2) and f = friction(V*D/nu, e/D), by halving; 0 when H_s is H_max or more',
    source: `${DARCY}; pump curve as a parabola: ${PARABOLA}`,
    apply: (H_max = 0, Q_max = 0, H_s = 0, D = 1, L = 0, K = 0, nu = 1, e = 0) =>
      meeting(parabola(H_max, Q_max), (Q) => H_s + lineHead(Q, { D, L, K }, nu, e), 0, Q_max),
  }),
  model({
    name: 'flow_within',
    args: {
      Q_a: 'm^3/s',
      H_a: 'm',
      Q_b: 'm^3/s',
      H_b: 'm',
      H_s: 'm',
      D: 'm',
      L: 'm',
      K: '1',
      nu: 'm^2/s',
      e: 'm',
    },
    unit: 'm^3/s',
    meaning:
      'how much of the stretch of a pump curve from (Q_a, H_a) straight to (Q_b, H_b) lies above the plumbing, H_s + (f*L/D + K)*V^2/(2*g): all of Q_b - Q_a, a part, or nothing. Over all stretches of a falling curve it adds up to the flow where the two meet',
    source: `${DARCY}; straight lines between the points of the pump curve`,
    apply: (Q_a = 0, H_a = 0, Q_b = 0, H_b = 0, H_s = 0, D = 1, L = 0, K = 0, nu = 1, e = 0) => {
      const pump = (Q: number) => H_a + ((H_b - H_a) * (Q - Q_a)) / (Q_b - Q_a);
      return meeting(pump, (Q) => H_s + lineHead(Q, { D, L, K }, nu, e), Q_a, Q_b) - Q_a;
    },
  }),
  model({
    name: 'outlet_conductance',
    args: { D: 'm', L: 'm', K: '1', nu: 'm^2/s', e: 'm' },
    unit: 'm^2.5/s',
    meaning:
      'flow of an outlet for each square root of the head on it: pi*D^2/4*sqrt(2*g/(f*L/D + K)), with f at 1.5 m/s',
    source: DARCY,
    apply: (D = 1, L = 0, K = 1, nu = 1, e = 0) =>
      ((Math.PI * D ** 2) / 4) *
      Math.sqrt((2 * GRAVITY) / ((frictionFactor((OUTLET_SPEED * D) / nu, e / D) * L) / D + K)),
  }),
  model({
    name: 'split_flow',
    args: { H_max: 'm', Q_max: 'm^3/s', H_s: 'm', D: 'm', L: 'm', K: '1', G: 'm^2.5/s', nu: 'm^2/s', e: 'm' },
    unit: 'm^3/s',
    meaning:
      'flow Q at which the pump curve H_max*(1 - (Q/Q_max)^2) meets riser and outlets, H_s + (f*L/D + K)*V^2/(2*g) + (Q/G)^2, by halving; G is the sum over the outlets',
    source: `${DARCY}; parallel outlets share one head; pump curve as a parabola: ${PARABOLA}`,
    apply: (H_max = 0, Q_max = 0, H_s = 0, D = 1, L = 0, K = 0, G = 1, nu = 1, e = 0) =>
      meeting(parabola(H_max, Q_max), (Q) => H_s + lineHead(Q, { D, L, K }, nu, e) + (Q / G) ** 2, 0, Q_max),
  }),
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
