import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';

/** The reading before as a sheet of its own, on the engine as it is now. What had been tried by then counts for it as well. */
export function earlierSheet({ engine, since }: ReadingSheet): ReadingSheet | undefined {
  if (since === undefined) return undefined;
  const { reading, tried } = since;
  return { format: 'corenose.reading-sheet', version: 1, engine, ...reading, ...(tried === undefined ? {} : { since: { reading, tried } }) };
}
