import { StoreProblem } from './conversation/ports.js';
import { ask, readArguments, UsageError } from './faces/ask.js';
import { keepIn } from './keep-file.js';
import { program } from './program.js';

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

program(main, (error) => error instanceof UsageError || error instanceof StoreProblem);
