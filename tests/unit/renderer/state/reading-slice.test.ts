import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { OpenReading } from '../../../../renderer/state/reading-slice.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import type { FakeHost } from '../support/fake-host.ts';
import { freshPage, openReadingOf } from '../support/page.ts';

const four = { name: 'Bench four', use: 'road', cylinders: 4 } as const;
const store = () => useStore.getState();
const reading = (): OpenReading => store().reading!;
const sootOn = (plug: string) => store().act({ type: 'tip', plug, facet: 'deposit', value: 'dry soot' });

let host: FakeHost;
let id: string;
beforeEach(async () => {
  host = freshPage();
  id = await openReadingOf(four);
});

describe('a draft on the bench', () => {
  it('is on disk after every change, one save at a time, the last state last', async () => {
    for (const plug of ['1', '2', '3', '4']) sootOn(plug);
    expect(reading().save.kind).toBe('saving');
    expect(await store().flushReading()).toBe(true);
    expect(reading().save.kind).toBe('saved');
    expect(host.readings.get(id)?.sheet).toEqual(reading().history.now.sheet);
    expect(host.calls.filter((name) => name === 'reading.save')).toHaveLength(2);
  });

  it('keeps a number that cannot be taken yet beside the sheet, and saves it with the draft', async () => {
    store().act({ type: 'measured', plug: '2', field: 'gapMm', value: undefined }, { path: 'plugs.2.measured.gapMm', raw: '0,7x' });
    await store().flushReading();
    expect(host.readings.get(id)?.pending).toEqual({ 'plugs.2.measured.gapMm': '0,7x' });
    store().act({ type: 'measured', plug: '2', field: 'gapMm', value: 0.7 }, { path: 'plugs.2.measured.gapMm', raw: undefined });
    await store().flushReading();
    expect(host.readings.get(id)?.pending).toEqual({});
    expect(host.readings.get(id)?.sheet.plugs[1]?.measured).toEqual({ gapMm: 0.7 });
  });

  it('is tried again when the disk was full, and nothing is lost', async () => {
    vi.useFakeTimers();
    host.failing['reading.save'] = { code: 'disk-full', message: 'The disk is full.' };
    sootOn('1');
    expect(await store().flushReading()).toBe(false);
    expect(reading().save).toEqual({ kind: 'not saved', error: host.failing['reading.save'] });
    delete host.failing['reading.save'];
    await vi.advanceTimersByTimeAsync(6000);
    expect(reading().save.kind).toBe('saved');
    expect(host.readings.get(id)?.sheet.plugs[0]?.tip).toEqual({ deposit: 'dry soot' });
    vi.useRealTimers();
  });

  it('undoes and redoes, and both are saved', async () => {
    sootOn('3');
    store().undo();
    await store().flushReading();
    expect(host.readings.get(id)?.sheet.plugs[2]?.tip).toBeUndefined();
    store().redo();
    await store().flushReading();
    expect(host.readings.get(id)?.sheet.plugs[2]?.tip).toEqual({ deposit: 'dry soot' });
  });

  it('does not give way to another reading while it is not saved', async () => {
    host.failing['reading.save'] = { code: 'disk-full', message: 'The disk is full.' };
    sootOn('1');
    const other = [...host.engines.keys()][0]!;
    expect((await store().startReading(other)).ok).toBe(false);
    expect(await store().openReading('elsewhere')).toEqual(host.failing['reading.save']);
    expect(reading().id).toBe(id);
  });
});

describe('a draft changed in another window', () => {
  const changedElsewhere = (): void => {
    const stored = host.readings.get(id)!;
    host.readings.set(id, { ...stored, revision: stored.revision + 5, sheet: { ...stored.sheet, title: 'from the other window' } });
  };
  beforeEach(async () => {
    changedElsewhere();
    sootOn('2');
    await store().flushReading();
  });

  it('is not overwritten, and waits for a choice', () => {
    expect(reading().save).toMatchObject({ kind: 'not saved', error: { code: 'conflict' } });
    expect(host.readings.get(id)?.sheet.title).toBe('from the other window');
  });

  it('is what this window shows after "keep what is on this screen"', async () => {
    expect(await store().resolveConflict('mine')).toBeNull();
    expect(host.readings.get(id)?.sheet).toMatchObject({ plugs: [{ cylinder: 1 }, { cylinder: 2, tip: { deposit: 'dry soot' } }, { cylinder: 3 }, { cylinder: 4 }] });
    expect(host.readings.get(id)?.sheet.title).toBeUndefined();
  });

  it('is what the other window wrote after "take the other one", and undo brings this one back', async () => {
    expect(await store().resolveConflict('theirs')).toBeNull();
    expect(reading().history.now.sheet.title).toBe('from the other window');
    store().undo();
    expect(reading().history.now.sheet.plugs[1]?.tip).toEqual({ deposit: 'dry soot' });
  });

  it('and kept there too, can be opened again for what is on this screen, or taken as it was kept', async () => {
    host.readings.set(id, { ...host.readings.get(id)!, state: 'kept' });
    expect(await store().resolveConflict('mine')).toBeNull();
    expect(host.readings.get(id)).toMatchObject({ state: 'draft', sheet: { plugs: [{ cylinder: 1 }, { cylinder: 2, tip: { deposit: 'dry soot' } }, { cylinder: 3 }, { cylinder: 4 }] } });
    host.readings.set(id, { ...host.readings.get(id)!, state: 'kept', revision: 40 });
    sootOn('1');
    await store().flushReading();
    expect(reading().save.kind).toBe('not saved');
    expect(await store().resolveConflict('theirs')).toBeNull();
    expect(reading()).toMatchObject({ state: 'kept', save: { kind: 'saved' } });
    expect(reading().history.now.sheet.plugs[0]?.tip).toBeUndefined();
  });
});

describe('a draft that is open while its engine is changed on another screen', () => {
  it('is fetched anew, with all that was entered', async () => {
    sootOn('1');
    await store().flushReading();
    const { engineId } = reading();
    await store().saveEngine(engineId, { ...host.engines.get(engineId)!.engine, cycle: 'two-stroke' });
    expect(store().reading).toBeNull();
    expect(await store().openReading(id)).toBeNull();
    expect(reading().history.now.sheet.plugs[0]?.tip).toBeDefined();
  });

  it('stays as it is as long as it is not saved', async () => {
    host.failing['reading.save'] = { code: 'disk-full', message: 'The disk is full.' };
    sootOn('1');
    await store().flushReading();
    const { engineId } = reading();
    await store().saveEngine(engineId, { ...host.engines.get(engineId)!.engine, cycle: 'two-stroke' });
    expect(reading().history.now.sheet.plugs[0]?.tip).toBeDefined();
  });

  it('is not shown any more once it is removed', async () => {
    await store().removeReading(id);
    expect(store().reading).toBeNull();
  });
});

describe('a kept reading', () => {
  it('is closed: a change asks to open it again, and does nothing until then', async () => {
    sootOn('1');
    expect(await store().keepReading()).toBeNull();
    const kept = reading().history.now.sheet;
    sootOn('2');
    expect(reading()).toMatchObject({ state: 'kept', refused: true });
    expect(reading().history.now.sheet).toBe(kept);
    expect(await store().reopenReading()).toBeNull();
    sootOn('2');
    expect(reading().history.now.sheet).not.toBe(kept);
  });
});
