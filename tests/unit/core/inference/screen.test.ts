import { describe, expect, it } from 'vitest';
import { evidenceOf } from '../../../../core/inference/evidence.ts';
import { networkFor, type Instance } from '../../../../core/inference/network.ts';
import { solverFor, type Solution } from '../../../../core/inference/posterior.ts';
import { HEALTHY_CYLINDER, HEALTHY_PLUG, HEALTHY_SYMPTOM } from '../../../../core/knowledge/findings.ts';
import { PRIORS, STRENGTHS, type Prior, type Strength } from '../../../../core/knowledge/strengths.ts';
import type { Cause } from '../../../../core/knowledge/types.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { product } from './small-plug.ts';
import { cause, condition, knowledge, makes, shows } from './small-knowledge.ts';

/*
 * An engine with many shared causes, so small otherwise that every set of them can be weighed by a formula: each makes the one condition "soot" by noisy-OR
 * (Pearl 1988), some give a misfire, and each cylinder has one cause of its own that shows in its spark.
 */
const LEAK = 0.01;
const CYLINDERS = [1, 2, 3, 4];
const LAST = 4;
const PRIOR_WORDS = Object.keys(PRIORS) as Prior[];
const grounds = { because: 'made up for a test', source: 'common practice' };

const ruledOut: Cause['moved'] = [{ by: { tag: 'choke sticking' }, how: 'ruled out', ...grounds }];

const manyCauses = (many: number): Cause[] => Array.from({ length: many }, (_, i) => cause(`c${String(i).padStart(2, '0')}`, {
  scope: i === 7 ? 'mixture group' : 'engine', prior: PRIOR_WORDS[i % 4]!, makes: [makes('soot', i % 3 === 0 ? 'usually' : 'almost always')],
  moved: i % 2 === 1 ? ruledOut : [],
  gives: i % 5 === 0 ? [{ symptom: 'misfire', strength: 'usually', ...grounds }] : [],
}));
const valve = cause('valve', {
  scope: 'cylinder', prior: 'occasional', shows: [{ finding: 'spark', is: 'weak', strength: 'often', ...grounds }], moved: ruledOut,
});
const soot = condition('soot', { leak: LEAK, shows: [shows('deposit', 'dry soot', 'usually')] });

type Felt = 'felt' | 'absent' | 'not asked';
const sheetFor = (felt: Felt): ReadingSheet => ({
  format: 'corenose.reading-sheet', version: 1, engine: { use: 'road', cylinders: 4, mixture: { kind: 'carburettor', groups: [[1, 2, 3], [4]] } },
  plugs: CYLINDERS.map((cylinder) => ({ cylinder, tip: { deposit: cylinder === 1 ? 'dry soot' : 'none' } })),
  conditions: { tags: ['choke sticking'] },
  cylinderChecks: CYLINDERS.map((cylinder) => ({ cylinder, spark: 'weak' })),
  symptoms: felt === 'felt' ? [{ what: 'misfire' }] : [], symptomsAbsent: felt === 'absent' ? ['misfire'] : [],
});

const GROUP = manyCauses(8)[7]!;

const sum = (list: readonly number[]): number => list.reduce((all, x) => all + x, 0);
const healthy = (of: Readonly<Record<string, number>>, value: string): number => of[value]! / sum(Object.values(of));
const p = (strength: Strength): number => STRENGTHS[strength];
const marked = (q: number, there: boolean, rest: number): number => q * (there ? 1 : 0) + (1 - q) * rest;
const odds = ({ prior, moved }: Cause): number => (PRIORS[prior] / (1 - PRIORS[prior])) / (moved.length > 0 ? 300 : 1);
const chance = (one: Cause): number => odds(one) / (1 + odds(one));

/** What is seen on one cylinder with these shared causes at work; with its valve, without it, or with either. */
function seenOn(cylinder: number, causes: readonly Cause[], valves: readonly boolean[]): number {
  const here = causes.filter(({ scope }) => scope === 'engine' || cylinder !== LAST);
  // The carburettor of the last cylinder feeds no other, so its cause belongs to that plug and is summed there.
  const own = cylinder === LAST ? 1 - chance(GROUP) * p(GROUP.makes[0]!.strength) : 1;
  const clean = (1 - LEAK) * own * product(here.map(({ makes: [made] }) => 1 - p(made!.strength)));
  const value = cylinder === 1 ? 'dry soot' : 'none';
  const rest = healthy(HEALTHY_PLUG.deposit, value);
  const plug = clean * rest + (1 - clean) * marked(0.7, value === 'dry soot', rest);
  const spark = healthy(HEALTHY_CYLINDER.spark, 'weak');
  const withValve = odds(valve) * marked(0.45, true, spark);
  // Two changes at most at any cylinder.
  return plug * sum(valves.map((there) => (there ? (here.length > 1 ? 0 : withValve) : spark)));
}

/** Weight of a set of shared causes against that of none, all worlds of the cylinders summed; `fixed`: the valve of cylinder 1 there. */
function weightOf(set: readonly Cause[], felt: Felt, fixed = false): number {
  const quiet = (1 - HEALTHY_SYMPTOM) * product(set.map(({ gives }) => (gives.length > 0 ? 0.3 : 1)));
  const all = product(set.map(odds)) * product(CYLINDERS.map((c) => seenOn(c, set, fixed && c === 1 ? [true] : [false, true])));
  return all * { felt: 1 - quiet, absent: quiet, 'not asked': 1 }[felt];
}

const setsOf = (causes: readonly Cause[]): Cause[][] =>
  [[], ...causes.map((one) => [one]), ...causes.flatMap((one, i) => causes.slice(i + 1).map((other) => [one, other]))];

