import type { PlugFit } from './appearance.ts';

/*
 * One plug, summed in closed form. A condition is absent with probability  n_k · Π over causes (1 - p),  a product; so for a set X of conditions
 *   P(all of X absent) = Π_{k in X} n_k · Π_c (1 - π_c + π_c Π_{k in X} (1 - p_ck))
 * holds over all sets of the plug's own causes at once. "Exactly the conditions C" follows by inclusion and exclusion over the subsets E of C that are
 * left free:  L = Σ_E h(E),  h(E) = coefficient(E) · P(all but E absent),  E of at most two conditions.
 */

/** A cause that acts on this plug alone. `quiet`: chance that it gives none of the symptoms taken as absent. */
export type OwnCause = { readonly prior: number; readonly quiet: number; readonly passes: readonly Touch[] };

/** Factor on the probability that condition k is absent. */
export type Touch = { readonly k: number; readonly factor: number };

/** Values on the sets E of at most two conditions; `pair` is symmetric K×K, row by row, diagonal unused. */
export type OnPairs = { readonly none: number; readonly single: Float64Array; readonly pair: Float64Array };

export type PlugSum = {
  /** fit(C) with the symptoms' damping of the conditions. */
  readonly fit: OnPairs;
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

function dampedFit(fit: PlugFit, damping: Float64Array): OnPairs {
  const n = damping.length;
  const pair = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j < n; j += 1) if (i !== j) pair[i * n + j] = (fit.pair[i * n + j] as number) * (damping[i] as number) * (damping[j] as number);
  return { none: fit.none, single: fit.single.map((v, k) => v * (damping[k] as number)), pair };
}

/** P(all but E absent), for every E. */
function freeOf(absent: Float64Array, own: readonly OwnCause[]): OnPairs {
  const n = absent.length;
  const none = own.reduce(
    (p, cause) => p * ownFactor(cause, []),
    absent.reduce((p, a) => p * a, 1),
  );
  const single = Float64Array.from(absent, (a) => none / a);
  const correction = new Float64Array(n * n).fill(1);
  for (const cause of own) {
    const all = ownFactor(cause, []);
    const alone = cause.passes.map(({ k }) => ownFactor(cause, [k]));
    cause.passes.forEach(({ k }, i) => {
      single[k] = (single[k] as number) * ((alone[i] as number) / all);
      for (let u = 0; u < i; u += 1) {
        const j = (cause.passes[u] as Touch).k;
        const factor = (ownFactor(cause, [k, j]) * all) / ((alone[i] as number) * (alone[u] as number));
        correction[k * n + j] = (correction[k * n + j] as number) * factor;
        correction[j * n + k] = correction[k * n + j] as number;
      }
    });
  }
  const pair = correction.map((c, at) => ((single[Math.floor(at / n)] as number) * (single[at % n] as number) * c) / none);
  return { none, single, pair };
}

/** @param absent P(condition k absent) from its leak and the causes present before any change, each above 0 */
export function plugSum(fit: PlugFit, damping: Float64Array, absent: Float64Array, own: readonly OwnCause[]): PlugSum {
  const n = absent.length;
  const damped = dampedFit(fit, damping);
  const free = freeOf(absent, own);
  const pair = new Float64Array(n * n);
  const single = new Float64Array(n);
  const holding = new Float64Array(n);
  let alternating = damped.none;
  let total = 0;
  for (let i = 0; i < n; i += 1) {
    let row = 0;
    for (let j = 0; j < n; j += 1) {
      if (i === j) continue;
      const at = i * n + j;
      row += damped.pair[at] as number;
      pair[at] = (damped.pair[at] as number) * (free.pair[at] as number);
      holding[i] = (holding[i] as number) + (pair[at]);
    }
    single[i] = ((damped.single[i] as number) - row) * (free.single[i] as number);
    alternating += row / 2 - (damped.single[i] as number);
    total += (holding[i] as number) / 2 + (single[i] as number);
    holding[i] = (holding[i] as number) + (single[i] as number);
  }
  const none = alternating * free.none;
  return { fit: damped, free, terms: { none, single, pair }, total: total + none, holding };
}

