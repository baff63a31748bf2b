import { spawnSync } from 'node:child_process';

/** What is measured in a process of its own, so that no contender meets what another left in memory. */
export const parts = {
  replies: async () => (await import('./replies.js')).measureReplies(),
  understanding: async () => (await import('./understanding.js')).measureUnderstanding(),
  recognizers: async () => (await import('./recognizers.js')).measureRecognizers(),
  saving: async () => (await import('./saving.js')).measureSaving(),
};

type Parts = typeof parts;

export function measured<Part extends keyof Parts>(part: Part): Awaited<ReturnType<Parts[Part]>> {
  return JSON.parse(runNode(['dist/test/bench/part.js', part]));
}

/** @returns what it printed */
export function runNode(args: readonly string[]): string {
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status}: ${stderr}`);
  return stdout;
}
