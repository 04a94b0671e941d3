import { describe, expect, it } from 'vitest';
import { engineWorlds } from '../../../../core/inference/engine-worlds.ts';
import { evidenceOf } from '../../../../core/inference/evidence.ts';
import { networkFor } from '../../../../core/inference/network.ts';
import { worldsOf } from '../../../../core/inference/next-check.ts';
import { solverFor } from '../../../../core/inference/posterior.ts';
import { cause, condition, knowledge } from './small-knowledge.ts';

/** A fault of any cylinder, and one of the engine, that both make it miss. */
const misses = { symptom: 'misfire', strength: 'usually', because: 'made up', source: 'common practice' } as const;
const kb = knowledge([condition('soot', { leak: 0, verdict: 'dry carbon fouling' })], [
  cause('lead', { scope: 'cylinder', gives: [misses] }), cause('fuel', { scope: 'engine', gives: [misses] }), cause('chip', { scope: 'cylinder' }),
]);
const evidence = evidenceOf({
  format: 'corenose.reading-sheet', version: 1, engine: { use: 'road', cylinders: 2 }, symptoms: [{ what: 'misfire' }], plugs: [{ cylinder: 1 }, { cylinder: 2 }],
});
const solution = solverFor(networkFor(kb, evidence))(evidence);
const worlds = engineWorlds([1, 2].map((n) => worldsOf(solution, n)), ({ gives }) => gives.length > 0);
const named = (ids: readonly string[]): string => [...ids].sort().join();
/** Of these causes and no others, wherever they sit. */
const chance = (...ids: readonly string[]): number =>
  worlds.filter(({ causes }) => named(causes.map((one) => one.cause.id)) === named(ids)).reduce((sum, w) => sum + w.probability, 0);

describe('the worlds of the whole engine', () => {
  it('weigh what every set of causes weighs, worked out by hand from the definitions; two cylinders at once are left out', () => {
    // Every cause has prior odds 0.04 : 0.96 and makes the symptom with 0.7; felt with nothing wrong 0.03. P(felt | n causes) = 1 - 0.97 · 0.3^n.
    const weight = (n: number): number => 0.04 ** n * 0.96 ** (3 - n) * (1 - 0.97 * 0.3 ** n);
    const all = weight(0) + 3 * weight(1) + 3 * weight(2) + weight(3);
    // Leaving out the leads of both cylinders at once costs their weight, 1.3 % here; no set may be off by more than twice that.
    const both = (weight(2) + weight(3)) / all;
    expect(both).toBeLessThan(0.014);
    for (const [times, ids] of [[1, []], [1, ['fuel']], [2, ['lead']], [2, ['fuel', 'lead']]] as const)
      expect(Math.abs(chance(...ids) - (times * weight(ids.length)) / all)).toBeLessThan(2 * both);
    expect(chance('lead', 'lead')).toBe(0);
    expect(worlds.reduce((sum, w) => sum + w.probability, 0)).toBeCloseTo(1, 12);
  });

  it('do not tell apart what answers nothing', () => {
    expect(worlds.some(({ causes }) => causes.some(({ id }) => id.startsWith('chip')))).toBe(false);
  });
});
