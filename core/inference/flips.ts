/**
 * Sets of causes are counted as changes from the likeliest set before anything is seen (every cause with a prior above one half present).
 * So a circumstance that makes a cause nearly sure does not use up the bound.
 */
export type Flips = readonly number[];

/** All sets of at most two of n, in the order of `flipIndex`. */
export function flipsUpToTwo(n: number): Flips[] {
  const sets: Flips[] = [[]];
  for (let a = 0; a < n; a += 1) sets.push([a]);
  for (let a = 0; a < n; a += 1) for (let b = a + 1; b < n; b += 1) sets.push([a, b]);
  return sets;
}

/** Place of {a, b}, a < b, of {a}, or of the empty set (-1 stands for none). */
export function flipIndex(n: number, a: number, b: number): number {
  if (a < 0) return b < 0 ? 0 : 1 + b;
  if (b < 0) return 1 + a;
  return 1 + n + a * n - (a * (a + 1)) / 2 + (b - a - 1);
}

/** Probability that at most two of these independent changes happen. @param chances each between 0 and 1 */
export function massUpToTwo(chances: readonly number[]): number {
  let [none, one, two] = [1, 0, 0];
  for (const p of chances) {
    two = two * (1 - p) + one * p;
    one = one * (1 - p) + none * p;
    none *= 1 - p;
  }
  return none + one + two;
}
