import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseReadingSheet, type ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { plugAt } from '../../../../renderer/state/places.ts';
import { isEmpty } from '../../../../renderer/state/prune.ts';
import type { ReadingAction } from '../../../../renderer/state/reading-action.ts';
import { readingReducer } from '../../../../renderer/state/reading-reducer.ts';
import { anyAction, fourCylinders, twinPlugFlatFour } from './any-action.ts';

const after = (sheet: ReadingSheet, ...actions: readonly ReadingAction[]): ReadingSheet => actions.reduce(readingReducer, sheet);

const emptyParts = (value: unknown): boolean => typeof value === 'object' && value !== null && Object.values(value).some((part) => isEmpty(part) || emptyParts(part));

describe('a reading sheet under any sequence of actions', () => {
  it('stays valid, and never holds an empty part that would pretend an observation', () => {
    fc.assert(fc.property(fc.constantFrom(fourCylinders, twinPlugFlatFour), fc.array(anyAction, { maxLength: 60 }), (start, actions) => {
      const sheet = after(start, ...actions);
      expect(parseReadingSheet(sheet)).toEqual({ ok: true, value: sheet });
      expect(emptyParts(sheet)).toBe(false);
    }), { numRuns: 400 });
  });

  it('is never changed in place', () => {
    fc.assert(fc.property(fc.array(anyAction, { maxLength: 20 }), (actions) => {
      const before = structuredClone(twinPlugFlatFour);
      after(twinPlugFlatFour, ...actions);
      expect(twinPlugFlatFour).toEqual(before);
    }));
  });

  it('comes back as it was when everything observed is taken back', () => {
    const sheet = after(fourCylinders,
      { type: 'tip', plug: '3', facet: 'deposit', value: 'dry soot' }, { type: 'unsure', plug: '3', facet: 'deposit', on: true },
      { type: 'measured', plug: '3', field: 'gapMm', value: 0.9 }, { type: 'tag', tag: 'old leads', on: true },
      { type: 'check', cylinder: 3, field: 'spark', value: 'weak' }, { type: 'symptom', what: 'misfire', cylinder: 3, on: true });
    expect(sheet).not.toEqual(fourCylinders);
    expect(after(sheet,
      { type: 'tip', plug: '3', facet: 'deposit', value: undefined }, { type: 'measured', plug: '3', field: 'gapMm', value: undefined },
      { type: 'tag', tag: 'old leads', on: false }, { type: 'check', cylinder: 3, field: 'spark', value: undefined },
      { type: 'symptom', what: 'misfire', cylinder: 3, on: false })).toEqual(fourCylinders);
  });
});

describe('what a person does to a tip', () => {
  const sooty = after(fourCylinders, { type: 'tip', plug: '2', facet: 'deposit', value: 'dry soot' }, { type: 'unsure', plug: '2', facet: 'deposit', on: true });

  it('copies the whole tip, doubts too, and leaves measurements and notes of the others alone', () => {
    const measured = after(sooty, { type: 'measured', plug: '4', field: 'gapMm', value: 0.8 }, { type: 'note', plug: '4', text: 'new lead' });
    const copied = after(measured, { type: 'copyTip', from: '2', to: ['1', '4'] });
    expect(plugAt(copied, '4')).toEqual({ cylinder: 4, tip: { deposit: 'dry soot', unsure: ['deposit'] }, measured: { gapMm: 0.8 }, note: 'new lead' });
    expect(plugAt(copied, '1')?.tip).toEqual({ deposit: 'dry soot', unsure: ['deposit'] });
    expect(plugAt(copied, '3')).toEqual({ cylinder: 3 });
  });

  it('drops the doubt with the value it doubts', () => {
    expect(plugAt(after(sooty, { type: 'tip', plug: '2', facet: 'deposit', value: undefined }), '2')).toEqual({ cylinder: 2 });
  });

  it('takes over some answers of another tip, doubts with them, and keeps its own where the other was not looked at', () => {
    const own = after(sooty, { type: 'tip', plug: '1', facet: 'noseColour', value: 'brown' }, { type: 'tip', plug: '1', facet: 'deposit', value: 'lead film' },
      { type: 'tip', plug: '2', facet: 'shellRim', value: 'ash' });
    const taken = after(own, { type: 'copyTip', from: '2', to: ['1'], only: ['deposit', 'noseColour', 'specks'] });
    expect(plugAt(taken, '1')?.tip).toEqual({ noseColour: 'brown', deposit: 'dry soot', unsure: ['deposit'] });
  });

  it('copies nothing from a tip that was not looked at, rather than wiping the others', () => {
    expect(after(sooty, { type: 'copyTip', from: '1', to: ['2'] })).toBe(sooty);
  });

  it('leaves a plug out of the reading, takes it in again at its place, and never leaves out the last', () => {
    const without = after(fourCylinders, { type: 'plugOff', plug: '2' });
    expect(without.plugs.map((plug) => plug.cylinder)).toEqual([1, 3, 4]);
    expect(after(without, { type: 'plugOn', plug: '2' }).plugs.map((plug) => plug.cylinder)).toEqual([1, 2, 3, 4]);
    const last = after(without, { type: 'plugOff', plug: '1' }, { type: 'plugOff', plug: '3' });
    expect(after(last, { type: 'plugOff', plug: '4' })).toBe(last);
  });
});

