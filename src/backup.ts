import { parseArgs } from 'node:util';
import { StoreProblem } from './conversation/ports.js';
import { databasePath } from './database-path.js';
import { BackupRefused, backup } from './store/backup.js';

const USAGE = 'Say where to: npm run backup -- TARGET [--force]';
const USAGE_ERROR = 2;

/** @returns the exit code */
async function main(): Promise<number> {
  const from = databasePath();
  const asked = readArguments();
  if (!asked) {
    console.error(USAGE);
    return USAGE_ERROR;
  }
  try {
    const size = await backup(from, asked.to, { force: asked.force });
    console.log(`Backed up ${from} to ${asked.to}: ${size.toLocaleString('en')} bytes.`);
    return 0;
  } catch (error) {
    if (!(error instanceof BackupRefused || error instanceof StoreProblem)) throw error;
    console.error(error.message);
    return 1;
  }
}

function readArguments(): { to: string; force: boolean } | undefined {
  try {
    const { values, positionals } = parseArgs({ options: { force: { type: 'boolean' } }, allowPositionals: true });
    const [to, ...more] = positionals;
    return to && more.length === 0 ? { to, force: values.force ?? false } : undefined;
  } catch {
    return undefined;
  }
}

process.exitCode = await main();
