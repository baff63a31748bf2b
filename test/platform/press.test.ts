import { expect, test } from 'vitest';
import { FLAG, textOf } from './api.js';
import { answer, reply } from './replies.js';
import { startBot } from './scripted.js';

const asAnswer = () => [answer()];

test('the working is asked for by row, and shown to the one who pressed', async () => {
  const { discord, heard } = await startBot({
    script: (message) => ('press' in message ? [answer({ actions: [] })] : [answer()]),
  });
  const { original } = await discord.slash({ member: 'ada', command: 'drain', subcommand: 'siphon' });
  const got = await discord.button({ member: 'bo', message: original!, label: 'Show the working' });
  expect(heard.at(-1)).toEqual({ press: 'working', answer: 'answer-1' });
  expect(textOf(got.original!)).toContain('**1. Bore area**\n`A = pi·D^2/4`\n`A = pi·(0.0266 m)²/4 = 0.0005557 m²`');
  expect(got.original!.flags & FLAG.ephemeral).toBe(FLAG.ephemeral);
  expect(discord.readIn(discord.channelId())).toEqual([original]);
});

test('in direct messages there is nobody to hide it from', async () => {
  const { discord, heard } = await startBot({ script: asAnswer });
  const message = await discord.directMessage({ member: 'ada', text: 'how much does my drain carry' });
  const got = await discord.button({ member: 'ada', direct: true, message, label: 'In US units' });
  expect(heard.at(-1)).toEqual({ press: 'units', answer: 'answer-1' });
  expect(got.original!.flags & FLAG.ephemeral).toBe(0);
});

test('saving is confirmed in a form that shows the present tank', async () => {
  const { discord, heard } = await startBot({ script: asAnswer, complete: async () => ['Reef in the den', 'Nano'] });
  const { original } = await discord.slash({ member: 'ada', command: 'drain', subcommand: 'siphon' });
  const opened = await discord.button({ member: 'ada', message: original!, label: 'Save to my tank' });
  expect(opened.modal?.title).toBe('Save to my tank');
  expect(opened.modal?.components[0]?.component?.value).toBe('Reef in the den');
  const asShown = await discord.modal({ member: 'ada', opened });
  expect(heard.at(-1)).toEqual({ press: 'save', answer: 'answer-1', tank: 'Reef in the den' });
  expect(asShown.original!.flags & FLAG.ephemeral).toBe(FLAG.ephemeral);
  await discord.modal({ member: 'ada', opened, fields: { text: '  ' } });
  expect(heard.at(-1)).toEqual({ press: 'save', answer: 'answer-1' });
});

test('a member without a tank, or whose tanks cannot be read, still gets the form', async () => {
  const { discord } = await startBot({ script: asAnswer, complete: () => Promise.reject(new Error('locked')) });
  const { original } = await discord.slash({ member: 'ada', command: 'drain', subcommand: 'siphon' });
  const opened = await discord.button({ member: 'ada', message: original!, label: 'Save to my tank' });
  expect(opened.modal?.components[0]?.component?.value).toBeUndefined();
});

test('a choice is said for the member who was asked, and for nobody else', async () => {
  let ada = '';
  const { discord, heard } = await startBot({
    script: (message) =>
      'say' in message && message.say.startsWith('/')
        ? [
            reply({
              kind: 'question',
              member: ada,
              headline: 'Which pipe?',
              actions: [{ verb: 'say', label: '1 in', say: '1 in: schedule 40' }],
            }),
          ]
        : [reply({ headline: 'Thanks.' })],
  });
  ada = discord.memberId('ada');
  const { original } = await discord.slash({ member: 'ada', command: 'drain', subcommand: 'siphon' });
  const other = await discord.button({ member: 'bo', message: original!, label: '1 in' });
  expect(textOf(other.original!)).toMatch(/for the member who was asked/);
  expect(other.original!.flags & FLAG.ephemeral).toBe(FLAG.ephemeral);
  const own = await discord.button({ member: 'ada', message: original!, label: '1 in' });
  expect(heard.slice(1)).toEqual([{ say: '1 in: schedule 40' }]);
  expect(own.original!.flags & FLAG.ephemeral).toBe(0);
});

