import { describe, expect, it } from 'vitest';
import { diagnoseSheet } from '../../../../electron/node/diagnosing.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { fourCylinder } from '../../../fixtures/plain-sheets.ts';
import { testProgram, valueOf } from '../../../fixtures/test-program.ts';

type Tip = ReadingSheet['plugs'][number]['tip'];
const tan: Tip = { noseColour: 'light tan', noseSurface: 'fine powder', deposit: 'light dusting', coverage: 'light' };
const oily: Tip = { noseColour: 'black', noseSurface: 'wet', deposit: 'wet oil', coverage: 'full', shellRim: 'wet oil' };

async function engineWithReadings(...thirds: readonly Tip[]) {
  const program = await testProgram({ diagnose: diagnoseSheet });
  const { handlers } = program;
  const { id: engineId } = valueOf(await handlers['engine.save']({ id: null, engine: fourCylinder }));
  let day = 9;
  const keep = async (third: Tip, change: (sheet: ReadingSheet) => ReadingSheet = (sheet) => sheet): Promise<string> => {
    const { id, sheet, revision } = valueOf(await handlers['reading.start']({ engineId }));
    day += 1;
    const seen = { ...sheet, date: `2026-03-${day}`, plugs: sheet.plugs.map((plug) => ({ ...plug, tip: plug.cylinder === 3 ? third : tan })) };
    valueOf(await handlers['reading.save']({ id, revision, sheet: change(seen), pending: {} }));
    valueOf(await handlers['reading.keep']({ id }));
    return id;
  };
  for (const third of thirds) await keep(third);
  return { handlers, engineId, keep, next: async () => valueOf(await handlers['reading.start']({ engineId })) };
}

describe('a new draft', () => {
  it('of an engine without a reading is compared with nothing', async () => {
    const { next } = await engineWithReadings();
    expect((await next()).sheet.since).toBeUndefined();
  });

  it('carries the reading kept last, as it was kept, with nothing noted as done', async () => {
    const { next } = await engineWithReadings(oily);
    const { since } = (await next()).sheet;
    expect(since?.reading.plugs[2]?.tip).toEqual(oily);
    expect(Object.keys(since ?? {})).toEqual(['reading']);
  });

  it('passes over a reading on which no plug was read', async () => {
    const { handlers, next } = await engineWithReadings(oily);
    const { id, sheet, revision } = await next();
    valueOf(await handlers['reading.save']({ id, revision, sheet: { ...sheet, date: '2026-03-18' }, pending: {} }));
    valueOf(await handlers['reading.keep']({ id }));
    expect((await next()).sheet.since?.reading.plugs[2]?.tip).toEqual(oily);
  });

  it('takes along what was tried and had changed nothing', async () => {
    const { keep, next } = await engineWithReadings(oily);
    await keep(oily, (sheet) => ({ ...sheet, since: { ...sheet.since!, done: [{ cause: 'guides-worn', cylinders: [3] }] } }));
    expect((await next()).sheet.since?.tried).toEqual([{ cause: 'guides-worn', cylinders: [3] }]);
    await keep(oily);
    expect((await next()).sheet.since?.tried).toEqual([{ cause: 'guides-worn', cylinders: [3] }]);
    await keep(tan);
    expect((await next()).sheet.since?.tried).toBeUndefined();
  });

  it('leaves out a reading that no longer fits the engine, and stays usable', async () => {
    const { handlers, engineId, next } = await engineWithReadings(oily);
    const draft = await next();
    valueOf(await handlers['engine.save']({ id: engineId, engine: { name: 'now a twin', use: 'road', cylinders: 2 } }));
    const { sheet, revision } = valueOf(await handlers['reading.get']({ id: draft.id }));
    expect(sheet.since).toBeUndefined();
    expect(valueOf(await handlers['reading.save']({ id: draft.id, revision, sheet: draft.sheet, pending: {} })).revision).toBe(revision + 1);
  });
});

describe('the readings of an engine in time', () => {
  it('come the oldest first, each plug against the reading before', async () => {
    const { handlers, engineId, keep } = await engineWithReadings(tan, oily, oily);
    await keep(tan, (sheet) => ({ ...sheet, since: { ...sheet.since!, done: [{ cause: 'guides-worn', cylinders: [3] }] } }));
    const readings = valueOf(await handlers['reading.timeline']({ engineId }));
    expect(readings.map(({ plugs }) => plugs[2]?.change)).toEqual([null, 'new', 'unchanged', 'cured']);
    expect(readings.map(({ plugs }) => plugs[0]?.change)).toEqual([null, 'unchanged', 'unchanged', 'unchanged']);
    expect(readings[3]?.cures).toEqual([{ name: expect.stringContaining('guide') as string, cylinders: [3], outcome: 'borne out' }]);
    expect(readings[1]?.plugs[2]?.tip).toEqual(oily);
  });

  it('are compared as well where a sheet tells of none before it', async () => {
    const { handlers, engineId, keep } = await engineWithReadings(oily);
    await keep(tan, ({ since: _, ...sheet }) => sheet);
    const [, second] = valueOf(await handlers['reading.timeline']({ engineId }));
    expect(second?.plugs[2]).toMatchObject({ change: 'better', why: expect.stringContaining('nothing is noted as put right') as string });
  });

  it('are none of an engine that is not there', async () => {
    const { handlers } = await engineWithReadings();
    expect(await handlers['reading.timeline']({ engineId: '00000000-0000-4000-8000-000000000000' })).toMatchObject({ ok: false, error: { code: 'not-found' } });
  });
});

describe('any kept reading', () => {
  it('can be what a later one is compared with', async () => {
    const { handlers, keep, next } = await engineWithReadings();
    const first = await keep(oily);
    await keep(tan);
    expect(valueOf(await handlers['reading.since']({ id: first })).reading.plugs[2]?.tip).toEqual(oily);
    expect(await handlers['reading.since']({ id: (await next()).id })).toMatchObject({ ok: false, error: { code: 'not-found' } });
  });
});
