import type { Problem } from './api.js';
import { required, tooLong, tooMany } from './check-message.js';

export interface CommandOption {
  readonly type: number;
  readonly name: string;
  readonly description?: string;
  readonly required?: boolean;
  readonly autocomplete?: boolean;
  readonly choices?: readonly { name: string; value: string | number }[];
  readonly min_value?: number;
  readonly max_value?: number;
  readonly options?: readonly CommandOption[];
}

export interface CommandBody {
  readonly type?: number;
  readonly name: string;
  readonly description?: string;
  readonly options?: readonly CommandOption[];
  readonly contexts?: readonly number[];
  readonly integration_types?: readonly number[];
}

const CHAT_INPUT = 1;
const GROUPS = new Set([1, 2]);
const NAME = /^[-_'\p{L}\p{N}]{1,32}$/u;
const MOST_CHARACTERS = 8000;

const problem = (path: string, message: string): Problem => ({ path, code: 'APPLICATION_COMMAND_INVALID', message });

/** Names, descriptions and values of a command and everything in it, as Discord adds them up. */
export function commandLength({
  name,
  description = '',
  options = [],
}: Pick<CommandBody, 'name' | 'description' | 'options'>): number {
  const choices = (option: CommandOption) =>
    (option.choices ?? []).reduce((sum, choice) => sum + choice.name.length + String(choice.value).length, 0);
  return (
    name.length +
    description.length +
    options.reduce((sum, option) => sum + commandLength(option as CommandBody) + choices(option), 0)
  );
}

export function checkCommands(commands: readonly CommandBody[]): Problem[] {
  const names = commands.map(({ type = CHAT_INPUT, name }) => `${type} ${name}`);
  const slash = commands.filter(({ type = CHAT_INPUT }) => type === CHAT_INPUT);
  return [
    ...(new Set(names).size < names.length ? [problem('name', 'Application command names must be unique')] : []),
    ...tooMany('commands', slash, 100),
    ...commands.flatMap((command, i) => checkCommand(`${i}`, command)),
  ];
}

function checkCommand(path: string, command: CommandBody): Problem[] {
  const { type = CHAT_INPUT, name, description, options = [] } = command;
  if (type !== CHAT_INPUT) {
    const empty = description ? [problem(`${path}.description`, 'Context menu commands have no description')] : [];
    return [...required(`${path}.name`, name), ...tooLong(`${path}.name`, name, 32), ...empty];
  }
  const long =
    commandLength(command) > MOST_CHARACTERS
      ? [problem(path, `Command exceeds maximum size (${MOST_CHARACTERS})`)]
      : [];
  return [...checkNamed(path, name, description), ...checkOptions(`${path}.options`, options), ...long];
}

const checkNamed = (path: string, name: string, description: string | undefined): Problem[] => [
  ...(NAME.test(name) && name === name.toLowerCase() ? [] : [problem(`${path}.name`, 'Command name is invalid')]),
  ...required(`${path}.description`, description),
  ...tooLong(`${path}.description`, description, 100),
];

function checkOptions(path: string, options: readonly CommandOption[]): Problem[] {
  const names = options.map(({ name }) => name);
  const late = options.findIndex(
    (option, i) => option.required && options.slice(0, i).some((before) => !before.required),
  );
  const grouped = options.filter(({ type }) => GROUPS.has(type)).length;
  return [
    ...tooMany(path, options, 25),
    ...(new Set(names).size < names.length ? [problem(path, 'Option names must be unique')] : []),
    ...(late > 0 ? [problem(`${path}.${late}`, 'Required options must be placed before non-required options')] : []),
    ...(grouped > 0 && grouped < options.length
      ? [problem(path, 'Sub-command and options cannot stand side by side')]
      : []),
    ...options.flatMap((option, i) => checkOption(`${path}.${i}`, option)),
  ];
}

const checkOption = (
  path: string,
  { name, description, choices = [], autocomplete, options = [] }: CommandOption,
): Problem[] => [
  ...checkNamed(path, name, description),
  ...tooMany(`${path}.choices`, choices, 25),
  ...(autocomplete && choices.length > 0 ? [problem(path, 'Choices and autocomplete exclude each other')] : []),
  ...choices.flatMap((choice, i) => [
    ...required(`${path}.choices.${i}.name`, choice.name),
    ...tooLong(`${path}.choices.${i}.name`, choice.name, 100),
    ...tooLong(`${path}.choices.${i}.value`, String(choice.value), 100),
  ]),
  ...checkOptions(`${path}.options`, options),
];
