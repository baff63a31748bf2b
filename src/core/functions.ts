import { functionList } from './model.js';
import { ammoniaModels } from './models/ammonia.js';
import { cycleLogModels } from './models/cycle-log.js';
import { daylightModels } from './models/daylight.js';
import { heatModels } from './models/heat.js';
import { hydraulicModels } from './models/hydraulics.js';
import { lidModels } from './models/lid.js';
import { lightModels } from './models/light.js';
import { nitrogenModels } from './models/nitrogen.js';
import { plateModels } from './models/plates.js';
import { reverseOsmosisModels } from './models/reverse-osmosis.js';
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
  ...lightModels,
  ...daylightModels,
  ...plateModels,
  ...cycleLogModels,
  ...nitrogenModels,
  ...roundCornerModels,
  ...lidModels,
  ...ammoniaModels,
  ...reverseOsmosisModels,
]);
