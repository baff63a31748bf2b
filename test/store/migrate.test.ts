import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, onTestFinished, test } from 'vitest';
import { connect } from '../../src/store/connect.js';
import { openFile } from '../../src/store/file.js';
import { type Migration, migrate, migrations, schemaVersion } from '../../src/store/migrate.js';
import { openStore } from '../../src/store/open.js';
import { folder, MONDAY, store } from './folder.js';

/** A file as the n-th version of the schema left it, with something of a member in it. */
async function fileOfVersion(version: number): Promise<string> {
  const path = join(folder(), 'a.db');
  const sqlite = openFile(path);
  const db = connect(sqlite);
  await migrate(sqlite, db, migrations.slice(0, version));
  sqlite.exec(`insert into member (id, preferences) values ('ada', null)`);
  sqlite.exec(`insert into tank (id, member_id, name, name_folded, is_current, created_at)
    values ('t1', 'ada', 'Reef', 'reef', 1, '${MONDAY}')`);
  sqlite.exec(`insert into tank_value (tank_id, key, version, si, unit, text, said_at, replaced_at)
    values ('t1', 'display.length', 1, 1.2, 'm', null, '${MONDAY}', null)`);
  sqlite.close();
  return path;
}

function open(path = join(folder(), 'a.db')) {
  const sqlite = openFile(path);
  onTestFinished(() => void sqlite.close());
  return { sqlite, db: connect(sqlite) };
}

const schema = (sqlite: ReturnType<typeof openFile>) =>
  sqlite.prepare('select type, name, sql from sqlite_schema order by type, name').all();

const addNotes: Migration = (db) => db.schema.alterTable('tank').addColumn('note', 'text').execute();
const failing: Migration = async (db) => {
  await db.schema.createTable('half').addColumn('id', 'text').execute();
  throw new Error('the second half fails');
};

test.each(migrations.map((_, i) => i + 1))(
  'a file of version %d is brought up to date with all that is in it',
  async (version) => {
    const path = await fileOfVersion(version);
    const opened = await store(path);
    expect(await opened.tanks('ada')).toEqual([
      { id: 't1', member: 'ada', name: 'Reef', current: true, values: { 'display.length': { si: 1.2, unit: 'm' } } },
    ]);
    expect(await opened.createTank('ada', 'Nano', MONDAY)).toMatchObject({ current: true });
  },
);

test('an empty file becomes a database', async () => {
  const path = join(folder(), 'a.db');
  writeFileSync(path, '');
  expect(await (await store(path)).tanks('ada')).toEqual([]);
});

test('migrating again changes nothing', async () => {
  const path = join(folder(), 'a.db');
  const { sqlite, db } = open(path);
  await migrate(sqlite, db);
  const before = schema(sqlite);
  await migrate(sqlite, db);
  await Promise.all([migrate(sqlite, db), migrate(sqlite, db)]);
  expect(schema(sqlite)).toEqual(before);
  expect(schemaVersion(sqlite)).toBe(migrations.length);
});

test('a further migration runs on a file of today and keeps what is in it', async () => {
  const path = await fileOfVersion(migrations.length);
  const { sqlite, db } = open(path);
  await migrate(sqlite, db, [...migrations, addNotes]);
  expect(schemaVersion(sqlite)).toBe(migrations.length + 1);
  expect(sqlite.prepare('select name, note from tank').all()).toEqual([{ name: 'Reef', note: null }]);
  await expect(openStore(path)).rejects.toMatchObject({ code: 'newer' });
});

test('a migration that fails leaves nothing of itself, and those before it stay', async () => {
  const path = await fileOfVersion(migrations.length);
  const { sqlite, db } = open(path);
  await expect(migrate(sqlite, db, [...migrations, addNotes, failing])).rejects.toThrow('the second half fails');
  expect(schemaVersion(sqlite)).toBe(migrations.length + 1);
  expect(JSON.stringify(schema(sqlite))).not.toContain('half');
  await migrate(sqlite, db, [...migrations, addNotes]);
});

test('two connections that find an old file run each migration once', async () => {
  const path = await fileOfVersion(migrations.length);
  const first = open(path);
  const second = open(path);
  const steps = [...migrations, addNotes];
  await Promise.all([migrate(first.sqlite, first.db, steps), migrate(second.sqlite, second.db, steps)]);
  expect(schemaVersion(second.sqlite)).toBe(steps.length);
});

test('the file says whose it is, and deleted bytes are wiped', async () => {
  const path = join(folder(), 'a.db');
  const { sqlite, db } = open(path);
  await migrate(sqlite, db);
  const pragma = (name: string) => sqlite.pragma(name, { simple: true });
  expect([pragma('journal_mode'), pragma('synchronous'), pragma('foreign_keys'), pragma('secure_delete')]).toEqual([
    'wal',
    1,
    1,
    1,
  ]);
  sqlite.close();
  const plain = new Database(path);
  expect(Buffer.of(0x62, 0x72, 0x69, 0x6e).readUInt32BE()).toBe(plain.pragma('application_id', { simple: true }));
  plain.close();
});
