import type { Command } from '../src/conversation/command.js';
import type { Tank } from '../src/conversation/ports.js';
import { notice, refusal, saying } from '../src/conversation/replies.js';
import { keep, shownStored } from '../src/conversation/statement.js';
import { standings, tankAnswers } from '../src/conversation/tank-answers.js';
import { makeCurrent, removeTank, startTank, tankCalled } from '../src/conversation/tank-names.js';
import { currentTank, forgetSaid, hintsFor, now, preferencesFor, type Turn } from '../src/conversation/turn.js';
import { profileFields } from '../src/core/profile.js';
import { readValue } from '../src/language/read-value.js';
import { capital } from '../src/render/text.js';

const NONE = 'No tank is kept for you yet: tell me its size, for example “it’s 150x60x55 cm, 12 mm glass”.';

const noSuch = (turn: Turn, name: string) =>
  refusal(turn.speaker, `You have no tank called ${name.trim()}.`, {
    body: turn.tanks.length > 0 ? `You have: ${turn.tanks.map((tank) => tank.name).join(', ')}.` : NONE,
  });

const tankOption = { name: 'name', description: 'which tank', suggest: 'tank' as const };

export const tankCommand: Command = {
  name: 'tank',
  description: 'Your tanks and the numbers kept for them',
  actions: [
    {
      name: 'show',
      description: 'one tank on one page',
      options: [tankOption],
      private: true,
      run: async (turn, { name }) => {
        const tank = name ? tankCalled(turn, name) : currentTank(turn);
        if (name && !tank) return [noSuch(turn, name)];
        return [tank ? page(turn, tank) : notice(turn.speaker, NONE, { private: true })];
      },
    },
    {
      name: 'list',
      description: 'all your tanks',
      options: [],
      private: true,
      run: async (turn) => {
        const lines = turn.tanks.map(
          ({ name, current, values }) =>
            `${name}: ${Object.keys(values).length} numbers${current ? ', the current one' : ''}`,
        );
        return [
          notice(
            turn.speaker,
            lines.length === 0 ? NONE : `You have ${lines.length} ${lines.length === 1 ? 'tank' : 'tanks'}.`,
            { body: lines.join('\n'), private: true },
          ),
        ];
      },
    },
    {
      name: 'new',
      description: 'start another tank; it becomes the current one',
      options: [{ name: 'name', description: 'what to call it, such as frag tank', required: true }],
      private: true,
      run: async (turn, { name = '' }) => {
        const tank = await startTank(turn, name.trim());
        return [
          notice(turn.speaker, `Started “${tank.name}”; it is the current tank now. The others stay as they are.`, {
            private: true,
          }),
        ];
      },
    },
    {
      name: 'use',
      description: 'make another tank the current one',
      options: [{ ...tankOption, required: true }],
      private: true,
      run: async (turn, { name = '' }) => {
        const tank = tankCalled(turn, name);
        if (!tank) return [noSuch(turn, name)];
        await makeCurrent(turn, tank);
        return [notice(turn.speaker, `“${tank.name}” is the current tank now.`, { private: true })];
      },
    },
    {
      name: 'rename',
      description: 'give a tank another name',
      options: [
        { ...tankOption, required: true },
        { name: 'to', description: 'the new name', required: true },
      ],
      private: true,
      run: async (turn, { name = '', to = '' }) => {
        const tank = tankCalled(turn, name);
        if (!tank) return [noSuch(turn, name)];
        await turn.store.renameTank(turn.speaker.id, tank.id, to.trim());
        return [notice(turn.speaker, `“${tank.name}” is called “${to.trim()}” now.`, { private: true })];
      },
    },
    {
      name: 'set',
      description: 'set one number of the current tank',
      options: [
        { name: 'field', description: 'which number, such as tank length', required: true, suggest: 'field' },
        { name: 'value', description: 'the value with its unit, such as 150 cm' },
      ],
      private: true,
      run: async (turn, { field: typed = '', value: given }) => {
        const { field, fieldName, value } = fieldAndValue(typed, given);
        if (!field)
          return [
            refusal(turn.speaker, `A tank’s page has no ${fieldName}.`, {
              body: `It has: ${[...profileFields.values()].map(({ input }) => input.name).join('; ')}.`,
            }),
          ];
        const read = await readValue(field.input, value, hintsFor(turn, []));
        if ('problem' in read) return [refusal(turn.speaker, read.problem)];
        if ('doubt' in read)
          return [
            refusal(
              turn.speaker,
              `Say the unit too: the ${field.input.name} could be ${read.doubt.map(({ unit }) => unit.shown).join(' or ')}.`,
            ),
          ];
        return [
          await keep(
            turn,
            undefined,
            { [field.key]: read.value },
            preferencesFor(turn, []),
            read.guessed ? [field.key] : [],
          ),
        ];
      },
    },
    {
      name: 'clear',
      description: 'take one number off the current tank’s page',
      options: [{ name: 'field', description: 'which number', required: true, suggest: 'field' }],
      private: true,
      run: async (turn, { field: fieldName = '' }) => {
        const tank = currentTank(turn);
        const field = fieldNamed(fieldName);
        if (!tank || !field || !tank.values[field.key])
          return [refusal(turn.speaker, `There is no ${fieldName} on your current tank’s page.`)];
        await turn.store.removeValue(turn.speaker.id, tank.id, field.key, now(turn));
        forgetSaid(turn, [field.key]);
        return [
          notice(turn.speaker, `Cleared the ${field.input.name} of “${tank.name}”; its history keeps the old value.`, {
            private: true,
          }),
        ];
      },
    },
    {
      name: 'remove',
      description: 'delete a tank and all its numbers, for good',
      options: [
        { ...tankOption, required: true },
        { name: 'confirm', description: 'write remove to confirm', required: true },
      ],
      private: true,
      run: async (turn, { name = '', confirm = '' }) => {
        const tank = tankCalled(turn, name);
        if (!tank) return [noSuch(turn, name)];
        if (confirm.trim().toLowerCase() !== 'remove')
          return [refusal(turn.speaker, `Nothing was deleted: write /tank remove name:${tank.name} confirm:remove.`)];
        const next = await removeTank(turn, tank);
        const now = next ? ` “${next.name}” is the current tank now.` : '';
        return [notice(turn.speaker, `Deleted “${tank.name}” and its numbers.${now}`, { private: true })];
      },
    },
  ],
};

