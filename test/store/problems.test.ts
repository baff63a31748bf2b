import { createHash } from 'node:crypto';
import {
  chmodSync,
  copyFileSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, onTestFinished, test } from 'vitest';
import { openFile } from '../../src/store/file.js';
import { migrations } from '../../src/store/migrate.js';
import { openStore, storeOn } from '../../src/store/open.js';
import { folder, MONDAY, store, TUESDAY } from './folder.js';

const bytes = (path: string) => createHash('sha256').update(readFileSync(path)).digest('hex');
const files = (place: string) => readdirSync(place).map((file) => [file, bytes(join(place, file))]);

/** A closed database with a tank of many values in it. */
async function filled(place: string): Promise<string> {
  const path = join(place, 'a.db');
  const made = await openStore(path);
  const tank = await made.createTank('ada', 'Reef', MONDAY);
  const values = Array.from({ length: 500 }, (_, i) => [`display.part${i}`, { text: 'x'.repeat(100) }]);
  await made.saveValues('ada', tank.id, Object.fromEntries(values), MONDAY);
  await made.close();
  return path;
}

async function refused(path: string, code: string, sentence: string): Promise<void> {
  await expect(openStore(path)).rejects.toMatchObject({ name: 'StoreProblem', code, message: sentence });
}

const damaged = (path: string) =>
  `The database ${path} is damaged or is not a database; it was left as it is, and a backup put in its place would be read.`;
const unwritable = (path: string) =>
  `The database ${path} cannot be written, so nothing in it was changed; its file and folder must be writable for the account that runs this.`;

/** Permission bits bind everybody but root, so root stands aside for a moment. */
async function unprivileged<T>(work: () => Promise<T>): Promise<T> {
  const root = process.geteuid?.() === 0;
  if (root) process.seteuid?.(65534);
  try {
    return await work();
  } finally {
    if (root) process.seteuid?.(0);
  }
}

test('a file of a newer version is refused and keeps every byte', async () => {
  const place = folder();
  const path = await filled(place);
  const sqlite = new Database(path);
  sqlite.pragma(`user_version = ${migrations.length + 2}`);
  sqlite.close();
  const before = files(place);
  await refused(
    path,
    'newer',
    `The database ${path} was written by a newer version of this program (schema ${migrations.length + 2}, this one knows ${migrations.length}); it was left as it is, and the newer version can open it.`,
  );
  expect(files(place)).toEqual(before);
});

test('so is one whose newer version was cut off and stands in the log only', async () => {
  const from = folder();
  const path = await filled(from);
  const sqlite = new Database(path);
  sqlite.pragma(`user_version = ${migrations.length + 1}`);
  const place = folder();
  const copy = join(place, 'a.db');
  copyFileSync(path, copy);
  copyFileSync(`${path}-wal`, `${copy}-wal`);
  sqlite.close();
  const before = files(place);
  await expect(openStore(copy)).rejects.toMatchObject({ code: 'newer' });
  expect(files(place).filter(([file]) => file !== 'a.db-shm')).toEqual(before);
});

test('the database of another program is refused and keeps every byte', async () => {
  const place = folder();
  const path = join(place, 'other.db');
  const sqlite = new Database(path);
  sqlite.exec('create table member (id integer)');
  sqlite.close();
  const before = files(place);
  await refused(
    path,
    'corrupt',
    `The database ${path} is the database of another program; it was left as it is, and DATABASE should name a file of its own.`,
  );
  expect(files(place)).toEqual(before);
});

test.each([
  ['a text', (path: string) => writeFileSync(path, 'length 48 in, width 18 in\n'.repeat(400))],
  ['two letters', (path: string) => writeFileSync(path, 'hi')],
  ['a database cut short', (path: string) => truncateSync(path, statSync(path).size - 5000)],
  ['a database with a damaged list of tables', (path: string) => overwrite(path, 120, 3000)],
])('%s is refused as damaged and keeps every byte', async (_, damage) => {
  const place = folder();
  const path = await filled(place);
  damage(path);
  const before = files(place);
  await refused(path, 'corrupt', damaged(path));
  expect(files(place)).toEqual(before);
});

function overwrite(path: string, from: number, to: number): void {
  writeFileSync(path, readFileSync(path).fill(0xa5, from, to));
}

