import type { QuantityInput } from '../core/calculation.js';
import { salinityOfDensity, seawaterDensity } from '../core/models/seawater.js';
import { displayUnit, systemOf, toSI, type UnitRow, unitNamed } from '../core/quantity/units.js';
import type { Preferences } from '../core/show-value.js';
import type { Mention } from './measurements.js';

/** One way to read a mention as a value of an input. */
export interface Reading {
  readonly si: number;
  readonly unit: UnitRow;
  readonly low?: number;
  readonly high?: number;
  /** The unit was not said. */
  readonly guessed: boolean;
  readonly plausible: boolean;
  /** The digits were a specific gravity, turned into a salinity. */
  readonly specificGravity?: number;
}

/** What else is known when a unit must be guessed, or a day stands without its date. */
export interface Hints {
  readonly preferences: Preferences;
  /** The preference was stated or follows from units in this conversation, so it may decide. */
  readonly settled: boolean;
  /** Units said elsewhere in the same message. */
  readonly said: readonly UnitRow[];
  readonly now: Date;
  /** The member's time zone, by its IANA name. */
  readonly zone: string;
}

/** Whether a value lies in a band, both ends allowed. */
export const inBand = (si: number, band: QuantityInput['range']): boolean => {
  const unit = unitNamed(band[2]);
  return si >= toSI(band[0], unit) - 1e-12 && si <= toSI(band[1], unit) + 1e-12;
};

const usualBand = (input: QuantityInput) => input.usual ?? USUAL[input.quantity] ?? input.range;

/** The usual values where an input does not say: what decides a bare number. */
const USUAL: Partial<Record<QuantityInput['quantity'], QuantityInput['range']>> = {
  length: [0.1, 3, 'm'],
  temperature: [10, 40, 'degC'],
  volume: [10, 4000, 'L'],
  flow: [200, 30_000, 'L/h'],
  mass: [1, 500, 'kg'],
  salinity: [28, 40, 'g/kg'],
  'specific gravity': [1.015, 1.032, '1'],
  'photon flux': [30, 600, 'umol/m2/s'],
  power: [5, 2000, 'W'],
  alkalinity: [4.2, 14, 'dKH'],
};

const BARE_UNITS: Partial<Record<QuantityInput['quantity'], readonly string[]>> = {
  length: ['cm', 'in', 'mm', 'ft', 'm'],
  temperature: ['degF', 'degC'],
  'temperature difference': ['degF_difference', 'degC_difference'],
  volume: ['L', 'gal_US'],
  mass: ['kg', 'lb'],
  flow: ['L/h', 'gal_US/h'],
  'water a day': ['L/day', 'gal_US/day'],
  area: ['m2', 'ft2'],
  fraction: ['fraction', '%'],
  conductivity: ['mS/cm', 'uS/cm'],
  'energy price': ['currency/kWh', 'cents/kWh'],
  time: ['h'],
  pressure: ['kPa', 'psi', 'bar'],
  alkalinity: ['dKH', 'meq/L', 'mg/L CaCO3'],
};

const reading = (
  input: QuantityInput,
  mention: Mention,
  unit: UnitRow,
  guessed: boolean,
  value = mention.value,
): Reading => {
  const si = toSI(value, unit);
  const spread =
    mention.low === undefined || mention.high === undefined
      ? {}
      : { low: toSI(mention.low, unit), high: toSI(mention.high, unit) };
  return { si, unit, guessed, plausible: inBand(si, usualBand(input)), ...spread };
};

/** The values that digits with two meanings may have: what the input cannot be is not meant. */
function valuesOf(input: QuantityInput, { value, other }: Mention, unit: UnitRow): readonly number[] {
  if (!other) return [value];
  const [first = value, second] = [value, other.value].filter((each) => inBand(toSI(each, unit), input.range));
  return second === undefined || !other.asLikely ? [first] : [first, second];
}

const SG_BAND = [0.99, 1.045] as const;

/** A salinity of about 1 is nobody's: the digits are a specific gravity. */
const isSpecificGravity = ({ value, units }: Mention): boolean =>
  value >= SG_BAND[0] &&
  value <= SG_BAND[1] &&
  value !== 1 &&
  units.every(({ quantities }) => quantities.includes('specific gravity'));

