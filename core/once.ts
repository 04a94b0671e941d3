/** A map of any kind that keeps what was worked out. */
type Known<K, T> = { readonly get: (key: K) => T | undefined; readonly set: (key: K, value: T) => unknown };

/** What is known under a key; worked out and kept the first time it is asked for. */
export function once<K, T>(known: Known<K, T>, key: K, make: () => T): T {
  const found = known.get(key) ?? make();
  known.set(key, found);
  return found;
}
