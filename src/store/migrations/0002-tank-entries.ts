import { type Kysely, sql } from 'kysely';

/** Lists that a tank keeps: what is bought for it, the steps of its build. */
export async function tankEntries(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('tank_entry')
    .addColumn('id', 'text', (column) => column.notNull())
    .addColumn('version', 'integer', (column) => column.notNull())
    .addColumn('tank_id', 'text', (column) => column.notNull().references('tank.id').onDelete('cascade'))
    .addColumn('list', 'text', (column) => column.notNull())
    .addColumn('number', 'integer', (column) => column.notNull())
    .addColumn('content', 'text', (column) => column.notNull())
    .addColumn('said_at', 'text', (column) => column.notNull())
    .addColumn('replaced_at', 'text')
    .addPrimaryKeyConstraint('tank_entry_version', ['id', 'version'])
    .execute();
  await db.schema
    .createIndex('tank_entry_newest')
    .unique()
    .on('tank_entry')
    .column('id')
    .where(sql.ref('replaced_at'), 'is', null)
    .execute();
  await db.schema.createIndex('tank_entry_of_list').on('tank_entry').columns(['tank_id', 'list', 'number']).execute();
}
