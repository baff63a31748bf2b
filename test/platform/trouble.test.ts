import { expect, test } from 'vitest';
import { runDiscord, startDiscord } from '../../src/faces/discord/start.js';
import { createLog } from '../../src/log.js';
import { FLAG, textOf } from './api.js';
import { startLoopback } from './loopback-server.js';
import { answer, reply } from './replies.js';
import { gate, startBot } from './scripted.js';

const siphon = { member: 'ada', command: 'drain', subcommand: 'siphon' };

test('an answer that Discord refuses as drawn arrives as its plain text', async () => {
  const { discord, logged } = await startBot({ script: () => [answer()] });
  discord.fail.next('/callback', 400, 50_035, 'Invalid Form Body');
  const got = await discord.slash(siphon);
  expect(got.original!.content).toBe('This drain carries 3,800 L/h, in plain text.');
  expect(logged.join()).toContain('refused a reply as drawn');
});

test('the same for an answer that was put off, and for a mention', async () => {
  const { discord } = await startBot({
    settings: { deferAfter: 10 },
    script: () => new Promise((resolve) => setTimeout(resolve, 40, [answer()])),
  });
  discord.fail.next('PATCH /webhooks', 400, 50_035);
  expect((await discord.slash(siphon)).original!.content).toContain('in plain text');
  discord.fail.next('/messages', 400, 50_035);
  expect((await discord.mention({ member: 'ada', text: 'drain' })).content).toContain('in plain text');
});

test('a fault of ours is owned up to with a number, and the number finds the cause', async () => {
  const { discord, logged } = await startBot({ script: () => Promise.reject(new Error('the table is gone')) });
  const got = await discord.slash(siphon);
  const incident = textOf(got.original!).match(/number ([0-9a-f]{6})\./)?.[1];
  expect(got.original!.flags & FLAG.ephemeral).toBe(FLAG.ephemeral);
  const entry = JSON.parse(logged.find((line) => line.includes(incident!))!) as {
    what: string;
    err: { message: string };
  };
  expect(entry).toMatchObject({ what: '/drain', err: { message: 'the table is gone' } });
  expect(textOf(await discord.mention({ member: 'ada', text: 'again' }))).toMatch(/Something went wrong on my side/);
});

test('the log holds neither what members wrote nor the token of an interaction', async () => {
  const { discord, logged } = await startBot({
    script: () => [reply({ headline: 'my secret tank', text: 'my secret tank' })],
  });
  discord.fail.next('/callback', 404, 10_062);
  await discord.slash({ member: 'ada', command: 'help', options: { topic: 'confidential' } });
  await discord.quiet();
  expect(logged.join()).toContain('10062');
  expect(logged.join()).not.toMatch(/secret|confidential|token-\d/);
}, 10_000);

test('an interaction that was not acknowledged in time is logged and left', async () => {
  const { discord, logged } = await startBot({
    acknowledgeWithin: 40,
    settings: { deferAfter: 80 },
    script: () => new Promise((resolve) => setTimeout(resolve, 120, [answer()])),
  });
  expect((await discord.slash(siphon)).failed).toBe(true);
  await discord.until(() => logged.some((line) => line.includes('too-late')), 'log');
  const entry = JSON.parse(logged.find((line) => line.includes('too-late'))!) as { elapsed: number };
  expect(entry.elapsed).toBeGreaterThanOrEqual(80);
  expect(discord.requests.filter(({ path }) => path.endsWith('/callback'))).toHaveLength(1);
});

test('a rate limit and a stumbling server delay an answer and lose nothing', async () => {
  const { discord } = await startBot();
  discord.fail.next429('/callback', 0.1);
  expect(textOf((await discord.slash(siphon)).original!)).toBe('**Noted.**');
  discord.fail.next502('POST /channels');
  expect(textOf(await discord.mention({ member: 'ada', text: 'hi' }))).toBe('**Noted.**');
});

test('what was said while the connection was cut is answered after it', async () => {
  const { discord, heard } = await startBot();
  discord.cutGateway();
  const got = await discord.mention({ member: 'ada', text: 'still there?' });
  expect(textOf(got)).toBe('**Noted.**');
  expect(heard).toEqual([{ say: 'still there?' }]);
  expect(discord.gateway).toEqual({ identified: 1, resumed: 1 });
});

test('commands that cannot be registered do not keep the bot from serving', async () => {
  const { discord, settings, logged } = await startBot();
  discord.fail.next('GET /applications', 403, 20_012, 'not authorized');
  const again = await startDiscord(settings);
  await discord.until(() => logged.some((line) => line.includes('could not be registered')), 'log');
  expect((await discord.slash(siphon)).failed).toBe(false);
  await again.stop();
});

/** Signals of a process that is not this one. */
function signals() {
  const listeners = new Map<string, () => void>();
  return {
    send: (signal: string) => listeners.get(signal)?.(),
    source: { once: (signal: string, listener: () => void) => listeners.set(signal, listener) },
  };
}

test('told to stop, it finishes the answer that has begun and takes no other', async () => {
  const slow = gate();
  const { discord, face, settings, heard } = await startBot({
    script: async () => {
      await slow.opened;
      return [reply()];
    },
  });
  await face.stop();
  const { send, source } = signals();
  let over = false;
  const ended = runDiscord(settings, source).finally(() => {
    over = true;
  });
  await discord.until(() => discord.gateway.identified === 2, 'login');
  const begun = discord.slash(siphon);
  await discord.until(() => heard.length === 1, 'the command');
  send('SIGTERM');
  discord.post({ member: 'bo', text: `<@${discord.applicationId}> too late` });
  await discord.quiet();
  expect(over).toBe(false);
  slow.open();
  expect(textOf((await begun).original!)).toBe('**Noted.**');
  expect(await ended).toBe(0);
  expect(heard).toHaveLength(1);
});

test.each([
  ['a wrong token', { token: 'not.the.token' }, 'Discord refuses the token'],
  ['a server that is not there', { apiUrl: 'http://127.0.0.1:9/api' }, 'login to Discord failed'],
])('%s ends in one plain sentence that does not repeat the token', async (_, wrong, sentence) => {
  const discord = await startLoopback();
  const logged: string[] = [];
  const log = createLog('info', { write: (line: string) => void logged.push(line) });
  const { settings } = await startBot();
  expect(await runDiscord({ ...settings, apiUrl: discord.apiUrl, ...wrong, log }, signals().source)).toBe(1);
  expect(logged).toHaveLength(1);
  expect((JSON.parse(logged[0]!) as { msg: string }).msg).toContain(sentence);
  expect(logged[0]).not.toContain('not.the.token');
  await discord.close();
});
