// Written by `npm run gen`.
import { airVentilation } from './air-ventilation.js';
import { alkalinityNaturalLevels } from './alkalinity-natural-levels.js';
import { alkalinityUnits } from './alkalinity-units.js';
import { ammoniaFreeConcentration } from './ammonia-free-concentration.js';
import { ammoniaFreeFraction } from './ammonia-free-fraction.js';
import { calcificationRatio } from './calcification-ratio.js';
import { chamberRunDry } from './chamber-run-dry.js';
import { coolingNeed } from './cooling-need.js';
import { costBudget } from './cost-budget.js';
import { costRunning } from './cost-running.js';
import { cycleAlkalinityUsed } from './cycle-alkalinity-used.js';
import { cycleDoseAmmoniaSolution } from './cycle-dose-ammonia-solution.js';
import { cycleDoseAmmoniumChloride } from './cycle-dose-ammonium-chloride.js';
import { cycleNitrogenBalance } from './cycle-nitrogen-balance.js';
import { cycleOxidationRate } from './cycle-oxidation-rate.js';
import { cycleRateFromLog } from './cycle-rate-from-log.js';
import { cycleStatus } from './cycle-status.js';
import { dosingConsumption } from './dosing-consumption.js';
import { dosingMass } from './dosing-mass.js';
import { drainClog } from './drain-clog.js';
import { drainEmergency } from './drain-emergency.js';
import { drainHoleLayout } from './drain-hole-layout.js';
import { drainOpen } from './drain-open.js';
import { drainSiphon } from './drain-siphon.js';
import { drainStack } from './drain-stack.js';
import { drainSubmergence } from './drain-submergence.js';
import { drainbackSafeLevel } from './drainback-safe-level.js';
import { drainbackVolume } from './drainback-volume.js';
import { electricBackup } from './electric-backup.js';
import { electricCircuit } from './electric-circuit.js';
import { electricCord } from './electric-cord.js';
import { evaporationRate } from './evaporation-rate.js';
import { floorJoist } from './floor-joist.js';
import { glassBottom } from './glass-bottom.js';
import { glassCheck } from './glass-check.js';
import { hangLight } from './hang-light.js';
import { heatLoss } from './heat-loss.js';
import { heaterOutage } from './heater-outage.js';
import { heaterSize } from './heater-size.js';
import { heaterStuckOn } from './heater-stuck-on.js';
import { heaterWarmUp } from './heater-warm-up.js';
import { lidStrut } from './lid-strut.js';
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
import { moveCorner } from './move-corner.js';
import { moveDoorway } from './move-doorway.js';
import { movePeople } from './move-people.js';
import { moveTilt } from './move-tilt.js';
import { nitrogenUnits } from './nitrogen-units.js';
import { overflowWeir } from './overflow-weir.js';
import { pumpFlowNeeded } from './pump-flow-needed.js';
import { pumpOperatingPoint } from './pump-operating-point.js';
import { pumpPower } from './pump-power.js';
import { pumpSplit } from './pump-split.js';
import { pumpTurnover } from './pump-turnover.js';
import { pumpVelocity } from './pump-velocity.js';
import { refugiumTurnover } from './refugium-turnover.js';
import { roRejection } from './ro-rejection.js';
import { roTime } from './ro-time.js';
import { roWaste } from './ro-waste.js';
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
import { stockingFeedSupported } from './stocking-feed-supported.js';
import { stockingRateAtLowAmmonia } from './stocking-rate-at-low-ammonia.js';
import { stockingTanFromFeed } from './stocking-tan-from-feed.js';
import { topoffClogFlood } from './topoff-clog-flood.js';
import { topoffDrift } from './topoff-drift.js';
import { topoffReservoir } from './topoff-reservoir.js';
import { topoffRoRate } from './topoff-ro-rate.js';
import { topoffRunaway } from './topoff-runaway.js';
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
  alkalinityNaturalLevels,
  alkalinityUnits,
  ammoniaFreeConcentration,
  ammoniaFreeFraction,
  calcificationRatio,
  chamberRunDry,
  coolingNeed,
  costBudget,
  costRunning,
  cycleAlkalinityUsed,
  cycleDoseAmmoniaSolution,
  cycleDoseAmmoniumChloride,
  cycleNitrogenBalance,
  cycleOxidationRate,
  cycleRateFromLog,
  cycleStatus,
  dosingConsumption,
  dosingMass,
  drainClog,
  drainEmergency,
  drainHoleLayout,
  drainOpen,
  drainSiphon,
  drainStack,
  drainSubmergence,
  drainbackSafeLevel,
  drainbackVolume,
  electricBackup,
  electricCircuit,
  electricCord,
  evaporationRate,
  floorJoist,
  glassBottom,
  glassCheck,
  hangLight,
  heatLoss,
  heaterOutage,
  heaterSize,
  heaterStuckOn,
  heaterWarmUp,
  lidStrut,
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
  moveCorner,
  moveDoorway,
  movePeople,
  moveTilt,
  nitrogenUnits,
  overflowWeir,
  pumpFlowNeeded,
  pumpOperatingPoint,
  pumpPower,
  pumpSplit,
  pumpTurnover,
  pumpVelocity,
  refugiumTurnover,
  roRejection,
  roTime,
  roWaste,
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
  stockingFeedSupported,
  stockingRateAtLowAmmonia,
  stockingTanFromFeed,
  topoffClogFlood,
  topoffDrift,
  topoffReservoir,
  topoffRoRate,
  topoffRunaway,
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
