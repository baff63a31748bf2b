import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { commandList, compose } from './compose.js';
import { type Config, ConfigProblem, readConfig } from './config.js';
import { calculationList } from './conversation/catalogue.js';
import { StoreProblem } from './conversation/ports.js';
import { subcommandNames } from './conversation/slash.js';
import { knownZone } from './core/zone.js';
import { loadEnvFile } from './database-path.js';
import { terminalChat } from './faces/terminal.js';
import { keepIn, keepUntilSent } from './keep-file.js';
import { program } from './program.js';

const HISTORY_FILE = '.brinewright_history';
const HISTORY_KEPT = 500;

async function main(): Promise<void> {
  loadEnvFile();
  const config = readConfig(process.env);
  if (config.discord) process.exitCode = await bot(config, config.discord);
  else await chat(config.database);
}

async function bot(config: Config, discord: NonNullable<Config['discord']>): Promise<number> {
  const [{ runDiscord }, { createLog }, { brinewright, store }] = await Promise.all([
    import('./faces/discord/start.js'),
    import('./log.js'),
    compose(config.database, keepUntilSent),
  ]);
  const log = createLog(config.logLevel);
  const clock = { now: () => new Date() };
  const status = await runDiscord({
    ...discord,
    calculations: calculationList,
    commands: commandList,
    brinewright,
    clock,
    log,
  });
  await store.close();
  return status;
}

async function chat(database: string): Promise<void> {
  const { brinewright, store } = await compose(database, keepIn('.'));
  const { stdin, stdout, env } = process;
  await terminalChat({
    brinewright,
    input: stdin,
    output: stdout,
    clock: { now: () => new Date(), zone: knownZone(Intl.DateTimeFormat().resolvedOptions().timeZone) },
    member: 'me',
    colour: stdout.isTTY === true && env.NO_COLOR === undefined && env.TERM !== 'dumb',
    history: readHistory(),
    keepHistory: (lines) => writeHistory(lines),
    completions: commandList.flatMap((command) => [
      `/${command.name}`,
      ...subcommandNames(command).map((name) => `/${command.name} ${name}`),
    ]),
  });
  await store.close();
}

/** Newest first, as the line editor keeps it. */
function readHistory(): string[] {
  return existsSync(HISTORY_FILE)
    ? readFileSync(HISTORY_FILE, 'utf8').split('\n').filter(Boolean).slice(0, HISTORY_KEPT)
    : [];
}

/** A folder that cannot be written to costs the history, not the chat. */
function writeHistory(lines: readonly string[]): void {
  try {
    writeFileSync(HISTORY_FILE, `${lines.slice(0, HISTORY_KEPT).join('\n')}\n`, { mode: 0o600 });
  } catch {
    process.stderr.write('The history of this chat could not be kept: the folder is read-only.\n');
  }
}

program(main, (error) => error instanceof StoreProblem || error instanceof ConfigProblem);
