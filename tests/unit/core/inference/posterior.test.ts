import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reportProbability } from '../../../../core/inference/appearance.ts';
import { evidenceOf } from '../../../../core/inference/evidence.ts';
import { networkFor, type Instance } from '../../../../core/inference/network.ts';
import { forEachConditionSet, plugBeliefs, type PlugBelief } from '../../../../core/inference/plug-belief.ts';
import { solverFor } from '../../../../core/inference/posterior.ts';
import { PRIORS, STRENGTHS } from '../../../../core/knowledge/strengths.ts';
import { bruteForce, SOLVER_BOUNDS } from './brute-force.ts';
import { anyKnowledge, anySmallSheet, cause, condition, knowledge, makes, shows } from './small-knowledge.ts';

function withCondition(belief: PlugBelief, k: number): number {
  let sum = 0;
  forEachConditionSet(belief, (i, j, p) => { if (i === k || j === k) sum += p; });
  return sum;
}

describe('the marking model', () => {
  it('is the noisy-OR with leak for a finding that is there or not', () => {
    // Closed form: Pearl, Probabilistic Reasoning in Intelligent Systems, 1988, section 4.3.2: P(present) = 1 - (1 - leak) Π (1 - p_i).
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        fc.array(fc.double({ min: 0.001, max: 0.97, noNaN: true }), { maxLength: 4 }),
        (leak, ps) => {
          const noisyOr = 1 - (1 - leak) * ps.reduce((q, p) => q * (1 - p), 1);
          expect(
            reportProbability(
              leak,
              ps.map((p) => ({ mark: p, report: p })),
            ),
          ).toBeCloseTo(noisyOr, 12);
        },
      ),
    );
  });
});

describe('beliefs', () => {
  it('follow Bayes’ rule worked by hand for one cause, one condition, one finding', () => {
    const kb = knowledge(
      [condition('soot', { leak: 0, shows: [shows('deposit', 'dry soot', 'usually')] })],
      [cause('rich', { scope: 'cylinder', makes: [makes('soot', 'often')] })],
    );
    const evidence = evidenceOf({
      format: 'corenose.reading-sheet',
      version: 1,
      engine: { use: 'road', cylinders: 1 },
      plugs: [{ cylinder: 1, tip: { deposit: 'dry soot' } }],
    });
    const network = networkFor(kb, evidence);
    const rest = 0.8 / [35, 55, 1, 1, 0.8, 0.3, 0.5, 0.4, 0.3, 0.5, 0.2, 0.4, 0.2, 0.3, 0.05, 0.1, 0.3].reduce((a, b) => a + b, 0);
    const sooted = STRENGTHS.usually + (1 - STRENGTHS.usually) * rest;
    const withCause = STRENGTHS.often * sooted + (1 - STRENGTHS.often) * rest;
    const byHand = (PRIORS.common * withCause) / (PRIORS.common * withCause + (1 - PRIORS.common) * rest);
    expect(solverFor(network)(evidence).belief(network.local.get(1)?.[0] as Instance)).toBeCloseTo(byHand, 12);
    expect(byHand).toBeCloseTo(0.6168, 4);
  });

  it('hold a weak effect that no plug of the set shows against a shared cause once, worked by hand', () => {
    const kb = knowledge(
      [condition('wet', { leak: 0, shows: [{ finding: 'noseSurface', is: 'wet', strength: 'usually', because: 'made up', source: 'common practice' }] })],
      [cause('rich', { scope: 'engine', makes: [makes('wet', 'sometimes')] })],
    );
    const evidence = evidenceOf({
      format: 'corenose.reading-sheet', version: 1, engine: { use: 'road', cylinders: 12 },
      plugs: Array.from({ length: 12 }, (_, i) => ({ cylinder: i + 1, tip: { noseSurface: 'fine powder' as const } })),
    });
    const shown = STRENGTHS.sometimes / STRENGTHS.usually;
    const dry = 1 - shown + shown * (1 - STRENGTHS.usually ** 2) ** 12;
    const byHand = (PRIORS.common * dry) / (PRIORS.common * dry + 1 - PRIORS.common);
    const network = networkFor(kb, evidence);
    expect(solverFor(network)(evidence).belief(network.shared[0]!)).toBeCloseTo(byHand, 12);
    expect(byHand).toBeCloseTo(0.02891, 5);
  });

  it('equal a sum over every world within the bounds, for causes and for conditions', () => {
    fc.assert(
      fc.property(anyKnowledge, anySmallSheet, (kb, sheet) => {
        const evidence = evidenceOf(sheet);
        const network = networkFor(kb, evidence);
        const solution = solverFor(network)(evidence);
        const brute = bruteForce(network, evidence, SOLVER_BOUNDS);
        for (const instance of [...network.shared, ...[...network.local.values()].flat()])
          expect(solution.belief(instance)).toBeCloseTo(brute.causes.get(instance.id) ?? NaN, 6);
        solution.cylinders.forEach((solved, c) =>
          plugBeliefs(solved).forEach((plug, p) => {
            const key = evidence.cylinders[c]?.plugs[p]?.key;
            kb.conditions.forEach(({ id }, k) =>
              expect(withCondition(plug, k)).toBeCloseTo(brute.conditions.get(`${key}/${id}`) ?? NaN, 5),
            );
          }),
        );
      }),
      { numRuns: 60 },
    );
  }, 120_000);
});
