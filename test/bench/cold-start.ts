import { runNode } from './parts.js';
import { median } from './rounds.js';

const ROUNDS = 15;
const SHARE_ROUNDS = 5;

const ASK = ['dist/ask.js', '--data', ':memory:', 'is 300 W enough for 90 gal at 78F in a 66F room'];
const IMPORT = ['--input-type=module', '--eval', "import 'discord.js'"];

function seconds(args: readonly string[]): number {
  const start = performance.now();
  runNode(args);
  return (performance.now() - start) / 1000;
}

/** From nothing to the printed answer, and a process that does no more than import discord.js; turn by turn, medians [s]. */
export function measureColdStart(): { readonly ask: number; readonly discord: number } {
  const ask: number[] = [];
  const discord: number[] = [];
  // The first start of each fills the file cache.
  for (let round = 0; round <= ROUNDS; round += 1) {
    const [own, other] = [seconds(ASK), seconds(IMPORT)];
    if (round === 0) continue;
    ask.push(own);
    discord.push(other);
  }
  return { ask: median(ask), discord: median(discord) };
}

const PARTS = [
  ['zod', "await import('zod/mini')"],
  ['kysely', "await import('kysely')"],
  ['better-sqlite3, opened', "new (await import('better-sqlite3')).default(':memory:')"],
  ['our code', "await import('./dist/src/compose.js')"],
] as const;

/** Milliseconds that each part takes to load from its own files, as before they are put into one; medians. */
export function loadingShares(): readonly (readonly [part: string, ms: number])[] {
  const lines = ['console.log(performance.now());', 'let start;'];
  for (const [, load] of PARTS)
    lines.push(`start = performance.now(); ${load}; console.log(performance.now() - start);`);
  const runs = Array.from({ length: SHARE_ROUNDS }, () =>
    runNode(['--input-type=module', '--eval', lines.join('\n')])
      .trim()
      .split('\n')
      .map(Number),
  );
  return ['Node.js itself', ...PARTS.map(([part]) => part)].map((part, i) => [
    part,
    median(runs.map((run) => run[i]!)),
  ]);
}
