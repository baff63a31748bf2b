import { commands } from '../commands/index.js';
import { createBrinewright } from './conversation/brinewright.js';
import type { Command } from './conversation/command.js';
import type { Brinewright, Store } from './conversation/ports.js';
import type { KeepFile } from './keep-file.js';
import { openStore } from './store/open.js';

export const commandList: readonly Command[] = commands;

export interface Composed {
  readonly brinewright: Brinewright;
  readonly store: Store;
}

/**
 * Builds the conversation over a database.
 * @param database path of the SQLite file, or `:memory:`
 * @throws StoreProblem when the database cannot be used
 */
export async function compose(database: string, keepFile: KeepFile): Promise<Composed> {
  const store = await openStore(database);
  return { brinewright: createBrinewright({ store, commands: commandList, keepFile }), store };
}
