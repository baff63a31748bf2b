import { expect, test } from 'vitest';
import { startDiscord } from '../../src/faces/discord/start.js';
import { buttonsOf, FLAG, textOf } from './api.js';
import { answer, reply } from './replies.js';
import { gate, startBot } from './scripted.js';

test('registers its commands once; a second start reads them and leaves them', async () => {
  const { discord, settings, logged } = await startBot();
  expect(discord.registered.puts).toBe(1);
  expect(discord.registered.commands.map(({ name }) => name)).toEqual([
    'drain',
    'tank',
    'help',
    'Work out these measurements',
  ]);
  const again = await startDiscord(settings);
  await discord.until(() => logged.filter((line) => line.includes('"commands"')).length === 2, 'second registration');
  expect(discord.registered.puts).toBe(1);
  await again.stop();
});

test('a command is handed on as it is shown, options in the order they were typed', async () => {
  const { discord, heard, speakers } = await startBot({ script: () => [answer()] });
  const got = await discord.slash({
    member: 'ada',
    command: 'drain',
    subcommand: 'siphon',
    options: { drop: '30 in', pipe: '1 in schedule 40', fittings: '2 elbows,\n gate valve' },
  });
  expect(heard).toEqual([{ say: '/drain siphon drop:30 in pipe:1 in schedule 40 fittings:2 elbows, gate valve' }]);
  expect(speakers).toEqual([{ id: discord.memberId('ada'), club: discord.clubId(), channel: discord.channelId() }]);
  const text = textOf(got.original!);
  expect(text).toMatch(/^### This drain carries 3,800 L\/h\.\n/);
  expect(text).toContain('Flow at full siphon: **3,800 L/h**');
  expect(text).toContain('⚠️ **Caution:** Test the drain before you trust it.');
  expect(text).not.toContain('bore area');
  expect(buttonsOf(got.original!).map(({ label, custom_id }) => [label, custom_id])).toEqual([
    ['Show the working', 'v1:working:answer-1'],
    ['In US units', 'v1:units:answer-1'],
    ['Save to my tank', 'v1:save:answer-1'],
  ]);
  expect(got.original!.flags).toBe(FLAG.components);
});

test('a command with one action has its options at the top, in direct messages too', async () => {
  const { discord, heard, speakers } = await startBot();
  await discord.slash({ member: 'ada', direct: true, command: 'help', options: { topic: 'heaters' } });
  expect(heard).toEqual([{ say: '/help topic:heaters' }]);
  expect(speakers[0]).not.toHaveProperty('club');
});

test('a private action answers so that only the member sees it', async () => {
  const { discord } = await startBot();
  const got = await discord.slash({ member: 'ada', command: 'tank', subcommand: 'show' });
  expect(got.original!.flags & FLAG.ephemeral).toBe(FLAG.ephemeral);
  expect(discord.readIn(discord.channelId())).toEqual([]);
});

test('an answer that takes long is put off visibly and then filled in', async () => {
  const slow = gate();
  const { discord } = await startBot({
    settings: { deferAfter: 30 },
    script: async () => {
      await slow.opened;
      return [answer(), reply({ headline: 'And one more.' })];
    },
  });
  const waiting = discord.slash({ member: 'ada', command: 'drain', subcommand: 'siphon' });
  await discord.until(() => discord.requests.some(({ path }) => path.endsWith('/callback')), 'deferral');
  slow.open();
  const got = await waiting;
  await discord.quiet();
  expect(got.acknowledged?.type).toBe(5);
  expect(got.deferredAsEphemeral).toBe(false);
  expect(textOf(got.original!)).toContain('3,800 L/h');
  expect(got.original!.edits).toBe(1);
  expect(got.followUps.map(textOf)).toEqual(['**And one more.**']);
});

test('what is put off for a private action is put off privately', async () => {
  const { discord } = await startBot({
    settings: { deferAfter: 10 },
    script: () => new Promise((resolve) => setTimeout(resolve, 60, [reply()])),
  });
  const got = await discord.slash({ member: 'ada', command: 'tank', subcommand: 'show' });
  expect(got.deferredAsEphemeral).toBe(true);
  expect(textOf(got.original!)).toBe('**Noted.**');
});

test('a private reply to a command that was put off publicly takes the public sign away', async () => {
  const { discord } = await startBot({
    settings: { deferAfter: 10 },
    script: () => new Promise((resolve) => setTimeout(resolve, 60, [reply({ private: true, headline: 'Secret.' })])),
  });
  const got = await discord.slash({ member: 'ada', command: 'help' });
  await discord.quiet();
  expect(got.original).toBeUndefined();
  expect(got.followUps.map((message) => [textOf(message), message.flags & FLAG.ephemeral])).toEqual([
    ['**Secret.**', FLAG.ephemeral],
  ]);
  expect(discord.readIn(discord.channelId())).toEqual([]);
});

test('the commands of one member are answered in their order, those of others meanwhile', async () => {
  const first = gate();
  const { discord, heard } = await startBot({
    script: async (message) => {
      if ('say' in message && message.say.includes('first')) await first.opened;
      return [reply()];
    },
  });
  const help = (member: string, topic: string) => discord.slash({ member, command: 'help', options: { topic } });
  const slow = help('ada', 'first');
  const next = help('ada', 'second');
  await help('bo', 'third');
  expect(heard).toEqual([{ say: '/help topic:first' }, { say: '/help topic:third' }]);
  first.open();
  await Promise.all([slow, next]);
  expect(heard[2]).toEqual({ say: '/help topic:second' });
});

test('an action without an answer leaves no sign of waiting', async () => {
  const { discord } = await startBot({ script: () => [] });
  const got = await discord.slash({ member: 'ada', command: 'help' });
  await discord.quiet();
  expect(got.failed).toBe(false);
  expect(got.original).toBeUndefined();
});

test('suggestions come from the conversation, those that fit, at most 25', async () => {
  const asked: unknown[] = [];
  const { discord } = await startBot({
    complete: async (_, ...rest) => {
      asked.push(rest);
      return ['x'.repeat(101), ...Array.from({ length: 30 }, (_, i) => `pipe ${i}`)];
    },
  });
  const choices = await discord.autocomplete({
    member: 'ada',
    command: 'drain',
    subcommand: 'siphon',
    options: { pipe: '1 i' },
    typing: 'pipe',
  });
  expect(asked).toEqual([['drain siphon', 'pipe', '1 i']]);
  expect(choices).toHaveLength(25);
  expect(choices[0]).toEqual({ name: 'pipe 0', value: 'pipe 0' });
});

test('suggestions that fail are none at all', async () => {
  const { discord, logged } = await startBot({ complete: () => Promise.reject(new Error('no table')) });
  const call = { member: 'ada', command: 'tank', subcommand: 'use', options: { name: '' }, typing: 'name' };
  expect(await discord.autocomplete(call)).toEqual([]);
  expect(logged.join()).toContain('no table');
});
