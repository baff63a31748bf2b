import { createInterface } from 'node:readline';
import type { Readable } from 'node:stream';
import { z } from 'zod/mini';
import { catalogue } from '../conversation/catalogue.js';
import type { Brinewright, Clock, Message, Speaker } from '../conversation/ports.js';
import { makeReply } from '../conversation/replies.js';
import type { Reply } from '../core/reply.js';
import { explanationLines, HOW_I_READ } from '../render/explanation.js';
import { withFiles } from '../render/text.js';

/** What the command line asked for. */
export interface AskOptions {
  readonly json: boolean;
  readonly member: string;
  readonly data?: string;
  readonly catalogue: boolean;
  /** Also say how each message was read. */
  readonly explain?: boolean;
  readonly message: string;
}

export class UsageError extends Error {
  override readonly name = 'UsageError';
}

const USAGE = 'ask [--json] [--member ID] [--data FILE] [--catalogue] [--explain] [MESSAGE...]';

/** @throws UsageError for an option that does not exist or lacks its value */
export function readArguments(args: readonly string[]): AskOptions {
  const rest = [...args];
  const words: string[] = [];
  const options: { json: boolean; member: string; data?: string; catalogue: boolean; explain?: boolean } = {
    json: false,
    member: 'me',
    catalogue: false,
  };
  const following = (name: string): string => {
    const value = rest.shift();
    if (value === undefined) throw new UsageError(`The option ${name} needs a value: ${USAGE}`);
    return value;
  };
  for (let word = rest.shift(); word !== undefined; word = rest.shift()) {
    if (words.length > 0) words.push(word);
    else if (word === '--json') options.json = true;
    else if (word === '--catalogue') options.catalogue = true;
    else if (word === '--explain') options.explain = true;
    else if (word === '--member') options.member = following(word);
    else if (word === '--data') options.data = following(word);
    else if (word === '--') words.push(...rest.splice(0));
    else if (word.startsWith('--')) throw new UsageError(`There is no option ${word}: ${USAGE}`);
    else words.push(word);
  }
  return { ...options, message: words.join(' ') };
}

const text = z.optional(z.string('must be a text in quotes'));
const lineSchema = z.object({
  member: text,
  club: text,
  channel: text,
  at: text,
  explain: z.optional(z.boolean('must be true or false')),
  say: text,
  calculation: text,
  inputs: z.optional(z.record(z.string(), z.unknown(), 'must be an object, {"input": value}')),
});

interface Line {
  readonly speaker: Speaker;
  readonly message: Message;
  readonly at?: Date;
}

/** One input line: an object that says who, when and where, or the message itself. @returns a sentence when it is neither */
export function readLine(line: string, member: string): Line | string {
  if (!line.trimStart().startsWith('{')) return { speaker: { id: member }, message: { say: line } };
  let parsed: unknown;
  try {
    parsed = JSON.parse(line);
  } catch {
    return 'This line begins like JSON but cannot be read as JSON: check its quotes and brackets. The next line is served.';
  }
  const read = lineSchema.safeParse(parsed);
  if (!read.success) {
    const [issue] = read.error.issues;
    return `This line’s ${issue!.path.join('.')} ${issue!.message}.`;
  }
  const { member: who = member, club, channel, at, explain, say, calculation, inputs } = read.data;
  const when = at === undefined ? undefined : new Date(at);
  if (when && Number.isNaN(when.getTime())) return `“${at}” is no time: 2027-03-01T19:00:00-05:00 would be right.`;
  const message: Message | undefined =
    calculation !== undefined
      ? { calculation, inputs: inputs ?? {} }
      : say !== undefined
        ? { say, ...(explain ? { explain } : {}) }
        : undefined;
  if (!message) return 'This line says nothing: give “say”, or “calculation” with “inputs”.';
  return {
    speaker: { id: who, ...(club === undefined ? {} : { club }), ...(channel === undefined ? {} : { channel }) },
    message,
    ...(when ? { at: when } : {}),
  };
}

/** A clock that follows the machine's until a line sets it; from then on lines move it forward, never back. */
export function movableClock(start: () => Date): Clock & { moveTo: (at: Date) => void } {
  let moved: Date | undefined;
  return {
    now: () => moved ?? start(),
    moveTo(at) {
      if (moved === undefined || at > moved) moved = at;
    },
  };
}

export interface AskWorld {
  readonly brinewright: () => Promise<Brinewright>;
  readonly input: Readable;
  readonly print: (line: string) => void;
  readonly clock: () => Date;
}

/** The scriptable face: one message from the command line, or one a line from standard input. */
export async function ask(options: AskOptions, world: AskWorld): Promise<void> {
  if (options.catalogue) {
    world.print(JSON.stringify(catalogue()));
    return;
  }
  const brinewright = await world.brinewright();
  const clock = movableClock(world.clock);
  const show = (replies: readonly Reply[], line?: number) => {
    for (const reply of replies)
      world.print(options.json ? JSON.stringify(line === undefined ? reply : { line, ...reply }) : withFiles(reply));
    const read = replies[0]?.read;
    if (read && !options.json) world.print(`\n${HOW_I_READ}\n${explanationLines(read)}`);
  };
  const asked = (message: Message): Message =>
    'say' in message && options.explain ? { ...message, explain: true } : message;
  if (options.message !== '') {
    show(await brinewright.reply({ id: options.member }, asked({ say: options.message }), clock));
    return;
  }
  let number = 0;
  for await (const line of createInterface({ input: world.input, crlfDelay: Number.POSITIVE_INFINITY })) {
    number += 1;
    if (line.trim() === '') continue;
    const read = readLine(line, options.member);
    if (typeof read === 'string') {
      show([makeReply({ id: options.member }, 'error', read)], number);
      continue;
    }
    if (read.at) clock.moveTo(read.at);
    show(await brinewright.reply(read.speaker, asked(read.message), clock), number);
  }
}
