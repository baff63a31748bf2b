import type { Kysely } from 'kysely';

/** Rows as they stand in the newest schema. Ids are random texts, instants ISO texts, so that other databases take them too. */
export interface Tables {
  /** `time_zone` is an IANA name. */
  member: { id: string; preferences: string | null; time_zone: string | null };
  tank: {
    id: string;
    member_id: string;
    name: string;
    /** The name as it is compared, see `folded`; a member has each once. */
    name_folded: string;
    is_current: 0 | 1;
    created_at: string;
  };
  /** Every value that was ever said; `version` counts up for each key, and the newest has no `replaced_at`. */
  tank_value: {
    tank_id: string;
    key: string;
    version: number;
    si: number | null;
    unit: string | null;
    text: string | null;
    said_at: string;
    replaced_at: string | null;
  };
  /** Entries of a tank's lists as JSON; versioned like its values. `number` is the order in which they were added. */
  tank_entry: {
    id: string;
    version: number;
    tank_id: string;
    list: string;
    number: number;
    content: string;
    said_at: string;
    replaced_at: string | null;
  };
  dialogue: { member_id: string; place: string; state: string };
  /** `number` counts up for each member: many answers can share one instant. */
  answer: { id: string; member_id: string; number: number; calculation: string; given: string; at: string };
}

export type Queries = Kysely<Tables>;

/** The row that the others belong to is there before any of them. */
export async function introduceMember(db: Queries, id: string): Promise<void> {
  await db
    .insertInto('member')
    .values({ id, preferences: null })
    .onConflict((taken) => taken.column('id').doNothing())
    .execute();
}

/** Rows under the value of one column, both in the order they came in. */
export function grouped<Row, Column extends keyof Row>(rows: readonly Row[], column: Column): Map<Row[Column], Row[]> {
  const groups = new Map<Row[Column], Row[]>();
  for (const row of rows) {
    const group = groups.get(row[column]);
    if (group) group.push(row);
    else groups.set(row[column], [row]);
  }
  return groups;
}
