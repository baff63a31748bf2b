import type { Message, User } from './api.js';
import { CHANNEL_TYPE, type Channel, type Club, EVERYTHING, type World } from './world.js';

type Json = Record<string, unknown>;

export const userJson = ({ id, username, bot = false }: User): Json => ({
  id,
  username,
  bot,
  discriminator: '0',
  global_name: username,
  avatar: null,
});

export const memberJson = (user: User): Json => ({
  user: userJson(user),
  roles: [],
  joined_at: '2027-01-01T00:00:00.000000+00:00',
  deaf: false,
  mute: false,
  flags: 0,
  permissions: String(EVERYTHING),
});

const isThread = (type: number): boolean => type === CHANNEL_TYPE.thread || type === CHANNEL_TYPE.privateThread;

export function channelJson(channel: Channel): Json {
  const { id, name, type, clubId, denied, recipient, parentId, archived } = channel;
  if (recipient) return { id, type, recipients: [userJson(recipient)], last_message_id: null };
  const overwrites = denied === 0n ? [] : [{ id: clubId, type: 0, allow: '0', deny: String(denied) }];
  const thread = isThread(type)
    ? {
        owner_id: '0',
        message_count: 0,
        member_count: 1,
        thread_metadata: {
          archived,
          locked: false,
          auto_archive_duration: 1440,
          archive_timestamp: new Date().toISOString(),
        },
      }
    : {};
  return {
    id,
    type,
    name,
    guild_id: clubId,
    position: 0,
    parent_id: parentId ?? null,
    permission_overwrites: overwrites,
    ...thread,
  };
}

export function clubJson({ id, name, channels }: Club, { bot, channels: all }: World): Json {
  const role = {
    id,
    name: '@everyone',
    permissions: String(EVERYTHING),
    color: 0,
    hoist: false,
    position: 0,
    managed: false,
    mentionable: false,
  };
  const empty = [
    'emojis',
    'stickers',
    'presences',
    'voice_states',
    'stage_instances',
    'guild_scheduled_events',
    'soundboard_sounds',
    'features',
  ];
  return {
    id,
    name,
    owner_id: '1',
    member_count: 2,
    large: false,
    unavailable: false,
    preferred_locale: 'en-US',
    joined_at: '2027-01-01T00:00:00.000000+00:00',
    roles: [role],
    channels: channels.map(channelJson),
    threads: [...all.values()].filter((channel) => channel.clubId === id && isThread(channel.type)).map(channelJson),
    members: [memberJson(bot)],
    ...Object.fromEntries(empty.map((key) => [key, []])),
  };
}

export function messageJson(message: Message, world: World): Json {
  const { id, channelId, clubId, author, content, embeds, components, files, flags, mentions, at, replyTo, askedBy } =
    message;
  const attachments = files.map((file, i) => ({
    id: String(i),
    filename: file.name,
    size: file.bytes.length,
    content_type: file.type,
    url: `https://cdn.invalid/${id}/${file.name}`,
    proxy_url: `https://cdn.invalid/${id}/${file.name}`,
  }));
  return {
    id,
    channel_id: channelId,
    channel_type: world.channels.get(channelId)?.type,
    author: userJson(author),
    content,
    embeds,
    components,
    attachments,
    flags,
    mentions: mentions.map(userJson),
    mention_roles: [],
    mention_everyone: message.pings.includes('everyone'),
    timestamp: at,
    edited_timestamp: message.edits > 0 ? new Date().toISOString() : null,
    tts: false,
    pinned: false,
    type: replyTo ? 19 : askedBy ? 20 : 0,
    ...(clubId ? { guild_id: clubId, member: { ...memberJson(author), user: undefined } } : {}),
    ...(replyTo
      ? { message_reference: { type: 0, message_id: replyTo, channel_id: channelId, guild_id: clubId } }
      : {}),
    ...(askedBy
      ? { interaction_metadata: { id, type: 2, user: userJson(askedBy), authorizing_integration_owners: {} } }
      : {}),
  };
}
