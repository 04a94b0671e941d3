import type { Insertable, Kysely } from 'kysely';
import type { HeatEntry, HeatEntryRecord } from '../../../shared/channels-heat.ts';
import type { HeatEntryTable, Tables } from './tables.ts';

const recordOf = (row: Pick<HeatEntryTable, 'id' | 'engine_id' | 'json' | 'created_at'>): HeatEntryRecord =>
  ({ id: row.id, engineId: row.engine_id, createdAt: row.created_at, entry: JSON.parse(row.json) as HeatEntry });

/** Entries of an engine that are not removed, the oldest first. */
export async function listHeatEntries(db: Kysely<Tables>, engineId: string): Promise<HeatEntryRecord[]> {
  const rows = await db.selectFrom('heat_entry').selectAll().where('engine_id', '=', engineId).where('removed_at', 'is', null)
    .orderBy('created_at').orderBy('id').execute();
  return rows.map(recordOf);
}

/** The entry with this id, unless it is unknown or removed. */
export async function findHeatEntry(db: Kysely<Tables>, id: string): Promise<HeatEntryRecord | undefined> {
  const row = await db.selectFrom('heat_entry').selectAll().where('id', '=', id).where('removed_at', 'is', null).executeTakeFirst();
  return row && recordOf(row);
}

export async function addHeatEntry(db: Kysely<Tables>, row: Insertable<HeatEntryTable>): Promise<void> {
  await db.insertInto('heat_entry').values(row).execute();
}

/** Hides an entry, or shows it again with `null`. @returns whether there was such an entry. */
export async function setHeatEntryRemoved(db: Kysely<Tables>, id: string, removedAt: string | null): Promise<boolean> {
  const { numUpdatedRows } = await db.updateTable('heat_entry').set({ removed_at: removedAt }).where('id', '=', id).executeTakeFirst();
  return numUpdatedRows > 0n;
}