/** `glass thickness 1/2 in` in one go: the longest field that the text begins with, and the rest. */
function fieldAndValue(typed: string, given: string | undefined) {
  if (given !== undefined) return { field: fieldNamed(typed), fieldName: typed, value: given };
  const words = typed.replace(/:/g, ' ').split(/\s+/);
  for (let length = words.length - 1; length > 0; length -= 1) {
    const field = fieldNamed(words.slice(0, length).join(' '));
    if (field) return { field, fieldName: typed, value: words.slice(length).join(' ') };
  }
  return { field: undefined, fieldName: typed, value: '' };
}

function fieldNamed(text: string) {
  const wanted = text.trim().toLowerCase().replace(/_/g, ' ');
  const fields = [...profileFields.values()];
  const leaf = (key: string) => key.replace(/^display\./, '').replace(/[._]/g, ' ');
  return (
    fields.find(
      ({ key, input }) =>
        leaf(key) === wanted || input.name.toLowerCase() === wanted || (input.words ?? []).includes(wanted),
    ) ?? fields.find(({ input }) => input.name.toLowerCase().includes(wanted) || (input.words ?? []).includes(wanted))
  );
}

function page(turn: Turn, tank: Tank) {
  const preferences = preferencesFor(turn, []);
  const kept = [...profileFields.values()].filter(({ key }) => tank.values[key]);
  const sections = [...new Set(kept.map(({ section }) => section))];
  const lines = sections.map((section) => {
    const values = kept
      .filter((field) => field.section === section)
      .map((field) => `${field.input.name} ${shownStored(field, tank.values[field.key]!, preferences)}`);
    return `${capital(section)}: ${values.join('; ')}`;
  });
  return notice(
    turn.speaker,
    kept.length === 0 ? `Nothing is kept for “${tank.name}” yet.` : `“${tank.name}”: ${kept.length} numbers kept.`,
    {
      body: [...lines, ...answersLines(tank)].join('\n'),
      private: true,
      actions: [saying('How much water?', 'how much water does it hold')],
    },
  );
}

const MOST_READY = 8;
const MOST_MISSING = 5;
const MOST_OPENED = 3;

/** What the page is enough for, and which number more is worth finding out. */
function answersLines({ values }: Tank): string[] {
  const { ready, missing } = tankAnswers(standings(values));
  const titles = (calculations: readonly { title: string }[], most: number) => {
    const named = calculations.slice(0, most).map(({ title }) => title.toLowerCase());
    return [...named, ...(calculations.length > most ? [`${calculations.length - most} more`] : [])].join('; ');
  };
  return [
    ...(ready.length > 0 ? ['', `Enough for: ${titles(ready, MOST_READY)}.`] : []),
    ...(missing.length > 0 ? ['', 'One number away:'] : []),
    ...missing.slice(0, MOST_MISSING).map(({ name, opens }) => `- ${name}, for: ${titles(opens, MOST_OPENED)}`),
  ];
}
