import { sql, type Kysely } from 'kysely';
import type { EngineRecord } from '../../../shared/channels.ts';
import type { Engine } from '../../../shared/formats/engine.ts';
import type { Tables } from './tables.ts';

const kept = sql<number>`count(case when reading.state = 'kept' and reading.removed_at is null then 1 end)`;
const drafts = sql<number>`count(case when reading.state = 'draft' and reading.removed_at is null then 1 end)`;
const last = sql<string | null>`max(case when reading.state = 'kept' and reading.removed_at is null then coalesce(reading.dated, reading.created_at) end)`;

const rows = (db: Kysely<Tables>) =>
  db.selectFrom('engine').leftJoin('reading', 'reading.engine_id', 'engine.id').groupBy('engine.id')
    .select(['engine.id', 'engine.json', 'engine.created_at', 'engine.changed_at', kept.as('readings'), last.as('last_reading'), drafts.as('drafts')]);

type Row = { id: string; json: string; created_at: string; changed_at: string; readings: number; last_reading: string | null; drafts: number };

const recordOf = (row: Row): EngineRecord => ({
  id: row.id, engine: JSON.parse(row.json) as Engine, createdAt: row.created_at, changedAt: row.changed_at,
  readings: row.readings, lastReadingAt: row.last_reading, draft: row.drafts > 0,
});

/** Engines that are not removed, the one changed last first; those changed together in the order of their descriptions, which begin with the name. */
export async function listEngines(db: Kysely<Tables>): Promise<EngineRecord[]> {
  const found = await rows(db).where('engine.removed_at', 'is', null).orderBy('engine.changed_at', 'desc').orderBy('engine.json').orderBy('engine.id').execute();
  return found.map(recordOf);
}

/** The engine with this id, unless it is unknown or removed. */
export async function findEngine(db: Kysely<Tables>, id: string): Promise<EngineRecord | undefined> {
  const row = await rows(db).where('engine.id', '=', id).where('engine.removed_at', 'is', null).executeTakeFirst();
  return row && recordOf(row);
}

export async function addEngine(db: Kysely<Tables>, id: string, engine: Engine, at: string): Promise<void> {
  await db.insertInto('engine').values({ id, json: JSON.stringify(engine), created_at: at, changed_at: at, removed_at: null }).execute();
}

export async function changeEngine(db: Kysely<Tables>, id: string, engine: Engine, at: string): Promise<void> {
  await db.updateTable('engine').set({ json: JSON.stringify(engine), changed_at: at }).where('id', '=', id).execute();
}

/** Hides an engine, or shows it again with `null`. @returns whether there was such an engine. */
export async function setEngineRemoved(db: Kysely<Tables>, id: string, removedAt: string | null): Promise<boolean> {
  const { numUpdatedRows } = await db.updateTable('engine').set({ removed_at: removedAt }).where('id', '=', id).executeTakeFirst();
  return numUpdatedRows > 0n;
}
