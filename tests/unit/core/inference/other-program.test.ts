import bayes, { type ICombinations, type INetwork, type INode } from 'bayesjs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evidenceOf } from '../../../../core/inference/evidence.ts';
import { networkFor } from '../../../../core/inference/network.ts';
import { forEachConditionSet, plugBeliefs, type PlugBelief } from '../../../../core/inference/plug-belief.ts';
import { solverFor } from '../../../../core/inference/posterior.ts';
import { HEALTHY_PLUG, HEALTHY_SYMPTOM } from '../../../../core/knowledge/findings.ts';
import { MOVES, PRIORS, STRENGTHS } from '../../../../core/knowledge/strengths.ts';
import type { Knowledge } from '../../../../core/knowledge/types.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { anyCause, anyCondition, knowledge } from './small-knowledge.ts';

/**
 * The solver against a general-purpose program that knows nothing of plugs: the package bayesjs, given the same network with every table written out.
 * The package itself is first held against a publication.
 */
const YES_NO = ['yes', 'no'];
type States = Readonly<Record<string, string>>;

const root = (id: string, p: number): INode => ({ id, states: YES_NO, parents: [], cpt: { yes: p, no: 1 - p } });

/** A node whose table is written out row by row, one row for every combination of its parents' states. */
function child(id: string, states: readonly string[], parents: readonly string[], rowFor: (when: States) => Record<string, number>): INode {
  const rows = parents.reduce<States[]>((all, parent) => all.flatMap((when) => YES_NO.map((state) => ({ ...when, [parent]: state }))), [{}]);
  return { id, states: [...states], parents: [...parents], cpt: rows.map((when) => ({ when: { ...when }, then: rowFor(when) })) };
}
const binary = (id: string, parents: readonly string[], yes: (when: States) => number): INode =>
  child(id, YES_NO, parents, (when) => ({ yes: yes(when), no: 1 - yes(when) }));

const networkOf = (nodes: readonly INode[]): INetwork => Object.fromEntries(nodes.map((node) => [node.id, node]));

/**
 * "Asia": a visit, tuberculosis, lung cancer, bronchitis, an X-ray, short breath.
 * Tables of Lauritzen and Spiegelhalter, J. R. Statist. Soc. B 50 (1988) 157-224.
 */
const asia = networkOf([
  root('asia', 0.01),
  root('smoke', 0.5),
  binary('tub', ['asia'], ({ asia: a }) => (a === 'yes' ? 0.05 : 0.01)),
  binary('lung', ['smoke'], ({ smoke }) => (smoke === 'yes' ? 0.1 : 0.01)),
  binary('bronc', ['smoke'], ({ smoke }) => (smoke === 'yes' ? 0.6 : 0.3)),
  binary('either', ['lung', 'tub'], ({ lung, tub }) => (lung === 'yes' || tub === 'yes' ? 1 : 0)),
  binary('xray', ['either'], ({ either }) => (either === 'yes' ? 0.98 : 0.05)),
  binary('dysp', ['bronc', 'either'], ({ bronc, either }) => (either === 'yes' ? (bronc === 'yes' ? 0.9 : 0.7) : bronc === 'yes' ? 0.8 : 0.1)),
]);

describe('the package that the solver is held against', () => {
  // Published results for these tables: Højsgaard, "Graphical Independence Networks with the gRain Package for R", J. Stat. Software 46 (2012), and its tests.
  it.each<[string, ICombinations, string, number]>([
    ['nothing', {}, 'tub', 0.0104],
    ['nothing', {}, 'lung', 0.055],
    ['nothing', {}, 'bronc', 0.45],
    ['a visit and short breath', { asia: 'yes', dysp: 'yes' }, 'lung', 0.09952515],
    ['a visit and short breath', { asia: 'yes', dysp: 'yes' }, 'bronc', 0.8114021],
    ['a visit, short breath and smoking', { asia: 'yes', dysp: 'yes', smoke: 'yes' }, 'lung', 0.1455191],
    ['a visit, short breath and smoking', { asia: 'yes', dysp: 'yes', smoke: 'yes' }, 'bronc', 0.8672582],
  ])('gives the published beliefs of the Asia network, given %s', (_words, given, node, published) => {
    expect(bayes.infer(asia, { [node]: 'yes' }, given)).toBeCloseTo(published, 7);
  });

  it('gives the published probability of a visit with short breath', () => {
    expect(bayes.inferences.variableElimination.infer(asia, { asia: 'yes', dysp: 'yes' })).toBeCloseTo(0.004501375, 9);
  });
});

type SmallFindings = 'noseColour' | 'deposit';

/** What a finding looks like with these conditions there: the marking model as `docs/inference.md` defines it, as a full row of a table. */
function row(kb: Knowledge, finding: SmallFindings, when: States): Record<string, number> {
  const healthy: Readonly<Record<string, number>> = HEALTHY_PLUG[finding];
  const all = Object.values(healthy).reduce((a, b) => a + b, 0);
  const there = kb.conditions.filter(({ id }) => when[id] === 'yes').map(({ shows }) => shows.filter((link) => link.finding === finding));
  const marks = there.map((links) => links.reduce((sum, link) => sum + STRENGTHS[link.strength], 0));
  const total = marks.reduce((a, b) => a + b, 0);
  const marked = 1 - marks.reduce((p, mark) => p * (1 - mark), 1);
  const strength = (value: string): number => there.flat().filter((link) => link.is === value).reduce((sum, link) => sum + STRENGTHS[link.strength], 0);
  return Object.fromEntries(
    Object.entries(healthy).map(([value, weight]) => [value, (1 - marked) * (weight / all) + (total === 0 ? 0 : marked * (strength(value) / total))]),
  );
}

