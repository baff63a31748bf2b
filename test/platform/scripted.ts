import { afterEach } from 'vitest';
import type { Command } from '../../src/conversation/command.js';
import type { Brinewright, Message, Speaker } from '../../src/conversation/ports.js';
import type { Calculation } from '../../src/core/calculation.js';
import { drainSiphon } from '../../src/core/calculations/drain-siphon.js';
import type { Reply } from '../../src/core/reply.js';
import { type DiscordSettings, startDiscord } from '../../src/faces/discord/start.js';
import { createLog } from '../../src/log.js';
import { type LoopbackSpec, startLoopback } from './loopback-server.js';
import { reply } from './replies.js';

const noAnswer = async () => [];
export const commands: readonly Command[] = [
  { name: 'drain', description: 'Drains and overflows', calculations: ['drain.siphon'] },
  {
    name: 'tank',
    description: 'Your tanks',
    actions: [
      { name: 'show', description: 'Show a tank', options: [], private: true, run: noAnswer },
      {
        name: 'use',
        description: 'Choose a tank',
        options: [{ name: 'name', description: 'which', suggest: 'tank' }],
        run: noAnswer,
      },
    ],
  },
  {
    name: 'help',
    description: 'What I can work out',
    actions: [
      {
        name: 'help',
        description: 'What I can work out',
        options: [{ name: 'topic', description: 'about' }],
        run: noAnswer,
      },
    ],
  },
];
export const calculations: readonly Calculation[] = [drainSiphon];

type Script = (message: Message, speaker: Speaker) => Reply[] | Promise<Reply[]>;

export interface BotSpec extends LoopbackSpec {
  readonly script?: Script;
  readonly complete?: Brinewright['complete'];
  readonly settings?: Partial<DiscordSettings>;
}

const running: { close: () => Promise<void> }[] = [];
afterEach(async () => {
  for (const { close } of running.splice(0).reverse()) await close();
});

/** The Discord face on a server of its own, with a conversation that follows a script and notes what it hears. */
export async function startBot(spec: BotSpec = {}) {
  const discord = await startLoopback(spec);
  running.push(discord);
  const heard: Message[] = [];
  const speakers: Speaker[] = [];
  const logged: string[] = [];
  const brinewright: Brinewright = {
    async reply(speaker, message) {
      heard.push(message);
      speakers.push(speaker);
      return (await spec.script?.(message, speaker)) ?? [reply()];
    },
    complete: spec.complete ?? (async () => []),
  };
  const settings: DiscordSettings = {
    token: discord.token,
    applicationId: discord.applicationId,
    apiUrl: discord.apiUrl,
    brinewright,
    commands,
    calculations,
    clock: { now: () => new Date('2027-03-01T19:00:00Z') },
    log: createLog('info', { write: (line: string) => void logged.push(line) }),
    ...spec.settings,
  };
  const face = await startDiscord(settings);
  running.push({ close: face.stop });
  await discord.until(() => logged.some((line) => line.includes('commands')), 'registration');
  return { discord, face, heard, speakers, logged, settings };
}

/** What a test lets happen at a moment of its choosing. */
export function gate(): { open: () => void; opened: Promise<void> } {
  let open = () => {};
  const opened = new Promise<void>((resolve) => {
    open = resolve;
  });
  return { open, opened };
}
