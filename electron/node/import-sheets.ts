import type { Kysely, Transaction } from 'kysely';
import type { Findings } from '../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { addEngine, listEngines } from './storage/engines.ts';
import { addReading, listReadings } from './storage/readings.ts';
import type { Tables } from './storage/tables.ts';

export type ImportGiven = { readonly at: string; readonly newId: () => string; readonly diagnose: (sheet: ReadingSheet) => Findings };
/** `known`: the sheet was there already. */
export type Imported = { readonly engineId: string; readonly readingId: string; readonly known: boolean };

/**
 * Puts sheets into the library as kept readings, all of them or none: each under the engine that is described alike, else under a new one.
 * A sheet that is there already is not put in again.
 */
export async function importSheets(db: Kysely<Tables>, sheets: readonly ReadingSheet[], { at, newId, diagnose }: ImportGiven): Promise<Imported[]> {
  const diagnosed = sheets.map((sheet) => ({ sheet, findings: diagnose(sheet) }));
  return db.transaction().execute(async (whole) => {
    const imported: Imported[] = [];
    for (const { sheet, findings } of diagnosed) imported.push(await store(whole, sheet, findings, at, newId));
    return imported;
  });
}

async function store(db: Transaction<Tables>, sheet: ReadingSheet, findings: Findings, at: string, newId: () => string): Promise<Imported> {
  const engine = JSON.stringify(sheet.engine);
  const known = (await listEngines(db)).find((record) => JSON.stringify(record.engine) === engine);
  const engineId = known?.id ?? newId();
  if (known === undefined) await addEngine(db, engineId, sheet.engine, at);
  const text = JSON.stringify(sheet);
  const same = (await listReadings(db, engineId)).find((row) => row.state === 'kept' && row.sheet === text);
  if (same !== undefined) return { engineId, readingId: same.id, known: true };
  const readingId = newId();
  await addReading(db, {
    id: readingId, engine_id: engineId, state: 'kept', revision: 1, dated: sheet.date ?? null, sheet: text, pending: '{}',
    findings: JSON.stringify(findings), created_at: at, changed_at: at, removed_at: null,
  });
  return { engineId, readingId, known: false };
}
