import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod/mini';

/** A number with its unit's id as in `data/units.ts`, or the text of a choice, a clock time, a pipe size. */
const value = z.union([z.tuple([z.number(), z.string()]), z.string()]);
const values = z.record(z.string(), value);

const expected = {
  say: z.string(),
  /** The calculation that it asks for; `tank` where it tells something about the tank; `none` where it is neither. */
  topic: z.string(),
  /** What the member said, by input id (by profile key for `tank`): all of it, and nothing else. */
  inputs: z.optional(values),
  /** The input that must be asked for first; left out where an answer is due. */
  asks: z.optional(z.string()),
};
const message = z.object(expected);
/** Turns of one member; a turn is judged as a message is, on what was said so far. */
const conversation = z.object({
  about: z.string(),
  turns: z.array(z.object({ ...expected, topic: z.optional(z.string()) })),
});

export type Message = z.infer<typeof message>;
export type Conversation = z.infer<typeof conversation>;
export type Expected = z.infer<typeof conversation>['turns'][number];
export type Value = z.infer<typeof value>;

/** Labels as the inputs of a structured call. */
export const asCalled = (inputs: Readonly<Record<string, Value>>): Record<string, unknown> =>
  Object.fromEntries(
    Object.entries(inputs).map(([id, value]) => [
      id,
      typeof value === 'string' ? value : { value: value[0], unit: value[1] },
    ]),
  );

/** Found from the project's folder, where npm runs: the compiled program lies elsewhere. */
const folder = 'test/understanding/corpus';

/** FNV-1a, 32 bits: which half a text belongs to does not change when others are added. */
function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (const byte of Buffer.from(text)) hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
  return hash;
}

/** Half of the corpus is never looked at while rules are tuned. */
export const isHeldOut = (text: string): boolean => hashOf(text) % 2 === 1;

function read<T>(isMeant: (name: string) => boolean, schema: { parse: (raw: unknown) => T }): T[] {
  return readdirSync(folder)
    .filter(isMeant)
    .sort()
    .flatMap((name) => {
      const entries = JSON.parse(readFileSync(join(folder, name), 'utf8')) as unknown[];
      return entries.map((entry, i) => {
        try {
          return schema.parse(entry);
        } catch (error) {
          throw new Error(`${name}, entry ${i + 1}: ${String(error)}`);
        }
      });
    });
}

const ending =
  (end: string) =>
  (name: string): boolean =>
    name.endsWith(end);
const isTunedTalk = ending('.tuned.conversations.json');
const isTalk = ending('.conversations.json');

/** What words and rules were chosen by, and so says nothing about how well others are understood. */
export const wordingMessages = (): Message[] => read(ending('.tuned.json'), message);
export const wordingConversations = (): Conversation[] => read(isTunedTalk, conversation);
export const messages = (): Message[] => read(ending('.messages.json'), message);
export const conversations = (): Conversation[] => read((name) => isTalk(name) && !isTunedTalk(name), conversation);
