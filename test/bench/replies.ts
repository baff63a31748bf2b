import { commandList } from '../../src/compose.js';
import { createBrinewright } from '../../src/conversation/brinewright.js';
import { openStore } from '../../src/store/open.js';
import { conversations } from './messages.js';
import { medianPace, type Pace, timeEach } from './rounds.js';

const WARM_UP = 6;
const ROUNDS = 9;

const clock = { now: () => new Date('2027-03-01T19:00:00-05:00') };
const messages = conversations.flatMap((conversation, i) => conversation.map((say) => ({ id: `member ${i}`, say })));

/** Whole replies: every message through the conversation, over a store in memory that begins empty. */
export async function measureReplies(): Promise<{ readonly messages: number; readonly pace: Pace }> {
  const rounds: number[][] = [];
  for (let round = 0; round < WARM_UP + ROUNDS; round += 1) {
    const store = await openStore(':memory:');
    const brinewright = createBrinewright({ store, commands: commandList, keepFile: async (name) => name });
    const times = await timeEach(messages, ({ id, say }) => brinewright.reply({ id }, { say }, clock));
    if (round >= WARM_UP) rounds.push(times);
    await store.close();
  }
  return { messages: messages.length, pace: medianPace(rounds) };
}
