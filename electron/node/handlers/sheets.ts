import type { Handlers } from '../../../shared/channels.ts';
import type { Findings } from '../../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../../shared/formats/reading-sheet.v1.ts';
import { SHEET_EXTENSION } from '../../../shared/formats/sheet-file.ts';
import type { ShopLine } from '../../../shared/formats/shop-lines.v1.ts';
import { err, ok } from '../../../shared/result.ts';
import { importSheets } from '../import-sheets.ts';
import { currentSheet } from '../reading-record.ts';
import { parseSheetText } from '../sheet-text.ts';
import { findEngine } from '../storage/engines.ts';
import { findReading } from '../storage/readings.ts';
import { listShopLines } from '../storage/shop-lines.ts';
import { notFound, reads, writes, type Given } from './given.ts';

type Group = Pick<Handlers, 'reading.import' | 'reading.opened' | 'reading.export' | 'first-look' | 'diagnose'>;

const fileNameOf = ({ engine, date }: ReadingSheet): string => {
  const words = [engine.name ?? 'engine', date?.slice(0, 10) ?? ''].join(' ').normalize('NFKD').toLowerCase();
  return `${words.replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '').slice(0, 80) || 'reading'}.${SHEET_EXTENSION}`;
};

/** Sheets in and out of the library, and findings for a sheet that need not be in it. */
export function sheetHandlers(given: Given): Group {
  /** The lines of the workshop, none where its library cannot be read. */
  const lines = async (): Promise<readonly ShopLine[]> => {
    const db = given.shelf.readable();
    return db.ok ? listShopLines(db.value) : [];
  };
  return {
    'reading.import': writes(given, async (db, { text }) => {
      const sheet = parseSheetText(text);
      if (!sheet.ok) return err({ code: 'bad-request', problems: sheet.error });
      const own = await listShopLines(db);
      const diagnose = (one: ReadingSheet): Findings => given.diagnose(one, own);
      const [imported] = await importSheets(db, [sheet.value], { at: given.clock().toISOString(), newId: given.newId, diagnose });
      return imported === undefined ? notFound('sheet') : ok(imported);
    }),
    'reading.opened': async () => ok(await given.opened.take()),
    'reading.export': reads(given, async (db, { id }) => {
      const row = await findReading(db, id);
      if (row === undefined) return notFound('reading');
      const sheet = currentSheet(row, (await findEngine(db, row.engine_id))?.engine);
      return ok({ fileName: fileNameOf(sheet), text: `${JSON.stringify(sheet, null, 2)}\n` });
    }),
    'first-look': async ({ sheet }) => ok(given.firstLook(sheet, await lines())),
    diagnose: async ({ sheet }) => ok(given.diagnose(sheet, await lines())),
  };
}
