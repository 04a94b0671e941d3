import { sql, type Kysely } from 'kysely';
import type { Migration } from './migration.ts';

const strict = sql`strict`;

async function up(db: Kysely<never>): Promise<void> {
  await db.schema.createTable('engine')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('json', 'text', (c) => c.notNull())
    .addColumn('created_at', 'text', (c) => c.notNull())
    .addColumn('changed_at', 'text', (c) => c.notNull())
    .addColumn('removed_at', 'text')
    .modifyEnd(strict).execute();
  await db.schema.createTable('reading')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('engine_id', 'text', (c) => c.notNull().references('engine.id'))
    .addColumn('state', 'text', (c) => c.notNull().check(sql`state in ('draft', 'kept')`))
    .addColumn('revision', 'integer', (c) => c.notNull())
    .addColumn('dated', 'text')
    .addColumn('sheet', 'text', (c) => c.notNull())
    .addColumn('pending', 'text', (c) => c.notNull())
    .addColumn('findings', 'text')
    .addColumn('created_at', 'text', (c) => c.notNull())
    .addColumn('changed_at', 'text', (c) => c.notNull())
    .addColumn('removed_at', 'text')
    .modifyEnd(strict).execute();
  await db.schema.createIndex('reading_of_engine').on('reading').column('engine_id').execute();
  await db.schema.createTable('setting')
    .addColumn('name', 'text', (c) => c.primaryKey().notNull())
    .addColumn('json', 'text', (c) => c.notNull())
    .modifyEnd(strict).execute();
}

export const enginesAndReadings: Migration = { version: 1, name: 'engines and readings', up };
