import { calculationNamed } from '../src/conversation/catalogue.js';
import type { Command } from '../src/conversation/command.js';
import { notice } from '../src/conversation/replies.js';
import type { Turn } from '../src/conversation/turn.js';

export const helpCommand: Command = {
  name: 'help',
  description: 'What I can work out, with examples',
  actions: [
    {
      name: 'help',
      description: 'What I can work out, with examples',
      options: [{ name: 'topic', description: 'a command, such as drain', suggest: 'topic' }],
      run: async (turn, { topic }) => [topic ? helpOn(turn, topic) : overview(turn)],
    },
  ],
};

function overview(turn: Turn) {
  const lines = turn.commands.map(({ name, description }) => `/${name}: ${description}`);
  return notice(turn.speaker, 'Ask in your own words, tell me about your tank, or use a command.', {
    body: [
      'For example: “it’s 150x60x55 cm, 12 mm glass, water sits 4 cm below the rim”, then “how much water does it hold”.',
      '',
      ...lines,
      '',
      'Say “/help drain” for one of them. Leave a number out and I ask for it; say “why” for the working, “in metric” for other units, “forget that” to take something back.',
    ].join('\n'),
  });
}

function helpOn(turn: Turn, topic: string) {
  const wanted = topic.toLowerCase().replace(/^\//, '').split(/\s+/)[0]!;
  const command = turn.commands.find(({ name }) => name === wanted || name === wanted.replace(/s$/, ''));
  if (!command)
    return notice(turn.speaker, `There is no command ${wanted}.`, {
      body: turn.commands.map(({ name }) => `/${name}`).join(', '),
    });
  const calculations = (command.calculations ?? []).flatMap((id) => calculationNamed(id) ?? []);
  const lines = [
    ...calculations.map(({ slash, question, examples }) => `/${slash}: ${question}\n   “${examples[0] ?? ''}”`),
    ...(command.actions ?? []).map(({ name, description }) =>
      name === command.name ? `/${name}: ${description}` : `/${command.name} ${name}: ${description}`,
    ),
  ];
  return notice(turn.speaker, `${command.description}.`, { body: lines.join('\n') });
}
