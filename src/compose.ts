import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { commands } from '../commands/index.js';
import { createBrinewright } from './conversation/brinewright.js';
import type { Command } from './conversation/command.js';
import type { Brinewright, Store } from './conversation/ports.js';
import { openStore } from './store/open.js';

export const commandList: readonly Command[] = commands;

export interface Composed {
  readonly brinewright: Brinewright;
  readonly store: Store;
}

/**
 * Builds the conversation over a database.
 * @param database path of the SQLite file, or `:memory:`
 * @param exports folder into which members' files are written
 */
export async function compose(database: string, exports: string): Promise<Composed> {
  const store = await openStore(database);
  const keepFile = async (name: string, content: string): Promise<string> => {
    mkdirSync(exports, { recursive: true });
    const path = join(exports, name);
    writeFileSync(path, content);
    return path;
  };
  return { brinewright: createBrinewright({ store, commands: commandList, keepFile }), store };
}
