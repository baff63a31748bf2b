import { Client, GatewayIntentBits, type Message, Status, type TextChannel } from 'discord.js';
import { expect, test } from 'vitest';
import { connected, INTENTS, open } from './library-client.js';
import { type Loopback, startLoopback } from './loopback-server.js';

test('privileged intents and a wrong token end the login', async () => {
  const discord = await startLoopback();
  open.push(discord);
  const client = (intents: number[]) => new Client({ intents, rest: { api: discord.apiUrl } });
  await expect(client([GatewayIntentBits.MessageContent]).login(discord.token)).rejects.toThrow('disallowed intents');
  await expect(client(INTENTS).login('wrong-token')).rejects.toMatchObject({ code: 'TokenInvalid' });
});

test('429 and 502 are passing troubles for the library; missing permissions and closed messages are not', async () => {
  const { discord, client } = await connected(
    {},
    {
      clubs: [
        {
          name: 'c',
          channels: ['help', { name: 'mute', deny: ['SendMessages'] }, { name: 'hidden', deny: ['ViewChannel'] }],
        },
      ],
    },
  );
  const channel = (name: string) => client.channels.cache.get(discord.channelId(name)) as TextChannel;
  discord.fail.next429('POST /channels/', 0.1);
  await channel('help').send('after a wait');
  discord.fail.next502('POST /channels/');
  await channel('help').send('after a stumble');
  expect(discord.requests.filter(({ path }) => path.endsWith('/messages')).map(({ status }) => status)).toEqual([
    429, 200, 502, 200,
  ]);
  await expect(channel('mute').send('x')).rejects.toMatchObject({ code: 50_013 });
  await expect(channel('hidden').send('x')).rejects.toMatchObject({ code: 50_001 });
  discord.closeDirectMessages('ada');
  const ada = await client.users.createDM(discord.memberId('ada'));
  await expect(ada.send('x')).rejects.toMatchObject({ code: 50_007 });
});

test('the same enforced nonce gives the same message', async () => {
  const { discord, client } = await connected();
  const help = client.channels.cache.get(discord.channelId()) as TextChannel;
  const twice = [
    await help.send({ content: 'due', nonce: 'r1', enforceNonce: true }),
    await help.send({ content: 'due', nonce: 'r1', enforceNonce: true }),
  ];
  expect(twice[0]!.id).toBe(twice[1]!.id);
});

test('rings whom the text mentions unless the sender forbids it', async () => {
  const { discord, client } = await connected();
  const help = client.channels.cache.get(discord.channelId()) as TextChannel;
  const ada = discord.memberId('ada');
  await help.send(`<@${ada}> @everyone`);
  await help.send({ content: `<@${ada}> @everyone`, allowedMentions: { parse: [] } });
  expect(discord.readIn(help.id).map(({ pings }) => pings)).toEqual([[ada, 'everyone'], []]);
});

const heard = () => {
  const texts: string[] = [];
  return {
    texts,
    handlers: { message: async (message: Message) => texts.push(message.content.replace(/<@\d+> /, '')) },
  };
};
const sayTo = (discord: Loopback, text: string) =>
  discord.post({ member: 'ada', text: `<@${discord.applicationId}> ${text}` });

test('a cut socket resumes and hears what it missed', async () => {
  const { texts, handlers } = heard();
  const { discord } = await connected(handlers);
  sayTo(discord, 'before');
  await discord.until(() => texts.length === 1, 'first message');
  discord.cutGateway();
  sayTo(discord, 'meanwhile');
  await discord.until(() => texts.length === 2, 'missed message');
  expect(texts).toEqual(['before', 'meanwhile']);
  expect(discord.gateway).toEqual({ identified: 1, resumed: 1 });
});

test('a request to reconnect resumes, an ended session begins anew', async () => {
  const { texts, handlers } = heard();
  const { discord } = await connected(handlers);
  discord.askToReconnect();
  await discord.until(() => discord.gateway.resumed === 1, 'resume');
  discord.endSessions();
  await discord.until(() => discord.gateway.identified === 2, 'new session');
  await discord.quiet();
  sayTo(discord, 'hello again');
  await discord.until(() => texts.includes('hello again'), 'message');
});

test('a refused resume begins anew', async () => {
  const { discord, client } = await connected();
  discord.refuseResume();
  discord.cutGateway();
  await discord.until(() => discord.gateway.identified === 2, 'new session');
  // Logging out before the new session stands would wait for it.
  await discord.until(() => client.ws.status === Status.Ready, 'the new session to stand');
  expect(discord.gateway.resumed).toBe(0);
});

test('a connection without heartbeat answers is given up and resumed', async () => {
  const { discord } = await connected({}, { heartbeatEvery: 300 });
  discord.stopHeartbeats();
  await discord.until(() => discord.gateway.resumed === 1, 'resume');
});

test('two shards: an event reaches the shard of its club only', async () => {
  const { texts, handlers } = heard();
  const { discord, client } = await connected(handlers, {}, { shardCount: 2, shards: [0, 1] });
  expect(client.ws.shards.size).toBe(2);
  sayTo(discord, 'once');
  await discord.until(() => texts.length > 0, 'message');
  await discord.quiet();
  expect(texts).toEqual(['once']);
}, 15_000);
