import { StoreProblem } from './conversation/ports.js';
import { ask, readArguments, UsageError } from './faces/ask.js';
import { keepIn } from './keep-file.js';

async function main(): Promise<void> {
  const options = readArguments(process.argv.slice(2));
  let close = async () => {};
  await ask(options, {
    input: process.stdin,
    print: (line) => process.stdout.write(`${line}\n`),
    clock: () => new Date(),
    async brinewright() {
      const { compose } = await import('./compose.js');
      const { databasePath } = await import('./database-path.js');
      const composed = await compose(options.data ?? databasePath(), keepIn('.'));
      close = () => composed.store.close();
      return composed.brinewright;
    },
  });
  await close();
}

// A reader that has seen enough (`| head`) closes the pipe: that is no failure.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});

main().catch((error: unknown) => {
  const known = error instanceof UsageError || error instanceof StoreProblem;
  process.stderr.write(`${known ? error.message : error instanceof Error ? error.stack : String(error)}\n`);
  process.exitCode = 1;
});
