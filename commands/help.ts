import { calculationList, calculationNamed } from '../src/conversation/catalogue.js';
import type { Command } from '../src/conversation/command.js';
import { notice } from '../src/conversation/replies.js';
import type { Turn } from '../src/conversation/turn.js';
import type { Calculation } from '../src/core/calculation.js';

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
  const wanted = topic.toLowerCase().replace(/^\//, '').trim();
  const command = turn.commands.find(({ name }) => [name, `${name}s`].includes(wanted));
  if (!command) return helpAbout(turn, wanted);
  const calculations = (command.calculations ?? []).flatMap((id) => calculationNamed(id) ?? []);
  const lines = [
    ...calculations.map(helpLine),
    ...(command.actions ?? []).map(({ name, description }) =>
      name === command.name ? `/${name}: ${description}` : `/${command.name} ${name}: ${description}`,
    ),
  ];
  return notice(turn.speaker, `${command.description}.`, { body: lines.join('\n') });
}

const helpLine = ({ slash, question, examples }: Calculation): string =>
  `/${slash}: ${question}\n   “${examples[0] ?? ''}”`;

const MOST_ABOUT = 8;

/** Help on a thing of the build: every calculation that speaks of it, those that ask about it first. */
function helpAbout(turn: Turn, thing: string) {
  const stem = thing.replace(/s$/, '');
  const speaks = (texts: readonly string[]) => texts.some((text) => text.toLowerCase().includes(stem));
  const about = ({ title, question, cues }: Calculation) => speaks([title, question, ...cues]);
  const takes = ({ inputs }: Calculation) => speaks(Object.values(inputs).map(({ name }) => name));
  const found = [...calculationList.filter(about), ...calculationList.filter((entry) => !about(entry) && takes(entry))];
  if (found.length === 0) {
    return notice(turn.speaker, `There is nothing about ${thing} yet.`, {
      body: `These are the commands: ${turn.commands.map(({ name }) => `/${name}`).join(', ')}`,
    });
  }
  return notice(turn.speaker, `About ${thing} I can work these out.`, {
    body: found.slice(0, MOST_ABOUT).map(helpLine).join('\n'),
  });
}
