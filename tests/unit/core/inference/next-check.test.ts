import { describe, expect, it } from 'vitest';
import { evidenceOf } from '../../../../core/inference/evidence.ts';
import { networkFor } from '../../../../core/inference/network.ts';
import { decisionEntropy, nextChecks, worldsOf } from '../../../../core/inference/next-check.ts';
import { solverFor } from '../../../../core/inference/posterior.ts';
import { CYLINDER_FINDINGS, HEALTHY_CYLINDER } from '../../../../core/knowledge/findings.ts';
import { STRENGTHS } from '../../../../core/knowledge/strengths.ts';
import type { Check } from '../../../../core/knowledge/types.ts';
import { cause, condition, knowledge, makes, shows } from './small-knowledge.ts';

const compression: Check = {
  id: 'compression',
  name: 'Measure the compression',
  scope: 'cylinder',
  minutes: 10,
  tells: { finding: 'compression' },
  how: 'Measure.',
  cautions: [],
  because: 'made up',
  source: 'common practice',
};

/** Two rivals that look alike on the plug; one of them lowers the compression. */
const kb = knowledge(
  [condition('oil', { leak: 0, verdict: 'oil fouling', shows: [shows('deposit', 'wet oil', 'almost always')] })],
  [
    cause('rings', {
      scope: 'cylinder',
      makes: [makes('oil', 'usually')],
      shows: [{ finding: 'compression', is: 'low', strength: 'usually', because: 'made up', source: 'common practice' }],
    }),
    cause('guides', { scope: 'cylinder', makes: [makes('oil', 'usually')] }),
  ],
);

const evidence = evidenceOf({
  format: 'corenose.reading-sheet',
  version: 1,
  engine: { use: 'road', cylinders: 1 },
  plugs: [{ cylinder: 1, tip: { deposit: 'wet oil' } }],
});
const worlds = worldsOf(solverFor(networkFor(kb, evidence))(evidence), 1);

const entropy = (ps: readonly number[]): number => ps.reduce((h, p) => (p > 0 ? h - p * Math.log2(p) : h), 0);

describe('the next check', () => {
  it('gains what the definition of mutual information says', () => {
    // Shannon: I = H(decision) - Σ P(outcome) H(decision | outcome), summed here over the worlds straight from the definition.
    const key = (w: (typeof worlds)[number]): string =>
      w.causes
        .map((i) => i.cause.cure)
        .sort()
        .join();
    const by = (list: readonly { key: string; p: number }[]): number[] => [
      ...list.reduce((m, { key: k, p }) => m.set(k, (m.get(k) ?? 0) + p), new Map<string, number>()).values(),
    ];
    const healthy: Readonly<Record<string, number>> = HEALTHY_CYLINDER.compression;
    const all = Object.values(healthy).reduce((a, b) => a + b, 0);
    const chance = (w: (typeof worlds)[number], value: string): number => {
      const rest = (healthy[value] ?? 0) / all;
      return w.causes.some((i) => i.cause.id === 'rings') ? (1 - STRENGTHS.usually) * rest + (value === 'low' ? STRENGTHS.usually : 0) : rest;
    };
    const after = CYLINDER_FINDINGS.compression.reduce((sum, value) => {
      const joint = worlds.map((w) => ({ key: key(w), p: w.probability * chance(w, value) }));
      const p = joint.reduce((a, b) => a + b.p, 0);
      return sum + p * entropy(by(joint).map((v) => v / p));
    }, 0);
    const expected = entropy(by(worlds.map((w) => ({ key: key(w), p: w.probability })))) - after;
    const [check] = nextChecks({ checks: [compression], worlds, answers: () => true, cylinder: 1, evidence, scope: 'cylinder' });
    expect(check?.gainBits).toBeCloseTo(expected, 2);
    expect(check?.why).toContain('if low (');
  });

  it('is not one that was made already, nor one that would turn nothing', () => {
    const measured = evidenceOf({ ...evidence.sheet, cylinderChecks: [{ cylinder: 1, compressionKPa: 1200 }] });
    expect(nextChecks({ checks: [compression], worlds, answers: () => true, cylinder: 1, evidence: measured, scope: 'cylinder' })).toEqual([]);
    const spark: Check = { ...compression, id: 'spark', tells: { finding: 'spark' } };
    expect(nextChecks({ checks: [spark], worlds, answers: () => true, cylinder: 1, evidence, scope: 'cylinder' })).toEqual([]);
  });

  it('measures a decision between two like chances as one bit', () => {
    expect(
      decisionEntropy([
        { probability: 0.5, decision: 0 },
        { probability: 0.25, decision: 1 },
        { probability: 0.25, decision: 1 },
      ]),
    ).toBeCloseTo(1, 12);
  });
});
