import { accessSync, constants, existsSync, mkdirSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import Database, { type Database as Sqlite } from 'better-sqlite3';
import { APPLICATION_ID, migrations, schemaVersion } from './migrate.js';
import { foreign, newer, noFile, noFolder, problemOf } from './problem.js';

const MEMORY = ':memory:';

/** Opening may wait for another process that recovers the log after a crash; this blocks, and there is nothing else to do. */
const OPENING_WAIT_MS = 2000;
/** Once open, waiting is done without blocking the thread (see `connect`); SQLite itself waits this long. */
const BUSY_TIMEOUT_MS = 10;

/**
 * Opens the file of a database, making it and its folder if need be, and checks that it is ours, whole as far as its
 * header and schema show, not newer than this program, and writable. @throws StoreProblem and leaves a refused file as it is
 */
export function openFile(path: string): Sqlite {
  const name = `database ${path}`;
  let sqlite: Sqlite | undefined;
  try {
    if (path !== MEMORY) prepare(path, name);
    sqlite = new Database(path, { timeout: OPENING_WAIT_MS });
    sqlite.pragma('journal_mode = wal');
    sqlite.pragma('synchronous = normal');
    sqlite.pragma('foreign_keys = on');
    sqlite.pragma('secure_delete = on');
    sqlite.pragma(`busy_timeout = ${BUSY_TIMEOUT_MS}`);
    tryWriting(sqlite);
    return sqlite;
  } catch (error) {
    sqlite?.close();
    throw problemOf(error, name) ?? error;
  }
}

function prepare(path: string, name: string): void {
  const folder = dirname(path);
  try {
    mkdirSync(folder, { recursive: true });
  } catch (error) {
    throw noFolder(folder, error);
  }
  const found = statSync(path.trim() || folder, { throwIfNoEntry: false });
  // A blank path too: better-sqlite3 would open a temporary database for it, and keep nothing.
  if (found?.isDirectory()) throw noFile(name);
  if (!found) return;
  // SQLite would leave a log of the wrong owner beside a file that it may not write.
  accessSync(path, constants.W_OK);
  inspect(path, name);
}

function inspect(path: string, name: string): void {
  const sqlite = openToLook(path);
  try {
    const found = schemaVersion(sqlite);
    const tables = sqlite.prepare('select count(*) from sqlite_schema').pluck().get() as number;
    if (!isOurs(sqlite) && (found > 0 || tables > 0)) throw foreign(name);
    if (found > migrations.length) throw newer(name, found, migrations.length);
  } finally {
    sqlite.close();
  }
}

/**
 * Opens an existing file so that looking at it changes no byte and leaves no file behind: with a log beside it, a
 * connection that may write would move the log into the file as it closes; without one, a read-only connection would
 * leave an empty log.
 */
export function openToLook(path: string): Sqlite {
  return new Database(path, { readonly: existsSync(`${path}-wal`), fileMustExist: true, timeout: OPENING_WAIT_MS });
}

export function isOurs(sqlite: Sqlite): boolean {
  return sqlite.pragma('application_id', { simple: true }) === APPLICATION_ID;
}

/** SQLite opens a write-protected file without a word, and even begins a transaction on it; only a write tells. */
function tryWriting(sqlite: Sqlite): void {
  try {
    sqlite.exec('begin immediate');
  } catch (error) {
    // Somebody else is writing just now, so it can be written.
    if (isBusy(error)) return;
    throw error;
  }
  try {
    sqlite.pragma(`user_version = ${schemaVersion(sqlite)}`);
  } finally {
    if (sqlite.inTransaction) sqlite.exec('rollback');
  }
}

export function isBusy(error: unknown): boolean {
  return error instanceof Error && 'code' in error && String(error.code).startsWith('SQLITE_BUSY');
}
