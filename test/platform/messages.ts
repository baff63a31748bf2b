import {
  type AllowedMentions,
  ApiError,
  FLAG,
  invalidBody,
  type Message,
  type MessageBody,
  type SentFile,
  textOf,
  type User,
} from './api.js';
import { checkMessage } from './check-message.js';
import type { Channel, World } from './world.js';

const refuse = (problems: ReturnType<typeof checkMessage>): void => {
  if (problems.length === 0) return;
  if (problems.every(({ code }) => code === 'EMPTY')) throw new ApiError(400, 50006, 'Cannot send an empty message');
  throw invalidBody(problems);
};

/** Who would be rung: what the text mentions, cut down to what the sender allows. Left out, Discord rings everybody it can. */
function pingsOf(text: string, allowed: AllowedMentions | undefined, repliedTo: User | undefined): string[] {
  const users = [...text.matchAll(/(?<!\\)<@!?(\d+)>/g)].map(([, id]) => id!);
  const roles = [...text.matchAll(/(?<!\\)<@&(\d+)>/g)].map(([, id]) => id!);
  const everyone = /@(everyone|here)\b/.test(text) ? ['everyone'] : [];
  const replied = repliedTo && allowed?.replied_user !== false ? [repliedTo.id] : [];
  if (!allowed) return [...users, ...roles, ...everyone, ...replied];
  const may = (kind: string, named: readonly string[] | undefined, ids: readonly string[]) =>
    allowed.parse?.includes(kind) ? ids : ids.filter((id) => named?.includes(id));
  return [
    ...may('users', allowed.users, users),
    ...may('roles', allowed.roles, roles),
    ...may('everyone', [], everyone),
    ...(allowed.replied_user ? replied : []),
  ];
}

export interface Posting {
  readonly channel: Channel;
  readonly author: User;
  readonly body: MessageBody;
  readonly files?: readonly SentFile[];
  readonly askedBy?: User;
}

/** Puts a message that Discord would take into a channel. @throws ApiError when Discord would not take it */
export function postMessage(world: World, { channel, author, body, files = [], askedBy }: Posting): Message {
  refuse(checkMessage(body, files, true));
  const replyTo = body.message_reference?.message_id;
  const content = body.content ?? '';
  const components = body.components ?? [];
  const repliedTo = replyTo ? world.messages.get(replyTo)?.author : undefined;
  const mentionsBot = new RegExp(`<@!?${world.bot.id}>`).test(content) || repliedTo?.id === world.bot.id;
  const message: Message = {
    id: world.nextId(),
    channelId: channel.id,
    ...(channel.clubId ? { clubId: channel.clubId } : {}),
    ...(replyTo ? { replyTo } : {}),
    ...(askedBy ? { askedBy } : {}),
    author,
    at: new Date().toISOString(),
    content,
    embeds: body.embeds ?? [],
    components,
    files,
    flags: body.flags ?? 0,
    mentions: mentionsBot ? [world.bot] : [],
    pings: pingsOf(textOf({ content, components }), body.allowed_mentions, repliedTo),
    edits: 0,
  };
  world.messages.set(message.id, message);
  return message;
}

/** Changes a message in place. A message that has become components stays components; ephemeral stays ephemeral. */
export function editMessage(message: Message, body: MessageBody, files: readonly SentFile[] = []): void {
  const modern = (message.flags | (body.flags ?? 0)) & FLAG.components;
  const whole: MessageBody = {
    ...body,
    content: body.content === undefined ? message.content : body.content,
    components: body.components === undefined ? message.components : body.components,
    flags: modern,
  };
  const shown = body.attachments ? files : [...message.files, ...files];
  refuse(checkMessage(whole, shown, true));
  message.content = whole.content ?? '';
  message.components = whole.components ?? [];
  message.embeds = (body.embeds === undefined ? message.embeds : body.embeds) ?? [];
  message.files = shown;
  message.flags = modern | (message.flags & FLAG.ephemeral);
  message.pings = [];
  message.edits += 1;
}
