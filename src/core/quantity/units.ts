import { type QuantityName, quantityTable } from '../../../data/quantities.js';
import { type UnitRow, type UnitSystem, unitTable } from '../../../data/units.js';

export type { QuantityName, UnitRow, UnitSystem };

const byId = new Map(unitTable.map((row) => [row.id, row]));

/** @throws Error for an id that is not in the table of units. */
export function unitNamed(id: string): UnitRow {
  const row = byId.get(id);
  if (!row) throw new Error(`there is no unit ${id}`);
  return row;
}

export const isUnit = (id: string): boolean => byId.has(id);

export const toSI = (value: number, unit: UnitRow): number => value * unit.factor + (unit.offset ?? 0);
export const fromSI = (si: number, unit: UnitRow): number => (si - (unit.offset ?? 0)) / unit.factor;

/** The unit in which an answer shows a quantity in a system of units. */
export function displayUnit(quantity: QuantityName, system: UnitSystem): UnitRow {
  const row = quantityTable[quantity];
  return unitNamed(system === 'metric' ? row.metric : ((system === 'imperial' ? row.imperial : undefined) ?? row.us));
}

/** Which system a unit belongs to, or undefined for one that all of them use. */
export const systemOf = ({ system }: UnitRow): UnitSystem | undefined => system;
