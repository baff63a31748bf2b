import { type QuantityName, quantityTable } from '../../../data/quantities.js';
import { type UnitRow, unitTable } from '../../../data/units.js';

export type { QuantityName, UnitRow };
export type UnitSystem = 'metric' | 'us' | 'imperial';

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
export function systemOf(unit: UnitRow): UnitSystem | undefined {
  if (/gal_imp/.test(unit.id)) return 'imperial';
  if (
    /^(in|ft|yd|in2|ft2|in3|ft3|lb|oz|degF|degF_difference|psi|psf|lbf|mph|ft\/s|qt_US|pt_US|floz_US)$|gal_US/.test(
      unit.id,
    )
  )
    return 'us';
  if (/^(m|cm|mm|m2|cm2|m3|L|mL|kg|g|degC|degC_difference|L\/h|L\/min|L\/day|m3\/h|kPa|bar)$/.test(unit.id))
    return 'metric';
  return undefined;
}
