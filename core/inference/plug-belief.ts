import { ownCauses, touchesIn } from './cylinder.ts';
import { likelihoodAfter, Messages, ownShare, type OnPairs, type OwnCause, type PlugSum } from './plug-sum.ts';
import type { SolvedCylinder, Term } from './solved-cylinder.ts';

/** Belief in each set of at most two conditions on one plug; `pair` is K×K, row by row, only i < j used. All entries sum to 1. */
export type PlugBelief = OnPairs;

/** Worlds less likely than this are not passed on; together they weigh less than the fourth place that is shown. */
const NEGLIGIBLE = 1e-11;

/** What the worlds of one cylinder say to one plug, the plug's own part taken out. */
function collect({ cylinder, outside, conditions }: SolvedCylinder, { coefficient, part, sums, table }: Term, plug: number): Messages {
  const messages = new Messages(conditions.length);
  const { values, starts } = table;
  for (let s = 0; s + 1 < starts.length; s += 1) {
    const outer = coefficient * (outside[part]?.[s] as number);
    const start = starts[s] as number;
    for (let at = start; at < (starts[s + 1] as number); at += 1) {
      const weight = outer * (values[at] as number);
      if (Math.abs(weight) < NEGLIGIBLE) continue;
      const touches = touchesIn(cylinder, s, at - start, plug);
      messages.add(weight / likelihoodAfter(sums[plug] as PlugSum, touches), touches);
    }
  }
  return messages;
}

const collected = new WeakMap<SolvedCylinder, Map<Term, Messages[]>>();

/** The messages to a plug, collected once a solution. */
function messagesTo(solved: SolvedCylinder, term: Term, plug: number): Messages {
  const ofCylinder = collected.get(solved) ?? new Map<Term, Messages[]>();
  collected.set(solved, ofCylinder);
  const ofTerm = ofCylinder.get(term) ?? [];
  ofCylinder.set(term, ofTerm);
  return (ofTerm[plug] ??= collect(solved, term, plug));
}

/** Σ h(E) · message(E). */
function totalOf({ none, single, pair }: OnPairs, messages: Messages): number {
  const n = single.length;
  let sum = none * messages.of(-1, -1);
  for (let i = 0; i < n; i += 1) {
    sum += (single[i] as number) * messages.of(i, -1);
    for (let j = i + 1; j < n; j += 1) sum += (pair[i * n + j] as number) * messages.of(i, j);
  }
  return sum;
}

/** Belief that one own cause is there: the same sum with the cause's share in every factor. Only sets E that free one of its conditions differ in share. */
function ownBelief(cause: OwnCause, { single, pair }: OnPairs, messages: Messages, total: number): number {
  const n = single.length;
  const ks = cause.passes.map(({ k }) => k);
  const base = ownShare(cause, []);
  let extra = 0;
  for (const i of ks) {
    const alone = ownShare(cause, [i]) - base;
    extra += (single[i] as number) * messages.of(i, -1) * alone;
    for (let j = 0; j < n; j += 1) {
      if (j === i || (j < i && ks.includes(j))) continue;
      extra += (pair[i * n + j] as number) * messages.of(i, j) * (ks.includes(j) ? ownShare(cause, [i, j]) - base : alone);
    }
  }
  return extra + base * total;
}

/** Beliefs in the causes that belong to one plug of the cylinder, by instance id. */
export function ownBeliefs(solved: SolvedCylinder): [string, number][] {
  return solved.cylinder.own.flatMap((instances, p) => {
    const sums = new Float64Array(instances.length);
    for (const term of solved.terms) {
      const messages = messagesTo(solved, term, p);
      const { terms } = term.sums[p] as PlugSum;
      const total = totalOf(terms, messages);
      ownCauses(instances, term.damping, solved.conditions).forEach((cause, i) => {
        sums[i] = (sums[i] as number) + ownBelief(cause, terms, messages, total);
      });
    }
    return instances.map((instance, i): [string, number] => [instance.id, sums[i] as number]);
  });
}

type Sum = { none: number; single: Float64Array; pair: Float64Array };

/** P(exactly C) = fit(C) · Σ over the subsets E of C, with signs, of P(all but E absent) · message(E). */
function addExact(sum: Sum, { fit, free }: PlugSum, messages: Messages): void {
  const n = free.single.length;
  const none = free.none * messages.of(-1, -1);
  const single = Float64Array.from(free.single, (v, i) => v * messages.of(i, -1));
  sum.none += fit.none * none;
  for (let i = 0; i < n; i += 1) {
    sum.single[i] = (sum.single[i] as number) + (fit.single[i] as number) * ((single[i] as number) - none);
    for (let j = i + 1; j < n; j += 1) {
      const both = (free.pair[i * n + j] as number) * messages.of(i, j) - (single[i] as number) - (single[j] as number) + none;
      sum.pair[i * n + j] = (sum.pair[i * n + j] as number) + (fit.pair[i * n + j] as number) * both;
    }
  }
}

function scaled({ none, single, pair }: Sum): PlugBelief {
  const floor = (v: number): number => Math.max(0, v);
  const all = floor(none) + single.reduce((a, b) => a + floor(b), 0) + pair.reduce((a, b) => a + floor(b), 0);
  return { none: floor(none) / all, single: single.map((v) => floor(v) / all), pair: pair.map((v) => floor(v) / all) };
}

/** Belief in the condition sets of every plug of a cylinder, in the order of its plugs. */
export function plugBeliefs(solved: SolvedCylinder): PlugBelief[] {
  const n = solved.conditions.length;
  return solved.cylinder.fits.map((_, p) => {
    const sum: Sum = { none: 0, single: new Float64Array(n), pair: new Float64Array(n * n) };
    for (const term of solved.terms) addExact(sum, term.sums[p] as PlugSum, messagesTo(solved, term, p));
    return scaled(sum);
  });
}

/** Calls `visit` for every condition set of some weight; -1 stands for no condition. */
export function forEachConditionSet({ none, single, pair }: PlugBelief, visit: (i: number, j: number, belief: number) => void): void {
  const n = single.length;
  visit(-1, -1, none);
  for (let i = 0; i < n; i += 1) {
    visit(i, -1, single[i] as number);
    for (let j = i + 1; j < n; j += 1) if (pair[i * n + j] !== 0) visit(i, j, pair[i * n + j] as number);
  }
}
