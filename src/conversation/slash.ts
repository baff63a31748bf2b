import { exampleOf } from '../core/answer.js';
import type { Calculation, Input } from '../core/calculation.js';
import type { Given } from '../core/outcome.js';
import { unitNamed } from '../core/quantity/units.js';
import type { Reply } from '../core/reply.js';
import { readingQuestion, readValue, shortened } from '../language/read-value.js';
import { calculationNamed } from './catalogue.js';
import { type Command, type CommandAction, isSingle } from './command.js';
import { noteDay } from './days.js';
import { namedFor } from './named-for.js';
import { makeReply } from './replies.js';
import { hintsFor, learnUnits, preferencesFor, type Turn } from './turn.js';
import { hearText, saysAnything, understand } from './understand.js';
import { work } from './work.js';

/** A slash command cut into its path and its options, `name:value`; a value runs to the next option that the command has. */
export function parseOptions(
  text: string,
  names: readonly string[],
): { options: Record<string, string>; stray: string } {
  const places = names
    .flatMap((name) => [...text.matchAll(new RegExp(`(?<=^|\\s)${name}:`, 'g'))].map(({ index }) => ({ name, index })))
    .sort((a, b) => a.index - b.index);
  const options: Record<string, string> = {};
  places.forEach(({ name, index }, i) => {
    options[name] = text.slice(index + name.length + 1, places[i + 1]?.index ?? text.length).trim();
  });
  return { options, stray: text.slice(0, places[0]?.index ?? text.length).trim() };
}

/** Answers a message that begins with a slash. */
export async function slash(turn: Turn, text: string): Promise<Reply[]> {
  const [name = '', second = '', ...rest] = text.trim().slice(1).split(/\s+/);
  const command = turn.commands.find((entry) => entry.name === name.toLowerCase());
  if (!command)
    return [
      unknown(
        turn,
        `There is no command /${shortened(name)}.`,
        turn.commands.map((entry) => `/${entry.name}`),
      ),
    ];
  if (isSingle(command)) return runAction(turn, command.actions![0]!, text.trim().slice(name.length + 1));
  const remainder = [second, ...rest].join(' ');
  const calculation = calculationAt(command, second);
  if (calculation) return runCalculation(turn, calculation, remainder.slice(second.length));
  const action = command.actions?.find((entry) => entry.name === second.toLowerCase());
  if (action) return runAction(turn, action, remainder.slice(second.length));
  return [
    unknown(
      turn,
      second === '' ? `/${name} needs one more word.` : `/${name} has no ${shortened(second)}.`,
      subcommandNames(command).map((sub) => `/${name} ${sub}`),
    ),
  ];
}

const lastWord = (calculation: Calculation): string => calculation.slash.split(' ').at(-1)!;

/** The calculation that a command's second word names. */
export function calculationAt(command: Command, word: string): Calculation | undefined {
  const wanted = word.toLowerCase().replace(/_/g, '-');
  const own = (command.calculations ?? []).flatMap((id) => calculationNamed(id) ?? []);
  return (
    own.find((calculation) => lastWord(calculation) === wanted) ??
    own.find(({ id }) => id.split('.')[1]!.replace(/_/g, '-') === wanted)
  );
}

export const subcommandNames = (command: Command): string[] => [
  ...(command.calculations ?? []).flatMap((id) => calculationNamed(id) ?? []).map(lastWord),
  ...(command.actions ?? []).map(({ name }) => name),
];

const unknown = (turn: Turn, headline: string, choices: readonly string[]): Reply =>
  makeReply(turn.speaker, 'refusal', headline, { body: `These exist: ${choices.join(', ')}.` });

async function runAction(turn: Turn, action: CommandAction, text: string): Promise<Reply[]> {
  const names = action.options.map(({ name }) => name);
  const { options, stray } = parseOptions(text, names);
  const [first] = names;
  if (stray !== '' && first !== undefined && options[first] === undefined) options[first] = stray;
  const absent = action.options.find(({ name, required }) => required && !options[name]);
  if (absent)
    return [makeReply(turn.speaker, 'refusal', `/${action.name} needs ${absent.name}: ${absent.description}.`)];
  return action.run(turn, options);
}

async function runCalculation(turn: Turn, calculation: Calculation, text: string): Promise<Reply[]> {
  const { options, stray } = parseOptions(text, Object.keys(calculation.inputs));
  const strayOption = stray.match(/^([a-z_0-9]+):/)?.[1];
  if (strayOption) {
    const names = Object.keys(calculation.inputs).join(', ');
    return [
      makeReply(turn.speaker, 'refusal', `/${calculation.slash} has no option ${strayOption}.`, {
        body: `Its options: ${names}.`,
      }),
    ];
  }
  const free = hearText(stray);
  await learnUnits(turn, free.said);
  const said = await understand(free, calculation.inputs, hintsFor(turn, free.said));
  noteDay(turn, said.day);
  if (stray !== '' && !saysAnything(said)) {
    const [first] = Object.keys(calculation.inputs);
    return [
      makeReply(turn.speaker, 'refusal', `I can’t place “${shortened(stray)}” in /${calculation.slash}.`, {
        body: `Write it like this: /${calculation.slash} ${first}:${exampleFor(calculation.inputs[first!]!)}`,
      }),
    ];
  }
  const heard = hearText(Object.values(options).join(' ; '));
  await learnUnits(turn, heard.said);
  const read = await readOptions(turn, calculation, options, heard.said);
  if ('reply' in read) return [read.reply];
  const units = [
    ...heard.said,
    ...Object.values(read.given).flatMap((value) => ('si' in value && value.unit ? [unitNamed(value.unit)] : [])),
  ];
  return [await work(turn, calculation, { ...said.given, ...read.given }, preferencesFor(turn, units))];
}

async function readOptions(
  turn: Turn,
  calculation: Calculation,
  options: Readonly<Record<string, string>>,
  said: ReturnType<typeof hearText>['said'],
): Promise<{ given: Given } | { reply: Reply }> {
  const given: Record<string, Given[string]> = {};
  for (const [id, text] of Object.entries(options)) {
    const input = calculation.inputs[id] as Input;
    const read = await readValue(input, text, hintsFor(turn, said));
    const named = 'value' in read ? undefined : namedFor(calculation, id, text);
    if ('value' in read) {
      given[id] = read.value;
      noteDay(turn, read.day);
    } else if (named) Object.assign(given, named);
    else if ('doubt' in read) {
      turn.dialogue.topic = calculation.id;
      turn.dialogue.given = given;
      turn.dialogue.doubts = [{ id, readings: read.doubt.map(({ si, unit }) => ({ si, unit: unit.id })) }];
      return {
        reply: makeReply(turn.speaker, 'question', readingQuestion(`is the ${input.name}`, read.doubt), {
          calculation: calculation.id,
          asks: [id],
        }),
      };
    } else {
      return { reply: makeReply(turn.speaker, 'refusal', read.problem, { calculation: calculation.id, asks: [id] }) };
    }
  }
  return { given };
}

const exampleFor = (input: Input): string => (exampleOf(input) ?? '').split(/,? or /)[0]!;
