import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conclude } from '../../../../core/inference/conclude.ts';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import { disturbedSet } from '../inference/disturbed-set.ts';
import { forbids, guarded } from '../inference/guarded.ts';
import { after } from './two-readings.ts';

const RUNS = 400;
const cures = fc.uniqueArray(fc.constantFrom(...KNOWLEDGE.causes.map(({ id }) => id)), { maxLength: 12 }).map((ids) => ids.map((cause) => ({ cause })));

describe('whatever was done since the reading before', () => {
  it('nothing is advised that must never be, nor a plug hotter than one with a bar at the reading before', () => {
    let hotter = 0;
    fc.assert(fc.property(disturbedSet, disturbedSet, cures, (before, now, done) => {
      const sheet = after({ ...before, engine: now.engine }, now, done);
      const { step, breaches } = guarded(sheet);
      expect(breaches).toEqual([]);
      if (step !== 1) return;
      hotter += 1;
      expect(forbids(before)).toBe(false);
    }), { numRuns: RUNS });
    expect(hotter).toBeGreaterThan(0);
  }, 600_000);

  it('every stop of the sheet itself still fires', () => {
    fc.assert(fc.property(disturbedSet, cures, (now, done) => {
      const ids = (sheet: typeof now): string[] => conclude(sheet, KNOWLEDGE).stops.map(({ rule, cylinder }) => `${rule.id} ${cylinder}`);
      expect(ids(after(now, now, done))).toEqual(expect.arrayContaining(ids(now)));
    }), { numRuns: 100 });
  }, 600_000);
});
