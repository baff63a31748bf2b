import { describe, expect, test } from 'vitest';
import { commandList } from '../../src/compose.js';
import { calculationList } from '../../src/conversation/catalogue.js';
import type { Command } from '../../src/conversation/command.js';
import type { Calculation } from '../../src/core/calculation.js';
import { commandJson, commandsJson, MEASURE_COMMAND } from '../../src/render/command-json.js';
import { type CommandBody, type CommandOption, checkCommands, commandLength } from '../platform/check-commands.js';

const json = commandsJson(commandList, calculationList) as unknown as CommandBody[];
const named = (name: string) => json.find((command) => command.name === name)!;
const optionsOf = (path: string): readonly CommandOption[] => {
  const [group, name] = path.split(' ');
  return named(group!).options!.find((option) => option.name === name)!.options!;
};
const optionOf = (path: string, name: string) => optionsOf(path).find((option) => option.name === name)!;

describe('the whole catalogue as commands', () => {
  test('is within every limit of Discord', () => {
    expect(checkCommands(json)).toEqual([]);
  });

  test.each(json.map((command) => [command.name, command] as const))(
    '/%s stays below 8,000 characters',
    (_, command) => {
      expect(commandLength(command)).toBeLessThanOrEqual(8000);
    },
  );

  test('has every calculation once, at its slash path, with its inputs as options', () => {
    for (const { slash, inputs } of calculationList)
      expect(
        optionsOf(slash).map(({ name }) => name),
        slash,
      ).toEqual(Object.keys(inputs));
    const grouped = commandList.flatMap(({ calculations = [] }) => calculations);
    expect([...grouped].sort()).toEqual(calculationList.map(({ id }) => id).sort());
  });

  test('asks for nothing: what is missing is asked for afterwards', () => {
    for (const { slash } of calculationList)
      expect(
        optionsOf(slash).filter(({ required }) => required),
        slash,
      ).toEqual([]);
  });

  test('works in clubs, in direct messages and for a member who installed it alone', () => {
    for (const command of json)
      expect([command.contexts, command.integration_types]).toEqual([
        [0, 1, 2],
        [0, 1],
      ]);
  });

  test('ends with the message menu, which has no description', () => {
    expect(json.at(-1)).toEqual({ type: 3, name: MEASURE_COMMAND, contexts: [0, 1, 2], integration_types: [0, 1] });
  });
});

describe('an input as an option', () => {
  test('a quantity is text, since its unit is typed', () => {
    expect(optionOf('drain siphon', 'drop')).toMatchObject({ type: 3, description: expect.stringContaining('drop') });
  });

  test('a lookup makes suggestions', () => {
    expect(optionOf('drain siphon', 'pipe')).toMatchObject({ type: 3, autocomplete: true });
  });

  const toy = (inputs: Calculation['inputs']): CommandOption[] => {
    const calculation = { ...calculationList[0]!, id: 'toy.one', slash: 'toy one', inputs };
    const made = commandJson({ name: 'toy', description: 'toy', calculations: ['toy.one'] }, [
      calculation,
    ]) as unknown as CommandBody;
    return [...made.options![0]!.options!];
  };
  const base = { name: 'number of heaters', ask: 'How many?' };

  test('a whole count is a number between its bounds; a bound that is itself refused is left out', () => {
    const count = { ...base, kind: 'quantity' as const, quantity: 'count' as const, symbol: 'n', whole: true };
    expect(toy({ heaters: { ...count, range: [0, 12, '1'], aboveLow: true } })).toEqual([
      { type: 4, name: 'heaters', description: 'number of heaters', min_value: 1, max_value: 12 },
    ]);
    expect(toy({ heaters: { ...count, range: [0, 12, '1'] } })[0]).toMatchObject({ min_value: 0, max_value: 12 });
  });

  test('choices are choices up to 25, and suggestions beyond', () => {
    const choice = (count: number) => ({
      ...base,
      kind: 'choice' as const,
      options: Object.fromEntries(Array.from({ length: count }, (_, i) => [`o${i}`, { label: `option ${i}` }])),
    });
    expect(toy({ kind: choice(2) })[0]!.choices).toEqual([
      { name: 'option 0', value: 'o0' },
      { name: 'option 1', value: 'o1' },
    ]);
    expect(toy({ kind: choice(26) })[0]).toMatchObject({ autocomplete: true });
  });

  test('a time of day and a date say how they are written', () => {
    const [at, on] = toy({ at: { ...base, kind: 'clock', symbol: 't' }, on: { ...base, kind: 'date', symbol: 'd' } });
    expect([at!.description, on!.description]).toEqual([
      'number of heaters, like 14:30',
      'number of heaters, like 2027-03-21',
    ]);
  });

  test('examples are given up where the command would grow too long with them', () => {
    const example = 'x'.repeat(60);
    const inputs = Object.fromEntries(
      Array.from({ length: 25 }, (_, i) => [
        `input_${i}`,
        { ...base, kind: 'clock' as const, symbol: `t${i}`, example },
      ]),
    );
    const calculations = Array.from({ length: 5 }, (_, i) => ({
      ...calculationList[0]!,
      id: `toy.n${i}`,
      slash: `toy n${i}`,
      inputs,
    }));
    const made = commandJson(
      { name: 'toy', description: 'toy', calculations: calculations.map(({ id }) => id) },
      calculations,
    ) as unknown as CommandBody;
    expect(made.options![0]!.options![0]!.description).toBe('number of heaters');
    expect(commandLength(made)).toBeLessThanOrEqual(8000);
  });
});

describe('a wrong command does not start', () => {
  const command: Command = { name: 'toy', description: 'toy', calculations: ['no.such'] };
  test('one that names a calculation that does not exist', () => {
    expect(() => commandJson(command, calculationList)).toThrow('/toy names the calculation no.such');
  });
  test('one that holds a calculation of another group', () => {
    expect(() => commandJson({ ...command, calculations: ['drain.siphon'] }, calculationList)).toThrow(
      '/drain siphon does not belong under /toy',
    );
  });
});