/** The salinity of a specific gravity on the 25 °C over 25 °C scale. */
function fromSpecificGravity({ value }: Mention): Reading {
  const T = toSI(25, unitNamed('degC'));
  const si = salinityOfDensity(value * seawaterDensity(0, T), T);
  return {
    si: Number(si.toPrecision(4)),
    unit: unitNamed('g/kg'),
    guessed: false,
    plausible: true,
    specificGravity: value,
  };
}

/** A unit of the input's quantity. "degrees" is no more than a bare number for a temperature. */
function saidUnits(input: QuantityInput, mention: Mention): readonly UnitRow[] {
  const fitting = mention.units.filter(({ quantities }) => quantities.includes(input.quantity));
  const twice = fitting.length > 1 && fitting.some((unit) => inBand(toSI(mention.value, unit), usualBand(input)));
  return twice ? fitting.filter((unit) => inBand(toSI(mention.value, unit), usualBand(input))) : fitting;
}

const isBare = (input: QuantityInput, mention: Mention): boolean =>
  mention.units.length === 0 || (mention.units.some(({ id }) => id === 'deg') && input.quantity === 'temperature');

/**
 * The ways a mention can be read as a value of an input, likeliest first. Several with equal right mean that the member must
 * be asked.
 */
export function readingsOf(input: QuantityInput, mention: Mention, hints: Hints): Reading[] {
  if (input.quantity === 'salinity' && isSpecificGravity(mention)) return [fromSpecificGravity(mention)];
  const said = saidUnits(input, mention);
  if (said.length > 0)
    return said.flatMap((unit) =>
      valuesOf(input, mention, unit).map((value) => reading(input, mention, unit, false, value)),
    );
  if (mention.difference && input.quantity === 'temperature') return [];
  if (mention.difference && input.quantity === 'temperature difference')
    return [reading(input, mention, unitNamed(`${hints.preferences.temperature}_difference`), true)];
  if (!isBare(input, mention)) return [];
  const ids = BARE_UNITS[input.quantity];
  if (!ids) return [reading(input, mention, displayUnit(input.quantity, 'metric'), true)];
  const own = input.units ? [input.units.metric, input.units.us] : [];
  const units = [...new Set([...own, ...ids])].map(unitNamed);
  const all = units.flatMap((unit) =>
    valuesOf(input, mention, unit).map((value) => reading(input, mention, unit, true, value)),
  );
  const plausible = all.filter((entry) => entry.plausible);
  return preferred(
    plausible.length > 0 ? plausible : all.filter((entry) => entry.unit.id === (own[0] ?? ids[0])),
    hints,
  );
}

/** Readings in a system of units that the conversation has settled on, or that the same message uses, beat the rest. */
function preferred(readings: Reading[], { preferences, settled, said }: Hints): Reading[] {
  if (readings.length < 2) return readings;
  const scale =
    said.find(({ id }) => id === 'degC' || id === 'degF')?.id ?? (settled ? preferences.temperature : undefined);
  if (scale && readings.some(({ unit }) => unit.id === scale)) return readings.filter(({ unit }) => unit.id === scale);
  const exact = readings.filter(({ unit }) => said.includes(unit));
  if (exact.length > 0) return exact.slice(0, 1);
  const systems = said.map(systemOf).filter((system) => system !== undefined);
  const system = systems[0] ?? (settled ? preferences.system : undefined);
  if (system) {
    const ofSystem = readings.filter(
      ({ unit }) => systemOf(unit) === system || (system === 'imperial' && systemOf(unit) === 'us'),
    );
    if (ofSystem.length > 0) return ofSystem.slice(0, 1);
  }
  return readings;
}

/** How narrow the usual band of an input is, from 0 (anything goes) to 1: a bare 35 is a salinity before it is a volume. */
export function narrowness(input: QuantityInput): number {
  const [low, high, unitId] = usualBand(input);
  const unit = unitNamed(unitId);
  const [a, b] = [toSI(low, unit), toSI(high, unit)];
  return a <= 0 ? 0 : Math.max(0, 1 - Math.log10(b / a) / 3);
}