test('a question can be answered in a form, by the member who was asked', async () => {
  let ada = '';
  const question = () =>
    reply({ kind: 'question', member: ada, headline: 'How long is the *drain* pipe?', asks: ['pipe_length'] });
  const { discord, heard } = await startBot({
    script: (message) =>
      'say' in message && message.say === '40 in' ? [reply({ headline: 'Thanks.' })] : [question()],
  });
  ada = discord.memberId('ada');
  const { original } = await discord.slash({ member: 'ada', command: 'drain', subcommand: 'siphon' });
  const other = await discord.button({ member: 'bo', message: original!, label: 'Answer' });
  expect(other.modal).toBeUndefined();
  expect(textOf(other.original!)).toMatch(/for the member who was asked/);
  const opened = await discord.button({ member: 'ada', message: original!, label: 'Answer' });
  expect(opened.modal?.components[0]?.description).toBe('How long is the *drain* pipe?');
  const got = await discord.modal({ member: 'ada', opened, fields: { text: ' 40 in ' } });
  expect(heard.at(-1)).toEqual({ say: '40 in' });
  expect(textOf(got.original!)).toBe('**Thanks.**');
  expect(got.original!.flags & FLAG.ephemeral).toBe(0);
});

test('a form of an earlier version is answered politely', async () => {
  const { discord, heard } = await startBot({ script: asAnswer });
  const { original } = await discord.slash({ member: 'ada', command: 'drain', subcommand: 'siphon' });
  const opened = await discord.button({ member: 'ada', message: original!, label: 'Save to my tank' });
  const old = { ...opened, modal: { custom_id: 'v0:save-to:1', title: 'Save', components: [] } };
  expect(textOf((await discord.modal({ member: 'ada', opened: old })).original!)).toMatch(/from an earlier time/);
  expect(heard).toHaveLength(1);
});

test.each(['v0:working:answer-1', 'v1:dance:answer-1', 'nonsense', 'v1:working:'])(
  'the button %s of another time is answered politely',
  async (customId) => {
    const { discord, heard } = await startBot({ script: asAnswer });
    const { original } = await discord.slash({ member: 'ada', command: 'drain', subcommand: 'siphon' });
    const got = await discord.button({ member: 'ada', message: original!, customId });
    expect(textOf(got.original!)).toMatch(/from an earlier time/);
    expect(got.original!.flags & FLAG.ephemeral).toBe(FLAG.ephemeral);
    expect(heard).toHaveLength(1);
  },
);

test('a button outlives a restart', async () => {
  const { discord, face, settings, heard } = await startBot({ script: asAnswer });
  const { original } = await discord.slash({ member: 'ada', command: 'drain', subcommand: 'siphon' });
  await face.stop();
  const { startDiscord } = await import('../../src/faces/discord/start.js');
  const again = await startDiscord(settings);
  const got = await discord.button({ member: 'ada', message: original!, label: 'In US units' });
  expect(got.failed).toBe(false);
  expect(heard.at(-1)).toEqual({ press: 'units', answer: 'answer-1' });
  await again.stop();
});

test('the message menu works out somebody else’s measurements for the one who asks', async () => {
  const { discord, heard } = await startBot({ script: asAnswer });
  const target = discord.post({
    member: 'bo',
    text: `<@${discord.memberId('cy')}> mine is 6ft x 2ft <:tank:1234567890>`,
  });
  const got = await discord.contextMenu({ member: 'ada', command: 'Work out these measurements', target });
  expect(heard).toEqual([{ measure: 'mine is 6ft x 2ft' }]);
  expect(got.original!.flags & FLAG.ephemeral).toBe(FLAG.ephemeral);
});
