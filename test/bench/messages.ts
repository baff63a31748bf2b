import { readFileSync } from 'node:fs';
import { calculationList } from '../../src/conversation/catalogue.js';

/** What one member says, in order. */
export type Conversation = readonly string[];

const written: readonly Conversation[] = readFileSync('test/bench/messages.txt', 'utf8')
  .trim()
  .split('\n\n')
  .map((conversation) => conversation.split('\n'));

/** Statements, questions, follow-ups and slash commands as members type them, and each calculation's own examples. */
export const conversations: readonly Conversation[] = [...written, ...calculationList.map(({ examples }) => examples)];

const SENTENCES = 300;

/** Free text alone, without its conversation. */
export const sentences: readonly string[] = conversations
  .flat()
  .filter((message) => !message.startsWith('/'))
  .slice(0, SENTENCES);
