import { model } from '../model.js';
import { bisect } from './seawater.js';

const STANDARD_PRESSURE = 101_325;
const STEFAN_BOLTZMANN = 5.670374e-8;
const WATER_EMISSIVITY = 0.96;
/** Psychrometric constant at one atmosphere [Pa/K]: 0.665e-3 of the air pressure (FAO Irrigation and Drainage Paper 56). */
const PSYCHROMETRIC = 67.4;
const SALT_LOWERS_VAPOUR = 0.537;

const celsius = (kelvin: number): number => kelvin - 273.15;

/**
 * Saturation vapour pressure over pure water [Pa].
 * @param T temperature [K], 260 to 320
 * @source Alduchov and Eskridge 1996, J. Applied Meteorology 35: 601; 0.25 % below IAPWS-IF97 at 15 to 35 °C
 */
export const saturationPressure = (T: number): number =>
  610.94 * Math.exp((17.625 * celsius(T)) / (243.04 + celsius(T)));

/** Vapour pressure over salt water [Pa]; S in kg/kg. Matches the TEOS-10 water activity to 0.03 %. */
export const saltVapourPressure = (T: number, S: number): number =>
  saturationPressure(T) * (1 - SALT_LOWERS_VAPOUR * S);

/** Latent heat of evaporation of water [J/kg]; a straight line, within 0.02 % of IAPWS-IF97 at 15 to 35 °C. */
export const latentHeat = (T: number): number => 2_501_000 - 2360 * celsius(T);

const saturationSlope = (T: number): number => (saturationPressure(T) * 4283.58) / (243.04 + celsius(T)) ** 2;

/**
 * Heat that a tank gives to its room [W]; negative when the room warms it.
 * @param UA conductance of the walls and the bottom [W/K]    @param A open water surface [m²]
 * @param e evaporation coefficient [W/(m² Pa)]               @param RH relative humidity of the room [1]
 * @param S salinity [kg/kg]   @param Tw water [K]   @param Tr room [K]
 * @source walls: ISO 6946 films; surface: Carrier evaporation, Lewis number 1, grey-body radiation
 */
export function heatLoss(UA: number, A: number, e: number, RH: number, S: number, Tw: number, Tr: number): number {
  const evaporation = e * (saltVapourPressure(Tw, S) - RH * saturationPressure(Tr));
  const convection = e * PSYCHROMETRIC * (Tw - Tr);
  const radiation = WATER_EMISSIVITY * STEFAN_BOLTZMANN * (Tw ** 4 - Tr ** 4);
  return UA * (Tw - Tr) + A * (evaporation + convection + radiation);
}

const LOSS_SOURCE = 'sum of the wall and surface losses of this answer, each with its own source';
const COLDEST_ROOM = 268.15;
const HOTTEST_ROOM = 333.15;
const COLDEST_WATER = 253.15;
const HOTTEST_WATER = 368.15;

/** Time [s] for C dT/dt = P − loss(T) to go from T0 to T1, Simpson's rule over 8 intervals of temperature; Infinity when it never gets there. */
function timeBetween(C: number, P: number, loss: (T: number) => number, T0: number, T1: number): number {
  const INTERVALS = 8;
  const slowness = (T: number) => C / (P - loss(T));
  const width = (T1 - T0) / INTERVALS;
  let sum = 0;
  for (let i = 0; i <= INTERVALS; i += 1) {
    const value = slowness(T0 + i * width);
    if (!(value * width > 0)) return Number.POSITIVE_INFINITY;
    sum += value * (i === 0 || i === INTERVALS ? 1 : i % 2 === 1 ? 4 : 2);
  }
  return (sum * width) / 3;
}

const humidityRatio = (p: number): number => (0.62198 * p) / (STANDARD_PRESSURE - p);
const moistAirDensity = (T: number, p: number): number => (STANDARD_PRESSURE - p) / (287.055 * T) + p / (461.495 * T);

/**
 * Evaporation from undisturbed water in still room air [kg/(m² s)].
 * @source Shah 2012, ASHRAE Transactions 118(2): natural convection, with the vapour-pressure term where the air lies still
 */
function shahEvaporation(Tw: number, Ta: number, RH: number, S: number): number {
  const [pw, pa] = [saltVapourPressure(Tw, S), RH * saturationPressure(Ta)];
  const lift = moistAirDensity(Ta, pa) - moistAirDensity(Tw, pw);
  const C = lift <= 0.02 ? 40 : 35;
  const dryAir = (STANDARD_PRESSURE - pw) / (287.055 * Tw);
  const convected = lift > 0 ? C * dryAir * Math.cbrt(lift) * (humidityRatio(pw) - humidityRatio(pa)) : 0;
  return Math.max(convected, 0.00005 * (pw - pa)) / 3600;
}

const lossArgs = { UA: 'W/K', A: 'm^2', e: 'W/(m^2 Pa)', RH: '1', S: '1' };

