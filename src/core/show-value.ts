import { quantityTable } from '../../data/quantities.js';
import type { QuantityInput } from './calculation.js';
import { forReading, withDecimals, withFigures } from './quantity/number.js';
import {
  displayUnit,
  fromSI,
  type QuantityName,
  systemOf,
  type UnitRow,
  type UnitSystem,
  unitNamed,
} from './quantity/units.js';

/** The units a member reads. */
export interface Preferences {
  readonly system: UnitSystem;
  readonly temperature: 'degC' | 'degF';
}

export const METRIC: Preferences = { system: 'metric', temperature: 'degC' };
export const US: Preferences = { system: 'us', temperature: 'degF' };
export const IMPERIAL: Preferences = { system: 'imperial', temperature: 'degC' };

const DEFAULT_FIGURES = 3;
/** More than anybody says: what was said is printed whole. */
const SAID_FIGURES = 7;

export interface ValueFormat {
  readonly quantity: QuantityName;
  readonly units?: { readonly metric: string; readonly us: string } | undefined;
  readonly figures?: number | undefined;
  readonly decimals?: number | undefined;
}

export function unitFor(format: ValueFormat, preferences: Preferences): UnitRow {
  if (format.quantity === 'temperature') return unitNamed(preferences.temperature);
  if (format.quantity === 'temperature difference') return unitNamed(`${preferences.temperature}_difference`);
  if (format.units) return unitNamed(preferences.system === 'metric' ? format.units.metric : format.units.us);
  return displayUnit(format.quantity, preferences.system);
}

/** A time reads best in the unit that keeps the figure between 1 and 100. */
function handyTime(seconds: number): UnitRow {
  const size = Math.abs(seconds);
  if (size < 90) return unitNamed('s');
  if (size < 90 * 60) return unitNamed('min');
  return unitNamed(size < 72 * 3600 ? 'h' : 'day');
}

/** The number in a unit, rounded for reading, as plain digits. */
export function digits(si: number, unit: UnitRow, format: ValueFormat): string {
  const value = fromSI(si, unit);
  const row = quantityTable[format.quantity];
  const decimals = format.decimals ?? (format.figures === undefined ? row.decimals : undefined);
  if (!Number.isFinite(value)) return 'never';
  if (decimals !== undefined) return withDecimals(value, decimals);
  const figures = format.figures ?? row.figures ?? DEFAULT_FIGURES;
  const whole = Math.abs(value) >= 10 ** figures ? Math.min(4, Math.floor(Math.log10(Math.abs(value))) + 1) : figures;
  return withFigures(value, Math.max(figures, whole));
}

const joined = (number: string, unit: UnitRow): string => {
  if (unit.shown === '') return number;
  if (unit.shown === '%' || unit.shown === '°') return `${number}${unit.shown}`;
  const one = number === '1' && /^(?:day|week|month|year)s$/.test(unit.shown);
  return `${number} ${one ? unit.shown.slice(0, -1) : unit.shown}`;
};

/** A value with its unit as a member reads it: `405 L`, `78.0 °F`, `1.0264`. */
export function showIn(si: number, unit: UnitRow, format: ValueFormat): string {
  return joined(forReading(digits(si, unit, format)), unit);
}

export function show(si: number, format: ValueFormat, preferences: Preferences): string {
  if (!Number.isFinite(si)) return 'never';
  if (format.quantity === 'fraction') return showIn(si, unitNamed('%'), { ...format, figures: format.figures ?? 3 });
  return showIn(si, displayed(si, format, preferences), format);
}

/** The unit a result stands in: the member's, or the handiest one for a time. */
export const displayed = (si: number, format: ValueFormat, preferences: Preferences): UnitRow =>
  format.quantity === 'time' && !format.units ? handyTime(si) : unitFor(format, preferences);

/** `405 L (107 US gal)`: for quantities that clubs mix, the other system in brackets, and the imperial gallon beside the US one. */
export function showBoth(si: number, format: ValueFormat, preferences: Preferences): string {
  const first = show(si, format, preferences);
  if (!Number.isFinite(si)) return first;
  const others: Preferences[] =
    preferences.system === 'metric' ? [US] : preferences.system === 'us' ? [METRIC, IMPERIAL] : [METRIC, US];
  const more = others
    .map((other) => show(si, format, other))
    .filter((text, i, all) => text !== first && all.indexOf(text) === i);
  return more.length === 0 ? first : `${first} (${more.join(', ')})`;
}

/** An input as it was said where it was said in a unit of its own, else in the member's units. */
export function showInput(
  si: number,
  input: QuantityInput,
  said: string | undefined,
  preferences: Preferences,
): { text: string; unit: UnitRow; value: string } {
  const format: ValueFormat = { quantity: input.quantity, units: input.units, figures: 6 };
  const unit =
    said !== undefined && said !== 'fraction'
      ? unitNamed(said)
      : input.quantity === 'time'
        ? handyTime(si)
        : input.quantity === 'fraction'
          ? unitNamed('%')
          : unitFor(format, preferences);
  const value = withFigures(fromSI(si, unit), said === undefined ? DEFAULT_FIGURES : SAID_FIGURES);
  return { text: joined(forReading(value), unit), unit, value };
}

/** A range as it was said: `60 to 66 °F`. */
export const showRange = (low: number, high: number, unit: UnitRow): string =>
  joined([low, high].map((si) => forReading(withFigures(fromSI(si, unit), SAID_FIGURES))).join(' to '), unit);

/** The preferences that go with the unit a member used: a tank in inches is answered in US units, 78 °F in Fahrenheit. */
export function preferencesFrom(units: readonly UnitRow[], fallback: Preferences): Preferences {
  const temperature = units.find((unit) => unit.id === 'degF' || unit.id === 'degC')?.id as
    | Preferences['temperature']
    | undefined;
  const systems = units.filter((unit) => unit.id !== 'degF' && unit.id !== 'degC').map(systemOf);
  const imperial = systems.includes('imperial');
  const us = systems.filter((system) => system === 'us').length;
  const metric = systems.filter((system) => system === 'metric').length;
  const system: UnitSystem =
    us + metric === 0 && !imperial
      ? temperature && !units.some((u) => systemOf(u) && u.id !== temperature)
        ? temperature === 'degF'
          ? 'us'
          : fallback.system === 'us'
            ? 'metric'
            : fallback.system
        : fallback.system
      : imperial
        ? 'imperial'
        : us > metric
          ? 'us'
          : metric > us
            ? 'metric'
            : fallback.system;
  return {
    system,
    temperature: temperature ?? (system === fallback.system ? fallback.temperature : system === 'us' ? 'degF' : 'degC'),
  };
}
