import type { PlugSum } from './plug-sum.ts';
import type { PlugTouches, Roster } from './roster.ts';

/**
 * Likelihood of what was seen on one plug, under no change, one state, or two. With f the product of the factors on condition k and u = 1/f,
 *   L = F · (h(none) + Σ u_k h(k) + Σ u_k u_l h(k, l)),
 * so a second state adds to the first what its own touches gain along the slopes of the first.
 */
export class PlugUnder {
  readonly none: number;
  readonly alone: Float64Array;
  private readonly sum: PlugSum;
  private readonly touches: PlugTouches;
  /** Value before the factors are multiplied in, and the part of it that two touches of one state add together. */
  private readonly values: Float64Array;
  private readonly squares: Float64Array;
  private readonly slopes: Float64Array;
  private readonly taken: Float64Array;
  private readonly met: Uint8Array;
  private first = -1;
  private readonly roster: Roster;
  private known: Float64Array | undefined;

  constructor(sum: PlugSum, touches: PlugTouches, roster: Roster) {
    const [n, states] = [sum.holding.length, touches.products.length];
    this.sum = sum;
    this.touches = touches;
    this.roster = roster;
    this.none = Math.max(0, sum.total);
    this.squares = new Float64Array(states);
    this.values = new Float64Array(states);
    this.alone = new Float64Array(states);
    this.slopes = Float64Array.from(sum.holding);
    this.taken = new Float64Array(n);
    this.met = new Uint8Array(n);
    for (let v = 0; v < states; v += 1) {
      this.squares[v] = this.square(v);
      this.values[v] = this.valueWith(v, sum.total);
      this.alone[v] = Math.max(0, (touches.products[v] as number) * (this.values[v] as number));
    }
  }

  /** What the touches of state v add in pairs, after the taken state. */
  private square(v: number): number {
    const { starts, ks, gains } = this.touches;
    const { taken } = this;
    const n = taken.length;
    const pair = this.sum.terms.pair;
    const start = starts[v] as number;
    let square = 0;
    for (let t = start + 1; t < (starts[v + 1] as number); t += 1) {
      const k = ks[t] as number;
      const gain = (gains[t] as number) * (1 + (taken[k] as number));
      for (let u = start; u < t; u += 1) {
        const l = ks[u] as number;
        square += gain * (gains[u] as number) * (1 + (taken[l] as number)) * (pair[k * n + l] as number);
      }
    }
    return square;
  }

  private valueWith(v: number, before: number): number {
    const { starts, ks, gains } = this.touches;
    const { slopes, met } = this;
    const end = starts[v + 1] as number;
    let value = before;
    let again = 0;
    for (let t = starts[v] as number; t < end; t += 1) {
      const k = ks[t] as number;
      value += (gains[t] as number) * (slopes[k] as number);
      again += met[k] as number;
    }
    return value + (again === 0 ? (this.squares[v] as number) : this.square(v));
  }

  /** Takes state a as the first of two. */
  private take(a: number): void {
    if (this.first === a) return;
    const { starts, ks, gains } = this.touches;
    const { slopes, taken } = this;
    const { holding, terms } = this.sum;
    const n = taken.length;
    slopes.set(holding);
    if (this.first >= 0) this.mark(this.first, false);
    this.mark(a, true);
    for (let t = starts[a] as number; t < (starts[a + 1] as number); t += 1) {
      const row = (ks[t] as number) * n;
      const gain = gains[t] as number;
      for (let k = 0; k < n; k += 1) slopes[k] = (slopes[k] as number) + gain * (terms.pair[row + k] as number);
    }
    for (let t = starts[a] as number; t < (starts[a + 1] as number); t += 1) {
      const k = ks[t] as number;
      slopes[k] = (slopes[k] as number) * (1 + (gains[t] as number));
    }
    this.first = a;
  }

  private mark(a: number, there: boolean): void {
    const { starts, ks, gains } = this.touches;
    for (let t = starts[a] as number; t < (starts[a + 1] as number); t += 1) {
      const k = ks[t] as number;
      this.taken[k] = there ? (gains[t] as number) : 0;
      this.met[k] = there ? 1 : 0;
    }
  }

  /** Likelihood under the taken state and state b. */
  private withAlso(b: number): number {
    const a = this.first;
    const { products } = this.touches;
    const value = (products[a] as number) * (products[b] as number) * this.valueWith(b, this.values[a] as number);
    return value > 0 ? value : 0;
  }

  /** Likelihoods under every two states, in the rows of the roster. */
  get pairs(): Float64Array {
    return (this.known ??= this.allPairs());
  }

  private allPairs(): Float64Array {
    const { ends, offsets, pairs } = this.roster;
    const all = new Float64Array(pairs);
    for (let a = 0; a < ends.length; a += 1) {
      this.take(a);
      const offset = offsets[a] as number;
      for (let b = ends[a] as number; b < ends.length; b += 1) all[offset + b] = this.withAlso(b);
    }
    return all;
  }

  /** Likelihood under states a and b, of which a comes first; -1 for none, b alone or both. */
  with(a: number, b: number): number {
    if (b < 0) return a < 0 ? this.none : (this.alone[a] as number);
    if (this.known !== undefined) return this.known[(this.roster.offsets[a] as number) + b] as number;
    this.take(a);
    return this.withAlso(b);
  }
}
