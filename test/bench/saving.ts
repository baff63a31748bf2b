import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openFile } from '../../src/store/file.js';
import { openStore } from '../../src/store/open.js';
import { median } from './rounds.js';

const WARM_UP = 1;
const ROUNDS = 7;
const SAVES = 400;
const AT = '2027-03-01T19:00:00.000Z';
const keys = Array.from({ length: 40 }, (_, i) => `display.part${i}`);

type Save = (key: string, si: number) => unknown;

async function aSecond(save: Save): Promise<number> {
  const start = performance.now();
  for (let n = 0; n < SAVES; n += 1) await save(keys[n % keys.length]!, n);
  return (1000 * SAVES) / (performance.now() - start);
}

/** One value of a tank saved in a database file, through the store and with its statements alone; medians a second. */
export async function measureSaving(): Promise<{ readonly store: number; readonly bare: number }> {
  const folder = mkdtempSync(join(tmpdir(), 'brinewright-bench-'));
  const path = join(folder, 'a.db');
  const store = await openStore(path);
  const tank = await store.createTank('ada', 'Reef', AT);
  const bareTank = await store.createTank('bea', 'Reef', AT);
  const bare = bareSaving(path, 'bea', bareTank.id);
  const rates = { store: [] as number[], bare: [] as number[] };
  for (let round = 0; round < WARM_UP + ROUNDS; round += 1) {
    const through = await aSecond((key, si) => store.saveValues('ada', tank.id, { [key]: { si, unit: 'cm' } }, AT));
    const alone = await aSecond(bare.save);
    if (round < WARM_UP) continue;
    rates.store.push(through);
    rates.bare.push(alone);
  }
  bare.close();
  await store.close();
  rmSync(folder, { recursive: true });
  return { store: median(rates.store), bare: median(rates.bare) };
}

/** The statements of the store's `saveValues`, prepared once, on a connection with the same settings. */
function bareSaving(path: string, member: string, tank: string): { save: Save; close: () => void } {
  const sqlite = openFile(path);
  const own = sqlite.prepare('select id from tank where id = ? and member_id = ?');
  const replace = sqlite.prepare(
    'update tank_value set replaced_at = ? where tank_id = ? and key in (?) and replaced_at is null',
  );
  const newest = sqlite.prepare(
    'select key, max(version) as version from tank_value where tank_id = ? and key in (?) group by key',
  );
  const insert = sqlite.prepare(
    'insert into tank_value (tank_id, key, version, si, unit, text, said_at, replaced_at) values (?, ?, ?, ?, ?, ?, ?, ?)',
  );
  const save = sqlite.transaction((key: string, si: number) => {
    own.get(tank, member);
    replace.run(AT, tank, key);
    const [found] = newest.all(tank, key) as { version: number }[];
    insert.run(tank, key, (found?.version ?? 0) + 1, si, 'cm', null, AT, null);
  });
  return { save: save.immediate, close: () => sqlite.close() };
}
