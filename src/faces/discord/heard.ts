import type { BaseInteraction, CommandInteractionOption, Message } from 'discord.js';
import type { Speaker } from '../../conversation/ports.js';
import { SIGNS } from '../../conversation/signs.js';

/** Who speaks and where, of anything that happened in Discord. */
export function speakerOf(event: BaseInteraction | Message): Speaker {
  const id = 'author' in event ? event.author.id : event.user.id;
  const { guildId, channelId } = event;
  return { id, ...(guildId ? { club: guildId } : {}), ...(channelId ? { channel: channelId } : {}) };
}

interface Used {
  readonly commandName: string;
  readonly options: { readonly data: readonly CommandInteractionOption[] };
}

/** `heater size` */
export const commandPath = ({ commandName, options: { data } }: Used): string =>
  [commandName, ...data.filter(({ options }) => options !== undefined).map(({ name }) => name)].join(' ');

/** A slash command as Discord shows it, options as they were typed and in that order. */
export function commandText(used: Used): string {
  const { data } = used.options;
  const options = data.flatMap((entry) => entry.options ?? [entry]);
  const given = options
    .filter(({ value }) => value !== undefined)
    .map(({ name, value }) => `${name}:${oneLine(String(value))}`);
  return [`/${commandPath(used)}`, ...given].join(' ');
}

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** What a member wrote, without Discord's signs. */
export const plainWords = (content: string): string =>
  content
    .replace(SIGNS, ' ')
    .replace(/[^\S\n]+/g, ' ')
    .trim();
