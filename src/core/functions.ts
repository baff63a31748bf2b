import { functionList } from './model.js';
import { heatModels } from './models/heat.js';
import { hydraulicModels } from './models/hydraulics.js';
import { seawaterModels } from './models/seawater.js';

/** Everything a formula may call. */
export const functions = functionList([...seawaterModels, ...hydraulicModels, ...heatModels]);
