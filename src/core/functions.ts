import { functionList } from './model.js';
import { cycleLogModels } from './models/cycle-log.js';
import { daylightModels } from './models/daylight.js';
import { heatModels } from './models/heat.js';
import { hydraulicModels } from './models/hydraulics.js';
import { lidModels } from './models/lid.js';
import { lightModels } from './models/light.js';
import { membraneModels } from './models/membrane.js';
import { nitrogenModels } from './models/nitrogen.js';
import { plateModels } from './models/plates.js';
import { roundCornerModels } from './models/round-corner.js';
import { seawaterModels } from './models/seawater.js';
import { temperatureModels } from './models/temperature.js';
import { waterChangeModels } from './models/water-change.js';
import { waterSwapModels } from './models/water-swap.js';

/** Everything a formula may call. */
export const functions = functionList([
  ...temperatureModels,
  ...seawaterModels,
  ...waterSwapModels,
  ...waterChangeModels,
  ...hydraulicModels,
  ...heatModels,
  ...membraneModels,
  ...lightModels,
  ...daylightModels,
  ...plateModels,
  ...cycleLogModels,
  ...nitrogenModels,
  ...roundCornerModels,
  ...lidModels,
]);