export const heatModels = [
  model({
    name: 'psat',
    args: { T: 'temperature' },
    unit: 'Pa',
    meaning: 'saturation vapour pressure: 610.94*exp(17.625*t/(243.04 + t)), t in °C',
    source: 'Alduchov and Eskridge 1996, J. Applied Meteorology 35: 601',
    apply: (T = 0) => saturationPressure(T),
  }),
  model({
    name: 'psat_slope',
    args: { T: 'temperature' },
    unit: 'Pa/K',
    meaning: 'how fast the saturation vapour pressure rises: psat*4283.58/(243.04 + t)^2, t in °C',
    source: 'derivative of Alduchov and Eskridge 1996',
    apply: (T = 0) => saturationSlope(T),
  }),
  model({
    name: 'latent',
    args: { T: 'temperature' },
    unit: 'J/kg',
    meaning: 'latent heat of evaporation: 2501000 − 2360*t, t in °C',
    source: 'straight line through IAPWS-IF97, 0.02 % at 15 to 35 °C',
    apply: (T = 0) => latentHeat(T),
  }),
  model({
    name: 'shah_evaporation',
    args: { T_w: 'temperature', T_a: 'temperature', RH: '1', S: '1' },
    unit: 'kg/(m^2 s)',
    meaning:
      'evaporation from undisturbed water in still air: the greater of C*d_w*(d_a − d_s)^(1/3)*(w_s − w_a) and 0.00005*(p_s − p_a), over 3600; p_s = psat(T_w)*(1 − 0.537*S), p_a = RH*psat(T_a); w = 0.62198*p/(101325 − p); d = (101325 − p)/(287.055*T) + p/(461.495*T), of the room d_a and at the surface d_s; d_w dry air at the surface; C 40 to a difference of 0.02 kg/m³, 35 beyond',
    source: 'Shah 2012, ASHRAE Transactions 118(2)',
    apply: (Tw = 0, Ta = 0, RH = 0, S = 0) => shahEvaporation(Tw, Ta, RH, S),
  }),
  model({
    name: 'heat_loss',
    args: { ...lossArgs, T_w: 'temperature', T_r: 'temperature' },
    unit: 'W',
    meaning:
      'heat given to the room: UA*(T_w − T_r) + A*(e*(psat(T_w)*(1 − 0.537*S) − RH*psat(T_r)) + e*67.4*(T_w − T_r) + 0.96*5.670374e-8*(T_w^4 − T_r^4))',
    source: LOSS_SOURCE,
    apply: (UA = 0, A = 0, e = 0, RH = 0, S = 0, Tw = 0, Tr = 0) => heatLoss(UA, A, e, RH, S, Tw, Tr),
  }),
  model({
    name: 'room_at_loss',
    args: { P: 'W', ...lossArgs, T_w: 'temperature' },
    unit: 'temperature',
    meaning:
      'room temperature at which heat_loss is P, found by halving −5 to 60 °C; −5 °C, the coldest room that is asked about, when even there it is less',
    source: LOSS_SOURCE,
    apply: (P = 0, UA = 0, A = 0, e = 0, RH = 0, S = 0, Tw = 0) => {
      const loss = (Tr: number) => heatLoss(UA, A, e, RH, S, Tw, Tr);
      return loss(COLDEST_ROOM) < P ? COLDEST_ROOM : bisect(loss, P, COLDEST_ROOM, HOTTEST_ROOM);
    },
  }),
  model({
    name: 'water_at_loss',
    args: { P: 'W', ...lossArgs, T_r: 'temperature' },
    unit: 'temperature',
    meaning:
      'water temperature at which heat_loss is P: where it settles; found by halving −20 to 95 °C; 95 °C when even there it is less',
    source: LOSS_SOURCE,
    apply: (P = 0, UA = 0, A = 0, e = 0, RH = 0, S = 0, Tr = 0) => {
      const loss = (Tw: number) => heatLoss(UA, A, e, RH, S, Tw, Tr);
      return loss(HOTTEST_WATER) < P ? HOTTEST_WATER : bisect(loss, P, COLDEST_WATER, HOTTEST_WATER);
    },
  }),
  model({
    name: 'time_to_reach',
    args: { C: 'J/K', P: 'W', ...lossArgs, T_0: 'temperature', T_1: 'temperature', T_r: 'temperature' },
    unit: 's',
    meaning:
      'time from T_0 to T_1: integral of C/(P − heat_loss(T)) dT, Simpson over 8 intervals; never when P runs out on the way',
    source: 'energy balance',
    apply: (C = 0, P = 0, UA = 0, A = 0, e = 0, RH = 0, S = 0, T0 = 0, T1 = 0, Tr = 0) =>
      timeBetween(C, P, (T) => heatLoss(UA, A, e, RH, S, T, Tr), T0, T1),
  }),
];
