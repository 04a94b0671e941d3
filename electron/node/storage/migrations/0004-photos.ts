import { sql, type Kysely } from 'kysely';
import type { Migration } from './migration.ts';

const strict = sql`strict`;

async function up(db: Kysely<never>): Promise<void> {
  await db.schema.createTable('photo_file')
    .addColumn('sha256', 'text', (c) => c.primaryKey().notNull())
    .addColumn('bytes', 'integer', (c) => c.notNull())
    .addColumn('format', 'text', (c) => c.notNull())
    .addColumn('width', 'integer', (c) => c.notNull())
    .addColumn('height', 'integer', (c) => c.notNull())
    .addColumn('colour', 'text', (c) => c.notNull())
    .addColumn('taken_at', 'text')
    .addColumn('camera', 'text')
    .addColumn('problem', 'text')
    .modifyEnd(strict).execute();
  await db.schema.createTable('photo')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('engine_id', 'text', (c) => c.notNull().references('engine.id'))
    .addColumn('reading_id', 'text', (c) => c.notNull().references('reading.id'))
    .addColumn('sha256', 'text', (c) => c.notNull().references('photo_file.sha256'))
    .addColumn('name', 'text', (c) => c.notNull())
    .addColumn('shown_at', 'text', (c) => c.notNull())
    .addColumn('cylinder', 'integer')
    .addColumn('position', 'text')
    .addColumn('view', 'text', (c) => c.notNull())
    .addColumn('place_order', 'integer', (c) => c.notNull())
    .addColumn('white', 'text')
    .addColumn('geometry', 'text')
    .addColumn('measure', 'text')
    .addColumn('annotations', 'text', (c) => c.notNull())
    .addColumn('added_at', 'text', (c) => c.notNull())
    .addColumn('removed_at', 'text')
    .modifyEnd(strict).execute();
  await db.schema.createIndex('photo_of_reading').unique().on('photo').columns(['reading_id', 'sha256']).execute();
  await db.schema.createIndex('photo_of_engine').on('photo').columns(['engine_id', 'shown_at']).execute();
  await db.schema.createIndex('photo_by_time').on('photo').columns(['shown_at', 'id', 'removed_at', 'engine_id', 'reading_id', 'view', 'cylinder']).execute();
}

export const photos: Migration = { version: 4, name: 'photos', up };
