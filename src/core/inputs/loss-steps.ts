import { type Condition, caution, step } from '../calculation.js';
import { airVapour, evaporationCoefficient, SURFACE_SOURCES, surfaceConstants, waterVapour } from './surface.js';
import { shapeGuessed } from './tank-heat.js';

export const lossConstants = {
  ...surfaceConstants,
  v: { value: 0.1, unit: 'm/s', name: 'air speed over the water: still room air' },
  S: { value: 0.035, unit: 'kg/kg', name: 'salinity' },
  R_i: { value: 0.13, unit: 'm^2 K/W', name: 'air film on a wall (ISO 6946)' },
  R_f: { value: 0.17, unit: 'm^2 K/W', name: 'air film under a floor (ISO 6946)' },
  R_w: { value: 0.002, unit: 'm^2 K/W', name: 'water film (common practice)' },
  t_p: { value: 0.019, unit: 'm', name: 'thickness of the plywood under the tank' },
  k_p: { value: 0.13, unit: 'W/(m K)', name: 'thermal conductivity of plywood (EN ISO 10456, from memory)' },
  gamma: { value: 67.4, unit: 'Pa/K', name: 'psychrometric constant at one atmosphere (FAO Paper 56)' },
  eps: { value: 0.96, unit: '1', name: 'emissivity of water' },
  sigma: { value: 5.670374e-8, unit: 'W/(m^2 K^4)', name: 'Stefan-Boltzmann constant' },
};

/** Sizes that were not given, from those that were. */
const geometrySteps = [
  step('V_s', '(L_s - 2*t_s)*(W_s - 2*t_s)*h_s', 'volume', 'water in the sump'),
  step('h', 'H - t - fb', 'length', 'water height: height less bottom pane and freeboard'),
  step('h', '(V - V_s)/((L - 2*t)*(W - 2*t))', 'length', 'water height from the volume without the sump'),
  step('h', 'V/((L - 2*t)*(W - 2*t))', 'length', 'water height from the volume'),
  step('h', '((V - V_s)/r)^(1/3)', 'length', 'water height of a tank of common shape, as wide as high'),
  step('h', '(V/r)^(1/3)', 'length', 'water height of a tank of common shape, as wide as high'),
  step('L', 'r*h + 2*t', 'length', 'length of a tank of that shape'),
  step('W', 'h + 2*t', 'length', 'width of a tank of that shape'),
  step('A_d', '(L - 2*t)*(W - 2*t)', 'area', 'open water surface of the display'),
];

/** Walls and surface of display and sump as the heat sees them: the conductance UA and the open surface A. */
export const envelopeSteps = [
  ...geometrySteps,
  step('U', '1/(R_i + t/k + R_w)', 'heat transfer', 'heat transfer through a side pane'),
  step('U_b', '1/(R_f + t_p/k_p + t/k + R_w)', 'heat transfer', 'heat transfer through the bottom on plywood'),
  step('UA_s', '2*(L_s + W_s)*h_s/(R_i + t_s/k + R_w)', 'conductance', 'sides of the sump'),
  step('UA_f', 'L_s*W_s/(R_f + t_p/k_p + t_s/k + R_w)', 'conductance', 'bottom of the sump'),
  step('UA', 'U*2*(L + W)*h + U_b*L*W + UA_s + UA_f', 'conductance', 'walls and bottoms of display and sump'),
  step('UA', 'U*2*(L + W)*h + U_b*L*W', 'conductance', 'walls and bottom'),
  step('A', '(A_d + (L_s - 2*t_s)*(W_s - 2*t_s))*c', 'area', 'open surface of display and sump'),
  step('A', 'A_d*c', 'area', 'open surface'),
  evaporationCoefficient,
];

/** The heat that water at T_w gives to the room, part by part. */
export const lossSteps = [
  ...envelopeSteps,
  waterVapour,
  airVapour('T_r'),
  step('P_wall', 'UA*(T_w - T_r)', 'power', 'through walls and bottom'),
  step('P_evap', 'A*e*(p_w - p_a)', 'power', 'evaporation'),
  step('P_conv', 'A*e*gamma*(T_w - T_r)', 'power', 'air over the surface'),
  step('P_rad', 'A*eps*sigma*(T_w^4 - T_r^4)', 'power', 'radiation from the surface'),
  step('P_loss', 'P_wall + P_evap + P_conv + P_rad', 'power', 'heat lost to the room'),
];

export const systemVolumeSteps = [
  step('V', '(L - 2*t)*(W - 2*t)*h + V_s', 'volume', 'water in display and sump'),
  step('V', '(L - 2*t)*(W - 2*t)*h', 'volume', 'water'),
];

const BY_SIZES = '(L - 2*t)*(W - 2*t)*h';
const noSump: Condition = { not: { given: 'sump_length' } };

export const lossCautions = [
  caution(
    'caution',
    'The volume and the sizes do not agree: what is lost comes from the sizes, what is stored from the volume. Check both.',
    {
      any: [`V < 0.6*${BY_SIZES}`, `V > 1.1*(${BY_SIZES} + V_s)`, { all: [noSump, `V > 1.6*${BY_SIZES}`] }],
    },
  ),
  caution(
    'note',
    'Only a volume was given, so the tank got a common shape ({L} × {W}, water {h} high) and no sump: give its sizes, and the sump’s, for a better figure.',
    shapeGuessed,
  ),
  caution(
    'note',
    'No sump was counted. An open sump often adds a quarter to a half to the loss: give its length, width and water height if there is one.',
    { all: [{ not: shapeGuessed }, noSump] },
  ),
];

export const LOSS_SOURCES = [
  'walls: surface films of ISO 6946',
  ...SURFACE_SOURCES,
  'heat from the surface to the air: Lewis number 1, psychrometric constant of FAO Irrigation and Drainage Paper 56; radiation: Stefan-Boltzmann',
];
