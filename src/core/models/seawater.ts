import { model } from '../model.js';

/** Celsius on the 1968 scale, in which both formulas were fitted, from kelvin on the scale in use since 1990. */
const ipts68 = (kelvin: number): number => (kelvin - 273.15) * 1.00024;

const UNESCO_44 = 'UNESCO Technical Papers in Marine Science 44 (Fofonoff and Millard 1983)';

/**
 * Density of pure water at one atmosphere [kg/m³].
 * @param t temperature, IPTS-68 [°C], -2 to 40
 * @source UNESCO 44, after Bigg 1967. Check: 25 °C gives 997.04796.
 */
export const pureWaterDensity68 = (t: number): number =>
  999.842594 + t * (6.793952e-2 + t * (-9.09529e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));

/**
 * Density of seawater at one atmosphere, EOS-80 [kg/m³].
 * @param S practical salinity, 0 to 42
 * @param t temperature, IPTS-68 [°C], -2 to 40
 * @source Millero and Poisson 1981, in UNESCO 44. Check: S 35, 25 °C gives 1023.34306.
 */
export const seawaterDensity68 = (S: number, t: number): number =>
  pureWaterDensity68(t) +
  S * (0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)))) +
  S ** 1.5 * (-5.72466e-3 + t * (1.0227e-4 - 1.6546e-6 * t)) +
  4.8314e-4 * S * S;

/** EOS-80 density [kg/m³] of salinity [kg/kg] at a temperature [K] on today's scale. */
export const seawaterDensity = (salinity: number, kelvin: number): number =>
  seawaterDensity68(salinity * 1000, ipts68(kelvin));

/**
 * Finds x in [low, high] where an increasing function crosses a target, to the last bits of a double.
 * @returns NaN when the target lies outside what the function takes on between the bounds.
 */
