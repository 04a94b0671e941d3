import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { OpenReading } from '../../../../renderer/state/reading-slice.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import type { Bridge, Input } from '../../../../shared/channels.ts';
import type { FirstLook } from '../../../../shared/formats/first-look.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { ok } from '../../../../shared/result.ts';
import type { FakeHost } from '../support/fake-host.ts';
import { freshPage, openReadingOf } from '../support/page.ts';

const store = () => useStore.getState();
const reading = (): OpenReading => store().reading!;
const sootOn = (plug: string) => store().act({ type: 'tip', plug, facet: 'deposit', value: 'dry soot' });
const pass = (ms: number) => vi.advanceTimersByTimeAsync(ms);
const wait = (ms: number) => new Promise((done) => { setTimeout(done, ms); });

let host: FakeHost;
let id: string;
beforeEach(async () => {
  host = freshPage();
  id = await openReadingOf({ name: 'Bench four', use: 'road', cylinders: 4 });
  vi.useFakeTimers();
  await pass(1000);
  host.calls.length = 0;
});
afterEach(() => { vi.useRealTimers(); });

const asked = (channel: 'first-look' | 'diagnose'): number => host.calls.filter((name) => name === channel).length;
const sooty = ({ plugs }: ReadingSheet): number => plugs.filter(({ tip }) => tip !== undefined).length;

/** A look that stops for as many rules as the sheet has sooty plugs, so that it tells of which sheet it is. */
const lookAt = (sheet: ReadingSheet): FirstLook => ({ plugs: [], stop: Array.from({ length: sooty(sheet) }, () => ({ rule: 'counted', why: '' })) });
const shown = (): [plugs: number | undefined, isOlder: boolean | undefined] => [reading().decided?.look.stop.length, reading().decided?.isOlder];

/** Lets the host think before it answers. @returns how many questions of this kind were open at most */
function slowLook(ms: (sheet: ReadingSheet) => number): () => number {
  let [open, most] = [0, 0];
  const answer = async ({ sheet }: Input<'first-look'>) => {
    host.calls.push('first-look');
    most = Math.max(most, open += 1);
    await wait(ms(sheet));
    open -= 1;
    return ok(lookAt(sheet));
  };
  vi.stubGlobal('corenose', { ...host.bridge, 'first-look': answer } satisfies Bridge);
  return () => most;
}

