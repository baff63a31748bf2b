import type { Message, User } from './api.js';

/** What the bot may be forbidden in a channel, by Discord's bit. */
export const PERMISSION = {
  ViewChannel: 1n << 10n,
  SendMessages: 1n << 11n,
  EmbedLinks: 1n << 14n,
  AttachFiles: 1n << 15n,
  ReadMessageHistory: 1n << 16n,
  CreatePublicThreads: 1n << 35n,
  SendMessagesInThreads: 1n << 38n,
} as const;
export type Permission = keyof typeof PERMISSION;
export const EVERYTHING = Object.values(PERMISSION).reduce((all, bit) => all | bit, 1n << 31n);

export interface ChannelSpec {
  readonly name: string;
  readonly kind?: 'text' | 'forum';
  readonly deny?: readonly Permission[];
}
export interface ClubSpec {
  readonly name: string;
  readonly channels: readonly (string | ChannelSpec)[];
}

export const CHANNEL_TYPE = { text: 0, direct: 1, thread: 11, privateThread: 12, forum: 15 } as const;

export interface Channel {
  readonly id: string;
  readonly type: number;
  readonly clubId?: string;
  readonly denied: bigint;
  /** The member at the other end of a direct channel. */
  readonly recipient?: User;
  readonly parentId?: string;
  name: string;
  archived: boolean;
}

export interface Club {
  readonly id: string;
  readonly name: string;
  readonly channels: Channel[];
}

export interface World {
  readonly bot: User;
  readonly clubs: readonly Club[];
  readonly channels: Map<string, Channel>;
  readonly messages: Map<string, Message>;
  /** Members who take no direct messages. */
  readonly closed: Set<string>;
  readonly nextId: () => string;
  /** The member of that name; comes to be when first named. */
  readonly member: (name: string) => User;
  readonly club: (name?: string) => Club;
  readonly channel: (club: Club, name?: string) => Channel;
  readonly directChannel: (member: User) => Channel;
  readonly addChannel: (channel: Omit<Channel, 'id' | 'archived'>, id?: string) => Channel;
  readonly messagesIn: (channelId: string) => Message[];
}

const DISCORD_EPOCH = 1_420_070_400_000n;

export function createWorld(specs: readonly ClubSpec[], botId: string): World {
  let count = 0n;
  const nextId = () => {
    count += 1n;
    return String(((BigInt(Date.now()) - DISCORD_EPOCH) << 22n) + count);
  };
  const channels = new Map<string, Channel>();
  const messages = new Map<string, Message>();
  const members = new Map<string, User>();

  const addChannel: World['addChannel'] = (channel, id = nextId()) => {
    const whole = { ...channel, id, archived: false };
    channels.set(id, whole);
    return whole;
  };
  const clubs = specs.map(({ name, channels: list }): Club => {
    const id = nextId();
    return {
      id,
      name,
      channels: list.map((entry) => {
        const spec: ChannelSpec = typeof entry === 'string' ? { name: entry } : entry;
        const denied = (spec.deny ?? []).reduce((all, permission) => all | PERMISSION[permission], 0n);
        return addChannel({ name: spec.name, type: CHANNEL_TYPE[spec.kind ?? 'text'], clubId: id, denied });
      }),
    };
  });
  const named = <T extends { name: string }>(list: readonly T[], name: string | undefined, what: string): T => {
    const found = name === undefined ? list[0] : list.find((entry) => entry.name === name);
    if (!found) throw new Error(`no ${what} ${name ?? ''}`);
    return found;
  };
  return {
    bot: { id: botId, username: 'bot', bot: true },
    clubs,
    channels,
    messages,
    closed: new Set(),
    nextId,
    member(name) {
      const known = members.get(name) ?? { id: nextId(), username: name };
      members.set(name, known);
      return known;
    },
    club: (name) => named(clubs, name, 'club'),
    channel: (club, name) =>
      named(
        [...channels.values()].filter(({ clubId }) => clubId === club.id),
        name,
        'channel',
      ),
    directChannel(recipient) {
      const known = [...channels.values()].find((channel) => channel.recipient?.id === recipient.id);
      return known ?? addChannel({ name: '', type: CHANNEL_TYPE.direct, denied: 0n, recipient });
    },
    addChannel,
    messagesIn: (channelId) => [...messages.values()].filter((message) => message.channelId === channelId),
  };
}
