import { vi } from 'vitest';
import { diagnose } from '../../../../core/inference/diagnose.ts';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import type { Findings } from '../../../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { ok } from '../../../../shared/result.ts';
import type { FakeHost } from '../support/fake-host.ts';
import { freshPage } from '../support/page.ts';

type Tip = NonNullable<ReadingSheet['plugs'][number]['tip']>;
export const tan: Tip = { noseColour: 'light tan', noseSurface: 'fine powder', deposit: 'light dusting', coverage: 'light' };
export const oily: Tip = { noseColour: 'black', noseSurface: 'wet', deposit: 'wet oil', coverage: 'full', shellRim: 'wet oil' };

export const sheetWith = (third: Tip | undefined, more: Partial<ReadingSheet> = {}): ReadingSheet => ({
  format: 'corenose.reading-sheet', version: 1, engine: { name: 'Workshop four', use: 'road', cycle: 'four-stroke', cylinders: 4 },
  plugs: [1, 2, 3, 4].map((cylinder) => ({ cylinder, ...(third && { tip: cylinder === 3 ? third : tan }) })), ...more,
});
export const findingsOf = (sheet: ReadingSheet): Findings => diagnose(sheet, { knowledge: KNOWLEDGE, digest: 'test' });

const BEFORE = '00000000-0000-4000-8000-0000000000a1';

type Opened = { readonly host: FakeHost; readonly engineId: string; readonly id: string; readonly before: string };

/** An engine with a kept reading of 14 February, cylinder 3 wet with oil, and an open draft; the findings are worked out as the program does. */
export async function engineWithReading(draft: Partial<ReadingSheet> = {}, third?: Tip): Promise<Opened> {
  const host = freshPage();
  vi.stubGlobal('corenose', { ...host.bridge, diagnose: async ({ sheet }: { sheet: ReadingSheet }) => ok(findingsOf(sheet)) });
  const before = sheetWith(oily, { date: '2026-02-14', title: 'Blue smoke', symptoms: [{ what: 'blue smoke' }, { what: 'oil use' }], cylinderChecks: [{ cylinder: 3, compressionKPa: 1150, compressionWetKPa: 1170 }] });
  const saved = await useStore.getState().saveEngine(null, before.engine);
  if (!saved.ok) throw new Error('the engine was not saved');
  const engineId = saved.value.id;
  const record = { id: BEFORE, engineId, revision: 1, changedAt: '2026-02-14T09:00:00Z', pending: {} };
  host.readings.set(BEFORE, { ...record, state: 'kept', sheet: before, findings: findingsOf(before) });
  const started = await useStore.getState().startReading(engineId);
  if (!started.ok) throw new Error('the reading was not started');
  const { format: _, version: __, engine: ___, ...reading } = before;
  const sheet = { ...sheetWith(third, { date: '2026-03-14' }), since: { reading }, ...draft };
  const open = { ...record, id: started.value, state: 'draft' as const, sheet, findings: null };
  host.readings.set(open.id, open);
  useStore.getState().showReading(open);
  return { host, engineId, id: open.id, before: BEFORE };
}

export const currentSheet = (): ReadingSheet => useStore.getState().reading!.history.now.sheet;
