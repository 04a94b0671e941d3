import { once } from '../once.ts';
import type { PlugShape } from './cylinder.ts';
import type { PlugTerm } from './memory.ts';
import { Messages } from './messages.ts';
import { ownShare, type OnPairs, type OwnCause, type PlugSum } from './plug-sum.ts';
import type { Solved, Term } from './solved-cylinder.ts';

/** Belief in each set of at most two conditions on one plug; `pair` is K×K, row by row, only i < j used. All entries sum to 1. */
export type PlugBelief = OnPairs;

/** Worlds less likely than this are not passed on; together they weigh less than the fourth place that is shown. */
const NEGLIGIBLE = 1e-9;

/** What the worlds of one cylinder say to one plug, the plug's own part taken out: worth of each set E of freed conditions. */
function collect({ shape, worlds, outside, knowledge }: Solved, { coefficient, part, values, likelihoods: all }: Term, plug: number): OnPairs {
  const { set, first, second } = worlds;
  const outer = outside()[part] as Float64Array;
  const likelihoods = all[plug] as Float64Array;
  const messages = new Messages(knowledge.conditions.length, (shape.plugs[plug] as PlugShape).touches);
  for (let w = 0; w < values.length; w += 1) {
    const weight = coefficient * (outer[set[w] as number] as number) * (values[w] as number);
    if (Math.abs(weight) < NEGLIGIBLE) continue;
    messages.add(weight / (likelihoods[w] as number), first[w] as number, second[w] as number);
  }
  return messages.worth();
}

const collected = new WeakMap<Solved, Map<Term, Map<number, OnPairs>>>();

/** The messages to a plug, collected once a solution. */
function messagesTo(solved: Solved, term: Term, plug: number): OnPairs {
  const ofCylinder = once(collected, solved, () => new Map<Term, Map<number, OnPairs>>());
  return once(once(ofCylinder, term, () => new Map<number, OnPairs>()), plug, () => collect(solved, term, plug));
}

/** h(E) · message(E): all together, over those that hold i, and over those that hold i and j. */
type Held = { readonly total: number; readonly one: Float64Array; readonly two: (i: number, j: number) => number };

function heldBy({ none, single, pair }: OnPairs, worth: OnPairs): Held {
  const n = single.length;
  const one = new Float64Array(n);
  let total = none * worth.none;
  for (let i = 0; i < n; i += 1) {
    const alone = (single[i] as number) * (worth.single[i] as number);
    let both = 0;
    for (let j = 0, at = i * n; j < n; j += 1, at += 1) both += (pair[at] as number) * (worth.pair[at] as number);
    one[i] = alone + both;
    total += alone + both / 2;
  }
  return { total, one, two: (i, j) => (pair[i * n + j] as number) * (worth.pair[i * n + j] as number) };
}

/** Belief that one own cause is there: the same sum with the cause's share in every factor. Only sets E that free one of its conditions differ in share. */
function ownBelief(cause: OwnCause, { total, one, two }: Held): number {
  const ks = cause.passes.map(({ k }) => k);
  const base = ownShare(cause, []);
  const alone = ks.map((k) => ownShare(cause, [k]) - base);
  let belief = base * total;
  ks.forEach((i, t) => {
    belief += (alone[t] as number) * (one[i] as number);
    for (let u = 0; u < t; u += 1) {
      const j = ks[u] as number;
      belief += (ownShare(cause, [i, j]) - base - (alone[t] as number) - (alone[u] as number)) * two(i, j);
    }
  });
  return belief;
}

/** Beliefs in the causes that belong to one plug of the cylinder, by plug. */
export const ownBeliefs = (solved: Solved): Float64Array[] =>
  solved.shape.plugs.map(({ own }, p) => {
    const sums = new Float64Array(own.length);
    for (const term of solved.terms) {
      const { sum, own: causes } = term.plugs[p] as PlugTerm;
      const held = heldBy(sum.terms, messagesTo(solved, term, p));
      causes.forEach((cause, i) => { sums[i] = (sums[i] as number) + ownBelief(cause, held); });
    }
    return sums;
  });

type Sum = { none: number; single: Float64Array; pair: Float64Array };

/** P(exactly C) = fit(C) · damping · Σ over the subsets E of C, with signs, of P(all but E absent) · message(E). */
function addExact(sum: Sum, { fit, damping, free }: PlugSum, worth: OnPairs): void {
  const n = free.single.length;
  const none = free.none * worth.none;
  const single = free.single.map((v, i) => v * (worth.single[i] as number));
  sum.none += fit.none * none;
  for (let i = 0; i < n; i += 1) {
    const quiet = damping[i] as number;
    sum.single[i] = (sum.single[i] as number) + (fit.single[i] as number) * quiet * ((single[i] as number) - none);
    for (let j = i + 1; j < n; j += 1) {
      const at = i * n + j;
      const both = (free.pair[at] as number) * (worth.pair[at] as number) - (single[i] as number) - (single[j] as number) + none;
      sum.pair[at] = (sum.pair[at] as number) + (fit.pair[at] as number) * quiet * (damping[j] as number) * both;
    }
  }
}

/** A share below this is not told apart from none. */
const NOTHING = 1e-11;

function scaled({ none, single, pair }: Sum): PlugBelief {
  const sum = none + single.reduce((a, b) => a + b, 0) + pair.reduce((a, b) => a + b, 0);
  let all = Math.max(0, none);
  for (const list of [single, pair])
    for (let at = 0; at < list.length; at += 1) {
      const share = list[at] as number;
      list[at] = share > NOTHING * sum ? share : 0;
      all += list[at] as number;
    }
  for (const list of [single, pair]) for (let at = 0; at < list.length; at += 1) list[at] = (list[at] as number) / all;
  return { none: Math.max(0, none) / all, single, pair };
}

const beliefs = new WeakMap<Solved, readonly PlugBelief[]>();

/** Belief in the condition sets of every plug of a cylinder, in the order of its plugs. */
export const plugBeliefs = ({ solved }: { readonly solved: Solved }): readonly PlugBelief[] => once(beliefs, solved, () => {
  const n = solved.knowledge.conditions.length;
  return solved.shape.plugs.map((_, p) => {
    const sum: Sum = { none: 0, single: new Float64Array(n), pair: new Float64Array(n * n) };
    for (const term of solved.terms) addExact(sum, (term.plugs[p] as PlugTerm).sum, messagesTo(solved, term, p));
    return scaled(sum);
  });
});

/** Calls `visit` for every condition set of some weight; -1 stands for no condition. */
export function forEachConditionSet({ none, single, pair }: PlugBelief, visit: (i: number, j: number, belief: number) => void): void {
  const n = single.length;
  visit(-1, -1, none);
  for (let i = 0; i < n; i += 1) {
    visit(i, -1, single[i] as number);
    for (let j = i + 1; j < n; j += 1) if (pair[i * n + j] !== 0) visit(i, j, pair[i * n + j] as number);
  }
}
