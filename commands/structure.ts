import type { Command } from '../src/conversation/command.js';

export const structureCommand: Command = {
  name: 'structure',
  description: 'Weights, floor, glass, rock, sand, the way in, and the lid',
  calculations: [
    'weight.tank',
    'weight.system',
    'floor.joist',
    'glass.check',
    'glass.bottom',
    'rock.mass',
    'rock.stability',
    'rock.contact_pressure',
    'sand.mass',
  ],
};
