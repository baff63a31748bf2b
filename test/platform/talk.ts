import type { Place } from './actions.js';
import type { Message } from './api.js';
import type { Gateway } from './gateway.js';
import { postMessage } from './messages.js';
import { announce } from './rest.js';
import type { Channel, World } from './world.js';

const PATIENCE = 5000;
const LOOK_EVERY = 4;

/** Ordinary messages of members, and the bot's ordinary messages back. */
export function createTalk(world: World, gateway: Gateway) {
  const say = (member: string, channel: Channel, content: string, replyTo?: Message): Message => {
    const reference = replyTo ? { message_reference: { message_id: replyTo.id } } : {};
    const message = postMessage(world, { channel, author: world.member(member), body: { content, ...reference } });
    announce(world, gateway, message);
    return message;
  };

  /** Waits for the first message of the bot in a channel after the given one. */
  async function answerTo(message: Message): Promise<Message> {
    for (let waited = 0; waited < PATIENCE; waited += LOOK_EVERY) {
      const answer = world
        .messagesIn(message.channelId)
        .find((other) => other.author.id === world.bot.id && BigInt(other.id) > BigInt(message.id));
      if (answer) return answer;
      await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY));
    }
    throw new Error(`the bot did not answer “${message.content}”`);
  }

  const channelOf = ({ club, channel }: Place) => world.channel(world.club(club), channel);
  return {
    /** Says something that the bot is not meant to answer. */
    post: (call: Place & { text: string }): Message => say(call.member, channelOf(call), call.text),
    /** Replies to a message of the bot, which rings it without a word of mention. */
    replyTo: (call: Place & { text: string; message: Message }): Promise<Message> =>
      answerTo(say(call.member, channelOf(call), call.text, call.message)),
    mention: (call: Place & { text: string }): Promise<Message> =>
      answerTo(say(call.member, channelOf(call), `<@${world.bot.id}> ${call.text}`)),
    directMessage: (call: Place & { text: string }): Promise<Message> =>
      answerTo(say(call.member, world.directChannel(world.member(call.member)), call.text)),
  };
}
