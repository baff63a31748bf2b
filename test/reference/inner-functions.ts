import { practicalSalinityAtPressure, practicalSalinityExtended, refractiveIndex, seawaterDensity68 } from '../../src/core/models/seawater.js';

/** Inner functions by the name under which their check values stand; values in the units of the check file. */
// biome-ignore lint/suspicious/noExplicitAny: the check files hold numbers, texts and lists
export const innerFunctions: Record<string, (values: Record<string, any>) => Record<string, unknown>> = {
  'function.pss78': ({ conductivity_ratio, temperature_ipts68, pressure }) => ({
    salinity: practicalSalinityAtPressure(conductivity_ratio, temperature_ipts68, pressure),
  }),
  'function.pss78_extended': ({ conductivity, temperature }) => ({ salinity: practicalSalinityExtended(conductivity, temperature * 1.00024) }),
  'function.seawater_density': ({ salinity, temperature, temperature_ipts68 }) => ({
    density: seawaterDensity68(salinity, temperature_ipts68 ?? temperature * 1.00024),
  }),
  'table.seawater_density': ({ salinity, temperature }) => {
    const density = seawaterDensity68(salinity, temperature * 1.00024);
    return { density, density_us: (density / 0.45359237) * 3.785411784e-3 };
  },
  'function.refractive_index': ({ salinity, temperature, wavelength }) => ({ refractive_index: refractiveIndex(salinity, temperature, wavelength) }),
};
