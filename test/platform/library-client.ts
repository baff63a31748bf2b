import {
  Client,
  type ClientOptions,
  GatewayIntentBits,
  type Interaction,
  type Message,
  Partials,
  Routes,
} from 'discord.js';
import { afterEach } from 'vitest';
import { type LoopbackSpec, startLoopback } from './loopback-server.js';

export const open: { close: () => Promise<void> }[] = [];
afterEach(async () => {
  for (const { close } of open.splice(0).reverse()) await close();
});

/** The library waits for a session that is just being made before it logs out; a test that is over does not. */
const lastCall = () => new Promise<void>((resolve) => setTimeout(resolve, 5000).unref());

export const INTENTS = [GatewayIntentBits.Guilds, GatewayIntentBits.GuildMessages, GatewayIntentBits.DirectMessages];
const COMMANDS = [
  {
    name: 'echo',
    description: 'say it back',
    options: [
      { type: 3, name: 'text', description: 'what', autocomplete: true },
      { type: 4, name: 'count', description: 'how often' },
    ],
  },
  { type: 3, name: 'Read this' },
];

export interface Handlers {
  interaction?: (interaction: Interaction) => Promise<unknown>;
  message?: (message: Message) => Promise<unknown>;
}

/** A client of the real library, logged into a server of its own; both end with the test. */
export async function connected(
  handlers: Handlers = {},
  spec: LoopbackSpec = {},
  options: Partial<ClientOptions> = {},
) {
  const discord = await startLoopback(spec);
  open.push(discord);
  const client = new Client({
    intents: INTENTS,
    partials: [Partials.Channel],
    rest: { api: discord.apiUrl },
    ...options,
  });
  const problems: unknown[] = [];
  client.on('error', (error) => problems.push(error));
  client.on('interactionCreate', (interaction) =>
    handlers.interaction?.(interaction).catch((e: unknown) => problems.push(e)),
  );
  client.on('messageCreate', (message) => {
    if (!message.author.bot) handlers.message?.(message).catch((e: unknown) => problems.push(e));
  });
  await client.login(discord.token);
  open.push({ close: () => Promise.race([client.destroy(), lastCall()]) });
  if (!client.isReady()) await new Promise((resolve) => client.once('clientReady', resolve));
  await client.rest.put(Routes.applicationCommands(discord.applicationId), { body: COMMANDS });
  return { discord, client, problems };
}

export const codeOf = (problem: unknown) => (problem as { code?: unknown }).code;
