// Written by `npm run gen`.
import { askCommand } from './ask.js';
import { cycleCommand } from './cycle.js';
import { drainCommand } from './drain.js';
import { heaterCommand } from './heater.js';
import { helpCommand } from './help.js';
import { lightCommand } from './light.js';
import { mydataCommand } from './mydata.js';
import { planCommand } from './plan.js';
import { powerCommand } from './power.js';
import { returnCommand } from './return.js';
import { salinityCommand } from './salinity.js';
import { saltCommand } from './salt.js';
import { structureCommand } from './structure.js';
import { tankCommand } from './tank.js';
import { timezoneCommand } from './timezone.js';
import { topoffCommand } from './topoff.js';
import { unitsCommand } from './units.js';
import { volumeCommand } from './volume.js';
import { waterCommand } from './water.js';

export const commands = [
  askCommand,
  cycleCommand,
  drainCommand,
  heaterCommand,
  helpCommand,
  lightCommand,
  mydataCommand,
  planCommand,
  powerCommand,
  returnCommand,
  salinityCommand,
  saltCommand,
  structureCommand,
  tankCommand,
  timezoneCommand,
  topoffCommand,
  unitsCommand,
  volumeCommand,
  waterCommand,
] as const;
