import type { Store } from '../conversation/ports.js';
import type { Preferences } from '../core/show-value.js';
import { grouped, type Queries, type Tables } from './tables.js';
import { storedValue } from './tanks.js';

type MemberMethods = Pick<
  Store,
  'preferences' | 'savePreferences' | 'timeZone' | 'saveTimeZone' | 'exportMember' | 'forgetMember'
>;

export function memberMethods(db: Queries): MemberMethods {
  const preferences = async (from: Queries, member: string): Promise<Preferences | undefined> => {
    const row = await from.selectFrom('member').select('preferences').where('id', '=', member).executeTakeFirst();
    return row?.preferences ? (JSON.parse(row.preferences) as Preferences) : undefined;
  };

  const timeZone = async (from: Queries, member: string): Promise<string | undefined> => {
    const row = await from.selectFrom('member').select('time_zone').where('id', '=', member).executeTakeFirst();
    return row?.time_zone ?? undefined;
  };

  const save = (member: string, columns: Partial<Omit<Tables['member'], 'id'>>): Promise<void> =>
    db.transaction().execute(async (transaction) => {
      await transaction
        .insertInto('member')
        .values({ id: member, preferences: null, ...columns })
        .onConflict((known) => known.column('id').doUpdateSet(columns))
        .execute();
    });

  return {
    preferences: (member) => preferences(db, member),
    savePreferences: (member, chosen) => save(member, { preferences: JSON.stringify(chosen) }),

    timeZone: (member) => timeZone(db, member),
    saveTimeZone: (member, zone) => save(member, { time_zone: zone }),

    exportMember(member) {
      // One transaction, so that the parts are of one moment.
      return db.transaction().execute(async (transaction) => ({
        member,
        preferences: (await preferences(transaction, member)) ?? null,
        time_zone: (await timeZone(transaction, member)) ?? null,
        tanks: await tanksWithHistory(transaction, member),
        dialogues: await dialogues(transaction, member),
        answers: await answers(transaction, member),
      }));
    },

    forgetMember(member) {
      return db.transaction().execute(async (transaction) => {
        const ids = transaction.selectFrom('tank').select('id').where('member_id', '=', member);
        const deleted = [
          await transaction.deleteFrom('tank_entry').where('tank_id', 'in', ids).executeTakeFirst(),
          await transaction.deleteFrom('tank_value').where('tank_id', 'in', ids).executeTakeFirst(),
          await transaction.deleteFrom('tank').where('member_id', '=', member).executeTakeFirst(),
          await transaction.deleteFrom('dialogue').where('member_id', '=', member).executeTakeFirst(),
          await transaction.deleteFrom('answer').where('member_id', '=', member).executeTakeFirst(),
          await transaction.deleteFrom('member').where('id', '=', member).executeTakeFirst(),
        ];
        return deleted.reduce((rows, { numDeletedRows }) => rows + Number(numDeletedRows), 0);
      });
    },
  };
}

async function tanksWithHistory(db: Queries, member: string) {
  const tanks = await db
    .selectFrom('tank')
    .selectAll()
    .where('member_id', '=', member)
    .orderBy('created_at')
    .orderBy('name_folded')
    .execute();
  const values = await db
    .selectFrom('tank_value')
    .innerJoin('tank', 'tank.id', 'tank_id')
    .selectAll('tank_value')
    .where('member_id', '=', member)
    .orderBy('key')
    .orderBy('version')
    .execute();
  const entries = await db
    .selectFrom('tank_entry')
    .innerJoin('tank', 'tank.id', 'tank_id')
    .selectAll('tank_entry')
    .where('member_id', '=', member)
    .orderBy('list')
    .orderBy('number')
    .orderBy('version')
    .execute();
  const histories = grouped(values, 'tank_id');
  const listed = grouped(entries, 'tank_id');
  return tanks.map(({ id, name, is_current, created_at }) => {
    const history = grouped(histories.get(id) ?? [], 'key');
    const said = [...history].map(([key, versions]) => [
      key,
      versions.map(({ said_at, replaced_at, ...value }) => ({ ...storedValue(value), said_at, replaced_at })),
    ]);
    const lists = [...grouped(listed.get(id) ?? [], 'list')].map(([list, rows]) => [
      list,
      rows.map(({ id: entry, content, said_at, replaced_at }) => ({
        id: entry,
        ...(readable(content) as object),
        said_at,
        replaced_at,
      })),
    ]);
    return {
      id,
      name,
      current: is_current === 1,
      created_at,
      values: Object.fromEntries(said),
      lists: Object.fromEntries(lists),
    };
  });
}

async function dialogues(db: Queries, member: string) {
  const rows = await db
    .selectFrom('dialogue')
    .select(['place', 'state'])
    .where('member_id', '=', member)
    .orderBy('place')
    .execute();
  return rows.map(({ place, state }) => ({ place, state: readable(state) }));
}

async function answers(db: Queries, member: string) {
  const rows = await db
    .selectFrom('answer')
    .select(['id', 'calculation', 'given', 'at'])
    .where('member_id', '=', member)
    .orderBy('number')
    .execute();
  return rows.map((row) => ({ ...row, given: readable(row.given) }));
}

/** Stored JSON as what it stands for; an export must not fail over a text that is none. */
function readable(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}
