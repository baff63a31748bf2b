import { model } from '../model.js';
import { lowestPoint } from './lowest-point.js';

/** Off the two ends, where the longest length divides by nothing [rad]. */
const BARELY = 1e-6;
const LADDER =
  'sliding rectangle in a right-angled corner, exact geometry; for a box without width it is the classical ladder, (a^(2/3) + b^(2/3))^(3/2)';

/**
 * Width that is free beside a side of length L while it turns a right-angled corner, at the tightest angle.
 * @param a, b widths of the two corridors [m]      @param L length that turns [m]
 * @returns [m]; below nothing when even a bare ladder of that length sticks
 */
export function roomRoundCorner(a: number, b: number, L: number): number {
  const room = (angle: number) => a * Math.sin(angle) + b * Math.cos(angle) - L * Math.sin(angle) * Math.cos(angle);
  return room(lowestPoint(room, 0, Math.PI / 2));
}

/**
 * Longest box of width w that turns a right-angled corner.
 * @param a, b widths of the two corridors [m]      @param w width of the box [m], no more than either
 * @returns [m]. Check: two corridors of 1 m and no width give 2^1.5 = 2.828
 */
export function longestRoundCorner(a: number, b: number, w: number): number {
  const longest = (angle: number) =>
    (a * Math.sin(angle) + b * Math.cos(angle) - w) / (Math.sin(angle) * Math.cos(angle));
  return longest(lowestPoint(longest, BARELY, Math.PI / 2 - BARELY));
}

export const roundCornerModels = [
  model({
    name: 'room_round_corner',
    args: { a: 'm', b: 'm', L: 'm' },
    unit: 'm',
    meaning:
      'width left beside a length L that turns from a corridor of width a into one of width b: the least of a*sin(x) + b*cos(x) - L*sin(x)*cos(x) for x from 0 to 90°',
    source: LADDER,
    apply: (a = 0, b = 0, L = 0) => roomRoundCorner(a, b, L),
  }),
  model({
    name: 'longest_round_corner',
    args: { a: 'm', b: 'm', w: 'm' },
    unit: 'm',
    meaning:
      'longest box of width w that turns from a corridor of width a into one of width b: the least of (a*sin(x) + b*cos(x) - w)/(sin(x)*cos(x)) for x between 0 and 90°',
    source: LADDER,
    apply: (a = 0, b = 0, w = 0) => longestRoundCorner(a, b, w),
  }),
];
