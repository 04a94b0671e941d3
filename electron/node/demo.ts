import type { Kysely } from 'kysely';
import { parseReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { problemLine } from '../../shared/formats/strict.ts';
import { importSheet, type ImportGiven } from './import-sheet.ts';
import { listEngines } from './storage/engines.ts';
import type { Tables } from './storage/tables.ts';

export type Seed = { readonly name: string; readonly sheets: readonly unknown[] };

/**
 * Puts the demo engines with their readings into an empty library; one that holds an engine is left as it is.
 * @throws when a seed is not a reading sheet, which is a bug.
 */
export async function fillWithSeeds(db: Kysely<Tables>, seeds: readonly Seed[], given: ImportGiven): Promise<void> {
  if ((await listEngines(db)).length > 0) return;
  for (const { name, sheets } of seeds) {
    for (const sheet of sheets) {
      const parsed = parseReadingSheet(sheet);
      if (!parsed.ok) throw new Error(`seed ${name}: ${parsed.error.map(problemLine).join('; ')}`);
      await importSheet(db, parsed.value, given);
    }
  }
}
