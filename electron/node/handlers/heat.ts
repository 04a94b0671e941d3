import type { Kysely } from 'kysely';
import type { AppError, Handlers } from '../../../shared/channels.ts';
import type { HeatEntryRecord } from '../../../shared/channels-heat.ts';
import { ok, type Result } from '../../../shared/result.ts';
import { sheetOf } from '../reading-record.ts';
import { findEngine } from '../storage/engines.ts';
import { addHeatEntry, findHeatEntry, listHeatEntries, setHeatEntryRemoved } from '../storage/heat-entries.ts';
import { listReadings } from '../storage/readings.ts';
import type { Tables } from '../storage/tables.ts';
import { notFound, reads, writes, type Given } from './given.ts';

type Group = Pick<Handlers, 'heat.record' | 'heat.add' | 'heat.remove' | 'heat.restore'>;

async function found(db: Kysely<Tables>, id: string): Promise<Result<HeatEntryRecord, AppError>> {
  const entry = await findHeatEntry(db, id);
  return entry === undefined ? notFound('entry') : ok(entry);
}

/** What an engine told about its heat, and what is entered by hand about it. */
export function heatHandlers(given: Given): Group {
  const now = (): string => given.clock().toISOString();
  return {
    'heat.record': reads(given, async (db, { engineId }) => {
      if ((await findEngine(db, engineId)) === undefined) return notFound('engine');
      const kept = (await listReadings(db, engineId)).filter(({ state }) => state === 'kept').reverse();
      return ok({ kept: kept.map((row) => ({ id: row.id, sheet: sheetOf(row) })), entries: await listHeatEntries(db, engineId) });
    }),
    'heat.add': writes(given, async (db, { engineId, entry }) => {
      if ((await findEngine(db, engineId)) === undefined) return notFound('engine');
      const id = given.newId();
      await addHeatEntry(db, { id, engine_id: engineId, json: JSON.stringify(entry), created_at: now(), removed_at: null });
      return found(db, id);
    }),
    'heat.remove': writes(given, async (db, { id }) => ((await setHeatEntryRemoved(db, id, now())) ? ok(null) : notFound('entry'))),
    'heat.restore': writes(given, async (db, { id }) => ((await setHeatEntryRemoved(db, id, null)) ? found(db, id) : notFound('entry'))),
  };
}
