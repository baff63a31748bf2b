import { calculationList, calculationNamed } from '../src/conversation/catalogue.js';
import type { Command } from '../src/conversation/command.js';
import { notice } from '../src/conversation/replies.js';
import type { Turn } from '../src/conversation/turn.js';
import { type Calculation, groupOf, PARTS } from '../src/core/calculation.js';
import { capital } from '../src/render/text.js';

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

const commandsOf = (calculations: readonly Calculation[]): string =>
  [...new Set(calculations.map((calculation) => `/${groupOf(calculation)}`))].join(', ');

/** In the order of the commands, which is the order in which builders ask. */
const ofPart = ({ commands }: Turn, part: string): readonly Calculation[] =>
  commands
    .flatMap(({ calculations = [] }) => calculations.flatMap((id) => calculationNamed(id) ?? []))
    .filter((entry) => entry.part === part);

/** Titles that stand for a part of the build in the overview. */
const MOST_TITLES = 4;

/** One line a part of the build: what can be worked out there, and the command. */
function partLine(turn: Turn, part: string): string {
  const calculations = ofPart(turn, part);
  const titles = calculations.slice(0, MOST_TITLES).map(({ title }) => title.toLowerCase());
  const left = calculations.length - titles.length;
  return `${capital(part)} (${commandsOf(calculations)}): ${titles.join('; ')}${left > 0 ? `; ${left} more` : ''}`;
}

function overview(turn: Turn) {
  const others = turn.commands
    .filter(({ actions }) => actions !== undefined)
    .map(({ name, description }) => `/${name}: ${description}`);
  return notice(turn.speaker, 'Ask in your own words, tell me about your tank, or use a command.', {
    body: [
      'For example: “it’s 150x60x55 cm, 12 mm glass, water sits 4 cm below the rim”, then “how much water does it hold”.',
      '',
      ...PARTS.filter((part) => ofPart(turn, part).length > 0).map((part) => partLine(turn, part)),
      '',
      ...others,
      '',
      'Say “/help drains” or “what can you do about my sump” for more. Leave a number out and I ask for it; say “why” for the working, “in metric” for other units, “forget that” to take something back.',
    ].join('\n'),
  });
}

function helpOn(turn: Turn, topic: string) {
  const wanted = topic.toLowerCase().replace(/^\//, '').trim();
  const part = PARTS.find((name) => [name, `${name}s`, name.replace(/s$/, '')].includes(wanted));
  const command = turn.commands.find(({ name }) => [name, `${name}s`].includes(wanted));
  if (!command)
    return part
      ? helpList(turn, `${capital(part)}: what I can work out.`, ofPart(turn, part))
      : helpAbout(turn, wanted);
  const calculations = (command.calculations ?? []).flatMap((id) => calculationNamed(id) ?? []);
  const actions = (command.actions ?? []).map(({ name, description }) =>
    name === command.name ? `/${name}: ${description}` : `/${command.name} ${name}: ${description}`,
  );
  return helpList(turn, `${command.description}.`, calculations, actions);
}

/** Calculations that are listed with an example of how to ask. */
const MOST_EXAMPLES = 8;

function helpList(turn: Turn, headline: string, calculations: readonly Calculation[], lines: readonly string[] = []) {
  const more = calculations.slice(MOST_EXAMPLES).map(({ slash, title }) => `/${slash}: ${title}`);
  return notice(turn.speaker, headline, {
    body: [...calculations.slice(0, MOST_EXAMPLES).map(helpLine), ...more, ...lines].join('\n'),
  });
}

const helpLine = ({ slash, question, examples }: Calculation): string =>
  `/${slash}: ${question}\n   “${examples[0] ?? ''}”`;

/** Help on a thing of the build: every calculation that speaks of it, those that ask about it first. */
function helpAbout(turn: Turn, thing: string) {
  const stem = thing.replace(/s$/, '');
  const speaks = (texts: readonly string[]) => texts.some((text) => text.toLowerCase().includes(stem));
  const closeness = ({ title, question, cues, inputs }: Calculation): number => {
    if (speaks([title, ...cues])) return 3;
    if (speaks([question])) return 2;
    return speaks(Object.values(inputs).map(({ name }) => name)) ? 1 : 0;
  };
  const found = calculationList.filter((entry) => closeness(entry) > 0).sort((a, b) => closeness(b) - closeness(a));
  if (found.length === 0) {
    return notice(turn.speaker, `There is nothing about ${thing} yet.`, {
      body: `These are the commands: ${turn.commands.map(({ name }) => `/${name}`).join(', ')}`,
    });
  }
  return helpList(turn, `About ${thing} I can work these out.`, found);
}
