import type { Kysely } from 'kysely';

/** The zone in which a member counts days. */
export const memberTimeZone = (db: Kysely<unknown>): Promise<void> =>
  db.schema.alterTable('member').addColumn('time_zone', 'text').execute();
