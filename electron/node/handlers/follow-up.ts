import { sinceOf } from '../../../core/followup/since.ts';
import { timelineOf } from '../../../core/followup/timeline.ts';
import type { Handlers } from '../../../shared/channels.ts';
import { ok } from '../../../shared/result.ts';
import { findingsOf, sheetOf } from '../reading-record.ts';
import { findEngine } from '../storage/engines.ts';
import { findReading, listReadings } from '../storage/readings.ts';
import { notFound, reads, type Given } from './given.ts';

type Group = Pick<Handlers, 'reading.timeline' | 'reading.since'>;

/** Readings of one engine that follow each other. */
export function followUpHandlers(given: Given): Group {
  return {
    'reading.timeline': reads(given, async (db, { engineId }) => {
      if ((await findEngine(db, engineId)) === undefined) return notFound('engine');
      const kept = (await listReadings(db, engineId)).filter(({ state }) => state === 'kept').reverse();
      return ok(timelineOf(kept.map((row) => ({ id: row.id, sheet: sheetOf(row), findings: findingsOf(row) }))));
    }),
    'reading.since': reads(given, async (db, { id }) => {
      const row = await findReading(db, id);
      return row === undefined || row.state !== 'kept' ? notFound('reading') : ok(sinceOf(sheetOf(row), findingsOf(row)));
    }),
  };
}
