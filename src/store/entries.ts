import { randomUUID } from 'node:crypto';
import type { Store } from '../conversation/ports.js';
import type { Queries } from './tables.js';
import { ownTank } from './tanks.js';

type EntryMethods = Pick<Store, 'entries' | 'addEntries' | 'changeEntry' | 'removeEntry'>;

export function entryMethods(db: Queries): EntryMethods {
  return {
    async entries(member, tank, list) {
      return db
        .selectFrom('tank_entry')
        .innerJoin('tank', 'tank.id', 'tank_id')
        .select(['tank_entry.id as id', 'content'])
        .where('member_id', '=', member)
        .where('tank_id', '=', tank)
        .where('list', '=', list)
        .where('replaced_at', 'is', null)
        .orderBy('number')
        .execute();
    },

    addEntries(member, tank, list, contents, at) {
      return db.transaction().execute(async (transaction) => {
        await ownTank(transaction, member, tank);
        const last = await lastNumber(transaction, tank, list);
        const ids = contents.map(() => randomUUID());
        if (ids.length === 0) return ids;
        await transaction
          .insertInto('tank_entry')
          .values(
            contents.map((content, i) => ({
              id: ids[i]!,
              version: 1,
              tank_id: tank,
              list,
              number: last + 1 + i,
              content,
              said_at: at,
              replaced_at: null,
            })),
          )
          .execute();
        return ids;
      });
    },

    changeEntry(member, tank, id, content, at) {
      return db.transaction().execute(async (transaction) => {
        await ownTank(transaction, member, tank);
        const { version, list, number } = await newest(transaction, tank, id);
        await end(transaction, id, at);
        await transaction
          .insertInto('tank_entry')
          .values({
            id,
            version: version + 1,
            tank_id: tank,
            list,
            number,
            content,
            said_at: at,
            replaced_at: null,
          })
          .execute();
      });
    },

    removeEntry(member, tank, id, at) {
      return db.transaction().execute(async (transaction) => {
        await ownTank(transaction, member, tank);
        await newest(transaction, tank, id);
        await end(transaction, id, at);
      });
    },
  };
}

async function lastNumber(db: Queries, tank: string, list: string): Promise<number> {
  const row = await db
    .selectFrom('tank_entry')
    .select(({ fn }) => fn.max('number').as('last'))
    .where('tank_id', '=', tank)
    .where('list', '=', list)
    .executeTakeFirst();
  return row?.last ?? 0;
}

async function newest(db: Queries, tank: string, id: string) {
  const found = await db
    .selectFrom('tank_entry')
    .select(['version', 'list', 'number'])
    .where('id', '=', id)
    .where('tank_id', '=', tank)
    .where('replaced_at', 'is', null)
    .executeTakeFirst();
  if (!found) throw new Error('no such entry');
  return found;
}

async function end(db: Queries, id: string, at: string): Promise<void> {
  await db
    .updateTable('tank_entry')
    .set({ replaced_at: at })
    .where('id', '=', id)
    .where('replaced_at', 'is', null)
    .execute();
}