const touchProduct = (touches: readonly Touch[]): number => {
  let p = 1;
  for (const { factor } of touches) p *= factor;
  return p;
};

/** Likelihood of the plug after some touches; every k may occur once. */
export function likelihoodAfter(sum: PlugSum, touches: readonly Touch[]): number {
  const n = sum.holding.length;
  let product = 1;
  let value = sum.total;
  for (let t = 0; t < touches.length; t += 1) {
    const { k, factor } = touches[t] as Touch;
    const gain = 1 / factor - 1;
    product *= factor;
    value += gain * (sum.holding[k] as number);
    for (let u = 0; u < t; u += 1) {
      const other = touches[u] as Touch;
      value += gain * (1 / other.factor - 1) * (sum.terms.pair[k * n + other.k] as number);
    }
  }
  return product * value;
}

/** One plug under a list of touches, ready to be asked for many further lists. */
export class Touched {
  private readonly sum: PlugSum;
  private readonly gains: Float64Array;
  private touches: readonly Touch[] = [];
  private product = 1;
  private value: number;

  constructor(sum: PlugSum) {
    this.sum = sum;
    this.gains = new Float64Array(sum.holding.length);
    this.value = sum.total;
  }

  /** Begins anew under these touches. */
  touch(touches: readonly Touch[]): void {
    for (const { k } of this.touches) this.gains[k] = 0;
    for (const { k, factor } of touches) this.gains[k] = 1 / factor - 1;
    this.touches = touches;
    this.product = touchProduct(touches);
    this.value = likelihoodAfter(this.sum, touches) / this.product;
  }

  /** Likelihood after these further touches, which may meet the same conditions again. */
  after(more: readonly Touch[]): number {
    const { sum, touches, gains } = this;
    const n = gains.length;
    let { product, value } = this;
    for (let t = 0; t < more.length; t += 1) {
      const { k, factor } = more[t] as Touch;
      const gain = (1 / factor - 1) * (1 + (gains[k] as number));
      let slope = sum.holding[k] as number;
      for (let u = 0; u < touches.length; u += 1) {
        const j = (touches[u] as Touch).k;
        if (j !== k) slope += (gains[j] as number) * (sum.terms.pair[k * n + j] as number);
      }
      for (let u = 0; u < t; u += 1) {
        const other = more[u] as Touch;
        slope += (1 / other.factor - 1) * (1 + (gains[other.k] as number)) * (sum.terms.pair[k * n + other.k] as number);
      }
      product *= factor;
      value += gain * slope;
    }
    return product * value;
  }
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

/** Collects, over weighed worlds, what each set E of freed conditions is worth: Σ w · Π factor over all touched conditions outside E. */
export class Messages {
  none = 0;
  readonly single: Float64Array;
  readonly pair: Float64Array;

  constructor(n: number) {
    this.single = new Float64Array(n);
    this.pair = new Float64Array(n * n);
  }

  add(weight: number, touches: readonly Touch[]): void {
    const n = this.single.length;
    const all = weight * touchProduct(touches);
    this.none += all;
    for (let t = 0; t < touches.length; t += 1) {
      const { k, factor } = touches[t] as Touch;
      const gain = all * (1 / factor - 1);
      this.single[k] = (this.single[k] as number) + gain;
      for (let u = 0; u < t; u += 1) {
        const other = touches[u] as Touch;
        const both = gain * (1 / other.factor - 1);
        this.pair[k * n + other.k] = (this.pair[k * n + other.k] as number) + both;
        this.pair[other.k * n + k] = (this.pair[other.k * n + k] as number) + both;
      }
    }
  }

  /** Worth of freeing exactly E. */
  of(i: number, j: number): number {
    if (i < 0) return this.none;
    if (j < 0) return this.none + (this.single[i] as number);
    return this.none + (this.single[i] as number) + (this.single[j] as number) + (this.pair[i * this.single.length + j] as number);
  }
}
