import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reportProbability } from '../../../../core/inference/appearance.ts';
import { evidenceOf, type Evidence } from '../../../../core/inference/evidence.ts';
import { networkFor, type Instance, type Network } from '../../../../core/inference/network.ts';
import { forEachConditionSet, plugBeliefs, type PlugBelief } from '../../../../core/inference/plug-belief.ts';
import { solverFor } from '../../../../core/inference/posterior.ts';
import { PRIORS, STRENGTHS } from '../../../../core/knowledge/strengths.ts';
import type { Cause, Knowledge } from '../../../../core/knowledge/types.ts';
import type { ReadingSheet, Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import { bruteForce, SOLVER_BOUNDS } from './brute-force.ts';
import { anyKnowledge, anySmallSheet, cause, condition, knowledge, makes, shows } from './small-knowledge.ts';

function withCondition(belief: PlugBelief, k: number): number {
  let sum = 0;
  forEachConditionSet(belief, (i, j, p) => { if (i === k || j === k) sum += p; });
  return sum;
}

const instancesOf = ({ shared, local }: Network): Instance[] => [...shared, ...[...local.values()].flat()];

/** The solver against the second program. */
function agree(kb: Knowledge, sheet: ReadingSheet): void {
  const evidence = evidenceOf(sheet);
  const network = networkFor(kb, evidence);
  const solution = solverFor(network)(evidence);
  const brute = bruteForce(network, evidence, SOLVER_BOUNDS);
  for (const instance of instancesOf(network)) expect(solution.belief(instance)).toBeCloseTo(brute.causes.get(instance.id) ?? NaN, 6);
  solution.cylinders.forEach((solved, c) =>
    plugBeliefs(solved).forEach((plug, p) => {
      const key = evidence.cylinders[c]?.plugs[p]?.key;
      kb.conditions.forEach(({ id }, k) => expect(withCondition(plug, k)).toBeCloseTo(brute.conditions.get(`${key}/${id}`) ?? NaN, 5));
    }),
  );
}

const anyTip: fc.Arbitrary<Tip> = fc.record(
  { noseColour: fc.constantFrom('black' as const, 'white' as const, 'light tan' as const), deposit: fc.constantFrom('dry soot' as const, 'none' as const) },
  { requiredKeys: [] },
);
const withTips = (sheet: ReadingSheet, tips: readonly Tip[]): ReadingSheet =>
  ({ ...sheet, plugs: sheet.plugs.map((plug, i) => ({ ...plug, tip: tips[i] })) as ReadingSheet['plugs'] });

const grounds = { because: 'made up for a test', source: 'common practice' };
const found: Cause['moved'] = [{ by: { tag: 'choke sticking' }, how: 'found', ...grounds }];
const misfires: Cause['gives'] = [{ symptom: 'misfire', strength: 'often', ...grounds }];
const weakSpark: Cause['shows'] = [{ finding: 'spark', is: 'weak', strength: 'often', ...grounds }];
const twoConditions = [
  condition('a', { leak: 0.02, shows: [shows('noseColour', 'black', 'usually')], gives: [{ symptom: 'black smoke', strength: 'often', ...grounds }] }),
  condition('b', { leak: 0.01, shows: [shows('noseColour', 'white', 'often'), shows('deposit', 'dry soot', 'sometimes')], gives: misfires }),
];
const base: Pick<ReadingSheet, 'format' | 'version'> = { format: 'corenose.reading-sheet', version: 1 };

/** Engines laid out otherwise than those that are drawn at random. */
const LAYOUTS: readonly (readonly [string, Knowledge, ReadingSheet])[] = [
  ['two plugs in a cylinder: causes of either, of both, and one that was expected', knowledge(twoConditions, [
    cause('both', { scope: 'cylinder', makes: [makes('a', 'often'), makes('b', 'sometimes')], gives: misfires, shows: weakSpark }),
    cause('gap', { scope: 'plug', makes: [makes('b', 'often'), makes('a', 'rarely')], gives: misfires }),
    cause('oil', { scope: 'cylinder', makes: [makes('a', 'usually')], moved: found }),
  ]), {
    ...base, engine: { use: 'aircraft', cylinders: 1, plugsPerCylinder: 2 }, plugs: [{ cylinder: 1, position: 'upper' }, { cylinder: 1, position: 'lower' }],
    conditions: { tags: ['choke sticking'] }, symptoms: [{ what: 'misfire' }], cylinderChecks: [{ cylinder: 1, spark: 'weak' }],
  }],
  ['a shared cause with traits that was expected, and what was felt on one cylinder', knowledge(twoConditions, [
    cause('choke', { makes: [makes('a', 'often'), makes('b', 'sometimes')], gives: misfires, moved: found }),
    cause('oil', { scope: 'cylinder', makes: [makes('a', 'sometimes')], gives: misfires, shows: weakSpark }),
  ]), {
    ...base, engine: { use: 'road', cylinders: 2 }, plugs: [{ cylinder: 1 }, { cylinder: 2 }], conditions: { tags: ['choke sticking'] },
    symptoms: [{ what: 'black smoke' }, { what: 'misfire', cylinder: 2 }], symptomsAbsent: ['misfire'], cylinderChecks: [{ cylinder: 2, spark: 'weak' }],
  }],
  ['causes that reach some cylinders only, and cylinders that stand alike', knowledge(twoConditions, [
    cause('rich', { makes: [makes('a', 'often')] }), cause('jet', { scope: 'mixture group', makes: [makes('a', 'usually'), makes('b', 'sometimes')], gives: misfires }),
    cause('oil', { scope: 'cylinder', makes: [makes('b', 'often')], shows: weakSpark }),
  ]), {
    ...base, engine: { use: 'road', cylinders: 3, mixture: { kind: 'carburettor', groups: [[1, 2], [3]] } }, plugs: [{ cylinder: 1 }, { cylinder: 2 }, { cylinder: 3 }],
    symptoms: [{ what: 'misfire' }], cylinderChecks: [{ cylinder: 1, spark: 'weak' }, { cylinder: 2, spark: 'weak' }],
  }],
];

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

  it.each(LAYOUTS)('equal a sum over every world within the bounds, for %s', (_what, kb, sheet) => {
    fc.assert(fc.property(fc.array(anyTip, { minLength: 4, maxLength: 4 }), (tips) => {
      agree(kb, withTips(sheet, tips));
    }), { numRuns: 4 });
  }, 120_000);

  it('equal a sum over every world within the bounds, for causes and for conditions of small networks drawn at random', () => {
    fc.assert(fc.property(anyKnowledge, anySmallSheet, agree), { numRuns: 60 });
  }, 120_000);
});

