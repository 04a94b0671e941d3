import type { PlugFit } from './appearance.ts';

/** A change to the chance that a condition stays away: factor on P(condition k absent). */
export type Touch = { readonly k: number; readonly factor: number };

/**
 * One plug under a set of active causes. With a_k = P(condition k absent) and r_k = (1 - a_k) / a_k, the likelihood summed over all sets of at most two
 * conditions is  Π a_k · ( fit(∅) + Σ r_k fit(k) + Σ r_k r_j fit(k, j) ).
 */
export type PlugState = {
  readonly absent: Float64Array;
  readonly ratio: Float64Array;
  /** ∂(bracket)/∂r_k */
  readonly slope: Float64Array;
  readonly product: number;
  readonly bracket: number;
};

/** @param damping factor on r_k: the chance that condition k gives none of the symptoms taken as absent */
export function plugState(fit: PlugFit, absent: Float64Array, damping: Float64Array): PlugState {
  const n = absent.length;
  const ratio = new Float64Array(n);
  const slope = new Float64Array(n);
  let product = 1;
  for (let k = 0; k < n; k += 1) {
    const a = absent[k] as number;
    ratio[k] = ((1 - a) / a) * (damping[k] as number);
    product *= a;
  }
  let bracket = fit.none;
  for (let k = 0; k < n; k += 1) {
    let sum = 0;
    const row = k * n;
    for (let j = 0; j < n; j += 1) if (j !== k) sum += (ratio[j] as number) * (fit.pair[row + j] as number);
    slope[k] = (fit.single[k] as number) + sum;
    bracket += (ratio[k] as number) * ((fit.single[k] as number) + sum / 2);
  }
  return { absent, ratio, slope, product, bracket };
}

export const likelihood = (state: PlugState): number => state.product * state.bracket;

/** The likelihood after some touches; every k may occur once. */
export function likelihoodAfter(state: PlugState, fit: PlugFit, damping: Float64Array, touches: readonly Touch[]): number {
  const n = state.absent.length;
  let { product, bracket } = state;
  for (let t = 0; t < touches.length; t += 1) {
    const { k, factor } = touches[t] as Touch;
    const a = (state.absent[k] as number) * factor;
    const change = ((1 - a) / a) * (damping[k] as number) - (state.ratio[k] as number);
    product *= factor;
    bracket += change * (state.slope[k] as number);
    for (let u = 0; u < t; u += 1) {
      const other = touches[u] as Touch;
      const b = (state.absent[other.k] as number) * other.factor;
      const otherChange = ((1 - b) / b) * (damping[other.k] as number) - (state.ratio[other.k] as number);
      bracket += change * otherChange * (fit.pair[k * n + other.k] as number);
    }
  }
  return product * bracket;
}

/** Joins two lists of touches so that every condition occurs once. */
export function joinTouches(a: readonly Touch[], b: readonly Touch[]): readonly Touch[] {
  if (a.length === 0) return b;
  if (b.length === 0) return a;
  const joined = [...a];
  for (const touch of b) {
    const at = joined.findIndex((other) => other.k === touch.k);
    if (at < 0) joined.push(touch);
    else joined[at] = { k: touch.k, factor: (joined[at] as Touch).factor * touch.factor };
  }
  return joined;
}
