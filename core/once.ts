/** A map of any kind that keeps what was worked out. */
type Known<K, T> = { readonly get: (key: K) => T | undefined; readonly set: (key: K, value: T) => unknown };

/** What is known under a key; worked out and kept the first time it is asked for. */
export function once<K, T>(known: Known<K, T>, key: K, make: () => T): T {
  const found = known.get(key);
  if (found !== undefined) return found;
  const made = make();
  known.set(key, made);
  return made;
}

/** Keeps what was worked out under two keys, or three. */
export class Kept<A, B, T, C = undefined> {
  private readonly known = new Map<A, Map<B, Map<C | undefined, T>>>();

  once(a: A, b: B, make: () => T, c?: C): T {
    const ofA = once(this.known, a, () => new Map<B, Map<C | undefined, T>>());
    return once(once(ofA, b, () => new Map<C | undefined, T>()), c, make);
  }
}
