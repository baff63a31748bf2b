import type { Constant } from './calculation.js';

/** From the IUPAC 2021 abridged atomic masses: H 1.008, C 12.011, N 14.007, O 15.999, Na 22.98977, Mg 24.305, S 32.06, Cl 35.45, Ca 40.078. */
export const MOLAR_MASS_SOURCE = 'molar masses: IUPAC 2021 abridged atomic masses';

const molar = (gramsPerMole: number, name: string): Constant => ({
  // Moved by its exponent: a division would print as 0.018039000000000003.
  value: Number(`${gramsPerMole}e-3`),
  unit: 'kg/mol',
  name: `molar mass of ${name}`,
});

export const nitrogen = molar(14.007, 'nitrogen');
export const ammonia = molar(17.031, 'ammonia, NH₃');
export const ammonium = molar(18.039, 'ammonium, NH₄');
export const ammoniumChloride = molar(53.489, 'ammonium chloride');
export const nitrite = molar(46.005, 'nitrite, NO₂');
export const nitrate = molar(62.004, 'nitrate, NO₃');
export const oxygen = molar(31.998, 'oxygen, O₂');
export const calcium = molar(40.078, 'calcium');
export const sodiumChloride = molar(58.43977, 'sodium chloride');
export const sodiumBicarbonate = molar(84.006, 'sodium bicarbonate');
export const magnesiumChloride = molar(203.295, 'magnesium chloride hexahydrate');
export const magnesiumSulfate = molar(246.466, 'magnesium sulfate heptahydrate');
