/**
 * What can be measured here: its coherent unit, and the units an answer is shown in for each system of units. A value is
 * written with the given number of significant figures, or of decimals where the table says so.
 */
export interface QuantityRow {
  /** Coherent SI unit, as the contract's `si_unit`. */
  readonly si: string;
  readonly metric: string;
  readonly us: string;
  /** Where imperial differs from US. */
  readonly imperial?: string;
  readonly decimals?: number;
  readonly figures?: number;
  /** An example of how a person answers, for the question that asks for it. */
  readonly example: string;
}

const rows = {
  length: { si: 'm', metric: 'cm', us: 'in', example: '48 in or 122 cm' },
  area: { si: 'm^2', metric: 'm2', us: 'ft2', example: '0.8 m2 or 9 sq ft' },
  volume: { si: 'm^3', metric: 'L', us: 'gal_US', imperial: 'gal_imp', example: '400 L or 105 gal' },
  mass: { si: 'kg', metric: 'kg', us: 'lb', example: '60 kg or 130 lb' },
  time: { si: 's', metric: 'h', us: 'h', example: '9 h' },
  temperature: { si: 'K', metric: 'degC', us: 'degF', decimals: 1, example: '78 F or 25.5 C' },
  'temperature difference': { si: 'K', metric: 'K', us: 'degF_difference', example: '5 C' },
  power: { si: 'W', metric: 'W', us: 'W', example: '300 W' },
  energy: { si: 'J', metric: 'kWh', us: 'kWh', example: '1.2 kWh' },
  'energy a day': { si: 'W', metric: 'kWh/day', us: 'kWh/day', example: '2 kWh a day' },
  pressure: { si: 'Pa', metric: 'kPa', us: 'psi', example: '4 bar or 60 psi' },
  'line load': { si: 'N/m', metric: 'N/m', us: 'lbf/ft', example: '2600 N/m' },
  moment: { si: 'N m', metric: 'Nm', us: 'lbf ft', example: '400 N m' },
  force: { si: 'N', metric: 'N', us: 'lbf', example: '250 N' },
  angle: { si: 'rad', metric: 'deg', us: 'deg', example: '90 degrees' },
  density: { si: 'kg/m^3', metric: 'kg/m3', us: 'kg/m3', figures: 6, example: '1023.3 kg/m3' },
  concentration: { si: 'kg/m^3', metric: 'g/L', us: 'g/L', example: '38 g/L or 0.32 lb/gal' },
  dissolved: { si: 'kg/m^3', metric: 'mg/L', us: 'mg/L', example: '10 mg/L or 10 ppm' },
  'dissolved rate': { si: 'kg/(m^3 s)', metric: 'mg/L/day', us: 'mg/L/day', example: '2 mg/L a day' },
  'amount in water': { si: 'mol/m^3', metric: 'umol/L', us: 'umol/L', example: '160 µmol/L' },
  alkalinity: { si: 'mol/m^3', metric: 'dKH', us: 'dKH', example: '8 dKH or 2.9 meq/L' },
  'alkalinity rate': { si: 'mol/(m^3 s)', metric: 'dKH/day', us: 'dKH/day', example: '1 dKH a day' },
  pH: { si: '1', metric: 'pH', us: 'pH', decimals: 2, example: '8.1' },
  salinity: { si: 'kg/kg', metric: 'g/kg', us: 'g/kg', decimals: 1, example: '35 ppt' },
  'salinity rate': { si: '1/s', metric: 'g/kg/day', us: 'g/kg/day', example: '1 ppt a day' },
  'specific gravity': { si: '1', metric: '1', us: '1', decimals: 4, example: '1.026' },
  conductivity: { si: 'S/m', metric: 'mS/cm', us: 'mS/cm', decimals: 2, example: '53 mS/cm' },
  flow: { si: 'm^3/s', metric: 'L/h', us: 'gal_US/h', imperial: 'gal_imp/h', example: '3000 L/h or 800 gph' },
  'water a day': {
    si: 'm^3/s',
    metric: 'L/day',
    us: 'gal_US/day',
    imperial: 'gal_imp/day',
    figures: 2,
    example: '6 L a day',
  },
  turnover: { si: '1/s', metric: '1/h', us: '1/h', example: '5 times an hour' },
  'rate constant': { si: '1/s', metric: '1/day', us: '1/day', example: '1.4 a day' },
  'mass a day': { si: 'kg/s', metric: 'g/day', us: 'g/day', example: '5 g a day' },
  current: { si: 'A', metric: 'A', us: 'A', example: '15 A' },
  voltage: { si: 'V', metric: 'V', us: 'V', decimals: 0, example: '120 V or 230 V' },
  'electric charge': { si: 'A s', metric: 'Ah', us: 'Ah', example: '100 Ah' },
  speed: { si: 'm/s', metric: 'm/s', us: 'ft/s', example: '1.5 m/s' },
  'photon flux': { si: 'mol/(m^2 s)', metric: 'umol/m2/s', us: 'umol/m2/s', example: '200 (PPFD)' },
  'light integral': { si: 'mol/(m^2 s)', metric: 'mol/m2/day', us: 'mol/m2/day', example: '8 mol' },
  illuminance: { si: 'lx', metric: 'lx', us: 'lx', example: '8000 lux' },
  attenuation: { si: '1/m', metric: '1/m', us: '1/m', example: '0.2 per metre' },
  conductance: { si: 'W/K', metric: 'W/K', us: 'W/K', example: '39 W/K' },
  'heat transfer': { si: 'W/(m^2 K)', metric: 'W/m2K', us: 'W/m2K', example: '6 W/m2K' },
  'heat capacity': { si: 'J/K', metric: 'kJ/K', us: 'kJ/K', example: '1900 kJ/K' },
  'thermal expansion': { si: '1/K', metric: '1/K', us: '1/K', example: '0.000025' },
  'temperature coefficient': { si: '1/K', metric: '1/K', us: '1/K', example: '2 % per degree' },
  money: { si: 'currency', metric: 'currency', us: 'currency', decimals: 2, example: '12.50' },
  'energy price': { si: 'currency/J', metric: 'currency/kWh', us: 'currency/kWh', figures: 4, example: '0.28 per kWh' },
  'price of mass': {
    si: 'currency/kg',
    metric: 'currency/kg',
    us: 'currency/lb',
    decimals: 2,
    example: '9.50 per kg or 4.50 per lb',
  },
  'price of water': {
    si: 'currency/m^3',
    metric: 'currency/m3',
    us: 'currency/m3',
    decimals: 2,
    example: '3.20 per m3',
  },
  'cost a month': {
    si: 'currency/s',
    metric: 'currency/month',
    us: 'currency/month',
    decimals: 2,
    example: '14 a month',
  },
  fraction: { si: '1', metric: 'fraction', us: 'fraction', example: '50 %' },
  ratio: { si: '1', metric: '1', us: '1', example: '1.5' },
  count: { si: '1', metric: 'count', us: 'count', decimals: 0, example: '2' },
} satisfies Record<string, QuantityRow>;

export type QuantityName = keyof typeof rows;
export const quantityTable: Readonly<Record<QuantityName, QuantityRow>> = rows;
