import type { Database as Sqlite } from 'better-sqlite3';
import type { Store } from '../conversation/ports.js';
import { answerMethods } from './answers.js';
import { connect } from './connect.js';
import { entryMethods } from './entries.js';
import { openFile } from './file.js';
import { memberMethods } from './members.js';
import { migrate } from './migrate.js';
import { explained, problemOf } from './problem.js';
import { tankMethods } from './tanks.js';

/**
 * Opens the store in a SQLite file, which is made or brought up to date if need be; `:memory:` keeps nothing.
 * @throws StoreProblem when the file cannot be used, and leaves it as it is
 */
export async function openStore(path: string): Promise<Store> {
  const sqlite = openFile(path);
  try {
    return await storeOn(sqlite);
  } catch (error) {
    sqlite.close();
    throw problemOf(error, `database ${path}`) ?? error;
  }
}

/** The store in an open file. @param tries how often a write waits for other writers, 20 to 30 ms each time */
export async function storeOn(sqlite: Sqlite, tries?: number): Promise<Store> {
  const db = connect(sqlite, tries);
  await migrate(sqlite, db);
  const members = memberMethods(db);
  const store: Store = {
    ...members,
    ...tankMethods(db),
    ...entryMethods(db),
    ...answerMethods(db),
    async forgetMember(member) {
      const rows = await members.forgetMember(member);
      emptyLog(sqlite);
      return rows;
    },
    async close() {
      // Through the queue, so that a transaction under way ends first.
      if (sqlite.open) await db.connection().execute(async () => sqlite.close());
      await db.destroy();
    },
  };
  // Members read these sentences too: where the file lies is for the log, in the cause.
  return explained({ ...store }, 'database');
}

/** The rows are gone from the file by now; what the log still holds of them goes here, or as it is next emptied. */
function emptyLog(sqlite: Sqlite): void {
  try {
    sqlite.pragma('wal_checkpoint(truncate)');
  } catch (error) {
    if (!problemOf(error, '')) throw error;
  }
}
