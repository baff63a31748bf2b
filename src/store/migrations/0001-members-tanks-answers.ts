import { type Kysely, sql } from 'kysely';

export async function membersTanksAnswers(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('member')
    .addColumn('id', 'text', (column) => column.primaryKey().notNull())
    .addColumn('preferences', 'text')
    .execute();

  await db.schema
    .createTable('tank')
    .addColumn('id', 'text', (column) => column.primaryKey().notNull())
    .addColumn('member_id', 'text', (column) => column.notNull().references('member.id').onDelete('cascade'))
    .addColumn('name', 'text', (column) => column.notNull())
    .addColumn('name_folded', 'text', (column) => column.notNull())
    .addColumn('is_current', 'integer', (column) => column.notNull())
    .addColumn('created_at', 'text', (column) => column.notNull())
    .addUniqueConstraint('tank_name_of_member', ['member_id', 'name_folded'])
    .execute();
  await db.schema
    .createIndex('tank_current_of_member')
    .unique()
    .on('tank')
    .column('member_id')
    .where(sql.ref('is_current'), '=', 1)
    .execute();

  await db.schema
    .createTable('tank_value')
    .addColumn('tank_id', 'text', (column) => column.notNull().references('tank.id').onDelete('cascade'))
    .addColumn('key', 'text', (column) => column.notNull())
    .addColumn('version', 'integer', (column) => column.notNull())
    .addColumn('si', 'double precision')
    .addColumn('unit', 'text')
    .addColumn('text', 'text')
    .addColumn('said_at', 'text', (column) => column.notNull())
    .addColumn('replaced_at', 'text')
    .addPrimaryKeyConstraint('tank_value_version', ['tank_id', 'key', 'version'])
    .execute();
  await db.schema
    .createIndex('tank_value_newest')
    .unique()
    .on('tank_value')
    .columns(['tank_id', 'key'])
    .where(sql.ref('replaced_at'), 'is', null)
    .execute();

  await db.schema
    .createTable('dialogue')
    .addColumn('member_id', 'text', (column) => column.notNull().references('member.id').onDelete('cascade'))
    .addColumn('place', 'text', (column) => column.notNull())
    .addColumn('state', 'text', (column) => column.notNull())
    .addPrimaryKeyConstraint('dialogue_place', ['member_id', 'place'])
    .execute();

  await db.schema
    .createTable('answer')
    .addColumn('id', 'text', (column) => column.primaryKey().notNull())
    .addColumn('member_id', 'text', (column) => column.notNull().references('member.id').onDelete('cascade'))
    .addColumn('number', 'integer', (column) => column.notNull())
    .addColumn('calculation', 'text', (column) => column.notNull())
    .addColumn('given', 'text', (column) => column.notNull())
    .addColumn('at', 'text', (column) => column.notNull())
    .addUniqueConstraint('answer_number_of_member', ['member_id', 'number'])
    .execute();
}