test('damage that only shows on reading is told by the call that meets it', async () => {
  const place = folder();
  const path = await filled(place);
  overwrite(path, 4096, statSync(path).size);
  const before = bytes(path);
  const opened = await openStore(path);
  await expect(opened.tanks('ada')).rejects.toMatchObject({
    code: 'corrupt',
    message:
      'The database is damaged or is not a database; it was left as it is, and a backup put in its place would be read.',
  });
  await expect(opened.createTank('ada', 'Nano', TUESDAY)).rejects.toMatchObject({ code: 'corrupt' });
  await opened.close();
  expect(bytes(path)).toBe(before);
});

test.each([
  ['a file that is write-protected', 0o444, 0o777],
  ['a file in a folder that is write-protected', 0o666, 0o555],
  ['a file that cannot be read', 0o000, 0o777],
  ['a file behind a folder that cannot be entered', 0o666, 0o444],
])('%s is refused as read-only', async (_, file, place) => {
  const outer = folder();
  chmodSync(outer, 0o755);
  const inner = join(outer, 'inner');
  mkdirSync(inner);
  const path = await filled(inner);
  const before = bytes(path);
  chmodSync(path, file);
  chmodSync(inner, place);
  await unprivileged(() => refused(path, 'read-only', unwritable(path)));
  chmodSync(inner, 0o755);
  chmodSync(path, 0o644);
  expect(bytes(path)).toBe(before);
  await expect((await store(path)).tanks('ada')).resolves.toHaveLength(1);
});

test('a new file in a folder that is write-protected is refused as read-only', async () => {
  const place = folder();
  chmodSync(place, 0o555);
  const path = join(place, 'a.db');
  await unprivileged(() => refused(path, 'read-only', unwritable(path)));
});

test('a store that turns read-only says so and still reads', async () => {
  const path = await filled(folder());
  const sqlite = openFile(path);
  const opened = await storeOn(sqlite);
  onTestFinished(() => opened.close());
  sqlite.pragma('query_only = on');
  await expect(opened.createTank('ada', 'Nano', TUESDAY)).rejects.toMatchObject({
    code: 'read-only',
    message:
      'The database cannot be written, so nothing in it was changed; its file and folder must be writable for the account that runs this.',
  });
  await expect(opened.tanks('ada')).resolves.toHaveLength(1);
});

test('a missing folder is made', async () => {
  const path = join(folder(), 'not', 'yet', 'a.db');
  const made = await store(path);
  await made.createTank('ada', 'Reef', MONDAY);
  expect(statSync(path).isFile()).toBe(true);
});

test('a folder that cannot be made is refused', async () => {
  const place = folder();
  writeFileSync(join(place, 'file'), '');
  const path = join(place, 'file', 'a.db');
  await refused(
    path,
    'no-folder',
    `The folder ${join(place, 'file')} does not exist and could not be made; nothing was changed, and DATABASE should name a file in a folder that can be written.`,
  );
});

test.each(['a folder', 'no path at all'])('%s is refused as a database', async (kind) => {
  const path = kind === 'a folder' ? folder() : ' ';
  await refused(
    path,
    'no-folder',
    `The database ${path} is a folder; nothing in it was changed, and DATABASE should name a file in it.`,
  );
});

test('a write that finds another writer for too long fails as locked, and works afterwards', async () => {
  const path = await filled(folder());
  const other = new Database(path);
  onTestFinished(() => void other.close());
  other.exec('begin immediate');
  const opened = await storeOn(openFile(path), 3);
  onTestFinished(() => opened.close());
  await expect(opened.createTank('ada', 'Nano', TUESDAY)).rejects.toMatchObject({
    code: 'locked',
    message:
      'Another process kept the database busy, so this was not done; nothing was changed, and a second try in a moment should work.',
  });
  await expect(opened.tanks('ada')).resolves.toHaveLength(1);
  const waiting = opened.createTank('ada', 'Nano', TUESDAY);
  other.exec('rollback');
  await expect(waiting).resolves.toMatchObject({ name: 'Nano' });
});

test('a new file that another process holds is refused as locked once the wait is over', async () => {
  const path = join(folder(), 'a.db');
  const other = new Database(path);
  onTestFinished(() => void other.close());
  other.exec('begin exclusive');
  await expect(openStore(path)).rejects.toMatchObject({ code: 'locked' });
  other.exec('rollback');
  await expect((await store(path)).tanks('ada')).resolves.toEqual([]);
});

test('a mistake in the program is no problem of the store', async () => {
  const opened = await store();
  const nothing = undefined as unknown as string;
  await expect(opened.createTank('ada', 'Reef', nothing)).rejects.toMatchObject({ code: 'SQLITE_CONSTRAINT_NOTNULL' });
});
