import { describe, expect, it } from 'vitest';
import { evidenceOf } from '../../../../core/inference/evidence.ts';
import { partsFor, worldProbabilities } from '../../../../core/inference/solved-cylinder.ts';
import { HEALTHY_SYMPTOM } from '../../../../core/knowledge/findings.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { few, setsOf, solved, sum, valveAfter, weightOf, type Felt } from './many-causes.ts';
import { sheetOf } from './sheet-of.ts';

describe('the parts of the symptom sum', () => {
  const parts = (present: readonly ('misfire' | 'surging')[], symptomsAbsent: ReadingSheet['symptomsAbsent'] = []): ReturnType<typeof partsFor> =>
    partsFor(evidenceOf(sheetOf({ symptoms: present.map((what) => ({ what })), symptomsAbsent })));

  it('are the symptoms taken as absent, with alternating signs (Heckerman 1989)', () => {
    const healthy = 1 - HEALTHY_SYMPTOM;
    expect(parts(['misfire'], ['surging']).all).toEqual([
      { coefficient: healthy, taken: ['surging'] }, { coefficient: -(healthy ** 2), taken: ['misfire', 'surging'] },
    ]);
  });

  it('bear the same key for the same symptoms, and another for others, felt or looked for', () => {
    expect(parts(['misfire']).key).toBe(parts(['misfire']).key);
    const keys = [parts([]), parts(['misfire']), parts(['surging']), parts(['misfire', 'surging']), parts([], ['misfire'])].map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
  });
});

describe('the worlds of a cylinder', () => {
  it.each<Felt>(['not asked', 'felt', 'absent'])('are as likely as the formula says, and all of them one (misfire %s)', (felt) => {
    const solution = solved(few, felt);
    const [{ solved: here }] = solution.cylinders as [(typeof solution.cylinders)[number]];
    const p = worldProbabilities(here);
    expect(sum([...p])).toBeCloseTo(1, 12);
    const total = sum(setsOf(few).map((set) => weightOf(set, felt)));
    // Each cause with the valve of the cylinder beside it, which leaves no room for more.
    few.forEach((one, v) => {
      const w = Array.from(here.worlds.first).findIndex((a, at) => a === v && here.worlds.second[at] === valveAfter(few));
      expect(p[w]).toBeCloseTo(weightOf([one], felt, true) / total, 12);
    });
  });
});
