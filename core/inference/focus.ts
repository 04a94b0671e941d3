import { Kept } from '../once.ts';
import { memoryFor } from './memory.ts';
import { solverOn, type Solution, type Solver } from './posterior.ts';
import type { Counted } from './screen.ts';
import { worldProbabilities, type Solved, type SolvedCylinder } from './solved-cylinder.ts';
import { projected, shareAlike, type StateSets, type Worlds } from './state-sets.ts';

/*
 * While evidence is changed over and over, only the worlds that weighed something are weighed again: every state alone, the pairs of states that are
 * believed somewhat, and what else is likelier than one in a million.
 */
const LIKELY = 1e-6;
const BELIEVED = 0.002;

type Weighed = StateSets & { readonly p: Float64Array };

/** Belief in each state. */
function believed({ first, second, p }: Weighed): ReadonlyMap<number, number> {
  const beliefs = new Map<number, number>();
  p.forEach((weight, s) => {
    for (const v of [first[s] as number, second[s] as number]) if (v >= 0) beliefs.set(v, (beliefs.get(v) ?? 0) + weight);
  });
  return beliefs;
}

/** Places of the sets to keep. */
function kept(weighed: Weighed): number[] {
  const beliefs = believed(weighed);
  const { first, second, p } = weighed;
  const strong = (v: number): boolean => (beliefs.get(v) ?? 0) >= BELIEVED;
  return [...p.keys()].filter((s) => {
    const [a, b] = [first[s] as number, second[s] as number];
    return b < 0 || (p[s] as number) >= LIKELY || (strong(a) && strong(b));
  });
}

const keyOf = ({ first, second }: StateSets, at: number): number => ((first[at] as number) + 1) * 65_536 + (second[at] as number) + 1;

/** The worlds to keep of one cylinder: those of the shared sets that were kept, numbered as these are. */
function worldsIn(solved: Solved, local: StateSets): Worlds {
  const { worlds } = solved;
  const places = new Map(Array.from(local.first, (_, s): [number, number] => [keyOf(local, s), s]));
  const setOf = Int32Array.from(worlds.shared.first, (_, s) => places.get(keyOf(worlds.shared, s)) ?? -1);
  const chosen = new Set(kept({ first: worlds.first, second: worlds.second, p: worldProbabilities(solved) }));
  const list = [...worlds.set.keys()].filter((w) => {
    const set = worlds.set[w] as number;
    return (setOf[set] as number) >= 0 && (chosen.has(w) || keyOf(worlds, w) === keyOf(worlds.shared, set));
  });
  return {
    first: Int16Array.from(list, (w) => worlds.first[w] as number),
    second: Int16Array.from(list, (w) => worlds.second[w] as number),
    set: Uint32Array.from(list, (w) => setOf[worlds.set[w] as number] as number),
    shared: local,
  };
}

/** A solver among the worlds in focus, for the questions "what if this had not been seen" and "what would this check show". */
export function focusOn({ ground, counted, perSet, cylinders }: Solution): Solver {
  const list = kept({ ...counted.sets, p: perSet() });
  const { first, second } = counted.sets;
  const sets = { first: Int16Array.from(list, (s) => first[s] as number), second: Int16Array.from(list, (s) => second[s] as number) };
  const alike = new Kept<Int16Array, Solved, Counted['places'][number]>();
  const places = ground.places.map(({ localOf }, c) => {
    const { solved } = cylinders[c] as SolvedCylinder;
    return alike.once(localOf, solved, () => {
      const { setOf, local } = projected(sets, localOf);
      return { setOf, worlds: worldsIn(solved, local) };
    });
  });
  const focus: Counted = { sets, places: shareAlike(places) };
  return solverOn({ ...ground, memory: memoryFor(ground.network.knowledge.conditions) }, () => focus);
}
