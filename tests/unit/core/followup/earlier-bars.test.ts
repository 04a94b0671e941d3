import { describe, expect, it } from 'vitest';
import { barsFromBefore } from '../../../../core/followup/earlier-bars.ts';
import type { Bar } from '../../../../core/knowledge/types.ts';
import type { PlugReading, ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { sheetOf } from '../inference/sheet-of.ts';

const grounds = { because: 'made up for a test', source: 'S16' } as const;
const oil: Bar = { id: 'oil', sign: 'oil', anyOf: [{ plug: 'deposit', is: ['wet oil'] }], ...grounds };
const knock: Bar = { id: 'knock', sign: 'knock', anyOf: [{ symptom: 'knock under load' }], ...grounds };

const oily: PlugReading = { cylinder: 2, tip: { deposit: 'wet oil' } };
const steps = (heatStepsFromSpecified: number): PlugReading => ({ cylinder: 1, fitted: { heatStepsFromSpecified } });
const after = (before: readonly PlugReading[], now: Partial<ReadingSheet> = {}): ReadingSheet =>
  sheetOf({ since: { reading: { plugs: [...before] } }, ...now });
const signs = (sheet: ReadingSheet, now: readonly Bar[] = []): string[] => barsFromBefore([oil, knock], sheet, now).map(({ sign }) => sign);

describe('a bar on a hotter plug at the reading before', () => {
  it('still counts, whatever was put right since, and says when it was seen', () => {
    expect(signs(after([oily]))).toEqual(['oil, at the reading before']);
    expect(signs({ ...after([oily]), since: { reading: { plugs: [oily] }, done: [{ cause: 'guides-worn' }] } })).toEqual(['oil, at the reading before']);
    expect(barsFromBefore([oil], after([oily]), [])[0]).toMatchObject({ id: 'oil', because: grounds.because, source: 'S16' });
  });

  it('is not told twice where this reading shows the same', () => {
    expect(signs(after([oily]), [oil])).toEqual([]);
    expect(signs(after([oily]), [knock])).toEqual(['oil, at the reading before']);
  });

  it('is none where that reading was free of it, or where there was none', () => {
    expect(signs(after([{ cylinder: 2, tip: { deposit: 'none' } }], { plugs: [oily] }))).toEqual([]);
    expect(signs(sheetOf({ plugs: [oily], conditions: { tags: ['heat step changed'] } }))).toEqual([]);
  });
});

describe('a heat step taken since the reading before', () => {
  it('bars a second one until this reading has judged it', () => {
    expect(signs(after([steps(0)], { plugs: [steps(1)] }))).toEqual(['a heat step taken since the reading before']);
    expect(signs(after([oily], { conditions: { tags: ['heat step changed'] } }))).toEqual(['oil, at the reading before', 'a heat step taken since the reading before']);
    expect(barsFromBefore([], after([steps(0)], { plugs: [steps(-1)] }), [])[0]?.because).toMatch(/^One step a trial/);
  });

  it('is none where the plugs stand as before', () => {
    expect(signs(after([steps(1)], { plugs: [steps(1)] }))).toEqual([]);
  });
});
