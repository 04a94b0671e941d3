import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MOST_STEPS, record, redone, startHistory, undone, type History } from '../../../../renderer/state/history.ts';
import { joinTarget } from '../../../../renderer/state/reading-action.ts';
import { readingReducer } from '../../../../renderer/state/reading-reducer.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { anyAction, fourCylinders } from './any-action.ts';

const step = (history: History<ReadingSheet>, action: Parameters<typeof readingReducer>[1]): History<ReadingSheet> => {
  const next = readingReducer(history.now, action);
  return next === history.now ? history : record(history, next, joinTarget(action));
};
const times = <T>(n: number, change: (value: T) => T, value: T): T => Array.from({ length: n }).reduce<T>((so) => change(so), value);

describe('undo', () => {
  it('brings back every sheet there was, and redo every sheet again', () => {
    fc.assert(fc.property(fc.array(anyAction, { maxLength: 40 }), (actions) => {
      const done = actions.reduce(step, startHistory(fourCylinders));
      const steps = done.past.length;
      const back = times(steps, undone, done);
      expect(back.now).toBe(fourCylinders);
      expect(times(steps, redone, back).now).toBe(done.now);
    }));
  });

  it('goes back at least 200 steps', () => {
    const done = Array.from({ length: 700 }, (_, i) => i + 1).reduce((history, n) => record(history, n), startHistory(0));
    expect(MOST_STEPS).toBeGreaterThanOrEqual(200);
    expect(times(200, undone, done).now).toBe(500);
  });

  it('takes a note typed in one go back at once, and a note to another plug on its own', () => {
    const typed = [
      { type: 'note', plug: '1', text: 'c' }, { type: 'note', plug: '1', text: 'crack' }, { type: 'note', plug: '2', text: 'sound' },
    ] as const;
    const done = typed.reduce(step, startHistory(fourCylinders));
    expect(undone(done).now.plugs[0]?.note).toBe('crack');
    expect(undone(undone(done)).now).toBe(fourCylinders);
  });

  it('forgets what was taken back once something else is done', () => {
    const branched = record(undone(record(startHistory('a'), 'b')), 'c');
    expect(redone(branched)).toBe(branched);
    expect(undone(branched).now).toBe('a');
  });
});
