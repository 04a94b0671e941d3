import type { Shape } from './cylinder.ts';

/*
 * What the whole engine may hold is counted as changes from the base states: at most two causes stand otherwise. So a circumstance that makes a cause nearly
 * sure does not use up the bound.
 */

/** Sets of at most two states of different causes, side by side; -1 stands for none, and `first` is filled first. */
export type StateSets = { readonly first: Int16Array; readonly second: Int16Array };

/** Worlds of one cylinder: its states in the cylinder's roster, coupled ones among them, and which of the shared sets it belongs to. */
export type Worlds = StateSets & { readonly set: Uint32Array; readonly shared: StateSets };

/**
 * The sets as one cylinder sees them.
 * @param localOf by state of the engine: the same state in the cylinder's roster, or -1 where it does not reach the cylinder
 * @returns the different sets that are left, and for each set of the engine its place among them
 */
export function projected({ first, second }: StateSets, localOf: Int16Array): { readonly setOf: Uint32Array; readonly local: StateSets } {
  const width = localOf.length + 1;
  const places = new Int32Array(width * width);
  const [ones, others]: [number[], number[]] = [[], []];
  const setOf = new Uint32Array(first.length);
  for (let s = 0; s < first.length; s += 1) {
    const [a, b] = [first[s] as number, second[s] as number];
    const one = a < 0 ? -1 : (localOf[a] as number);
    const other = b < 0 ? -1 : (localOf[b] as number);
    const [x, y] = one < 0 ? [other, one] : [one, other];
    const key = (x + 1) * width + y + 1;
    if (places[key] === 0) {
      ones.push(x);
      others.push(y);
      places[key] = ones.length;
    }
    setOf[s] = (places[key] as number) - 1;
  }
  return { setOf, local: { first: Int16Array.from(ones), second: Int16Array.from(others) } };
}

/**
 * The worlds of one cylinder: every shared set with every coupled state that the bound of two leaves room for.
 * @param keep whether a world with coupled states is to be counted; `set` is the place of its shared set
 */
export function worldsFor(
  { roster, sharedStates }: Pick<Shape, 'roster' | 'sharedStates'>,
  shared: StateSets,
  keep: (set: number, a: number, b: number) => boolean = () => true,
): Worlds {
  const [set, first, second]: [number[], number[], number[]] = [[], [], []];
  const add = (s: number, a: number, b: number): void => { set.push(s); first.push(a); second.push(b); };
  const states = roster.states.length;
  for (let s = 0; s < shared.first.length; s += 1) {
    const [a, b] = [shared.first[s] as number, shared.second[s] as number];
    add(s, a, b);
    if (b >= 0) continue;
    for (let t = sharedStates; t < states; t += 1) {
      if (keep(s, a, t)) add(s, a < 0 ? t : a, a < 0 ? -1 : t);
      if (a >= 0) continue;
      for (let u = roster.ends[t] as number; u < states; u += 1) if (keep(s, t, u)) add(s, t, u);
    }
  }
  return { set: Uint32Array.from(set), first: Int16Array.from(first), second: Int16Array.from(second), shared };
}

const alike = (a: ArrayLike<number>, b: ArrayLike<number>): boolean => {
  if (a.length !== b.length) return false;
  for (let at = 0; at < a.length; at += 1) if (a[at] !== b[at]) return false;
  return true;
};

/** Gives cylinders that count the same worlds the very same list, so that what follows from it is worked out once. */
export function shareAlike<P extends { readonly worlds: Worlds }>(places: readonly P[]): P[] {
  const met: Worlds[] = [];
  return places.map((place) => {
    const { worlds } = place;
    const same = met.find((other) => alike(other.set, worlds.set) && alike(other.first, worlds.first) && alike(other.second, worlds.second));
    if (same === undefined) met.push(worlds);
    return { ...place, worlds: same ?? worlds };
  });
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
