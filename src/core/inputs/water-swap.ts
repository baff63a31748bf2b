import { result, step } from '../calculation.js';

/** Tank water of `S_1` out, new water of `S_n` in, until it stands at `S_2`: at once and in `n` equal steps. */
export const swapSteps = [
  step('rho_1', 'rho_sw(S_1, T)', 'density', 'density of the tank water'),
  step('rho_n', 'rho_sw(S_n, T)', 'density', 'density of the new water'),
  step(
    'x',
    'V*rho_1*(S_1 - S_2)/(rho_1*(S_1 - S_2) + rho_n*(S_2 - S_n))',
    'volume',
    'water to swap in one go (mass balance)',
  ),
  step('p', 'x/V', 'fraction', 'share of the system'),
];

export const dailySwapSteps = [
  step('d', '(S_1 - S_2)/n', 'salinity', 'change a day'),
  step('x_day', 'V*rho_1*d/(rho_1*d + rho_n*(S_1 - d - S_n))', 'volume', 'water to swap on the first day'),
  step('rho_l', 'rho_sw(S_2 + d, T)', 'density', 'density of the tank water on the last day', 'n > 1'),
  step('x_last', 'V*rho_l*d/(rho_l*d + rho_n*(S_2 - S_n))', 'volume', 'water to swap on the last day', 'n > 1'),
  step('x_all', 'swap_in_steps(V, S_1, S_2, S_n, n, T)', 'volume', 'water to swap altogether, day by day'),
];

export const swapResults = {
  swap_volume: result('x', 'volume', 'water to swap in one go'),
  swap_fraction: result('p', 'fraction', 'share of the system, in one go'),
  days: result('t', 'time', 'time to take', { units: { metric: 'day', us: 'day' } }),
  swap_per_day: result('x_day', 'volume', 'water to swap on the first day'),
  swap_last_day: result('x_last', 'volume', 'water to swap on the last day'),
  swap_total: result('x_all', 'volume', 'water to swap altogether, day by day'),
};
