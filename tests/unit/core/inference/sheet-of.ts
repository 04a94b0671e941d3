import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';

/** A sheet of a road engine of four cylinders of which only the first plug is entered, with what a test gives instead. */
export const sheetOf = (parts: Partial<ReadingSheet> = {}): ReadingSheet => ({
  format: 'corenose.reading-sheet', version: 1, engine: { use: 'road', cylinders: 4 }, plugs: [{ cylinder: 1 }], ...parts,
});