export function bisect(f: (x: number) => number, target: number, low: number, high: number): number {
  const rising = f(high) > f(low);
  const below = (x: number) => (rising ? f(x) < target : f(x) > target);
  if (below(high) || (!below(low) && f(low) !== target)) return Number.NaN;
  let [a, b] = [low, high];
  for (let i = 0; i < 200 && b - a > Number.EPSILON * Math.max(1, Math.abs(a)); i += 1) {
    const middle = (a + b) / 2;
    if (middle === a || middle === b) break;
    if (below(middle)) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

/** Conductivity of seawater of salinity 35 at 15 °C and one atmosphere [S/m], the usual constant that turns a ratio into a reading. */
const C_35_15 = 4.2914;

/** Conductivity ratio of S 35 at temperature t against 15 °C. */
const ratioOfTemperature = (t: number): number =>
  0.6766097 + t * (2.00564e-2 + t * (1.104259e-4 + t * (-6.9698e-7 + t * 1.0031e-9)));

/**
 * Practical salinity from the conductivity ratio at one atmosphere, PSS-78.
 * @param Rt conductivity against that of S 35 at the same temperature [1]
 * @param t temperature, IPTS-68 [°C], -2 to 35
 * @source UNESCO 44. Check: Rt 1 at 15 °C gives 35.
 */
export function practicalSalinity68(Rt: number, t: number): number {
  const x = Math.sqrt(Rt);
  const f = (t - 15) / (1 + 0.0162 * (t - 15));
  const main = 0.008 + x * (-0.1692 + x * (25.3851 + x * (14.0941 + x * (-7.0261 + x * 2.7081))));
  return main + f * (0.0005 + x * (-0.0056 + x * (-0.0066 + x * (-0.0375 + x * (0.0636 - 0.0144 * x)))));
}

/**
 * Practical salinity from a conductivity ratio under pressure, PSS-78.
 * @param R conductivity over that of S 35, 15 °C, 0 dbar [1]      @param p pressure [dbar]
 * @source UNESCO 44. Check: R 0.65, 5 °C, 1500 dbar gives 27.995347.
 */
export function practicalSalinityAtPressure(R: number, t: number, p: number): number {
  const Rp =
    1 +
    (p * (2.07e-5 + p * (-6.37e-10 + p * 3.989e-15))) /
      (1 + 3.426e-2 * t + 4.464e-4 * t * t + (4.215e-1 - 3.107e-3 * t) * R);
  return practicalSalinity68(R / (Rp * ratioOfTemperature(t)), t);
}

/**
 * Practical salinity of diluted seawater below 2, where PSS-78 alone runs out.
 * @param C conductivity [mS/cm]     @param t temperature, IPTS-68 [°C]
 * @source Hill, Dauphinee and Woods 1986 (coefficients from memory; agrees with the TEOS-10 library to 0.0003)
 */
export function practicalSalinityExtended(C: number, t: number): number {
  const Rt = C / (C_35_15 * 10) / ratioOfTemperature(t);
  const f = (t - 15) / (1 + 0.0162 * (t - 15));
  const X = 400 * Rt;
  const Y = 100 * Rt;
  return practicalSalinity68(Rt, t) - 0.008 / (1 + 1.5 * X + X * X) - (0.0005 * f) / (1 + Math.sqrt(Y) + Y + Y ** 1.5);
}

/**
 * Refractive index of seawater.
 * @param S salinity, 0 to 35    @param t temperature [°C], 0 to 30    @param nm wavelength [nm]
 * @source Quan and Fry 1995, Applied Optics 34: 3477. Check: S 35, 20 °C, 589.3 nm gives 1.33941.
 */
export const refractiveIndex = (S: number, t: number, nm: number): number =>
  1.31405 +
  (1.779e-4 - 1.05e-6 * t + 1.6e-8 * t * t) * S -
  2.02e-6 * t * t +
  (15.868 + 0.01155 * S - 0.00423 * t) / nm -
  4382 / nm ** 2 +
  1.1455e6 / nm ** 3;

/** Rounding of a double in a density that was divided and multiplied again: fresh water must not come out lighter than itself. */
const LAST_DIGITS = 1e-12;

/**
 * Salinity [kg/kg] whose EOS-80 density is rho [kg/m³] at a temperature [K], 0 to 0.060.
 * @returns −1 when rho is below that of pure water, NaN beyond 0.060
 */
export function salinityOfDensity(rho: number, kelvin: number): number {
  const fresh = seawaterDensity(0, kelvin);
  if (rho < fresh * (1 - LAST_DIGITS)) return -1;
  return bisect((S) => seawaterDensity(S, kelvin), Math.max(rho, fresh), 0, 0.06);
}

const EOS_80 = `EOS-80 at one atmosphere: Millero and Poisson 1981, in ${UNESCO_44}`;
const PSS_78 = `PSS-78: ${UNESCO_44}`;

export const seawaterModels = [
  model({
    name: 'rho_sw',
    args: { S: '1', T: 'temperature' },
    unit: 'kg/m^3',
    meaning:
      'density of seawater, one atmosphere, t in °C times 1.00024, s = 1000*S: rho_w + s*(0.824493 − 4.0899e-3*t + 7.6438e-5*t^2 − 8.2467e-7*t^3 + 5.3875e-9*t^4) + s^1.5*(−5.72466e-3 + 1.0227e-4*t − 1.6546e-6*t^2) + 4.8314e-4*s^2',
    source: EOS_80,
    apply: (S = 0, T = 0) => seawaterDensity(S, T),
  }),
  model({
    name: 'rho_w',
    args: { T: 'temperature' },
    unit: 'kg/m^3',
    meaning:
      'density of pure water, t in °C times 1.00024: 999.842594 + 6.793952e-2*t − 9.09529e-3*t^2 + 1.001685e-4*t^3 − 1.120083e-6*t^4 + 6.536332e-9*t^5',
    source: EOS_80,
    apply: (T = 0) => pureWaterDensity68(ipts68(T)),
  }),
  model({
    name: 'S_of_density',
    args: { rho: 'kg/m^3', T: 'temperature' },
    unit: '1',
    meaning:
      'salinity whose density at T is rho, found by halving 0 to 0.060 kg/kg; −1 when rho is below that of pure water',
    source: EOS_80,
    apply: (rho = 0, T = 0) => salinityOfDensity(rho, T),
  }),
  model({
    name: 'S_of_concentration',
    args: { c: 'kg/m^3', T: 'temperature' },
    unit: '1',
    meaning: 'salinity at which a volume of the water holds c of salt, found by halving 0 to 0.060 kg/kg',
    source: EOS_80,
    apply: (c = 0, T = 0) => bisect((S) => S * seawaterDensity(S, T), c, 0, 0.06),
  }),
  model({
    name: 'r_t',
    args: { T: 'temperature' },
    unit: '1',
    meaning:
      'conductivity of salinity 35 over that at 15 °C, t in °C times 1.00024: 0.6766097 + 2.00564e-2*t + 1.104259e-4*t^2 − 6.9698e-7*t^3 + 1.0031e-9*t^4',
    source: PSS_78,
    apply: (T = 0) => ratioOfTemperature(ipts68(T)),
  }),
  model({
    name: 'S_of_ratio',
    args: { R_t: '1', T: 'temperature' },
    unit: '1',
    meaning:
      'salinity from the conductivity ratio, x = sqrt(R_t), t in °C times 1.00024: a thousandth of 0.008 − 0.1692*x + 25.3851*x^2 + 14.0941*x^3 − 7.0261*x^4 + 2.7081*x^5 + (t − 15)/(1 + 0.0162*(t − 15))*(0.0005 − 0.0056*x − 0.0066*x^2 − 0.0375*x^3 + 0.0636*x^4 − 0.0144*x^5)',
    source: PSS_78,
    apply: (Rt = 0, T = 0) => practicalSalinity68(Rt, ipts68(T)) / 1000,
  }),
  model({
    name: 'ratio_of_S',
    args: { S: '1', T: 'temperature' },
    unit: '1',
    meaning: 'conductivity ratio R_t at T that gives salinity S, found by halving',
    source: PSS_78,
    apply: (S = 0, T = 0) => bisect((Rt) => practicalSalinity68(Rt, ipts68(T)) / 1000, S, 0, 3),
  }),
];
