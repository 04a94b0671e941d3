import { describe, expect, it } from 'vitest';
import { anchorsOf, learnedFrom, unusedReadings } from '../../../../core/heat/anchors.ts';
import { recordedRunning } from '../../../../core/heat/recorded-running.ts';
import { dutyOf, lambdaReached } from '../../../../core/heat/setting.ts';
import { tipSigns } from '../../../../core/heat/tip-signs.ts';
import type { HeatEntryRecord, HeatRecord, HeatSetting } from '../../../../shared/channels-heat.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';

type Tip = NonNullable<ReadingSheet['plugs'][number]['tip']>;

const engine: Engine = { use: 'road', cylinders: 4, boreMm: 80, strokeMm: 80, compressionRatio: 9, fitment: { heat: { scale: 'Ostrin', value: '6' } } };
const PULL = { duty: 'full load', stop: 'clean cut', warm: true, speedRpm: 5000, lambda: 0.88, advanceDeg: 26 } as const;
const BARE: Tip = { noseSurface: 'fine powder', deposit: 'light dusting' };
const SOOTY: Tip = { noseSurface: 'matt soot', deposit: 'dry soot' };

const sheetOf = (conditions: ReadingSheet['conditions'], tips: readonly Tip[], more: Partial<ReadingSheet> = {}): ReadingSheet => ({
  format: 'corenose.reading-sheet', version: 1, engine, conditions,
  plugs: tips.map((tip, i) => ({ cylinder: i + 1, tip, fitted: { heatStepsFromSpecified: 0 } })), ...more,
});
const four = (tip: Tip): readonly Tip[] => [tip, tip, tip, tip];
const record = (kept: readonly ReadingSheet[], entries: readonly HeatEntryRecord[] = []): HeatRecord =>
  ({ kept: kept.map((sheet, i) => ({ id: `r${i}`, sheet })), entries: [...entries] });

describe('what a set of tips shows of its temperature', () => {
  it('is what most of them show: one odd tip tells of its cylinder', () => {
    expect(tipSigns(sheetOf({ ...PULL, duty: 'steady cruise' }, four(SOOTY)))).toEqual(['soot kept']);
    expect(tipSigns(sheetOf({ ...PULL, duty: 'steady cruise' }, [SOOTY, BARE, BARE, BARE]))).toEqual([]);
    expect(tipSigns(sheetOf(PULL, [{ noseSurface: 'blistered' }, BARE, BARE, BARE]))).toEqual(['not blistered']);
    expect(tipSigns(sheetOf(PULL, four({ noseSurface: 'blistered', centreElectrode: 'melted' })))).toEqual(['blistered', 'melted']);
  });

  it('is cleaning only where soot lies deeper down: a clean nose alone may never have been sooty', () => {
    const cruise = { ...PULL, duty: 'steady cruise' } as const;
    expect(tipSigns(sheetOf(cruise, four(BARE)))).toEqual([]);
    expect(tipSigns(sheetOf(cruise, four({ ...BARE, sootRing: 'thin' })))).toEqual(['self-cleaned']);
  });

  it('is nothing after a stop at idle, from a cold engine, or where the reader doubts', () => {
    expect(tipSigns(sheetOf({ ...PULL, stop: 'idled before stop' }, four(SOOTY)))).toEqual([]);
    expect(tipSigns(sheetOf({ ...PULL, warm: false }, four(SOOTY)))).toEqual([]);
    expect(tipSigns(sheetOf(PULL, four({ ...SOOTY, unsure: ['noseSurface', 'deposit'] })))).toEqual([]);
  });
});

