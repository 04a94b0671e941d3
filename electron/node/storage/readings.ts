import type { Insertable, Kysely, Updateable } from 'kysely';
import type { ReadingRow, ReadingTable, Tables } from './tables.ts';

/** Readings of an engine that are not removed: open drafts first, then by date, the newest first. */
export async function listReadings(db: Kysely<Tables>, engineId: string): Promise<ReadingRow[]> {
  return db.selectFrom('reading').selectAll().where('engine_id', '=', engineId).where('removed_at', 'is', null)
    .orderBy('state').orderBy((e) => e.fn.coalesce('dated', 'created_at'), 'desc').orderBy('created_at', 'desc').orderBy('id').execute();
}

/** The reading with this id, unless it is unknown or removed. */
export async function findReading(db: Kysely<Tables>, id: string): Promise<ReadingRow | undefined> {
  return db.selectFrom('reading').selectAll().where('id', '=', id).where('removed_at', 'is', null).executeTakeFirst();
}

export async function addReading(db: Kysely<Tables>, row: Insertable<ReadingTable>): Promise<void> {
  await db.insertInto('reading').values(row).execute();
}

/** Changes a reading only when it still stands at `revision`. @returns whether it did; the new revision is one more. */
export async function changeReading(db: Kysely<Tables>, id: string, revision: number, change: Omit<Updateable<ReadingTable>, 'id' | 'revision'>): Promise<boolean> {
  const { numUpdatedRows } = await db.updateTable('reading').set({ ...change, revision: revision + 1 })
    .where('id', '=', id).where('revision', '=', revision).where('removed_at', 'is', null).executeTakeFirst();
  return numUpdatedRows > 0n;
}

/** Hides a reading, or shows it again with `null`. @returns whether there was such a reading. */
export async function setReadingRemoved(db: Kysely<Tables>, id: string, removedAt: string | null): Promise<boolean> {
  const { numUpdatedRows } = await db.updateTable('reading').set({ removed_at: removedAt }).where('id', '=', id).executeTakeFirst();
  return numUpdatedRows > 0n;
}
