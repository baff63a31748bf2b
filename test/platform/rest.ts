import { ApiError, FLAG, invalidBody, type Message, type MessageBody } from './api.js';
import { type CommandBody, checkCommands } from './check-commands.js';
import type { Gateway } from './gateway.js';
import { INTENT } from './gateway.js';
import type { Routes } from './http.js';
import { editMessage, postMessage } from './messages.js';
import { channelJson, messageJson, userJson } from './payloads.js';
import { CHANNEL_TYPE, type Channel, PERMISSION, type Permission, type World } from './world.js';

export interface Registered {
  commands: readonly (CommandBody & { readonly id: string })[];
  /** How often the whole list was replaced. */
  puts: number;
}

/** A message that came to be in a channel goes to everyone who listens there. */
export function announce(world: World, gateway: Gateway, message: Message): void {
  const toBot = message.author.bot || !message.clubId || message.mentions.some(({ id }) => id === world.bot.id);
  const seen = toBot ? message : { ...message, content: '', embeds: [], components: [], files: [] };
  const intent = message.clubId ? INTENT.guildMessages : INTENT.directMessages;
  gateway.dispatch('MESSAGE_CREATE', messageJson(seen, world), message.clubId, intent);
}

export function restRoutes(
  world: World,
  gateway: () => Gateway,
  address: () => string,
  registered: Registered,
): Routes {
  const nonces = new Map<string, Message>();
  const channelOf = (id: string): Channel => {
    const channel = world.channels.get(id);
    if (!channel) throw new ApiError(404, 10003, 'Unknown Channel');
    return channel;
  };
  const messageOf = (id: string): Message => {
    const message = world.messages.get(id);
    if (!message || message.flags & FLAG.ephemeral) throw new ApiError(404, 10008, 'Unknown Message');
    return message;
  };
  const need = (channel: Channel, ...permissions: Permission[]) => {
    if (channel.denied & PERMISSION.ViewChannel) throw new ApiError(403, 50001, 'Missing Access');
    if (permissions.some((name) => channel.denied & PERMISSION[name]))
      throw new ApiError(403, 50013, 'Missing Permissions');
  };
  const openThread = (parent: Channel, body: { name: string; type?: number }, id?: string): Channel => {
    need(parent, 'CreatePublicThreads');
    const { clubId, denied } = parent;
    if ([...body.name].length > 100)
      throw invalidBody([{ path: 'name', code: 'BASE_TYPE_MAX_LENGTH', message: 'Must be 100 or fewer' }]);
    const type = body.type ?? CHANNEL_TYPE.thread;
    const thread = world.addChannel(
      { name: body.name, type, denied, parentId: parent.id, ...(clubId ? { clubId } : {}) },
      id,
    );
    gateway().dispatch('THREAD_CREATE', { ...channelJson(thread), newly_created: true }, clubId, INTENT.guilds);
    return thread;
  };
  const post = (
    channel: Channel,
    body: MessageBody,
    files: Parameters<typeof postMessage>[1]['files'] = [],
  ): Message => {
    const message = postMessage(world, { channel, author: world.bot, body, files });
    channel.archived = false;
    announce(world, gateway(), message);
    return message;
  };

  return {
    'GET /gateway/bot': () => ({
      body: {
        url: address(),
        shards: 1,
        session_start_limit: { total: 1000, remaining: 999, reset_after: 1, max_concurrency: 1 },
      },
    }),
    'GET /users/@me': () => ({ body: userJson(world.bot) }),
    'POST /users/@me/channels': ({ body }) => {
      const { recipient_id } = body as { recipient_id: string };
      return { body: channelJson(world.directChannel({ id: recipient_id, username: 'member' })) };
    },
    'GET /channels/:channel': (_, id) => ({ body: channelJson(channelOf(id!)) }),
    'PATCH /channels/:channel': ({ body }, id) => {
      const channel = channelOf(id!);
      Object.assign(channel, body);
      return { body: channelJson(channel) };
    },
    'POST /channels/:channel/typing': (_, id) => {
      need(channelOf(id!));
      return undefined;
    },
    'POST /channels/:channel/messages': ({ body, files }, id) => {
      const channel = channelOf(id!);
      if (channel.recipient && world.closed.has(channel.recipient.id))
        throw new ApiError(403, 50007, 'Cannot send messages to this user');
      need(
        channel,
        channel.parentId ? 'SendMessagesInThreads' : 'SendMessages',
        ...(files.length > 0 ? ['AttachFiles' as const] : []),
      );
      const { nonce, enforce_nonce } = body as MessageBody;
      const same = enforce_nonce ? nonces.get(`${id} ${nonce}`) : undefined;
      const message = same ?? post(channel, body as MessageBody, files);
      if (nonce !== undefined) nonces.set(`${id} ${nonce}`, message);
      return { body: { ...messageJson(message, world), nonce } };
    },
    'GET /channels/:channel/messages/:message': (_, _channel, id) => ({ body: messageJson(messageOf(id!), world) }),
    'PATCH /channels/:channel/messages/:message': ({ body, files }, channel, id) => {
      if (channelOf(channel!).archived) throw new ApiError(400, 50083, 'Thread is archived');
      editMessage(messageOf(id!), body as MessageBody, files);
      return { body: messageJson(messageOf(id!), world) };
    },
    'DELETE /channels/:channel/messages/:message': (_, _channel, id) => {
      world.messages.delete(messageOf(id!).id);
      return undefined;
    },
    'POST /channels/:channel/messages/:message/threads': ({ body }, channel, id) => {
      if (world.channels.has(id!))
        throw new ApiError(400, 160004, 'A thread has already been created for this message');
      return {
        status: 201,
        body: channelJson(openThread(channelOf(channel!), body as { name: string }, messageOf(id!).id)),
      };
    },
    'POST /channels/:channel/threads': ({ body, files }, id) => {
      const parent = channelOf(id!);
      const { message } = body as { message?: MessageBody };
      const thread = openThread(parent, body as { name: string; type?: number });
      const first = message ? { message: messageJson(post(thread, message, files), world) } : {};
      return { status: 201, body: { ...channelJson(thread), ...first } };
    },
    'GET /applications/:application/commands': () => ({ body: registered.commands }),
    'PUT /applications/:application/commands': ({ body }) => {
      const commands = body as CommandBody[];
      const problems = checkCommands(commands);
      if (problems.length > 0) throw invalidBody(problems);
      registered.commands = commands.map((command) => asDiscordKeepsIt(command, world));
      registered.puts += 1;
      return { body: registered.commands };
    },
  };
}

/** A command comes back with fields that nobody sent, and lists in an order of Discord's own. */
const asDiscordKeepsIt = (command: CommandBody, world: World): CommandBody & { id: string } =>
  ({
    type: 1,
    default_member_permissions: null,
    nsfw: false,
    dm_permission: true,
    name_localizations: null,
    description_localizations: null,
    ...command,
    description: command.description ?? '',
    contexts: command.contexts ? [...command.contexts].reverse() : undefined,
    id: world.nextId(),
    application_id: world.bot.id,
    version: world.nextId(),
  }) as never;
