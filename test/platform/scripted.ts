import { afterEach } from 'vitest';
import type { Command } from '../../src/conversation/command.js';
import type { Brinewright, Message, Speaker } from '../../src/conversation/ports.js';
import type { Calculation } from '../../src/core/calculation.js';
import { drainSiphon } from '../../src/core/calculations/drain-siphon.js';
import type { Reply } from '../../src/core/reply.js';
import { type DiscordSettings, startDiscord } from '../../src/faces/discord/start.js';
import { createLog } from '../../src/log.js';
import { type LoopbackSpec, startLoopback } from './loopback-server.js';

export const reply = (parts: Partial<Reply> = {}): Reply => ({
  member: 'someone',
  kind: 'notice',
  calculation: null,
  headline: 'Noted.',
  inputs: [],
  steps: [],
  results: [],
  cautions: [],
  sources: [],
  asks: [],
  files: [],
  text: parts.headline ?? 'Noted.',
  ...parts,
});

/** A worked answer with everything a face draws. */
export const answer = (parts: Partial<Reply> = {}): Reply =>
  reply({
    kind: 'answer',
    calculation: 'drain.siphon',
    headline: 'This drain carries 3,800 L/h.',
    inputs: [
      { id: 'drop', name: 'drop', value: 30, unit: 'in', si: 0.762, si_unit: 'm', from: 'message', shown: '30 in' },
    ],
    steps: [
      {
        symbol: 'A',
        name: 'bore area',
        formula: 'pi*D^2/4',
        values: { D: 0.0266 },
        si: 5.557e-4,
        si_unit: 'm^2',
        shown: 'A = pi·(0.0266 m)²/4 = 0.0005557 m²',
      },
    ],
    results: [
      {
        id: 'flow',
        name: 'flow at full siphon',
        value: 3800,
        unit: 'L/h',
        si: 1.06e-3,
        si_unit: 'm^3/s',
        shown: '3,800 L/h',
      },
    ],
    cautions: [{ level: 'caution', text: 'Test the drain before you trust it.' }],
    sources: ['Swamee and Jain 1976'],
    text: 'This drain carries 3,800 L/h, in plain text.',
    actions: [
      { verb: 'working', label: 'Show the working' },
      { verb: 'units', label: 'In US units' },
      { verb: 'save', label: 'Save to my tank' },
    ],
    answerId: 'answer-1',
    ...parts,
  });

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
