import type { PlugFit } from './appearance.ts';
import { flippedTouches, statesUnder } from './cylinder-table.ts';
import type { Flips } from './flips.ts';
import type { PlugState, Touch } from './plug-state.ts';
import { forEachWorld, type SolvedCylinder, type Term } from './posterior.ts';

/** Belief in each set of at most two conditions on one plug; `pair` is K×K, row by row, only i < j used. All entries sum to 1. */
export type PlugBelief = { readonly none: number; readonly single: Float64Array; readonly pair: Float64Array };

/** Worlds less likely than this are left out of the sums over condition sets; what remains is scaled to 1. */
const NEGLIGIBLE = 1e-8;

type Sum = { none: number; single: Float64Array; pair: Float64Array };

function addShares(sum: Sum, state: PlugState, fit: PlugFit, damping: Float64Array, touches: readonly Touch[], weight: number): void {
  const n = state.absent.length;
  const ratio = Float64Array.from(state.ratio);
  for (const { k, factor } of touches) {
    const a = (state.absent[k] as number) * factor;
    ratio[k] = ((1 - a) / a) * (damping[k] as number);
  }
  let bracket = fit.none;
  for (let i = 0; i < n; i += 1) {
    bracket += (ratio[i] as number) * (fit.single[i] as number);
    for (let j = i + 1; j < n; j += 1) bracket += (ratio[i] as number) * (ratio[j] as number) * (fit.pair[i * n + j] as number);
  }
  const scale = weight / bracket;
  sum.none += scale * fit.none;
  for (let i = 0; i < n; i += 1) {
    const here = scale * (ratio[i] as number);
    sum.single[i] = (sum.single[i] as number) + here * (fit.single[i] as number);
    for (let j = i + 1; j < n; j += 1) sum.pair[i * n + j] = (sum.pair[i * n + j] as number) + here * (ratio[j] as number) * (fit.pair[i * n + j] as number);
  }
}

function scaled({ none, single, pair }: Sum): PlugBelief {
  const all = none + single.reduce((a, b) => a + b, 0) + pair.reduce((a, b) => a + b, 0);
  return { none: none / all, single: single.map((v) => v / all), pair: pair.map((v) => v / all) };
}

/** Belief in the condition sets of every plug of a cylinder, in the order of its plugs. */
export function plugBeliefs(solved: SolvedCylinder): PlugBelief[] {
  const { cylinder, terms, outside } = solved;
  const n = cylinder.absent[0]?.length ?? 0;
  const sums = cylinder.fits.map((): Sum => ({ none: 0, single: new Float64Array(n), pair: new Float64Array(n * n) }));
  let states: { set: number; byTerm: PlugState[][] } = { set: -1, byTerm: [] };
  forEachWorld(solved, (s, t, probability) => {
    if (probability < NEGLIGIBLE) return;
    if (states.set !== s) states = { set: s, byTerm: terms.map((term) => statesUnder(cylinder, cylinder.sharedSets[s] as Flips, term.damping)) };
    terms.forEach((term: Term, k) => {
      const weight = term.coefficient * (outside[term.part]?.[s] as number) * (term.rows[s]?.[t] as number);
      cylinder.fits.forEach((fit, p) => {
        const touches = flippedTouches(cylinder.local, cylinder.localSets[t] as Flips, p);
        addShares(sums[p] as Sum, states.byTerm[k]?.[p] as PlugState, fit, term.damping.conditions, touches, weight);
      });
    });
  });
  return sums.map(scaled);
}

/** Adds up the belief over all condition sets for which `has` holds; it is asked with the indices of the set. */
export function beliefThat(belief: PlugBelief, has: (set: readonly number[]) => boolean): number {
  const n = belief.single.length;
  let sum = has([]) ? belief.none : 0;
  for (let i = 0; i < n; i += 1) {
    if (has([i])) sum += belief.single[i] as number;
    for (let j = i + 1; j < n; j += 1) {
      const p = belief.pair[i * n + j] as number;
      if (p > 0 && has([i, j])) sum += p;
    }
  }
  return Math.min(1, Math.max(0, sum));
}
