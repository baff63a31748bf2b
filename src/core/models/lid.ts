import { model } from '../model.js';
import { lowestPoint } from './lowest-point.js';

const GRAVITY = 9.80665;
const STATICS = 'statics: moments about the hinge, the weight of the lid against the struts';

/** Where one strut is held, hinge at the origin, x along the closed lid and y up [m]. */
interface Mounts {
  readonly u: number;
  readonly v: number;
  readonly x: number;
  readonly y: number;
}

/**
 * Lever arm of a strut about the hinge [m], above 0 where it pushes the lid open. It equals the change of the strut's length
 * with the angle (virtual work).
 * @param angle of the lid from closed [rad]
 */
export function strutArm(angle: number, { u, v, x, y }: Mounts): number {
  const px = u * Math.cos(angle) - v * Math.sin(angle);
  const py = u * Math.sin(angle) + v * Math.cos(angle);
  return (py * x - px * y) / Math.hypot(px - x, py - y);
}

/** The lid's mass [kg], its centre along and off the lid [m], and the number of struts that share it. */
interface Load {
  readonly m: number;
  readonly along: number;
  readonly off: number;
  readonly n: number;
}

/** Force in each strut that holds the lid at an angle [N]. */
export function strutForce(angle: number, { m, along, off, n }: Load, mounts: Mounts): number {
  const lever = along * Math.cos(angle) - off * Math.sin(angle);
  return (m * GRAVITY * lever) / (n * strutArm(angle, mounts));
}

const worstAngle = (open: number, load: Load, mounts: Mounts): number =>
  lowestPoint((angle) => -strutForce(angle, load, mounts), 0, open);

const FORCE_ARGS = { m: 'kg', r: 'm', o: 'm', n: '1', u: 'm', v: 'm', x: 'm', y: 'm', t: '1' } as const;
const FORCE_FORMULA =
  'm*g*(r*cos(a) - o*sin(a))/(n*arm), arm = (p_y*x - p_x*y)/sqrt((p_x - x)^2 + (p_y - y)^2), p_x = u*cos(a) - v*sin(a), p_y = u*sin(a) + v*cos(a)';

export const lidModels = [
  model({
    name: 'least_strut_arm',
    args: { u: 'm', v: 'm', x: 'm', y: 'm', t: '1' },
    unit: 'm',
    meaning:
      'least lever arm of a strut while the lid opens from 0 to t, below 0 where it pushes shut: (p_y*x - p_x*y)/sqrt((p_x - x)^2 + (p_y - y)^2), p_x = u*cos(a) - v*sin(a), p_y = u*sin(a) + v*cos(a)',
    source: STATICS,
    apply: (u = 0, v = 0, x = 0, y = 0, open = 0) => {
      const arm = (angle: number) => strutArm(angle, { u, v, x, y });
      return arm(lowestPoint(arm, 0, open));
    },
  }),
  model({
    name: 'worst_lid_angle',
    args: FORCE_ARGS,
    unit: '1',
    meaning: `angle a between 0 and t at which a strut must push hardest: the largest of ${FORCE_FORMULA}`,
    source: STATICS,
    apply: (m = 0, along = 0, off = 0, n = 1, u = 0, v = 0, x = 0, y = 0, open = 0) =>
      worstAngle(open, { m, along, off, n }, { u, v, x, y }),
  }),
  model({
    name: 'largest_strut_force',
    args: FORCE_ARGS,
    unit: 'N',
    meaning: `largest force in each strut while the lid opens from 0 to t: the largest of ${FORCE_FORMULA}`,
    source: STATICS,
    apply: (m = 0, along = 0, off = 0, n = 1, u = 0, v = 0, x = 0, y = 0, open = 0) => {
      const [load, mounts] = [
        { m, along, off, n },
        { u, v, x, y },
      ];
      return strutForce(worstAngle(open, load, mounts), load, mounts);
    },
  }),
];
