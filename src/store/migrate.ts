import type { Database as Sqlite } from 'better-sqlite3';
import type { Kysely } from 'kysely';
import { membersTanksAnswers } from './migrations/0001-members-tanks-answers.js';
import { tankEntries } from './migrations/0002-tank-entries.js';
import { memberTimeZone } from './migrations/0003-time-zone.js';
import type { Queries } from './tables.js';

export type Migration = (db: Kysely<unknown>) => Promise<void>;

/** In order; a released one is never edited, a change of the schema is a new one at the end. */
export const migrations: readonly Migration[] = [membersTanksAnswers, tankEntries, memberTimeZone];

/** Stands in the file's header ("brin" in ASCII), so that the file of another program is never taken for ours. */
export const APPLICATION_ID = 0x6272696e;

/** How many migrations a file has had; SQLite keeps the number in the header, under the same transactions as the rows. */
export function schemaVersion(sqlite: Sqlite): number {
  return sqlite.pragma('user_version', { simple: true }) as number;
}

/**
 * Brings a file up to date. Each migration is one transaction that takes the write lock before it looks at the version,
 * so two processes that open an old file at once run each migration once, and one that fails leaves nothing behind.
 */
export async function migrate(sqlite: Sqlite, db: Queries, steps: readonly Migration[] = migrations): Promise<void> {
  while (schemaVersion(sqlite) < steps.length) {
    await db.transaction().execute(async (transaction) => {
      const version = schemaVersion(sqlite);
      const step = steps[version];
      if (!step) return;
      // A migration knows the tables of its own time, not today's.
      await step(transaction as unknown as Kysely<unknown>);
      sqlite.pragma(`application_id = ${APPLICATION_ID}`);
      sqlite.pragma(`user_version = ${version + 1}`);
    });
  }
}
