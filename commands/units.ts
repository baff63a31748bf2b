import type { Command } from '../src/conversation/command.js';

export const unitsCommand: Command = {
  name: 'units',
  description: 'Which units I answer you in',
  actions: [
    {
      name: 'units',
      description: 'Which units I answer you in',
      options: [
        {
          name: 'system',
          description: 'metric, us, imperial, celsius or fahrenheit',
          required: true,
          choices: ['metric', 'us', 'imperial', 'celsius', 'fahrenheit'],
        },
      ],
      run: (turn, { system = '' }) => turn.hear(`in ${system.toLowerCase()}`),
    },
  ],
};
