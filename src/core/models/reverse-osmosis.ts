import { model } from '../model.js';

/** Where makers rate a membrane [K]. */
const RATED_AT = 298.15;
const COLD_SLOPE = 3020;
const WARM_SLOPE = 2640;

/**
 * Flow through a membrane against its flow at 25 °C: 3 % for each degree, counted on.
 * @param T temperature of the feed [K], 276 to 308
 * @source common practice; the form of ASTM D4516, which leaves the factor to the maker. Check: 15 °C gives 0.744.
 */
export const flowFactor = (T: number): number => 1.03 ** (T - RATED_AT);

/**
 * The same after the exponential form of membrane makers, up to 15 % below it in the cold.
 * @source from memory: 3020 K below 25 °C and 2640 K above. Check: 15 °C gives 0.7036.
 */
export const flowFactorExponential = (T: number): number =>
  Math.exp((T < RATED_AT ? COLD_SLOPE : WARM_SLOPE) * (1 / RATED_AT - 1 / T));

export const reverseOsmosisModels = [
  model({
    name: 'ro_factor',
    args: { T: 'temperature' },
    unit: '1',
    meaning: 'flow through a membrane against that at 25 °C, t in °C: 1.03^(t − 25)',
    source: 'temperature of the feed: 3 % a degree, common practice; the form of ASTM D4516',
    apply: (T = 0) => flowFactor(T),
  }),
  model({
    name: 'ro_factor_exp',
    args: { T: 'temperature' },
    unit: '1',
    meaning:
      'the same in the exponential form, T in kelvin: exp(K*(1/298.15 − 1/T)) with K = 3020 below 25 °C and 2640 from there on',
    source: 'exponential form of membrane makers: 3020 and 2640 K from memory',
    apply: (T = 0) => flowFactorExponential(T),
  }),
];
