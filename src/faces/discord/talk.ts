import { type Message, PermissionFlagsBits, PermissionsBitField } from 'discord.js';
import type { Reply } from '../../core/reply.js';
import type { DiscordMessage } from '../../render/discord.js';
import { type Bot, failed, sentence } from './bot.js';
import { troubleOf } from './errors.js';
import { plainWords, speakerOf } from './heard.js';
import { attached, deliver } from './send.js';

const TYPING_AFTER = 1200;
const SENT_DIRECTLY = 'That is for you alone, so I sent it to you directly.';
const NOT_DIRECTLY =
  'That is for you alone, and I may not write to you directly. Use the slash command here: only you see its answer.';

/** Answers what is said to the bot: in its direct messages, and where it is mentioned or replied to. */
export async function onMessage(bot: Bot, message: Message): Promise<void> {
  if (message.author.bot || message.system) return;
  const direct = message.channel.isDMBased();
  const me = message.client.user;
  if (!direct && !message.mentions.has(me, { ignoreEveryone: true, ignoreRoles: true })) return;

  const arrived = performance.now();
  const typing = setTimeout(() => void showTyping(message), bot.deferAfter ?? TYPING_AFTER);
  const speaker = speakerOf(message);
  try {
    await bot.queue.run(speaker.id, async () => {
      const replies = await bot.brinewright.reply(speaker, { say: plainWords(message.content) }, bot.clock);
      clearTimeout(typing);
      if (direct) await deliver(replies, answering(message, false), false, bot.log);
      else await deliverInClub(bot, message, replies);
    });
  } catch (error) {
    clearTimeout(typing);
    const elapsed = Math.round(performance.now() - arrived);
    await failed(bot, error, { what: 'a message', elapsed }, answering(message, false));
  }
}

async function showTyping({ channel }: Message): Promise<void> {
  if (channel.isSendable()) await channel.sendTyping().catch(() => undefined);
}

/** The first message quotes the one it answers, where the bot may see it; the rest follow it. */
function answering(message: Message, quotes: boolean): (answer: DiscordMessage) => Promise<unknown> {
  let first = quotes;
  return (answer) => {
    const { channel } = message;
    const quote = first;
    first = false;
    if (quote) return message.reply({ ...attached(answer), failIfNotExists: false });
    return channel.isSendable() ? channel.send(attached(answer)) : Promise.resolve();
  };
}

async function deliverInClub(bot: Bot, message: Message, replies: readonly Reply[]): Promise<void> {
  const may = permissionsIn(message);
  const publicly = answering(message, may.has(PermissionFlagsBits.ReadMessageHistory));
  if (replies.some((reply) => reply.private)) {
    const sent = await deliverDirectly(bot, message, replies);
    await publicly(sentence(sent ? SENT_DIRECTLY : NOT_DIRECTLY));
    return;
  }
  const lacking = lackingOf(message, may);
  if (lacking.length === 0) {
    try {
      await deliver(replies, publicly, true, bot.log);
      return;
    } catch (error) {
      if (troubleOf(error) !== 'forbidden') throw error;
      if (!may.has(PermissionFlagsBits.AttachFiles)) lacking.push('Attach Files');
    }
  }
  const which = lacking.length > 0 ? `: I lack the permission ${lacking.join(' and ')}` : '';
  const why = `I may not answer in <#${message.channelId}>${which}. Tell whoever runs the club. Here is the answer.`;
  const sent = await deliverDirectly(bot, message, replies, sentence(why));
  if (!sent)
    bot.log.warn({ channel: message.channelId, lacking }, 'may write neither in the channel nor to the member');
}

const permissionsIn = ({ channel, client }: Message): Readonly<PermissionsBitField> =>
  (channel.isDMBased() ? null : channel.permissionsFor(client.user)) ?? new PermissionsBitField();

function lackingOf({ channel }: Message, may: Readonly<PermissionsBitField>): string[] {
  const writing = channel.isThread()
    ? ([PermissionFlagsBits.SendMessagesInThreads, 'Send Messages in Threads'] as const)
    : ([PermissionFlagsBits.SendMessages, 'Send Messages'] as const);
  const needed = [[PermissionFlagsBits.ViewChannel, 'View Channel'] as const, writing];
  return needed.filter(([bit]) => !may.has(bit)).map(([, name]) => name);
}

/** @returns false when the member takes no direct messages */
async function deliverDirectly(
  bot: Bot,
  { author }: Message,
  replies: readonly Reply[],
  before?: DiscordMessage,
): Promise<boolean> {
  try {
    if (before) await author.send(attached(before));
    await deliver(replies, (answer) => author.send(attached(answer)), false, bot.log);
    return true;
  } catch (error) {
    if (troubleOf(error) !== 'closed') throw error;
    return false;
  }
}
