import { afterEach, expect, test } from 'vitest';
import { commandList, compose } from '../../src/compose.js';
import { calculationList } from '../../src/conversation/catalogue.js';
import { keepUntilSent } from '../../src/keep-file.js';
import { FLAG, textOf } from './api.js';
import { startBot } from './scripted.js';

let closeStore: () => Promise<void> = async () => {};
afterEach(() => closeStore());

/** The whole bot: real conversation, real database, real library; only Discord is a loopback. */
async function wholeBot() {
  const { brinewright, store } = await compose(':memory:', keepUntilSent);
  closeStore = () => store.close();
  const { discord } = await startBot({
    settings: { brinewright, commands: commandList, calculations: calculationList },
  });
  return discord;
}

const siphon = { pipe: '1 in schedule 40', drop: '30 in', fittings: '2 elbows, gate valve' };

test('a command lacks a number, a form asks for it, the working shows it, the tank keeps it', async () => {
  const discord = await wholeBot();
  const asked = await discord.slash({ member: 'ada', command: 'drain', subcommand: 'siphon', options: siphon });
  expect(textOf(asked.original!)).toContain('How long is the drain pipe');
  const opened = await discord.button({ member: 'ada', message: asked.original!, label: 'Answer' });
  const { original } = await discord.modal({ member: 'ada', opened, fields: { text: '40 in' } });
  expect(textOf(original!)).toMatch(/^### Running full, this drain carries/);
  expect(textOf(original!)).toContain('pipe length 40 in');

  const working = await discord.button({ member: 'bo', message: original!, label: 'Show the working' });
  await discord.quiet();
  expect(textOf(working.original!)).toMatch(/1\. Loss coefficient[\s\S]*Flow, full siphon/);
  expect(working.original!.flags & FLAG.ephemeral).toBe(FLAG.ephemeral);

  const form = await discord.button({ member: 'ada', message: original!, label: 'Save to my tank' });
  await discord.modal({ member: 'ada', opened: form, fields: { text: 'Den reef' } });
  const page = await discord.slash({ member: 'ada', command: 'tank', subcommand: 'show' });
  expect(textOf(page.original!)).toMatch(/Den reef[\s\S]*40 in/);
  const again = await discord.button({ member: 'ada', message: original!, label: 'Save to my tank' });
  expect(again.modal?.components[0]?.component?.value).toBe('Den reef');
});

test('a question in the channel is answered by replying to it', async () => {
  const discord = await wholeBot();
  const asked = await discord.mention({
    member: 'ada',
    text: 'flow of a 1 inch schedule 40 full siphon drain, 30 in drop, 2 elbows',
  });
  expect(textOf(asked)).toContain('How long is the drain pipe');
  const answer = await discord.replyTo({ member: 'ada', message: asked, text: '40 in' });
  expect(textOf(answer)).toMatch(/^### Running full, this drain carries/);
});

test('every choice of every command is taken as Discord hands it over', async () => {
  const discord = await wholeBot();
  const choices = calculationList.flatMap(({ slash, inputs }) =>
    Object.entries(inputs).flatMap(([id, input]) =>
      input.kind === 'choice' ? Object.keys(input.options).map((value) => ({ slash, id, value })) : [],
    ),
  );
  expect(choices.length).toBeGreaterThan(0);
  for (const [i, { slash, id, value }] of choices.entries()) {
    const [command = '', subcommand = ''] = slash.split(' ');
    const got = await discord.slash({ member: `member ${i}`, command, subcommand, options: { [id]: value } });
    const { inputs, rules } = calculationList.find((calculation) => calculation.slash === slash)!;
    const taken = textOf(got.original!);
    const signs = [inputs[id]!.name, ...rules.map(({ because }) => because)];
    expect(
      signs.some((sign) => taken.includes(sign)),
      `${slash} ${id}:${value} gave ${taken}`,
    ).toBe(true);
  }
});

test('what was measured elsewhere and what is kept are shown to the member alone', async () => {
  const discord = await wholeBot();
  const target = discord.post({ member: 'bo', text: 'mine is 6ft x 2ft x 2ft at 78F' });
  const measured = await discord.contextMenu({ member: 'ada', command: 'Work out these measurements', target });
  expect(textOf(measured.original!)).toContain('182.9 cm');
  await discord.mention({ member: 'ada', text: 'my tank is 150x60x55 cm' });
  const kept = await discord.slash({ member: 'ada', command: 'mydata', subcommand: 'show' });
  const [file] = kept.original!.files;
  expect(JSON.parse(String(file!.bytes))).toMatchObject({ member: discord.memberId('ada') });
  for (const { original } of [measured, kept]) expect(original!.flags & FLAG.ephemeral).toBe(FLAG.ephemeral);
});

test('nothing that the whole catalogue sends is refused', async () => {
  const discord = await wholeBot();
  for (const [i, example] of calculationList.flatMap(({ examples }) => examples).entries())
    await discord.directMessage({ member: `member ${i}`, text: example });
  await discord.quiet();
  expect(discord.requests.filter(({ status }) => status >= 400)).toEqual([]);
});
