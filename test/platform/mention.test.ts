import { expect, test } from 'vitest';
import { textOf } from './api.js';
import { answer, reply } from './replies.js';
import { startBot } from './scripted.js';

test('hears what is said to it, without Discord’s own signs, and nothing else', async () => {
  const { discord, heard, speakers } = await startBot();
  discord.post({ member: 'ada', text: 'between us: 90 gal' });
  await discord.mention({ member: 'ada', text: 'is 300 W enough <t:1700000000:R> for <#99> <a:fish:123>  90 gal?' });
  await discord.directMessage({ member: 'bo', text: 'is 300 W enough\nfor 90 gal' });
  expect(heard).toEqual([{ say: 'is 300 W enough for 90 gal?' }, { say: 'is 300 W enough\nfor 90 gal' }]);
  expect(speakers[0]).toEqual({ id: discord.memberId('ada'), club: discord.clubId(), channel: discord.channelId() });
  expect(speakers[1]).not.toHaveProperty('club');
});

test('a reply to its question is said to it', async () => {
  const { discord, heard } = await startBot();
  const question = await discord.mention({ member: 'ada', text: 'heater?' });
  await discord.replyTo({ member: 'ada', text: '64F', message: question });
  expect(heard.at(-1)).toEqual({ say: '64F' });
});

test('does not answer @everyone, itself, or a name that only looks like its own', async () => {
  const { discord, heard } = await startBot();
  discord.post({ member: 'ada', text: '@everyone meeting at nine' });
  discord.post({ member: 'ada', text: '<@123> hello' });
  await discord.mention({ member: 'ada', text: 'hello' });
  await discord.quiet();
  expect(heard).toEqual([{ say: 'hello' }]);
  expect(discord.readIn(discord.channelId()).filter(({ author }) => author.bot)).toHaveLength(1);
});

test('quotes the message it answers and rings nobody, whatever was typed', async () => {
  const { discord } = await startBot({
    script: (message) => [
      reply({ headline: 'say' in message ? message.say : '', body: '@everyone <@77> <@&88> [x](http://y.invalid)' }),
    ],
  });
  const first = discord.post({ member: 'ada', text: '' + 'earlier' });
  const got = await discord.mention({ member: 'ada', text: 'tank @everyone @here **loud**' });
  expect(got.pings).toEqual([]);
  expect(got.replyTo).not.toBe(first.id);
  expect(got.replyTo).toBeDefined();
  expect(textOf(got)).toBe(
    '**tank @\u200beveryone @\u200bhere \\*\\*loud\\*\\***\n\n@\u200beveryone \\<@77> \\<@&88> \\[x\\](http://y.invalid)',
  );
});

test('shows that it is typing when an answer takes long', async () => {
  const { discord } = await startBot({
    settings: { deferAfter: 20 },
    script: () => new Promise((resolve) => setTimeout(resolve, 80, [answer()])),
  });
  const got = await discord.mention({ member: 'ada', text: 'hello' });
  expect(textOf(got)).toContain('3,800 L/h');
  expect(discord.requests.filter(({ path }) => path.endsWith('/typing'))).toHaveLength(1);
});

test('what is for the member alone goes to their direct messages', async () => {
  const { discord } = await startBot({ script: () => [reply({ headline: 'All I know about you.', private: true })] });
  const got = await discord.mention({ member: 'ada', text: 'export my data' });
  expect(textOf(got)).toMatch(/sent it to you directly/);
  expect(discord.directMessagesOf('ada').map(textOf)).toEqual(['**All I know about you.**']);
});

test('a member who takes no direct messages is told how to see it, and is not tried again', async () => {
  const { discord } = await startBot({ script: () => [reply({ headline: 'Secret.', private: true })] });
  discord.closeDirectMessages('ada');
  const got = await discord.mention({ member: 'ada', text: 'export my data' });
  expect(textOf(got)).toMatch(/may not write to you directly/);
  expect(textOf(got)).not.toContain('Secret');
  const tried = discord.requests.filter(({ status }) => status === 403);
  expect(tried).toHaveLength(1);
});

test.each([
  ['SendMessages', 'Send Messages'],
  ['ViewChannel', 'View Channel'],
] as const)('without %s it says so to the member who asked, and answers there', async (denied, named) => {
  const { discord } = await startBot({
    clubs: [{ name: 'c', channels: [{ name: 'help', deny: [denied] }] }],
    script: () => [answer()],
  });
  discord.post({ member: 'ada', text: `<@${discord.applicationId}> hello` });
  await discord.until(() => discord.directMessagesOf('ada').length === 2, 'direct messages');
  const [why, what] = discord.directMessagesOf('ada').map(textOf);
  expect(why).toContain(`I lack the permission ${named}`);
  expect(what).toContain('3,800 L/h');
  expect(discord.requests.filter(({ status }) => status === 403)).toEqual([]);
});

test('a file that may not be attached goes to the member instead', async () => {
  const { discord } = await startBot({
    clubs: [{ name: 'c', channels: [{ name: 'help', deny: ['AttachFiles'] }] }],
    script: () => [reply({ files: ['package.json'] })],
  });
  discord.post({ member: 'ada', text: `<@${discord.applicationId}> export` });
  await discord.until(() => discord.directMessagesOf('ada').length === 2, 'direct messages');
  const [why, what] = discord.directMessagesOf('ada');
  expect(textOf(why!)).toContain('Attach Files');
  expect(what!.files[0]?.name).toBe('package.json');
});

test('without the right to read back it answers without quoting', async () => {
  const { discord } = await startBot({
    clubs: [{ name: 'c', channels: [{ name: 'help', deny: ['ReadMessageHistory'] }] }],
  });
  const got = await discord.mention({ member: 'ada', text: 'hello' });
  expect(got.replyTo).toBeUndefined();
});
