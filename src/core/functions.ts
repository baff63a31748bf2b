import { functionList } from './model.js';
import { daylightModels } from './models/daylight.js';
import { heatModels } from './models/heat.js';
import { hydraulicModels } from './models/hydraulics.js';
import { lidModels } from './models/lid.js';
import { lightModels } from './models/light.js';
import { roundCornerModels } from './models/round-corner.js';
import { seawaterModels } from './models/seawater.js';
import { temperatureModels } from './models/temperature.js';
import { waterSwapModels } from './models/water-swap.js';

/** Everything a formula may call. */
export const functions = functionList([
  ...temperatureModels,
  ...seawaterModels,
  ...waterSwapModels,
  ...hydraulicModels,
  ...heatModels,
  ...lightModels,
  ...daylightModels,
  ...roundCornerModels,
  ...lidModels,
]);
