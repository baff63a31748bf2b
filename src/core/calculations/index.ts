// Written by `npm run gen`.
import { airVentilation } from './air-ventilation.js';
import { coolingNeed } from './cooling-need.js';
import { drainSiphon } from './drain-siphon.js';
import { evaporationRate } from './evaporation-rate.js';
import { heatLoss } from './heat-loss.js';
import { heaterOutage } from './heater-outage.js';
import { heaterSize } from './heater-size.js';
import { heaterStuckOn } from './heater-stuck-on.js';
import { heaterWarmUp } from './heater-warm-up.js';
import { lightAcclimation } from './light-acclimation.js';
import { lightAttenuation } from './light-attenuation.js';
import { lightDayLength } from './light-day-length.js';
import { lightEnergy } from './light-energy.js';
import { lightHeight } from './light-height.js';
import { lightHours } from './light-hours.js';
import { lightIntegral } from './light-integral.js';
import { lightLux } from './light-lux.js';
import { lightRefugium } from './light-refugium.js';
import { lightSchedule } from './light-schedule.js';
import { lightSpread } from './light-spread.js';
import { salinityFromConductivity } from './salinity-from-conductivity.js';
import { salinityFromDensity } from './salinity-from-density.js';
import { salinityFromSg } from './salinity-from-sg.js';
import { salinityHydrometer } from './salinity-hydrometer.js';
import { salinityRefractometer } from './salinity-refractometer.js';
import { salinityToConductivity } from './salinity-to-conductivity.js';
import { salinityToSg } from './salinity-to-sg.js';
import { salinityUnits } from './salinity-units.js';
import { saltLower } from './salt-lower.js';
import { saltMix } from './salt-mix.js';
import { saltRaise } from './salt-raise.js';
import { saltRaiseBySwap } from './salt-raise-by-swap.js';
import { volumeRectangular } from './volume-rectangular.js';

export const calculations = [
  airVentilation,
  coolingNeed,
  drainSiphon,
  evaporationRate,
  heatLoss,
  heaterOutage,
  heaterSize,
  heaterStuckOn,
  heaterWarmUp,
  lightAcclimation,
  lightAttenuation,
  lightDayLength,
  lightEnergy,
  lightHeight,
  lightHours,
  lightIntegral,
  lightLux,
  lightRefugium,
  lightSchedule,
  lightSpread,
  salinityFromConductivity,
  salinityFromDensity,
  salinityFromSg,
  salinityHydrometer,
  salinityRefractometer,
  salinityToConductivity,
  salinityToSg,
  salinityUnits,
  saltLower,
  saltMix,
  saltRaise,
  saltRaiseBySwap,
  volumeRectangular,
] as const;
