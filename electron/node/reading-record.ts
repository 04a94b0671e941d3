import type { ReadingRecord, ReadingSummary } from '../../shared/channels.ts';
import type { Engine } from '../../shared/formats/engine.ts';
import type { Findings } from '../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { isRead, onEngine } from './draft.ts';
import type { ReadingRow } from './storage/tables.ts';

export const sheetOf = (row: ReadingRow): ReadingSheet => JSON.parse(row.sheet) as ReadingSheet;
export const findingsOf = (row: ReadingRow): Findings | null => (row.findings === null ? null : (JSON.parse(row.findings) as Findings));

/** The sheet as it stands today: a kept reading keeps the engine of its day, a draft follows the engine's record. */
export function currentSheet(row: ReadingRow, engine: Engine | undefined): ReadingSheet {
  const sheet = sheetOf(row);
  if (row.state === 'kept' || engine === undefined) return sheet;
  const fitted = onEngine(sheet, engine);
  return fitted.ok ? fitted.value : sheet;
}

export const recordOf = (row: ReadingRow, engine: Engine | undefined): ReadingRecord => ({
  id: row.id, engineId: row.engine_id, state: row.state, revision: row.revision, changedAt: row.changed_at,
  sheet: currentSheet(row, engine), pending: JSON.parse(row.pending) as ReadingRecord['pending'], findings: row.state === 'kept' ? findingsOf(row) : null,
});

export function summaryOf(row: ReadingRow): ReadingSummary {
  const sheet = sheetOf(row);
  const findings = row.state === 'kept' ? findingsOf(row) : null;
  return {
    id: row.id, engineId: row.engine_id, title: sheet.title ?? '', date: row.dated, state: row.state, changedAt: row.changed_at,
    plugsRead: sheet.plugs.filter(isRead).length, verdicts: findings?.plugs.map(({ verdict }) => verdict) ?? [],
  };
}