describe('what a person notes of the engine', () => {
  it('says of a symptom that it is there or that it was looked for and not there, never both', () => {
    const there = after(fourCylinders, { type: 'symptom', what: 'misfire', cylinder: 3, on: true });
    const absent = after(there, { type: 'symptomAbsent', what: 'misfire', on: true });
    expect(absent.symptoms).toBeUndefined();
    expect(absent.symptomsAbsent).toEqual(['misfire']);
    expect(after(absent, { type: 'symptom', what: 'misfire', on: true }).symptomsAbsent).toBeUndefined();
  });

  it('keeps one outcome for a part swapped between the same two cylinders: the last one noted', () => {
    const followed = after(fourCylinders, { type: 'swap', cylinder: 3, swap: { part: 'lead', to: 1, followed: true }, on: true });
    const corrected = after(followed, { type: 'swap', cylinder: 3, swap: { part: 'lead', to: 1, followed: false }, on: true });
    expect(corrected.cylinderChecks).toEqual([{ cylinder: 3, swaps: [{ part: 'lead', to: 1, followed: false }] }]);
  });

  it('keeps "warm: no" and "0 kPa", which are observations', () => {
    const sheet = after(fourCylinders, { type: 'condition', field: 'warm', value: false }, { type: 'check', cylinder: 2, field: 'compressionKPa', value: 0 });
    expect(sheet.conditions).toEqual({ warm: false });
    expect(sheet.cylinderChecks).toEqual([{ cylinder: 2, compressionKPa: 0 }]);
  });

  it('refuses a compression no gauge shows and a cylinder the engine has not', () => {
    expect(after(fourCylinders, { type: 'check', cylinder: 1, field: 'compressionKPa', value: 60_000 })).toBe(fourCylinders);
    expect(after(fourCylinders, { type: 'symptom', what: 'misfire', cylinder: 5, on: true })).toBe(fourCylinders);
  });
});

describe('what a reading is compared with', () => {
  const since = { reading: { date: '2026-02-14', plugs: [{ cylinder: 3, tip: { deposit: 'wet oil' as const } }] } };
  const compared = readingReducer(fourCylinders, { type: 'since', since });
  const guides = { cause: 'guides-worn', cylinders: [3] };

  it('is a reading with all that was seen, and can be taken back', () => {
    expect(compared.since).toEqual(since);
    expect(readingReducer(compared, { type: 'since', since: undefined })).toEqual(fourCylinders);
  });

  it('carries what was put right, once, and keeps it beside another reading', () => {
    const done = readingReducer(compared, { type: 'cure', cure: guides, on: true });
    expect(done.since?.done).toEqual([guides]);
    expect(readingReducer(done, { type: 'cure', cure: guides, on: true })).toBe(done);
    expect(readingReducer(done, { type: 'since', since: { reading: { plugs: [{ cylinder: 1 }] } } }).since?.done).toEqual([guides]);
    expect(readingReducer(done, { type: 'cure', cure: guides, on: false })).toEqual(compared);
  });

  it('tells the same cure on two cylinders apart', () => {
    const both = [3, 4].reduce((sheet, n) => readingReducer(sheet, { type: 'cure', cure: { cause: 'guides-worn', cylinders: [n] }, on: true }), compared);
    expect(readingReducer(both, { type: 'cure', cure: guides, on: false }).since?.done).toEqual([{ cause: 'guides-worn', cylinders: [4] }]);
  });

  it('is nothing that could be put right without a reading before', () => {
    expect(readingReducer(fourCylinders, { type: 'cure', cure: guides, on: true })).toBe(fourCylinders);
  });
});