function solved(causes: readonly Cause[], felt: Felt): Solution {
  const evidence = evidenceOf(sheetFor(felt));
  return solverFor(networkFor(knowledge([soot], [...causes, valve]), evidence))(evidence);
}
/** The sets that were counted, by their causes. */
const counted = ({ counted: { sets }, network }: Solution): string[] =>
  Array.from(sets.first, (a, s) => [a, sets.second[s]!].filter((v) => v >= 0).map((v) => network.shared[v]!.cause.id).join('+'));
const nameOf = (set: readonly Cause[]): string => set.map(({ id }) => id).join('+');

const many = manyCauses(50);
const few = manyCauses(20);

/** The sets that were not counted. `limit`: the power of ten of the total weight under which they lie. */
function leftOut(felt: Felt) {
  const all = setsOf(many).map((set) => ({ name: nameOf(set), pair: set.length === 2, weight: weightOf(set, felt) }));
  const total = sum(all.map(({ weight }) => weight));
  const kept = new Set(counted(solved(many, felt)));
  const out = all.filter(({ name }) => !kept.has(name));
  const limit = total * 10 ** Math.ceil(Math.log10(Math.max(...out.map(({ weight }) => weight)) / total));
  return { all, out, total, kept, limit };
}

describe('the sets that are weighed in full', () => {
  it('are all of them where there are fewer than a thousand pairs', () => {
    expect(counted(solved(few, 'not asked')).sort()).toEqual(setsOf(few).map(nameOf).sort());
  });

  it.each<Felt>(['not asked', 'absent'])('else leave out the lightest, together at most a hundred-thousandth (misfire %s)', (felt) => {
    const { all, out, total, limit, kept } = leftOut(felt);
    expect(kept.size + out.length).toBe(all.length);
    expect(out.length).toBeGreaterThan(100);
    expect(out.every(({ pair }) => pair)).toBe(true);
    expect(sum(out.map(({ weight }) => weight))).toBeLessThanOrEqual(1e-5 * total);
    // Below the limit everything is out, from it on everything in; ten times the limit would leave out too much.
    expect(all.filter(({ pair, weight }) => pair && weight < limit).map(({ name }) => name).sort()).toEqual(out.map(({ name }) => name).sort());
    expect(sum(all.filter(({ pair, weight }) => pair && weight < 10 * limit).map(({ weight }) => weight))).toBeGreaterThan(1e-5 * total);
  });

  it('are chosen as if nothing had been felt, for a symptom can only make a set lighter', () => {
    expect(counted(solved(many, 'felt'))).toEqual(counted(solved(many, 'not asked')));
  });
});

describe('beliefs among the sets that are weighed', () => {
  it.each<[Felt, number]>([['not asked', 20], ['felt', 20], ['absent', 20], ['not asked', 50], ['felt', 50], ['absent', 50]])(
    'are those of the formula over all sets of shared causes and valves (misfire %s, %i causes)', (felt, n) => {
      const causes = manyCauses(n);
      const solution = solved(causes, felt);
      const sets = setsOf(causes);
      const total = sum(sets.map((set) => weightOf(set, felt)));
      const digits = n < 50 ? 9 : 4;
      for (const instance of solution.network.shared) {
        const holding = sets.filter((set) => set.includes(instance.cause));
        expect(solution.belief(instance)).toBeCloseTo(sum(holding.map((set) => weightOf(set, felt))) / total, digits);
      }
      const [first] = solution.network.local.get(1) as [Instance];
      expect(first.id).toBe('valve @ 1');
      expect(solution.belief(first)).toBeCloseTo(sum(sets.map((set) => weightOf(set, felt, true))) / total, digits);
    });

  it('have each set as likely as it weighs', () => {
    const solution = solved(few, 'felt');
    const total = sum(setsOf(few).map((set) => weightOf(set, 'felt')));
    const byName = new Map(counted(solution).map((name, s) => [name, solution.perSet()[s]]));
    for (const set of setsOf(few)) expect(byName.get(nameOf(set))).toBeCloseTo(weightOf(set, 'felt') / total, 9);
  });

  it('tell how much the sets of more than two causes were likely before anything was seen', () => {
    const upToTwo = product(few.map((one) => 1 - chance(one))) * sum(setsOf(few).map((set) => product(set.map(odds))));
    expect(solved(few, 'not asked').neglectedMass).toBeCloseTo(1 - upToTwo, 12);
  });
});

describe('the worlds of one cylinder that are weighed in full', () => {
  it('are all of them where no set is left out: each set with room, with its valve and without', () => {
    const { counted: { places } } = solved(few, 'not asked');
    // 1 + 20 sets with room for a valve, and as many without, and 190 pairs; at the last cylinder one cause less.
    expect(places.map(({ worlds }) => worlds.set.length)).toEqual([...[1, 2, 3].map(() => 2 * 21 + 190), 2 * 20 + 171]);
  });

  it('leave out a valve beside a cause where both together weigh less than a tenth of the lightest set', () => {
    const { counted: { places: [place] } } = solved(many, 'not asked');
    const { limit } = leftOut('not asked');
    // At cylinder 1 every shared cause has one state, in order; the state after them is the valve.
    const { first, second } = place!.worlds;
    const beside = new Set(Array.from(first).filter((_, w) => second[w] === many.length));
    const weights = many.map((one) => weightOf([one], 'not asked', true));
    expect(weights.map((_, v) => beside.has(v))).toEqual(weights.map((w) => w >= 0.1 * limit));
    expect(beside.size).toBeGreaterThan(0);
    expect(beside.size).toBeLessThan(many.length);
  });
});
