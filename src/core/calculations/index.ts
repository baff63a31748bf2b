// Written by `npm run gen`.
import { airVentilation } from './air-ventilation.js';
import { coolingNeed } from './cooling-need.js';
import { drainClog } from './drain-clog.js';
import { drainEmergency } from './drain-emergency.js';
import { drainHoleLayout } from './drain-hole-layout.js';
import { drainOpen } from './drain-open.js';
import { drainSiphon } from './drain-siphon.js';
import { drainStack } from './drain-stack.js';
import { drainSubmergence } from './drain-submergence.js';
import { drainbackSafeLevel } from './drainback-safe-level.js';
import { drainbackVolume } from './drainback-volume.js';
import { evaporationRate } from './evaporation-rate.js';
import { floorJoist } from './floor-joist.js';
import { glassBottom } from './glass-bottom.js';
import { glassCheck } from './glass-check.js';
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
import { overflowWeir } from './overflow-weir.js';
import { rockContactPressure } from './rock-contact-pressure.js';
import { rockMass } from './rock-mass.js';
import { rockStability } from './rock-stability.js';
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
import { sandMass } from './sand-mass.js';
import { topoffDrift } from './topoff-drift.js';
import { volumeBowFront } from './volume-bow-front.js';
import { volumeConvert } from './volume-convert.js';
import { volumeCorner } from './volume-corner.js';
import { volumeCylinder } from './volume-cylinder.js';
import { volumeDisplacement } from './volume-displacement.js';
import { volumeHexagon } from './volume-hexagon.js';
import { volumeQuarterCylinder } from './volume-quarter-cylinder.js';
import { volumeRectangular } from './volume-rectangular.js';
import { volumeSump } from './volume-sump.js';
import { volumeSystem } from './volume-system.js';
import { waterChangeContinuous } from './water-change-continuous.js';
import { waterChangeSeries } from './water-change-series.js';
import { waterChangeSingle } from './water-change-single.js';
import { waterChangeToTarget } from './water-change-to-target.js';
import { weightSystem } from './weight-system.js';
import { weightTank } from './weight-tank.js';

export const calculations = [
  airVentilation,
  coolingNeed,
  drainClog,
  drainEmergency,
  drainHoleLayout,
  drainOpen,
  drainSiphon,
  drainStack,
  drainSubmergence,
  drainbackSafeLevel,
  drainbackVolume,
  evaporationRate,
  floorJoist,
  glassBottom,
  glassCheck,
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
  overflowWeir,
  rockContactPressure,
  rockMass,
  rockStability,
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
  sandMass,
  topoffDrift,
  volumeBowFront,
  volumeConvert,
  volumeCorner,
  volumeCylinder,
  volumeDisplacement,
  volumeHexagon,
  volumeQuarterCylinder,
  volumeRectangular,
  volumeSump,
  volumeSystem,
  waterChangeContinuous,
  waterChangeSeries,
  waterChangeSingle,
  waterChangeToTarget,
  weightSystem,
  weightTank,
] as const;
