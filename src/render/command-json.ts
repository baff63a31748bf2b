import {
  type APIApplicationCommandBasicOption,
  type APIApplicationCommandSubcommandOption,
  ApplicationCommandOptionType,
  ApplicationCommandType,
  ApplicationIntegrationType,
  InteractionContextType,
  type RESTPostAPIApplicationCommandsJSONBody,
  type RESTPostAPIChatInputApplicationCommandsJSONBody,
} from 'discord-api-types/v10';
import { type Command, type CommandAction, type CommandOption, isSingle } from '../conversation/command.js';
import { exampleOf } from '../core/answer.js';
import type { Calculation, Input, QuantityInput } from '../core/calculation.js';
import { toSI, unitNamed } from '../core/quantity/units.js';
import { clipped, LIMITS, lengthOf } from './limits.js';

/** The menu entry on a message; it has no description, so its name says it. */
export const MEASURE_COMMAND = 'Work out these measurements';

const EVERYWHERE = {
  contexts: [InteractionContextType.Guild, InteractionContextType.BotDM, InteractionContextType.PrivateChannel],
  integration_types: [ApplicationIntegrationType.GuildInstall, ApplicationIntegrationType.UserInstall],
};

/** Every command as Discord registers it. @throws Error that names what is wrong with a command */
export const commandsJson = (
  commands: readonly Command[],
  calculations: readonly Calculation[],
): RESTPostAPIApplicationCommandsJSONBody[] => [
  ...commands.map((command) => commandJson(command, calculations)),
  { type: ApplicationCommandType.Message, name: MEASURE_COMMAND, ...EVERYWHERE },
];

/** A slash command: calculations and actions as its subcommands. Options carry an example as long as the whole stays within the limit. */
export function commandJson(
  command: Command,
  calculations: readonly Calculation[],
): RESTPostAPIChatInputApplicationCommandsJSONBody {
  const long = written(command, calculations, true);
  return commandSize(long) <= LIMITS.commandText ? long : written(command, calculations, false);
}

function written(
  command: Command,
  calculations: readonly Calculation[],
  withExamples: boolean,
): RESTPostAPIChatInputApplicationCommandsJSONBody {
  const { name, description, actions = [] } = command;
  const common = { type: ApplicationCommandType.ChatInput as const, name, description, ...EVERYWHERE };
  if (isSingle(command)) return { ...common, options: actions[0]!.options.map(optionOfAction) };
  const worked = (command.calculations ?? []).map((id) => {
    const calculation = calculations.find((entry) => entry.id === id);
    if (!calculation) throw new Error(`/${name} names the calculation ${id}, which does not exist`);
    return subcommandOf(command, calculation, withExamples);
  });
  return { ...common, options: [...worked, ...actions.map(subcommandOfAction)] };
}

function subcommandOf(
  command: Command,
  { slash, title, inputs }: Calculation,
  withExamples: boolean,
): APIApplicationCommandSubcommandOption {
  const [group, name] = slash.split(' ');
  if (group !== command.name || name === undefined) throw new Error(`/${slash} does not belong under /${command.name}`);
  const options = Object.entries(inputs).map(([id, input]) => optionOf(id, input, withExamples));
  return {
    type: ApplicationCommandOptionType.Subcommand,
    name,
    description: clipped(title, LIMITS.description),
    options,
  };
}

const subcommandOfAction = ({ name, description, options }: CommandAction): APIApplicationCommandSubcommandOption => ({
  type: ApplicationCommandOptionType.Subcommand,
  name,
  description,
  options: options.map(optionOfAction),
});

function optionOfAction({
  name,
  description,
  required,
  choices = [],
  suggest,
}: CommandOption): APIApplicationCommandBasicOption {
  const common = {
    type: ApplicationCommandOptionType.String as const,
    name,
    description,
    ...(required ? { required } : {}),
  };
  if (suggest) return { ...common, autocomplete: true };
  return {
    ...common,
    ...(choices.length > 0 ? { choices: choices.map((choice) => ({ name: choice, value: choice })) } : {}),
  };
}

/** A quantity is text, since people type its unit; only a whole number is a number to Discord. */
function optionOf(name: string, input: Input, withExample: boolean): APIApplicationCommandBasicOption {
  const common = {
    type: ApplicationCommandOptionType.String as const,
    name,
    description: describe(input, withExample),
  };
  switch (input.kind) {
    case 'quantity':
      return input.whole ? { ...common, type: ApplicationCommandOptionType.Integer, ...bounds(input) } : common;
    case 'choice': {
      const options = Object.entries(input.options);
      if (options.length > LIMITS.choices) return { ...common, autocomplete: true };
      return {
        ...common,
        choices: options.map(([value, { label }]) => ({ name: clipped(label, LIMITS.choiceName), value })),
      };
    }
    case 'lookup':
      return { ...common, autocomplete: true };
    case 'clock':
    case 'date':
      return common;
  }
}

function bounds({ range: [low, high, unit], aboveLow = false }: QuantityInput): {
  min_value: number;
  max_value: number;
} {
  const row = unitNamed(unit);
  const least = Math.ceil(toSI(low, row));
  return {
    min_value: aboveLow && least === toSI(low, row) ? least + 1 : least,
    max_value: Math.floor(toSI(high, row)),
  };
}

function describe(input: Input, withExample: boolean): string {
  // Discord shows a whole number's field as one, and a choice's options.
  const plain = input.kind === 'choice' || (input.kind === 'quantity' && input.whole && input.example === undefined);
  const example = withExample && !plain ? exampleOf(input) : undefined;
  const long = example === undefined ? input.name : `${input.name}, like ${example}`;
  return lengthOf(long) <= LIMITS.description ? long : clipped(input.name, LIMITS.description);
}

interface Sized {
  readonly name: string;
  readonly description?: string;
  readonly options?: readonly unknown[];
  readonly choices?: readonly { readonly name: string; readonly value: string | number }[];
}

/** Characters that count towards the size of a command: names, descriptions, and the values of choices. */
export function commandSize(command: object): number {
  const { name, description = '', options = [], choices = [] } = command as Sized;
  const own = [name, description, ...choices.flatMap((choice) => [choice.name, String(choice.value)])];
  return (
    own.map(lengthOf).reduce((a, b) => a + b, 0) +
    options.reduce<number>((sum, option) => sum + commandSize(option as object), 0)
  );
}
