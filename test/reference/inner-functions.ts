import { saltMix } from '../../src/core/calculations/salt-mix.js';
import { freeShareTotalScale } from '../../src/core/models/ammonia.js';
import { type WindowReading, lightWindow } from '../../src/core/models/clock-window.js';
import { dayLength, declination } from '../../src/core/models/daylight.js';
import { latentHeat } from '../../src/core/models/heat.js';
import { run } from '../../src/core/run.js';
import { clockText } from '../../src/core/quantity/clock-text.js';
import { flowFactor, flowFactorExponential } from '../../src/core/models/reverse-osmosis.js';
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
  'table.latent_heat': ({ temperature }) => ({ latent_heat: latentHeat(temperature + 273.15) / 1000 }),
  'function.refractive_index': ({ salinity, temperature, wavelength }) => ({ refractive_index: refractiveIndex(salinity, temperature, wavelength) }),
  'function.salt_for_fresh_water': (values) => saltForFreshWater(values),
  'function.day_length_spencer': ({ latitude, day_of_year }) => ({
    day_length: dayLength((latitude * Math.PI) / 180, declination(day_of_year)) / 3600,
  }),
  'function.ro_temperature_factor': ({ temperature }) => ({
    factor: flowFactor(temperature + 273.15),
    factor_other_model: flowFactorExponential(temperature + 273.15),
  }),
  'function.ammonia_fraction_total_scale': ({ ph_total_scale, temperature, salinity }) => ({
    free_fraction: freeShareTotalScale(ph_total_scale, temperature + 273.15, salinity),
  }),
  'function.clock_window': ({ from_text, to_text }) => windowResults(lightWindow(from_text, to_text)),
};

/** The batch that starts from a given amount of fresh water: grams of mix, litres in the end. */
function saltForFreshWater(values: Record<string, number>): Record<string, unknown> {
  const outcome = run(saltMix, {
    fresh_water_volume: { si: values.fresh_water_volume! / 1000, from: 'message' },
    salinity: { si: values.salinity! / 1000, from: 'message' },
    temperature: { si: values.temperature! + 273.15, from: 'message' },
    dry_fraction: { si: 1 - values.water_mass_fraction_of_mix!, from: 'message' },
  });
  const valueOf = (id: string) =>
    outcome.kind === 'answer' ? outcome.results.find((result) => result.id === id)?.value : undefined;
  return { salt_mix_mass: Number(valueOf('salt_mass')) * 1000, finished_volume: Number(valueOf('finished_volume')) * 1000 };
}

function windowResults(read: WindowReading): Record<string, unknown> {
  if (read.kind === 'ask') return { asks: ['light_window'] };
  if (read.kind === 'none') return { refused: true };
  return { on: clockText(read.on), off: clockText(read.off), hours: read.hours / 3600 };
}
