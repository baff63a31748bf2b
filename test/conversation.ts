import { commandList } from '../src/compose.js';
import { createBrinewright } from '../src/conversation/brinewright.js';
import type { Brinewright, Message, Speaker, Store } from '../src/conversation/ports.js';
import type { Reply } from '../src/core/reply.js';
import { openStore } from '../src/store/open.js';
import { recheckSteps } from './independent-evaluator.js';

/** A conversation at the contract: text in, replies out, over a real database in memory and a clock that the test sets. */
export interface Talk {
  readonly brinewright: Brinewright;
  readonly store: Store;
  /** Files that were handed out, by name. */
  readonly files: Map<string, string>;
  readonly says: (text: string, speaker?: Partial<Speaker>) => Promise<Reply>;
  readonly all: (text: string, speaker?: Partial<Speaker>) => Promise<Reply[]>;
  readonly sends: (message: Message, speaker?: Partial<Speaker>) => Promise<Reply[]>;
  readonly close: () => Promise<void>;
}

export async function startTalk(database = ':memory:'): Promise<Talk> {
  const store = await openStore(database);
  const files = new Map<string, string>();
  const keepFile = async (name: string, content: string) => {
    files.set(name, content);
    return name;
  };
  const brinewright = createBrinewright({ store, commands: commandList, keepFile });
  const clock = { now: () => new Date('2027-03-01T19:00:00-05:00') };
  const sends = async (message: Message, speaker: Partial<Speaker> = {}) => {
    const replies = await brinewright.reply({ id: 'ada', ...speaker }, message, clock);
    for (const reply of replies) recheckSteps(reply);
    return replies;
  };
  const all = (text: string, speaker?: Partial<Speaker>) => sends({ say: text }, speaker);
  const says = async (text: string, speaker?: Partial<Speaker>) => (await all(text, speaker))[0]!;
  return { brinewright, store, files, says, all, sends, close: () => store.close() };
}

/** Inputs of a reply by id, in SI or as text. */
export const inputsOf = (reply: Reply): Record<string, number | string> =>
  Object.fromEntries(reply.inputs.map(({ id, si, value }) => [id, si ?? value]));

export const resultOf = (reply: Reply, id: string): number => {
  const si = reply.results.find((result) => result.id === id)?.si;
  if (typeof si !== 'number') throw new Error(`${reply.calculation} has no number ${id}: ${reply.text}`);
  return si;
};

export const fromOf = (reply: Reply, id: string): string | undefined =>
  reply.inputs.find((input) => input.id === id)?.from;
