import type { Kysely } from 'kysely';
import type { Findings } from '../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { addEngine, listEngines } from './storage/engines.ts';
import { addReading, listReadings } from './storage/readings.ts';
import type { Tables } from './storage/tables.ts';

export type ImportGiven = { readonly at: string; readonly newId: () => string; readonly diagnose: (sheet: ReadingSheet) => Findings };
export type Imported = { readonly engineId: string; readonly readingId: string };

/** Puts a sheet into the library as a kept reading, under the engine that is described alike, else under a new one. The same sheet twice is one reading. */
export async function importSheet(db: Kysely<Tables>, sheet: ReadingSheet, { at, newId, diagnose }: ImportGiven): Promise<Imported> {
  const findings = diagnose(sheet);
  return db.transaction().execute(async (whole) => {
    const asText = JSON.stringify(sheet.engine);
    const known = (await listEngines(whole)).find((record) => JSON.stringify(record.engine) === asText);
    const engineId = known?.id ?? newId();
    if (known === undefined) await addEngine(whole, engineId, sheet.engine, at);
    const text = JSON.stringify(sheet);
    const same = (await listReadings(whole, engineId)).find((row) => row.state === 'kept' && row.sheet === text);
    if (same !== undefined) return { engineId, readingId: same.id };
    const readingId = newId();
    await addReading(whole, {
      id: readingId, engine_id: engineId, state: 'kept', revision: 1, dated: sheet.date ?? null, sheet: text, pending: '{}',
      findings: JSON.stringify(findings), created_at: at, changed_at: at, removed_at: null,
    });
    return { engineId, readingId };
  });
}