describe('a solver that is asked again', () => {
  const [, kb, sheet] = LAYOUTS[2]!;
  const [black, white, bare]: [Tip, Tip, Tip] = [{ noseColour: 'black' }, { noseColour: 'white', deposit: 'none' }, {}];
  const look = (tips: readonly Tip[], parts: Partial<ReadingSheet> = {}): Evidence =>
    evidenceOf({ ...withTips(sheet, tips), ...parts });
  const before = look([black, black, white]);

  it.each<[string, Evidence]>([
    ['the same', look([black, black, white])],
    ['one cylinder looking otherwise', look([black, white, white])],
    ['the last cylinder looking otherwise', look([black, black, bare])],
    ['two cylinders looking otherwise', look([white, black, bare])],
    ['all cylinders looking otherwise', look([white, bare, black])],
    ['other symptoms', look([black, black, white], { symptoms: [] })],
    ['other symptoms and one cylinder looking otherwise', look([black, bare, white], { symptoms: [{ what: 'black smoke' }], symptomsAbsent: ['misfire'] })],
  ])('with %s believes what one believes that was never asked before', (_what, evidence) => {
    const of = (): Network => networkFor(structuredClone(kb), before);
    const [asked, fresh] = [solverFor(of()), solverFor(of())];
    asked(before);
    const [again, alone] = [asked(evidence), fresh(evidence)];
    for (const instance of instancesOf(alone.network)) expect(again.belief(instance)).toBeCloseTo(alone.belief(instance), 12);
    again.cylinders.forEach((solved, c) => {
      const list = plugBeliefs(alone.cylinders[c]!);
      plugBeliefs(solved).forEach((plug, p) => {
        kb.conditions.forEach((__, k) => { expect(withCondition(plug, k)).toBeCloseTo(withCondition(list[p]!, k), 12); });
      });
    });
    expect(asked(before).perSet()).toEqual(asked(before).perSet());
  });

  it('asked a third and a fourth time still goes by what each cylinder shows', () => {
    const network = networkFor(structuredClone(kb), before);
    const asked = solverFor(network);
    const list = [before, look([black, white, white]), look([black, white, bare]), look([white, white, white]), before];
    const all = list.map((evidence) => asked(evidence));
    list.forEach((evidence, i) => {
      const alone = solverFor(networkFor(structuredClone(kb), before))(evidence);
      for (const instance of instancesOf(network)) expect(all[i]!.belief(instance)).toBeCloseTo(alone.belief(instance), 12);
    });
  });
});
