import { sql, type Kysely } from 'kysely';
import type { Migration } from './migration.ts';

async function up(db: Kysely<never>): Promise<void> {
  await db.schema.createTable('shop_line')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('json', 'text', (c) => c.notNull())
    .addColumn('created_at', 'text', (c) => c.notNull())
    .addColumn('changed_at', 'text', (c) => c.notNull())
    .addColumn('removed_at', 'text')
    .modifyEnd(sql`strict`).execute();
}

export const shopLines: Migration = { version: 3, name: 'shop lines', up };
