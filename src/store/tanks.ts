import { randomUUID } from 'node:crypto';
import type { Store, StoredValue, Tank } from '../conversation/ports.js';
import { nameTaken } from './problem.js';
import { grouped, introduceMember, type Queries } from './tables.js';

type TankMethods = Pick<
  Store,
  'tanks' | 'createTank' | 'useTank' | 'renameTank' | 'removeTank' | 'saveValues' | 'removeValue'
>;

/** "Reef", "reef" and a full-width "REEF" are one name to a reader. */
export function folded(name: string): string {
  return name.normalize('NFKC').toLowerCase();
}

export function tankMethods(db: Queries): TankMethods {
  return {
    async tanks(member) {
      const rows = await db
        .selectFrom('tank')
        .leftJoin('tank_value', (join) =>
          join.onRef('tank_value.tank_id', '=', 'tank.id').on('tank_value.replaced_at', 'is', null),
        )
        .select(['tank.id', 'name', 'is_current', 'key', 'si', 'unit', 'text'])
        .where('member_id', '=', member)
        .orderBy('created_at')
        .orderBy('name_folded')
        .orderBy('key')
        .execute();
      return [...grouped(rows, 'id')].map(([id, values]): Tank => {
        const { name, is_current } = values[0]!;
        const said = values.flatMap(({ key, ...value }) => (key === null ? [] : [[key, storedValue(value)] as const]));
        return { id, member, name, current: is_current === 1, values: Object.fromEntries(said) };
      });
    },

    createTank(member, name, at) {
      return db.transaction().execute(async (transaction) => {
        await introduceMember(transaction, member);
        await freeName(transaction, member, name);
        await clearCurrent(transaction, member);
        const id = randomUUID();
        await transaction
          .insertInto('tank')
          .values({ id, member_id: member, name, name_folded: folded(name), is_current: 1, created_at: at })
          .execute();
        return { id, member, name, current: true, values: {} };
      });
    },

    useTank(member, tank) {
      return db.transaction().execute(async (transaction) => {
        await ownTank(transaction, member, tank);
        await clearCurrent(transaction, member);
        await transaction.updateTable('tank').set({ is_current: 1 }).where('id', '=', tank).execute();
      });
    },

    renameTank(member, tank, name) {
      return db.transaction().execute(async (transaction) => {
        await ownTank(transaction, member, tank);
        await freeName(transaction, member, name, tank);
        await transaction
          .updateTable('tank')
          .set({ name, name_folded: folded(name) })
          .where('id', '=', tank)
          .execute();
      });
    },

    removeTank(member, tank) {
      return db.transaction().execute(async (transaction) => {
        await ownTank(transaction, member, tank);
        await transaction.deleteFrom('tank').where('id', '=', tank).execute();
      });
    },

    saveValues(member, tank, values, at) {
      return db.transaction().execute(async (transaction) => {
        await ownTank(transaction, member, tank);
        const keys = Object.keys(values);
        if (keys.length === 0) return;
        await replaceValues(transaction, tank, keys, at);
        const versions = await newestVersions(transaction, tank, keys);
        await transaction
          .insertInto('tank_value')
          .values(
            Object.entries(values).map(([key, { si = null, unit = null, text = null }]) => ({
              tank_id: tank,
              key,
              version: (versions.get(key) ?? 0) + 1,
              si,
              unit,
              text,
              said_at: at,
              replaced_at: null,
            })),
          )
          .execute();
      });
    },

    removeValue(member, tank, key, at) {
      return db.transaction().execute(async (transaction) => {
        await ownTank(transaction, member, tank);
        await replaceValues(transaction, tank, [key], at);
      });
    },
  };
}

export function storedValue(row: { si: number | null; unit: string | null; text: string | null }): StoredValue {
  return {
    ...(row.si !== null && { si: row.si }),
    ...(row.unit !== null && { unit: row.unit }),
    ...(row.text !== null && { text: row.text }),
  };
}

/** @throws Error when the member has no such tank */
export async function ownTank(db: Queries, member: string, tank: string): Promise<void> {
  const found = await db
    .selectFrom('tank')
    .select('id')
    .where('id', '=', tank)
    .where('member_id', '=', member)
    .executeTakeFirst();
  if (!found) throw new Error('no such tank');
}

async function freeName(db: Queries, member: string, name: string, except = ''): Promise<void> {
  const taken = await db
    .selectFrom('tank')
    .select('name')
    .where('member_id', '=', member)
    .where('name_folded', '=', folded(name))
    .where('id', '!=', except)
    .executeTakeFirst();
  if (taken) throw nameTaken(taken.name);
}

async function clearCurrent(db: Queries, member: string): Promise<void> {
  await db.updateTable('tank').set({ is_current: 0 }).where('member_id', '=', member).execute();
}

async function replaceValues(db: Queries, tank: string, keys: readonly string[], at: string): Promise<void> {
  await db
    .updateTable('tank_value')
    .set({ replaced_at: at })
    .where('tank_id', '=', tank)
    .where('key', 'in', keys)
    .where('replaced_at', 'is', null)
    .execute();
}

async function newestVersions(db: Queries, tank: string, keys: readonly string[]): Promise<Map<string, number>> {
  const rows = await db
    .selectFrom('tank_value')
    .select(({ fn }) => ['key', fn.max('version').as('version')])
    .where('tank_id', '=', tank)
    .where('key', 'in', keys)
    .groupBy('key')
    .execute();
  return new Map(rows.map(({ key, version }) => [key, version]));
}
