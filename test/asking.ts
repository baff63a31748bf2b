import { execFile, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { Readable } from 'node:stream';
import { promisify } from 'node:util';
import { afterAll, beforeAll } from 'vitest';
import type { Reply } from '../src/core/reply.js';
import { type AskOptions, ask } from '../src/faces/ask.js';
import { startTalk, type Talk } from './conversation.js';

/** A question with everything in it that its answer needs. */
export const HEATER = 'is 300 W enough for 90 gal at 78F in a 66F room';
export const MONDAY = new Date('2027-03-01T19:00:00-05:00');

const OPTIONS: AskOptions = { json: true, member: 'me', catalogue: false, message: '' };

/** Runs the face in this process, over an empty store unless one is given. @returns the lines it printed */
export async function printed(
  lines: readonly string[],
  options: Partial<AskOptions> = {},
  talk?: Talk,
): Promise<string[]> {
  const { brinewright, close } = talk ?? (await startTalk());
  const output: string[] = [];
  await ask(
    { ...OPTIONS, ...options },
    {
      brinewright: async () => brinewright,
      input: Readable.from([lines.map((line) => `${line}\n`).join('')]),
      print: (line) => output.push(line),
      clock: () => MONDAY,
    },
  );
  if (!talk) await close();
  return output;
}

/** The replies to input lines: texts as they stand, objects as JSON. */
export async function replies(...lines: readonly (string | object)[]): Promise<Reply[]> {
  const texts = lines.map((line) => (typeof line === 'string' ? line : JSON.stringify(line)));
  return (await printed(texts)).map((line) => JSON.parse(line));
}

export interface Finished {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

const project = resolve(import.meta.dirname, '..');

/** Builds the program once for a test file, as `npm run build` does. @returns runs it to its end, in a folder of its own */
export function program(): {
  readonly folder: string;
  readonly run: (args: readonly string[], input?: string) => Finished;
} {
  const folder = mkdtempSync(join(tmpdir(), 'brinewright-ask-'));
  const file = join(folder, 'ask.mjs');
  beforeAll(async () => {
    symlinkSync(join(project, 'node_modules'), join(folder, 'node_modules'));
    const bundler = join(project, 'node_modules/rolldown/bin/cli.mjs');
    await promisify(execFile)(process.execPath, [bundler, '--config', 'rolldown.config.ts', '--file', file], {
      cwd: project,
    });
  }, 60_000);
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const { DATABASE: _, ...env } = process.env;
  const run = (args: readonly string[], input = '') => {
    const { status, stdout, stderr } = spawnSync(process.execPath, [file, ...args], {
      cwd: folder,
      env,
      input,
      encoding: 'utf8',
    });
    return { status, stdout, stderr };
  };
  return { folder, run };
}
