import { model } from '../model.js';

/**
 * Share of total ammonia that is NH3, from the pH on the total scale.
 * @param pH on the total scale, which a meter set with NBS buffers reads about 0.14 above in seawater
 * @param T temperature [K], 271 to 313      @param S salinity, 0 to 40
 * @source Clegg and Whitfield 1995, Geochimica et Cosmochimica Acta 59: 2403. Check: pH 8, 25 °C, S 35 gives 0.0556.
 */
export function freeShareTotalScale(pH: number, T: number, S: number): number {
  const pK =
    9.244605 -
    2729.33 * (1 / 298.15 - 1 / T) +
    (0.04203362 - 11.24742 / T) * S ** 0.25 +
    (-13.6416 + 1.176949 * Math.sqrt(T) - 0.02860785 * T + 545.4834 / T) * Math.sqrt(S) +
    (-0.1462507 + 0.0090226468 * Math.sqrt(T) - 0.0001471361 * T + 10.5425 / T) * S ** 1.5 +
    (0.004669309 - 0.0001691742 * Math.sqrt(T) - 0.5677934 / T) * S * S +
    (-2.354039e-5 + 0.009698623 / T) * S ** 2.5;
  return 1 / (1 + 10 ** (pK - pH));
}

export const ammoniaModels = [
  model({
    name: 'nh3_share_total',
    args: { pH: '1', T: 'temperature', S: '1' },
    unit: '1',
    meaning:
      'share of NH₃ in total ammonia if the pH is on the total scale, T in kelvin, s = 1000*S: 1/(1 + 10^(pK − pH)), pK = 9.244605 − 2729.33*(1/298.15 − 1/T) + (0.04203362 − 11.24742/T)*s^0.25 + (−13.6416 + 1.176949*sqrt(T) − 0.02860785*T + 545.4834/T)*s^0.5 + (−0.1462507 + 0.0090226468*sqrt(T) − 0.0001471361*T + 10.5425/T)*s^1.5 + (0.004669309 − 0.0001691742*sqrt(T) − 0.5677934/T)*s^2 + (−2.354039e-5 + 0.009698623/T)*s^2.5',
    source: 'high end: Clegg and Whitfield 1995, Geochimica et Cosmochimica Acta 59: 2403, total scale',
    apply: (pH = 0, T = 0, S = 0) => freeShareTotalScale(pH, T, 1000 * S),
  }),
];
