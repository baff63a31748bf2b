import { type Constant, quantity, step } from '../calculation.js';
import { salinityKept } from './salinity.js';
import { tankTemperature } from './tank-heat.js';

/** What decides how much of the ammonia is the free, poisonous form. */
export const freeAmmoniaInputs = {
  ph: quantity('pH', {
    symbol: 'pH',
    name: 'pH',
    words: ['ph', 'p h', 'ph of', 'ph is', 'acidity'],
    range: [6.5, 9, 'pH'],
    usual: [7.4, 8.8, 'pH'],
    slips: [
      [65, 90, 'A decimal point may be missing: 82 is written for 8.2.'],
      [9, 14, 'No tank that animals live in reads that: test again, with a second kit.'],
    ],
    ask: 'What is the pH?',
    example: '8.2',
  }),
  temperature: quantity('temperature', {
    ...tankTemperature,
    symbol: 'T',
    range: [0, 35, 'degC'],
    usual: [18, 32, 'degC'],
    words: ['water', 'tank', 'temp', 'temperature', 'water temp', 'tank temp', 'at'],
    ask: 'How warm is the water?',
  }),
  salinity: quantity('salinity', {
    ...salinityKept,
    range: [0, 40, 'g/kg'],
    default: { value: 35, unit: 'g/kg', why: 'natural seawater over reefs; 5 ppt either way move it by 2 %' },
  }),
};

export const freeAmmoniaConstants: Readonly<Record<string, Constant>> = {
  i_S: { value: 19.9273, unit: 'mol/kg', name: 'ions for each kg/kg of sea salt' },
  K_0: { value: 9.245, unit: '1', name: 'pK in fresh water at 25 °C' },
  b_I: { value: 0.116, unit: 'kg/mol', name: 'rise of the pK with the ions' },
  b_T: { value: 0.0324, unit: '1/K', name: 'fall of the pK for each degree' },
  b_P: { value: 0.0415, unit: 'K', name: 'effect of one atmosphere' },
  B_0: { value: 10.0423, unit: '1', name: 'pK in fresh water at 0 °C, Bell' },
  B_T: { value: 0.0315536, unit: '1/K', name: 'fall of the pK for each degree, Bell' },
  B_S: { value: 3.071, unit: '1', name: 'rise of the pK for each kg/kg of salt, Bell' },
};

/** The share `f` with the ends that other fits give; the pH scale of a hobby meter is the larger doubt. */
export const freeShareSteps = [
  step('I', 'i_S*S/(1 - 1.005109*S)', 'mol/kg', 'ionic strength of the water'),
  step('pK', 'K_0 + b_I*I + b_T*(celsius(25) - T) + b_P/T', '1', 'pH at which half of the ammonia is free (EPA 1989)'),
  step('f', '1/(1 + 10^(pK - pH))', 'fraction', 'free share'),
  step('pK_B', 'B_0 - B_T*(T - celsius(0)) + B_S*S', '1', 'the same after Bell 2007'),
  step('f_B', '1/(1 + 10^(pK_B - pH))', 'fraction', 'free share after Bell 2007'),
  step('f_C', 'nh3_share_total(pH, T, S)', 'fraction', 'free share if the meter’s pH is on the total scale'),
  step('f_low', 'min(f, min(f_B, f_C))', 'fraction', 'free share, low end'),
  step('f_high', 'max(f, max(f_B, f_C))', 'fraction', 'free share, high end'),
];

export const FREE_AMMONIA_SOURCES = [
  'main: US EPA 440/5-88-004 (1989), saltwater criteria, after Hampson 1977 and Whitfield 1974, with 25 °C as its zero: 298 K, as printed, makes it 1 % larger and misses its own table',
  'low end: Bell and others 2007, a fit for 5 to 25 °C',
];
export const THRESHOLD_SOURCES = [
  '0.035 mg/L for days and 0.233 for an hour, as NH₃: US EPA 440/5-88-004 (from memory)',
  '0.02 and 0.1 mg/L as nitrogen: common practice, no source',
];