describe('the recorded running', () => {
  it('names everything that is lacking', () => {
    const bare: ReadingSheet = { ...sheetOf({ duty: 'mixed' }, four(BARE)), engine: { use: 'road', cylinders: 4 } };
    expect(recordedRunning({ ...bare, plugs: [{ cylinder: 1 }] })).toEqual({
      ok: false, error: ['bore', 'stroke', 'compression ratio', 'heat value', 'fitted heat value', 'duty', 'speed'],
    });
    const differing = { ...sheetOf(PULL, []), plugs: [0, 1].map((step, i) => ({ cylinder: i + 1, fitted: { heatStepsFromSpecified: step } })) };
    expect(recordedRunning(differing)).toEqual({ ok: false, error: ['one heat value'] });
  });

  it('says what it assumed, and nothing when mixture and advance are recorded', () => {
    const { lambda: _, advanceDeg: __, ...without } = PULL;
    const running = recordedRunning(sheetOf(without, four(BARE)));
    expect(running.ok && running.value.assumed).toEqual([{ kind: 'assumed', of: 'lambda', value: 0.88 }, { kind: 'assumed', of: 'advance', value: 26 }]);
    const told = recordedRunning(sheetOf(PULL, four(BARE)));
    expect(told.ok && told.value.assumed).toEqual([]);
  });

  it('takes lambda and air as they were measured, also behind a carburettor at height', () => {
    const sheet = sheetOf({ ...PULL, altitudeM: 1500, ambientC: 20, fuel: 'E10' }, four(BARE), { engine: { ...engine, mixture: { kind: 'carburettor' } } });
    const running = recordedRunning(sheet);
    if (!running.ok) throw new Error('refused');
    expect(lambdaReached(sheet.engine, running.value.setting)).toBeCloseTo(0.88, 10);
    expect(dutyOf(sheet.engine, running.value.setting).inlet).toBeCloseTo(20, 10);
  });
});

const setting: HeatSetting = { load: 1, rpm: 5000, lambda: 0.88, advance: 26, boost: 0, inlet: 20, coolant: 90, altitude: 0, heatStep: 0, gap: 0.7, coil: 25, fuel: 'petrol' };
const entry = (id: string, one: HeatEntryRecord['entry']): HeatEntryRecord => ({ id, engineId: 'e', createdAt: '2026-03-14T09:30:00Z', entry: one });

describe('what an engine told about its heat', () => {
  it('is the heat value asked for, its kept readings and what was entered by hand, in this order; notes are none of it', () => {
    const told = anchorsOf(engine, record([sheetOf({ ...PULL, egtC: 820 }, four(BARE))], [
      entry('a', { kind: 'probe', probe: 'thermocouple', celsius: 720, setting }), entry('b', { kind: 'note', note: 'x', setting }), entry('c', { kind: 'sign', sign: 'known good', setting }),
    ]));
    expect(told.map(({ source, reading }) => [source.kind, reading.showed.kind])).toEqual([
      ['specified', 'specified'], ['reading', 'not blistered'], ['reading', 'exhaust'], ['entry', 'thermocouple'], ['entry', 'known good'],
    ]);
  });

  it('counts the same sign at the same running once, or five sound glazes would claim more than they know; values count each time', () => {
    const pulls = Array.from({ length: 5 }, () => sheetOf(PULL, four(BARE)));
    expect(anchorsOf(engine, record(pulls)).map(({ reading }) => reading.showed.kind)).toEqual(['specified', 'not blistered']);
    const probes = [1, 2].map((n) => entry(String(n), { kind: 'probe', probe: 'thermocouple', celsius: 720, setting }));
    expect(anchorsOf(engine, record([], probes))).toHaveLength(3);
  });

  it('narrows the band step by step, and nothing of it widens the band again', () => {
    const { steps, belief } = learnedFrom(anchorsOf(engine, record([sheetOf(PULL, four(BARE))], [entry('a', { kind: 'probe', probe: 'thermocouple', celsius: 720, setting })])));
    for (const { before, after } of steps) expect(after.high - after.low).toBeLessThan(before.high - before.low);
    expect(belief.readings).toBe(steps.length);
  });

  it('leaves out readings that lack something, and says what', () => {
    expect(unusedReadings(record([sheetOf(PULL, four(BARE)), sheetOf({ duty: 'mixed' }, four(BARE), { date: '2026-02-05T10:00:00Z' })]))).toEqual([
      { id: 'r1', date: '2026-02-05', lacking: ['duty', 'speed'] },
    ]);
  });
});
