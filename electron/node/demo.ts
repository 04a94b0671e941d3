import type { Kysely } from 'kysely';
import { parseReadingSheet, type ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { problemLine } from '../../shared/formats/strict.ts';
import { importSheets, type ImportGiven } from './import-sheets.ts';
import { listEngines } from './storage/engines.ts';
import type { Tables } from './storage/tables.ts';

/** `begun` is called when there is something to fill, before the work. */
export type FillGiven = ImportGiven & { readonly begun?: () => void };

export type Seed = { readonly name: string; readonly sheets: readonly unknown[] };

/**
 * Puts the demo engines with their readings into an empty library; one that holds an engine is left as it is.
 * @throws when a seed is not a reading sheet, which is a bug.
 */
export async function fillWithSeeds(db: Kysely<Tables>, seeds: readonly Seed[], { begun, ...given }: FillGiven): Promise<void> {
  if ((await listEngines(db)).length > 0) return;
  begun?.();
  await importSheets(db, seeds.flatMap(({ name, sheets }) => sheets.map((sheet) => parsed(name, sheet))), given);
}

function parsed(name: string, sheet: unknown): ReadingSheet {
  const result = parseReadingSheet(sheet);
  if (!result.ok) throw new Error(`seed ${name}: ${result.error.map(problemLine).join('; ')}`);
  return result.value;
}
