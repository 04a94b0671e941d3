import type { PlugFit } from './appearance.ts';
import type { Touch } from './states.ts';

/*
 * One plug, summed in closed form. A condition is absent with probability  n_k · Π over causes (1 - p),  a product; so for a set X of conditions
 *   P(all of X absent) = Π_{k in X} n_k · Π_c (1 - π_c + π_c Π_{k in X} (1 - p_ck))
 * holds over all sets of the plug's own causes at once. "Exactly the conditions C" follows by inclusion and exclusion over the subsets E of C that are
 * left free:  L = Σ_E h(E),  h(E) = coefficient(E) · P(all but E absent),  E of at most two conditions.
 */

/** A cause that acts on this plug alone. `quiet`: chance that it gives none of the symptoms taken as absent. */
export type OwnCause = { readonly prior: number; readonly quiet: number; readonly passes: readonly Touch[] };

/** Values on the sets E of at most two conditions; `pair` is symmetric K×K, row by row, diagonal unused. */
export type OnPairs = { readonly none: number; readonly single: Float64Array; readonly pair: Float64Array };

export type PlugSum = {
  readonly fit: PlugFit;
  readonly damping: Float64Array;
  /** P(all but E absent) before any touch. */
  readonly free: OnPairs;
  readonly terms: OnPairs;
  /** Σ h(E) over all E, and over those that hold k. */
  readonly total: number;
  readonly holding: Float64Array;
};

const passWithout = (cause: OwnCause, free: readonly number[]): number =>
  cause.passes.reduce((p, { k, factor }) => (free.includes(k) ? p : p * factor), 1);

/** 1 - π + π · quiet · Π (1 - p) over the conditions that must be absent. */
const ownFactor = (cause: OwnCause, free: readonly number[]): number => 1 - cause.prior + cause.prior * cause.quiet * passWithout(cause, free);

/** Share of the own factor in which the cause is there. */
export const ownShare = (cause: OwnCause, free: readonly number[]): number =>
  (cause.prior * cause.quiet * passWithout(cause, free)) / ownFactor(cause, free);

/** P(all but E absent), for every E, before any touch. @param absent P(condition k absent) in the base states, each above 0 */
export function freeOf(absent: Float64Array, own: readonly OwnCause[]): OnPairs {
  const n = absent.length;
  const none = own.reduce(
    (p, cause) => p * ownFactor(cause, []),
    absent.reduce((p, a) => p * a, 1),
  );
  const single = Float64Array.from(absent, (a) => 1 / a);
  const pair = new Float64Array(n * n).fill(1);
  for (const cause of own) {
    const all = ownFactor(cause, []);
    const alone = cause.passes.map(({ k }) => ownFactor(cause, [k]));
    cause.passes.forEach(({ k }, i) => {
      single[k] = (single[k] as number) * ((alone[i] as number) / all);
      for (let u = 0; u < i; u += 1) {
        const j = (cause.passes[u] as Touch).k;
        const factor = (ownFactor(cause, [k, j]) * all) / ((alone[i] as number) * (alone[u] as number));
        pair[k * n + j] = (pair[k * n + j] as number) * factor;
        pair[j * n + k] = pair[k * n + j] as number;
      }
    });
  }
  for (let i = 0; i < n; i += 1) {
    const row = none * (single[i] as number);
    for (let j = 0, at = i * n; j < n; j += 1, at += 1) pair[at] = (pair[at] as number) * row * (single[j] as number);
  }
  for (let i = 0; i < n; i += 1) single[i] = (single[i] as number) * none;
  return { none, single, pair };
}

/**
 * @param fit how well each set of conditions explains what was seen
 * @param damping chance that each condition gives none of the symptoms taken as absent
 */
export function plugSum(fit: PlugFit, damping: Float64Array, free: OnPairs): PlugSum {
  const n = damping.length;
  const pair = new Float64Array(n * n);
  const single = new Float64Array(n);
  const holding = new Float64Array(n);
  let alternating = fit.none;
  let total = 0;
  for (let i = 0; i < n; i += 1) {
    const quiet = damping[i] as number;
    let [row, held] = [0, 0];
    for (let j = 0, at = i * n; j < n; j += 1, at += 1) {
      if (i === j) continue;
      const both = (fit.pair[at] as number) * quiet * (damping[j] as number);
      const term = both * (free.pair[at] as number);
      pair[at] = term;
      row += both;
      held += term;
    }
    const alone = (fit.single[i] as number) * quiet;
    single[i] = (alone - row) * (free.single[i] as number);
    alternating += row / 2 - alone;
    total += held / 2 + (single[i] as number);
    holding[i] = held + (single[i] as number);
  }
  const none = alternating * free.none;
  return { fit, damping, free, terms: { none, single, pair }, total: total + none, holding };
}
