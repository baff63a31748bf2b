import { setTimeout as pause } from 'node:timers/promises';
import type { Database as Sqlite, Statement } from 'better-sqlite3';
import { CompiledQuery, Kysely, type SqliteDatabase, SqliteDialect } from 'kysely';
import { isBusy } from './file.js';
import type { Queries, Tables } from './tables.js';

const PAUSE_MS = 20;
const TRIES = 100;
/** The store has some thirty queries; only the number of values in one varies. */
const MOST_PREPARED = 200;

/** Typed queries over an open file. A transaction waits for other writers, about `tries` times 20 to 30 ms, then fails as busy. */
export function connect(sqlite: Sqlite, tries: number = TRIES): Queries {
  const dialect = new SqliteDialect({ database: preparingOnce(sqlite) });
  const driver = dialect.createDriver();
  // The write lock is taken first: a transaction that read before it may find its snapshot outdated, and waiting won't help it.
  // The wait leaves the thread free, for a writer in this same process too.
  driver.beginTransaction = async (connection) => {
    for (let left = tries; ; left--) {
      try {
        await connection.executeQuery(CompiledQuery.raw('begin immediate'));
        return;
      } catch (error) {
        if (left <= 1 || !isBusy(error)) throw error;
      }
      await pause(PAUSE_MS);
    }
  };
  // A full disk can make SQLite roll back by itself; a second rollback would fail and hide the cause.
  driver.rollbackTransaction = async (connection) => {
    if (sqlite.inTransaction) await connection.executeQuery(CompiledQuery.raw('rollback'));
  };
  dialect.createDriver = () => driver;
  return new Kysely<Tables>({ dialect });
}

/** The driver prepares a query every time it runs, which takes longer than running it; every message brings the same few. */
function preparingOnce(sqlite: Sqlite): SqliteDatabase {
  const statements = new Map<string, Statement<unknown[]>>();
  return {
    prepare(sql) {
      const known = statements.get(sql);
      if (known) return known;
      if (statements.size >= MOST_PREPARED) statements.clear();
      const statement = sqlite.prepare<unknown[]>(sql);
      statements.set(sql, statement);
      return statement;
    },
    close: () => sqlite.close(),
  };
}
