import { existsSync, renameSync, rmSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import { isOurs, openToLook } from './file.js';
import { foreign, problemOf } from './problem.js';

/** A request for a backup that cannot be met, in a sentence for whoever made it. */
export class BackupRefused extends Error {
  override readonly name = 'BackupRefused';
}

const ALL_PAGES = 0x7fffffff;

/**
 * Copies a database, which others may be writing meanwhile, to one file that holds a single moment of it. The copy is
 * made and checked beside the target and takes its name last, so there is never half a backup, and `force` gives up an
 * older one only for a whole one. @returns its size in bytes  @throws BackupRefused, StoreProblem
 */
export async function backup(from: string, to: string, { force = false } = {}): Promise<number> {
  checkPlaces(from, to, force);
  const part = `${to}.part`;
  try {
    rmSync(part, { force: true });
    await copy(from, part);
    settle(part, from);
    renameSync(part, to);
  } catch (error) {
    throw problemOf(error, `database ${from} or its backup`) ?? error;
  } finally {
    rmSync(part, { force: true });
  }
  return statSync(to).size;
}

function checkPlaces(from: string, to: string, force: boolean): void {
  const source = statSync(from, { throwIfNoEntry: false });
  const target = statSync(to, { throwIfNoEntry: false });
  if (!source?.isFile()) {
    throw new BackupRefused(`There is no database ${from}; DATABASE should name the one to back up.`);
  }
  if (!existsSync(dirname(to))) {
    throw new BackupRefused(`There is no folder ${dirname(to)} for the backup; make it first.`);
  }
  if (target && !target.isFile()) {
    throw new BackupRefused(`${to} is no file and was left as it is; name a file for the backup.`);
  }
  if (target && target.ino === source.ino && target.dev === source.dev) {
    throw new BackupRefused(`${to} is the database itself and was left as it is; name another file for the backup.`);
  }
  if (target && !force) {
    throw new BackupRefused(`${to} exists and was left as it is; name another file, or add --force to replace it.`);
  }
}

async function copy(from: string, part: string): Promise<void> {
  const source = openToLook(from);
  try {
    if (!isOurs(source)) throw foreign(`database ${from}`);
    // In one step: between steps another process may write, and the copy would start afresh each time.
    await source.backup(part, { progress: () => ALL_PAGES });
  } finally {
    source.close();
  }
}

/** Makes the copy a file that stands alone, without a log, and reads all of it once. */
function settle(part: string, from: string): void {
  const copied = new Database(part);
  try {
    copied.pragma('journal_mode = delete');
    const found = copied.pragma('quick_check', { simple: true });
    if (found === 'ok') return;
    const sentence = `A copy of the database ${from} does not read back whole, so it was not kept; the database is probably damaged, and earlier backups were left as they are.`;
    throw new BackupRefused(sentence, { cause: found });
  } finally {
    copied.close();
  }
}
