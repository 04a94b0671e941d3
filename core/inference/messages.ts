import type { OnPairs } from './plug-sum.ts';
import type { PlugTouches } from './roster.ts';

/**
 * Collects, over weighed worlds, what each set E of freed conditions is worth: Σ w · Π factor over all touched conditions outside E. Worlds with the same
 * first state come in a row, so that what they have in common is added up once.
 */
export class Messages {
  private readonly touches: PlugTouches;
  private none = 0;
  private readonly single: Float64Array;
  /** Upper triangle. */
  private readonly pair: Float64Array;
  /** Of the row at hand: its first state, the sum of its worlds, and by condition the gains of their second states. */
  private first = -1;
  private row = 0;
  private readonly along: Float64Array;
  private readonly met: Uint8Array;
  private readonly joined: { readonly ks: Uint16Array; readonly gains: Float64Array };
  /** By second state, the sum of its worlds. */
  private readonly seconds: Float64Array;

  constructor(n: number, touches: PlugTouches) {
    this.touches = touches;
    this.single = new Float64Array(n);
    this.pair = new Float64Array(n * n);
    this.along = new Float64Array(n);
    this.met = new Uint8Array(n);
    this.joined = { ks: new Uint16Array(n), gains: new Float64Array(n) };
    this.seconds = new Float64Array(touches.products.length);
  }

  /** One world, in which states a and b (or none, -1) act on the plug. */
  add(weight: number, a: number, b: number): void {
    if (a !== this.first) this.begin(a);
    const { products, starts, ks, gains } = this.touches;
    const all = weight * (a < 0 ? 1 : (products[a] as number)) * (b < 0 ? 1 : (products[b] as number));
    if (b >= 0 && this.meets(b)) return this.addMeeting(all, a, b);
    this.none += all;
    this.row += all;
    if (b < 0) return;
    this.seconds[b] = (this.seconds[b] as number) + all;
    for (let t = starts[b] as number; t < (starts[b + 1] as number); t += 1) {
      const k = ks[t] as number;
      this.along[k] = (this.along[k] as number) + all * (gains[t] as number);
    }
  }

  private meets(b: number): boolean {
    const { starts, ks } = this.touches;
    for (let t = starts[b] as number; t < (starts[b + 1] as number); t += 1) if (this.met[ks[t] as number] !== 0) return true;
    return false;
  }

  private addPair(k: number, l: number, value: number): void {
    const at = k < l ? k * this.single.length + l : l * this.single.length + k;
    this.pair[at] = (this.pair[at] as number) + value;
  }

  /** Two states that touch the same condition. */
  private addMeeting(all: number, a: number, b: number): void {
    const { ks, gains } = this.joined;
    const size = this.join(b, this.join(a, 0));
    this.none += all;
    for (let t = 0; t < size; t += 1) {
      const k = ks[t] as number;
      const gain = all * (gains[t] as number);
      this.single[k] = (this.single[k] as number) + gain;
      for (let u = 0; u < t; u += 1) this.addPair(k, ks[u] as number, gain * (gains[u] as number));
    }
  }

  /** Joins the touches of a state to those of another. @returns how many conditions are touched */
  private join(v: number, before: number): number {
    const { starts, ks, gains } = this.touches;
    const { joined } = this;
    let size = before;
    for (let t = starts[v] as number; t < (starts[v + 1] as number); t += 1) {
      const k = ks[t] as number;
      const gain = gains[t] as number;
      let at = 0;
      while (at < before && joined.ks[at] !== k) at += 1;
      if (at < before) joined.gains[at] = (1 + (joined.gains[at] as number)) * (1 + gain) - 1;
      else {
        joined.ks[size] = k;
        joined.gains[size] = gain;
        size += 1;
      }
    }
    return size;
  }

  /** What a sum of worlds says through the touches of one state alone. */
  private addState(v: number, sum: number): void {
    const { starts, ks, gains } = this.touches;
    for (let t = starts[v] as number; t < (starts[v + 1] as number); t += 1) {
      const gain = sum * (gains[t] as number);
      for (let u = starts[v] as number; u < t; u += 1) this.addPair(ks[t] as number, ks[u] as number, gain * (gains[u] as number));
    }
  }

  /** What the second states of the row add, alone and through the touches of the first. */
  private addAlong(from: number, to: number): void {
    const { ks, gains } = this.touches;
    const { along, single } = this;
    for (let l = 0; l < along.length; l += 1) {
      const gain = along[l] as number;
      if (gain === 0) continue;
      single[l] = (single[l] as number) + gain;
      for (let t = from; t < to; t += 1) this.addPair(ks[t] as number, l, (gains[t] as number) * gain);
      along[l] = 0;
    }
  }

  /** Closes the row at hand: what its worlds say through the touches of their first state. */
  private close(): void {
    const { starts, ks, gains } = this.touches;
    const { single, met, first, row } = this;
    if (first < 0) return;
    const [from, to] = [starts[first] as number, starts[first + 1] as number];
    this.addAlong(from, to);
    for (let t = from; t < to; t += 1) {
      const k = ks[t] as number;
      single[k] = (single[k] as number) + row * (gains[t] as number);
      met[k] = 0;
    }
    this.addState(first, row);
  }

  private begin(a: number): void {
    const { starts, ks } = this.touches;
    this.close();
    this.first = a;
    this.row = 0;
    if (a >= 0) for (let t = starts[a] as number; t < (starts[a + 1] as number); t += 1) this.met[ks[t] as number] = 1;
  }

  /** Worth of freeing exactly E, for every E. No world may be added any more. */
  worth(): OnPairs {
    this.close();
    this.seconds.forEach((sum, b) => { if (sum !== 0) this.addState(b, sum); });
    const n = this.single.length;
    const single = Float64Array.from(this.single, (v) => this.none + v);
    const pair = new Float64Array(n * n);
    for (let i = 0; i < n; i += 1)
      for (let j = i + 1; j < n; j += 1) {
        const both = (single[i] as number) + (this.single[j] as number) + (this.pair[i * n + j] as number);
        pair[i * n + j] = both;
        pair[j * n + i] = both;
      }
    return { none: this.none, single, pair };
  }
}