describe('a first look', () => {
  it('is asked for at once, and decides before the findings are asked for', async () => {
    slowLook(() => 20);
    sootOn('1');
    expect(asked('first-look')).toBe(1);
    await pass(30);
    expect(shown()).toEqual([1, false]);
    expect(asked('diagnose')).toBe(0);
    expect(reading().diagnosis.kind).toBe('working');
  });

  it('is asked for one at a time, and of what changed meanwhile only the newest sheet is asked about', async () => {
    const most = slowLook(() => 60);
    for (const plug of ['1', '2', '3', '4']) {
      sootOn(plug);
      await pass(10);
    }
    await pass(90);
    expect([asked('first-look'), most()]).toEqual([2, 1]);
    expect(shown()).toEqual([4, false]);
  });

  it('at an older sheet is never shown; what was decided last stands as older until the newest is there', async () => {
    slowLook(() => 0);
    sootOn('1');
    await pass(10);
    slowLook((sheet) => (sooty(sheet) === 2 ? 100 : 50));
    sootOn('2');
    await pass(60);
    expect(shown()).toEqual([1, true]);
    sootOn('3');
    await pass(60);
    expect(shown()).toEqual([1, true]);
    await pass(40);
    expect(shown()).toEqual([3, false]);
  });

  it('that fails says nothing of it, and the findings decide', async () => {
    host.failing['first-look'] = { code: 'internal', message: 'no look' };
    sootOn('1');
    await pass(100);
    expect(reading()).toMatchObject({ decided: { isOlder: true }, diagnosis: { kind: 'working' } });
    await pass(500);
    expect(reading()).toMatchObject({ decided: { isOlder: false }, diagnosis: { kind: 'current' } });
    expect(reading().decided?.look).toBe(reading().findings);
  });

  it('that fails with the findings is one failure, asked about once and told once', async () => {
    host.failing['first-look'] = { code: 'internal', message: 'no look' };
    host.failing.diagnose = { code: 'internal', message: 'no findings' };
    sootOn('1');
    await pass(5000);
    expect(reading()).toMatchObject({ decided: { isOlder: true }, diagnosis: { kind: 'failed', error: { message: 'no findings' } } });
    expect([asked('first-look'), asked('diagnose')]).toEqual([1, 1]);
  });

  it('that comes after the findings of its sheet is not needed any more', async () => {
    slowLook(() => 1000);
    sootOn('1');
    await pass(500);
    expect(reading().decided).toEqual({ look: reading().findings, isOlder: false });
    await pass(2000);
    expect(reading().decided?.look).toBe(reading().findings);
    expect(asked('first-look')).toBe(1);
  });

  it('by lines of the workshop that changed meanwhile is dropped and asked for again', async () => {
    slowLook(() => 60);
    sootOn('1');
    await pass(30);
    store().judgeAnew();
    await pass(40);
    expect(reading().decided?.isOlder).toBe(true);
    expect(asked('first-look')).toBe(2);
    await pass(60);
    expect(shown()).toEqual([1, false]);
  });

  it('is not asked for where the sheet stays as it is, as while a number is typed that cannot be taken yet', async () => {
    store().act({ type: 'measured', plug: '2', field: 'gapMm', value: undefined }, { path: 'plugs.2.measured.gapMm', raw: '0,7x' });
    await pass(500);
    expect([asked('first-look'), asked('diagnose')]).toEqual([0, 0]);
    expect(reading().decided?.isOlder).toBe(false);
  });

  it('at a draft does not touch the findings that a reading was kept with', async () => {
    slowLook(() => 1000);
    sootOn('1');
    await store().keepReading();
    await pass(5000);
    expect(reading()).toMatchObject({ id, state: 'kept', diagnosis: { kind: 'current' }, decided: { isOlder: false } });
    expect(reading().decided?.look).toBe(reading().findings);
  });
});

describe('findings', () => {
  it('are asked for once after a burst of changes', async () => {
    for (const plug of ['1', '2', '3', '4']) sootOn(plug);
    expect(reading().diagnosis.kind).toBe('working');
    await pass(1000);
    expect(asked('diagnose')).toBe(1);
    expect(reading().diagnosis.kind).toBe('current');
  });

  it('of an older sheet are dropped, and a host that thinks long is asked one thing at a time', async () => {
    const slow = host.bridge.diagnose;
    let [open, most] = [0, 0];
    vi.stubGlobal('corenose', { ...host.bridge, diagnose: async (input: Parameters<typeof slow>[0]) => {
      most = Math.max(most, open += 1);
      const reply = await slow(input);
      const soots = sooty(input.sheet);
      await wait(soots === 1 ? 2000 : 10);
      open -= 1;
      return reply.ok ? { ok: true, value: { ...reply.value, summary: `${soots}` } } : reply;
    } });
    sootOn('1');
    await pass(600);
    sootOn('2');
    await pass(1000);
    expect(reading().findings).toBeNull();
    await pass(3000);
    expect(reading().findings?.summary).toBe('2');
    expect(most).toBe(1);
  });

  it('that a reading was kept with stay as they were, also when an answer to another reading comes late', async () => {
    await store().keepReading();
    const kept = id;
    const slow = host.bridge.diagnose;
    vi.stubGlobal('corenose', { ...host.bridge, diagnose: async (input: Parameters<typeof slow>[0]) => {
      await wait(1000);
      return slow(input);
    } });
    await store().startReading([...host.engines.keys()][0]!);
    await pass(500);
    await store().openReading(kept);
    host.calls.length = 0;
    await pass(5000);
    expect(reading()).toMatchObject({ id: kept, diagnosis: { kind: 'current' } });
    expect(asked('diagnose')).toBe(1);
  });
});
