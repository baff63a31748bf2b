import { Buffer } from 'node:buffer';
import type { Logger } from 'pino';
import type { Reply } from '../../core/reply.js';
import { type DiscordMessage, discordMessages, plainMessages } from '../../render/discord.js';
import { customId } from './custom-ids.js';
import { troubleOf } from './errors.js';

/** A rendered message as the library takes it, its files read from where they are. */
export const attached = ({ content, components, flags, files }: DiscordMessage) => ({
  ...(content === undefined ? {} : { content }),
  components: [...components],
  flags,
  files: files.map((file) => ({
    name: file.name,
    attachment: 'path' in file ? file.path : Buffer.from(file.text),
  })),
});

/** Sends replies one after the other; one that Discord refuses as it is drawn goes out as its plain text. */
export async function deliver(
  replies: readonly Reply[],
  send: (message: DiscordMessage) => Promise<unknown>,
  inClub: boolean,
  log: Logger,
): Promise<void> {
  for (const reply of replies) {
    try {
      for (const message of discordMessages(reply, customId, inClub)) await send(message);
    } catch (error) {
      if (troubleOf(error) !== 'refused') throw error;
      log.error(
        { err: error, calculation: reply.calculation, kind: reply.kind },
        'Discord refused a reply as drawn; sending its text',
      );
      for (const message of plainMessages(reply)) await send(message);
    }
  }
}
