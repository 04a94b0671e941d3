/** A stream of numbers that a word decides: the same word, the same drawing. */
export type Chance = {
  /** From 0 up to, not including, 1. */
  readonly next: () => number;
  readonly between: (low: number, high: number) => number;
};

/** FNV-1a over the characters. */
function hash(word: string): number {
  let h = 0x811c9dc5;
  for (let i = 0; i < word.length; i += 1) h = Math.imul(h ^ word.charCodeAt(i), 0x01000193);
  return h >>> 0;
}

/** Mulberry32, a public-domain generator by Tommy Ettinger: small, and good enough for grain. */
export function chance(word: string): Chance {
  let state = hash(word);
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  return { next, between: (low, high) => low + (high - low) * next() };
}
