import { Client, Events } from 'discord.js';
import { memberQueue } from '../../conversation/member-queue.js';
import type { Calculation } from '../../core/calculation.js';
import { commandsJson } from '../../render/command-json.js';
import type { Bot } from './bot.js';
import { FinalProblem, finalProblem } from './errors.js';
import { type Connection, clientOptions } from './options.js';
import { registerCommands } from './register.js';
import { onInteraction } from './route.js';
import { onMessage } from './talk.js';

export interface DiscordSettings extends Omit<Bot, 'queue'>, Connection {
  readonly token: string;
  readonly applicationId: string;
  readonly calculations: readonly Calculation[];
}

export interface DiscordFace {
  /** Takes no more events, finishes what has begun, and logs out. */
  readonly stop: () => Promise<void>;
  /** Resolves with the reason when Discord ends the session for good. */
  readonly ended: Promise<FinalProblem>;
}

const LAST_WORDS = 5000;
const ENDED = 'Discord has ended the session for good; start the bot again.';

/** Logs in, serves events, and registers the commands if they changed. @throws FinalProblem when there is no use in trying again */
export async function startDiscord(settings: DiscordSettings): Promise<DiscordFace> {
  const { token, applicationId, calculations, commands, log } = settings;
  const client = new Client(clientOptions(settings));
  const bot: Bot = { ...settings, queue: memberQueue() };
  let accepting = true;

  client.on(Events.Error, (error) => log.error({ err: error }, 'client error'));
  client.on(Events.ShardError, (error, shard) => log.warn({ err: error, shard }, 'connection error'));
  client.on(Events.Warn, (warning) => log.warn(warning));
  const ended = new Promise<FinalProblem>((resolve) => {
    client.on(Events.ShardDisconnect, ({ code }) => {
      if (accepting) resolve(new FinalProblem(`${ENDED} (close code ${code})`));
    });
  });
  const served =
    <T>(handle: (bot: Bot, event: T) => Promise<void>) =>
    (event: T) => {
      if (accepting) handle(bot, event).catch((error: unknown) => log.error({ err: error }, 'a handler failed'));
    };
  client.on(Events.InteractionCreate, served(onInteraction));
  client.on(Events.MessageCreate, served(onMessage));

  try {
    await client.login(token);
  } catch (error) {
    await client.destroy();
    throw finalProblem(error);
  }
  if (client.application?.id !== applicationId)
    log.warn(
      { given: applicationId, actual: client.application?.id },
      'DISCORD_APPLICATION_ID is not the application of this token',
    );
  registerCommands(client.rest, applicationId, commandsJson(commands, calculations)).then(
    (outcome) => log.info({ outcome }, 'commands'),
    (error: unknown) =>
      log.error({ err: error }, 'the commands could not be registered; the bot serves those that are'),
  );

  return {
    ended,
    async stop() {
      accepting = false;
      await Promise.race([bot.queue.idle(), new Promise((resolve) => setTimeout(resolve, LAST_WORDS).unref())]);
      await client.destroy();
    },
  };
}

interface Signals {
  once: (signal: 'SIGTERM' | 'SIGINT', listener: () => void) => unknown;
}

/** Runs the bot until it is told to stop. @returns the exit status */
export async function runDiscord(settings: DiscordSettings, signals: Signals = process): Promise<number> {
  const { log } = settings;
  const told = new Promise<undefined>((resolve) => {
    for (const signal of ['SIGTERM', 'SIGINT'] as const) signals.once(signal, () => resolve(undefined));
  });
  try {
    const face = await startDiscord(settings);
    const problem = await Promise.race([told, face.ended]);
    await face.stop();
    if (!problem) return 0;
    log.fatal(problem.message);
  } catch (error) {
    if (!(error instanceof FinalProblem)) throw error;
    log.fatal(error.message);
  }
  return 1;
}