/** Noisy-OR with leak. @param links what each parent contributes when it is there */
const noisyOr = (leak: number, links: readonly (readonly [parent: string, p: number])[], when: States): number =>
  1 - links.filter(([parent]) => when[parent] === 'yes').reduce((q, [, p]) => q * (1 - p), 1 - leak);

/** The prior of a cause, where a circumstance recorded on the sheet multiplies the odds; bounds as in the network. */
function priorOf({ prior, moved }: Knowledge['causes'][number], choke: boolean): number {
  const odds = (PRIORS[prior] / (1 - PRIORS[prior])) * (choke && moved.length > 0 ? MOVES.found : 1);
  return Math.min(0.98, odds / (1 + odds));
}

/** The whole model of one plug as tables of a general Bayesian network. */
function writtenOut(kb: Knowledge, choke: boolean): INetwork {
  const symptomLinks = (symptom: string): [string, number][] =>
    [...kb.causes, ...kb.conditions].flatMap(({ id, gives }) =>
      gives.filter((link) => link.symptom === symptom).map((link): [string, number] => [id, STRENGTHS[link.strength]]),
    );
  const symptom = (what: string): INode => {
    const links = symptomLinks(what);
    return binary(what, links.map(([id]) => id), (when) => noisyOr(HEALTHY_SYMPTOM, links, when));
  };
  const conditions = kb.conditions.map(({ id, leak }) => {
    const links = kb.causes.flatMap((cause) => cause.makes.filter((m) => m.condition === id).map((m): [string, number] => [cause.id, STRENGTHS[m.strength]]));
    return binary(id, links.map(([parent]) => parent), (when) => noisyOr(leak, links, when));
  });
  const findings = (['noseColour', 'deposit'] as const).map((finding) =>
    child(finding, Object.keys(HEALTHY_PLUG[finding]), kb.conditions.map(({ id }) => id), (when) => row(kb, finding, when)),
  );
  const symptoms = ['misfire', 'black smoke'].map(symptom);
  return networkOf([...kb.causes.map((c) => root(c.id, priorOf(c, choke))), ...[...conditions, ...symptoms].map(rooted), ...findings]);
}
/** The package takes a table without rows for a node without parents. */
const rooted = (node: INode): INode => (node.parents.length > 0 ? node : { ...node, cpt: (node.cpt as { then: Record<string, number> }[])[0]?.then ?? {} });

const twoConditions = fc
  .tuple(anyCondition('a'), anyCondition('b'), anyCause('one', ['a', 'b']), anyCause('two', ['b', 'a']), anyCause('three', ['a']))
  .map(([a, b, ...causes]) => knowledge([a, b], causes));
const seen = fc.record({
  noseColour: fc.option(fc.constantFrom('black' as const, 'white' as const, 'light tan' as const), { nil: undefined }),
  deposit: fc.option(fc.constantFrom('dry soot' as const, 'none' as const), { nil: undefined }),
  misfire: fc.constantFrom('yes', 'no', undefined),
  smoke: fc.constantFrom('yes', 'no', undefined),
  choke: fc.boolean(),
});
type Seen = typeof seen extends fc.Arbitrary<infer T> ? T : never;

type Given<T> = { [K in keyof T]?: Exclude<T[K], undefined> };
const without = <T extends object>(record: T): Given<T> => Object.fromEntries(Object.entries(record).filter(([, v]) => v !== undefined)) as Given<T>;
function sheetOf({ noseColour, deposit, misfire, smoke, choke }: Seen): ReadingSheet {
  const symptoms = [['misfire', misfire], ['black smoke', smoke]] as const;
  return {
    format: 'corenose.reading-sheet', version: 1, engine: { use: 'road', cylinders: 1 },
    plugs: [{ cylinder: 1, tip: without({ noseColour, deposit }) }],
    conditions: choke ? { tags: ['choke sticking'] } : {},
    symptoms: symptoms.filter(([, state]) => state === 'yes').map(([what]) => ({ what })),
    symptomsAbsent: symptoms.filter(([, state]) => state === 'no').map(([what]) => what),
  };
}

function withCondition(belief: PlugBelief, k: number): number {
  let sum = 0;
  forEachConditionSet(belief, (i, j, p) => { if (i === k || j === k) sum += p; });
  return sum;
}

describe('a general-purpose program with every table written out', () => {
  it('believes the same of every cause and condition of one plug', () => {
    fc.assert(
      fc.property(twoConditions, seen, (kb, drawn) => {
        const evidence = evidenceOf(sheetOf(drawn));
        const network = networkFor(kb, evidence);
        const solution = solverFor(network)(evidence);
        const tables = writtenOut(kb, drawn.choke);
        const { noseColour, deposit, misfire, smoke } = drawn;
        const given = without({ noseColour, deposit, misfire, 'black smoke': smoke }) as ICombinations;
        const theirs = (id: string): number => bayes.infer(tables, { [id]: 'yes' }, given);
        const instances = [...network.shared, ...[...network.local.values()].flat()];
        expect(instances).toHaveLength(3);
        for (const instance of instances) expect(Math.abs(solution.belief(instance) - theirs(instance.cause.id))).toBeLessThan(1e-6);
        const belief = plugBeliefs(solution.cylinders[0]!)[0]!;
        kb.conditions.forEach(({ id }, k) => { expect(Math.abs(withCondition(belief, k) - theirs(id))).toBeLessThan(1e-6); });
      }),
      { numRuns: 100 },
    );
  }, 120_000);
});
