import type { Kysely } from 'kysely';
import { sinceOf } from '../../../core/followup/since.ts';
import type { AppError, Handlers, ReadingRecord } from '../../../shared/channels.ts';
import type { ReadingSheet } from '../../../shared/formats/reading-sheet.v1.ts';
import { ok, type Result } from '../../../shared/result.ts';
import { isRead, newDraft, onEngine } from '../draft.ts';
import { currentSheet, findingsOf, recordOf, sheetOf, summaryOf } from '../reading-record.ts';
import { findEngine } from '../storage/engines.ts';
import { addReading, changeReading, findReading, listReadings, setReadingRemoved } from '../storage/readings.ts';
import { listShopLines } from '../storage/shop-lines.ts';
import type { ReadingRow, Tables } from '../storage/tables.ts';
import { conflict, notFound, reads, writes, type Given } from './given.ts';

type Group = Pick<Handlers, 'reading.list' | 'reading.get' | 'reading.start' | 'reading.save' | 'reading.keep' | 'reading.reopen' | 'reading.remove' | 'reading.restore'>;

const CHANGED_ELSEWHERE = 'This reading was changed elsewhere since it was opened here. Nothing was overwritten; open it again to go on.';

async function found(db: Kysely<Tables>, id: string): Promise<Result<ReadingRecord, AppError>> {
  const row = await findReading(db, id);
  return row === undefined ? notFound('reading') : ok(recordOf(row, (await findEngine(db, row.engine_id))?.engine));
}

const localDay = (at: Date): string => [at.getFullYear(), at.getMonth() + 1, at.getDate()].map((part) => String(part).padStart(2, '0')).join('-');

/** Readings from the open draft to the kept record. */
export function readingHandlers(given: Given): Group {
  const now = (): string => given.clock().toISOString();
  return {
    'reading.list': reads(given, async (db, { engineId }) => ok((await listReadings(db, engineId)).map(summaryOf))),
    'reading.get': reads(given, async (db, { id }) => found(db, id)),
    'reading.start': writes(given, (db, { engineId }) => start(given, db, engineId)),
    'reading.save': writes(given, async (db, { id, revision, sheet, pending }) => {
      const row = await findReading(db, id);
      if (row === undefined) return notFound('reading');
      if (row.state === 'kept') return conflict('This reading is kept. Open it for changes first.');
      const fitted = onEngine(sheet, (await findEngine(db, row.engine_id))?.engine ?? sheet.engine);
      if (!fitted.ok) return { ok: false, error: { code: 'bad-request', problems: fitted.error } };
      const at = now();
      const change = { sheet: JSON.stringify(fitted.value), pending: JSON.stringify(pending), dated: sheet.date ?? null, changed_at: at };
      return (await changeReading(db, id, revision, change)) ? ok({ revision: revision + 1, changedAt: at }) : conflict(CHANGED_ELSEWHERE);
    }),
    'reading.keep': writes(given, (db, { id }) => keep(given, db, id)),
    'reading.reopen': writes(given, (db, { id }) => reopen(given, db, id)),
    'reading.remove': writes(given, async (db, { id }) => ((await setReadingRemoved(db, id, now())) ? ok(null) : notFound('reading'))),
    'reading.restore': writes(given, async (db, { id }) => ((await setReadingRemoved(db, id, null)) ? found(db, id) : notFound('reading'))),
  };
}

const openDraft = async (db: Kysely<Tables>, engineId: string): Promise<ReadingRow | undefined> =>
  (await listReadings(db, engineId)).find(({ state }) => state === 'draft');

/** A new sheet beside the reading kept last on which any plug was read. */
function comparedWith(sheet: ReadingSheet, kept: readonly ReadingRow[]): ReadingSheet {
  const before = kept.find((row) => sheetOf(row).plugs.some(isRead));
  if (before === undefined) return sheet;
  const fitted = onEngine({ ...sheet, since: sinceOf(sheetOf(before), findingsOf(before)) }, sheet.engine);
  return fitted.ok ? fitted.value : sheet;
}

async function start({ clock, newId }: Given, db: Kysely<Tables>, engineId: string): Promise<Result<ReadingRecord, AppError>> {
  const record = await findEngine(db, engineId);
  if (record === undefined) return notFound('engine');
  const draft = await openDraft(db, engineId);
  if (draft !== undefined) return ok(recordOf(draft, record.engine));
  const kept = (await listReadings(db, engineId)).filter(({ state }) => state === 'kept');
  const sheet = comparedWith(newDraft(record.engine, kept[0] && sheetOf(kept[0]), localDay(clock())), kept);
  const at = clock().toISOString();
  const id = newId();
  await addReading(db, {
    id, engine_id: engineId, state: 'draft', revision: 0, dated: sheet.date ?? null, sheet: JSON.stringify(sheet), pending: '{}',
    findings: null, created_at: at, changed_at: at, removed_at: null,
  });
  return found(db, id);
}

async function keep({ clock, diagnose }: Given, db: Kysely<Tables>, id: string): Promise<Result<ReadingRecord, AppError>> {
  const row = await findReading(db, id);
  if (row === undefined) return notFound('reading');
  if (row.state === 'kept') return found(db, id);
  const sheet = currentSheet(row, (await findEngine(db, row.engine_id))?.engine);
  const findings = diagnose(sheet, await listShopLines(db));
  const change = { state: 'kept' as const, sheet: JSON.stringify(sheet), findings: JSON.stringify(findings), changed_at: clock().toISOString() };
  return (await changeReading(db, id, row.revision, change)) ? found(db, id) : conflict(CHANGED_ELSEWHERE);
}

async function reopen({ clock }: Given, db: Kysely<Tables>, id: string): Promise<Result<ReadingRecord, AppError>> {
  const row = await findReading(db, id);
  if (row === undefined) return notFound('reading');
  if (row.state === 'draft') return found(db, id);
  const other = await openDraft(db, row.engine_id);
  if (other !== undefined) return conflict('Another reading of this engine is still open. Keep or remove it first.');
  const engine = (await findEngine(db, row.engine_id))?.engine;
  const fits = engine === undefined ? undefined : onEngine(sheetOf(row), engine);
  if (fits !== undefined && !fits.ok) return conflict('The engine was changed since this reading and has no place for some of its entries. The reading stays as it was kept.');
  return (await changeReading(db, id, row.revision, { state: 'draft', changed_at: clock().toISOString() })) ? found(db, id) : conflict(CHANGED_ELSEWHERE);
}
