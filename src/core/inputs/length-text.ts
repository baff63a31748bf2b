import { unitTable } from '../../../data/units.js';
import { literal } from '../literal.js';

const lengthUnits = unitTable.filter(({ quantities }) => quantities.includes('length'));

/** A number as people type it, one group. */
export const NUMBER = '(\\d+(?:\\.\\d+)?)';

/** Every way to write a unit of length, longest first, one group. */
export const LENGTH_UNIT = `(${lengthUnits
  .flatMap(({ words }) => words)
  .sort((a, b) => b.length - a.length)
  .map(literal)
  .join('|')})`;

/** @param unit as LENGTH_UNIT reads it */
export const metres = (value: string, unit: string): number =>
  Number(value) * lengthUnits.find(({ words }) => words.includes(unit))!.factor;
