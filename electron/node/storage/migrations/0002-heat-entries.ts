import { sql, type Kysely } from 'kysely';
import type { Migration } from './migration.ts';

async function up(db: Kysely<never>): Promise<void> {
  await db.schema.createTable('heat_entry')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('engine_id', 'text', (c) => c.notNull().references('engine.id'))
    .addColumn('json', 'text', (c) => c.notNull())
    .addColumn('created_at', 'text', (c) => c.notNull())
    .addColumn('removed_at', 'text')
    .modifyEnd(sql`strict`).execute();
  await db.schema.createIndex('heat_entry_of_engine').on('heat_entry').column('engine_id').execute();
}

export const heatEntries: Migration = { version: 2, name: 'heat entries', up };
