import { sinceOf } from '../../../../core/followup/since.ts';
import { timelineOf } from '../../../../core/followup/timeline.ts';
import { plugPlaces } from '../../../../core/domain/plugs.ts';
import { DEFAULT_SETTINGS, type AppError, type AppInfo, type Bridge, type EngineRecord, type OpenedFile, type ReadingRecord } from '../../../../shared/channels.ts';
import type { DraftOf, KeptEngineDraft } from '../../../../shared/channels-engine-draft.ts';
import { CHANNELS, type Channel } from '../../../../shared/channel-names.ts';
import type { HeatEntryRecord } from '../../../../shared/channels-heat.ts';
import type { Findings } from '../../../../shared/formats/findings.v1.ts';
import { parseReadingSheet, type ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import type { ShopLine } from '../../../../shared/formats/shop-lines.v1.ts';
import { err, ok } from '../../../../shared/result.ts';
import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import { fakePhotos } from './fake-photos.ts';

const NOW = '2026-03-14T09:30:00Z';
const uuid = (n: number): string => `00000000-0000-4000-8000-${String(n).padStart(12, '0')}`;

const noFindings: Findings = {
  format: 'corenose.findings', version: 1, knowledge: { version: 'test', digest: 'test' }, summary: '', plugs: [], engine: { pattern: '', causes: [], nextChecks: [] },
  heat: { step: 0, when: 'now', words: 'stay', belief: 0.5, why: [], first: [], cautions: [] }, stop: [], plan: [], cautions: [],
};

const appInfo = (library: Partial<AppInfo['library']>): AppInfo =>
  ({ version: '0', host: 'loopback', knowledge: 'test', library: { kind: 'own', folder: '/bench', readOnly: false, trouble: null, ...library } });

export type FakeHost = {
  readonly bridge: Bridge;
  /** Every call, in order. */
  readonly calls: Channel[];
  /** Put an error here and the channel answers with it. */
  readonly failing: Partial<Record<Channel, AppError>>;
  readonly engines: Map<string, EngineRecord>;
  readonly readings: Map<string, ReadingRecord>;
  readonly photos: Map<string, PhotoRecord>;
  /** Files that the system asks to open, in order. */
  readonly opened: OpenedFile[];
};

/** A host in memory that keeps the rules of the real one for engines and readings: revisions, conflicts, drafts, removal and restoring. */
export function fakeHost(library: Partial<AppInfo['library']> = {}): FakeHost {
  let ids = 0;
  const engines = new Map<string, EngineRecord>();
  const readings = new Map<string, ReadingRecord>();
  /** Each library has its own. */
  const drafts = { own: new Map<DraftOf, KeptEngineDraft>(), demo: new Map<DraftOf, KeptEngineDraft>() };
  let inUse: 'own' | 'demo' = 'own';
  const shopLines = new Map<string, ShopLine>();
  const removed = new Set<string>();
  const heatEntries = new Map<string, HeatEntryRecord>();
  const calls: Channel[] = [];
  const failing: Partial<Record<Channel, AppError>> = {};
  const gone = (what: string) => err<AppError>({ code: 'not-found', what });
  const found = (id: string): ReadingRecord | undefined => (removed.has(id) ? undefined : readings.get(id));
  const put = (record: ReadingRecord): ReadingRecord => { readings.set(record.id, record); return record; };
  const keepAs = (state: 'draft' | 'kept', findings: Findings | null) => async ({ id }: { id: string }) => {
    const record = found(id);
    if (record === undefined) return gone('reading');
    return ok(record.state === state ? record : put({ ...record, state, findings, revision: record.revision + 1 }));
  };
  const opened: OpenedFile[] = [];
  const photoHost = fakePhotos();
  const bridge: Bridge = {
    'app.info': async () => ok(appInfo(library)),
    'settings.get': async () => ok(DEFAULT_SETTINGS),
    'settings.save': async (settings) => ok(settings),
    'library.use': async ({ kind }) => { inUse = kind; return ok(appInfo({ kind, folder: kind === 'demo' ? '/bench/demo' : '/bench' })); },
    'library.recover': async () => ok(appInfo({})),
    'engine.list': async () => ok([...engines.values()].filter(({ id }) => !removed.has(id)).map((engine) => {
      const states = [...readings.values()].filter(({ id, engineId }) => engineId === engine.id && !removed.has(id)).map(({ state }) => state);
      return { ...engine, readings: states.filter((state) => state === 'kept').length, draft: states.includes('draft') };
    })),
    'engine.save': async ({ id, engine }) => {
      const record = { id: id ?? uuid(++ids), engine, createdAt: NOW, changedAt: NOW, readings: 0, lastReadingAt: null, draft: false };
      engines.set(record.id, record);
      return ok(record);
    },
    'engine.remove': async ({ id }) => { removed.add(id); return ok(null); },
    'engine.restore': async ({ id }) => { removed.delete(id); return ok(engines.get(id)!); },
    'engine-draft.list': async () => ok(Object.fromEntries(drafts[inUse])),
    'engine-draft.keep': async ({ of, draft }) => {
      if (draft === null) drafts[inUse].delete(of);
      else drafts[inUse].set(of, draft);
      return ok(null);
    },
    'reading.list': async ({ engineId }) => ok([...readings.values()].filter((record) => record.engineId === engineId && !removed.has(record.id)).map((record) => ({
      id: record.id, engineId, title: record.sheet.title ?? '', date: record.sheet.date ?? null, state: record.state, changedAt: NOW, plugsRead: record.sheet.plugs.filter(({ tip }) => tip !== undefined).length,
      verdicts: record.findings?.plugs.map((plug) => plug.verdict) ?? [],
    }))),
    'reading.get': async ({ id }) => { const record = found(id); return record === undefined ? gone('reading') : ok(record); },
    'reading.start': async ({ engineId }) => {
      const open = [...readings.values()].find((record) => record.engineId === engineId && record.state === 'draft' && !removed.has(record.id));
      if (open !== undefined) return ok(open);
      const { engine } = engines.get(engineId)!;
      const plugs = plugPlaces(engine).map(({ cylinder, position }) => (position === 'only' ? { cylinder } : { cylinder, position }));
      const sheet: ReadingSheet = { format: 'corenose.reading-sheet', version: 1, date: '2026-03-14', engine, plugs };
      return ok(put({ id: uuid(++ids), engineId, state: 'draft', revision: 1, changedAt: NOW, sheet, pending: {}, findings: null }));
    },
    'reading.save': async ({ id, revision, sheet, pending }) => {
      const record = found(id);
      if (record === undefined) return gone('reading');
      if (record.state === 'kept' || record.revision !== revision) return err<AppError>({ code: 'conflict', message: 'changed elsewhere' });
      put({ ...record, sheet, pending, revision: revision + 1 });
      return ok({ revision: revision + 1, changedAt: NOW });
    },
    'reading.keep': keepAs('kept', noFindings),
    'reading.reopen': keepAs('draft', null),
    'reading.remove': async ({ id }) => { removed.add(id); return ok(null); },
    'reading.restore': async ({ id }) => { removed.delete(id); return ok(readings.get(id)!); },
    'reading.import': async ({ text }) => {
      const parsed = parseReadingSheet(JSON.parse(text));
      if (!parsed.ok) return err<AppError>({ code: 'bad-request', problems: parsed.error });
      const engineId = uuid(++ids);
      engines.set(engineId, { id: engineId, engine: parsed.value.engine, createdAt: NOW, changedAt: NOW, readings: 1, lastReadingAt: NOW, draft: false });
      const { id } = put({ id: uuid(++ids), engineId, state: 'draft', revision: 1, changedAt: NOW, sheet: parsed.value, pending: {}, findings: null });
      return ok({ engineId, readingId: id, known: false });
    },
    'reading.opened': async () => ok(opened.shift() ?? null),
    'reading.timeline': async ({ engineId }) => ok(timelineOf([...readings.values()].filter((record) => record.engineId === engineId && record.state === 'kept'))),
    'reading.since': async ({ id }) => { const record = found(id); return record === undefined ? gone('reading') : ok(sinceOf(record.sheet, record.findings)); },
    'reading.export': async ({ id }) => ok({ fileName: 'reading.json', text: JSON.stringify(readings.get(id)?.sheet) }),
    'heat.record': async ({ engineId }) => ok({
      kept: [...readings.values()].filter((record) => record.engineId === engineId && record.state === 'kept' && !removed.has(record.id)).map(({ id, sheet }) => ({ id, sheet })),
      entries: [...heatEntries.values()].filter((entry) => entry.engineId === engineId && !removed.has(entry.id)),
    }),
    'heat.add': async ({ engineId, entry }) => {
      const record = { id: uuid(++ids), engineId, createdAt: NOW, entry };
      heatEntries.set(record.id, record);
      return ok(record);
    },
    'heat.remove': async ({ id }) => { removed.add(id); return ok(null); },
    'heat.restore': async ({ id }) => { removed.delete(id); return ok(heatEntries.get(id)!); },
    'shop.list': async () => ok([...shopLines.values()].filter(({ id }) => !removed.has(id))),
    'shop.save': async ({ id, ...said }) => {
      const line: ShopLine = { id: id ?? uuid(++ids), ...said };
      shopLines.set(line.id, line);
      return ok(line);
    },
    'shop.remove': async ({ id }) => { removed.add(id); return ok(null); },
    'shop.restore': async ({ id }) => { removed.delete(id); return ok(shopLines.get(id)!); },
    'shop.import': async () => ok({ added: 0, known: 0 }),
    'shop.export': async () => ok({ fileName: 'own-lines.shop.json', text: JSON.stringify([...shopLines.values()]) }),
    ...photoHost.calls,
    'first-look': async () => ok({ plugs: [], stop: [] }),
    diagnose: async () => ok(noFindings),
  };
  const counted = Object.fromEntries(CHANNELS.map((name) => [name, async (input: never) => {
    calls.push(name);
    const failure = failing[name];
    return failure === undefined ? bridge[name](input) : err(failure);
  }])) as unknown as Bridge;
  return { bridge: counted, calls, failing, engines, readings, opened, photos: photoHost.photos };
}
