import { MessageFlags } from 'discord.js';
import type { Logger } from 'pino';
import type { Command } from '../../conversation/command.js';
import type { MemberQueue } from '../../conversation/member-queue.js';
import type { Brinewright, Clock } from '../../conversation/ports.js';
import type { DiscordMessage } from '../../render/discord.js';
import { logIncident, sorry, troubleOf } from './errors.js';

/** What the handlers of events work with. */
export interface Bot {
  readonly brinewright: Brinewright;
  readonly commands: readonly Command[];
  readonly clock: Clock;
  readonly log: Logger;
  readonly queue: MemberQueue;
  /** Milliseconds until an answer that is not there yet is put off visibly. */
  readonly deferAfter?: number | undefined;
}

/** A sentence of the face itself. */
export const sentence = (content: string, alone = false): DiscordMessage => ({
  content,
  components: [],
  files: [],
  flags: MessageFlags.SuppressEmbeds,
  private: alone,
});

/**
 * What happens when an answer could not be worked out or sent. Discord's own refusals are logged and left at that; anything
 * else is our fault, and the member gets a number to pass on.
 */
export async function failed(
  { log }: Bot,
  error: unknown,
  where: { readonly what: string; readonly elapsed: number },
  send: (message: DiscordMessage) => Promise<unknown>,
): Promise<void> {
  const trouble = troubleOf(error);
  if (trouble !== 'unknown' && trouble !== 'refused') {
    log.warn({ ...where, trouble, err: error }, 'an answer did not reach its member');
    return;
  }
  const incident = logIncident(log, error, where.what);
  try {
    await send(sentence(sorry(incident), true));
  } catch (again) {
    log.warn({ incident, err: again }, 'the apology did not reach its member');
  }
}
