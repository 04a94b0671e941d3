import { Kept } from '../once.ts';
import { stateWeights, type CylinderWeights, type Frame, type Shape } from './cylinder.ts';
import type { CylinderEvidence, Evidence } from './evidence.ts';
import { foundUnder, type Found } from './found.ts';
import type { Memory } from './memory.ts';
import type { PlugUnder } from './plug-under.ts';
import type { Roster } from './roster.ts';
import { projected, shareAlike, worldsFor, type StateSets, type Worlds } from './state-sets.ts';
import { dampingFor, type Damping } from './symptoms.ts';
import type { Knowledge } from '../knowledge/types.ts';

/*
 * Most of the counted worlds weigh next to nothing. All of them are weighed once without the symptoms that were felt: a symptom can only make a world
 * lighter, so what is too light here stays so, and only the rest is weighed in full.
 */

/** One cylinder in the engine: what can be switched there, and where each state of the engine stands in its roster; -1 where it does not reach. */
export type Place = { readonly frame: Frame; readonly localOf: Int16Array };

/** The sets of the engine that are counted, and by cylinder its worlds with the place of each set of the engine among them. */
export type Counted = { readonly sets: StateSets; readonly places: readonly { readonly worlds: Worlds; readonly setOf: Uint32Array }[] };

/** Weights of the worlds of one cylinder, the coupled states summed up in `none` and `single`, and apart in `alone` and `pairs`. */
type Rows = { readonly none: number; readonly single: Float64Array; readonly alone: Float64Array; readonly pairs: Float64Array };
type Ready = { readonly plugs: readonly PlugUnder[]; readonly found: Found; readonly weights: CylinderWeights };

/** Weights of the worlds with two states, in the rows of the roster. */
function pairWeights({ ends, offsets, pairs }: Roster, { plugs, found: { table, width, turned }, weights: { base, states } }: Ready): Float64Array {
  const n = ends.length;
  const all = new Float64Array(pairs);
  for (let a = 0; a < n; a += 1) {
    const before = base * (states[a] as number);
    const row = (turned[a] as number) * width;
    const offset = offsets[a] as number;
    for (let b = ends[a] as number; b < n; b += 1) all[offset + b] = before * (states[b] as number) * (table[row + (turned[b] as number)] as number);
  }
  for (const plug of plugs) {
    const seen = plug.pairs;
    for (let at = 0; at < pairs; at += 1) all[at] = (all[at] as number) * (seen[at] as number);
  }
  return all;
}

function rowsOf({ roster, sharedStates }: Shape, ready: Ready): Rows {
  const { plugs, found, weights } = ready;
  const { ends, offsets } = roster;
  const n = ends.length;
  const weightWith = (v: number): number =>
    plugs.reduce((w, plug) => w * plug.with(v, -1), weights.base * foundUnder(found, v, -1) * (v < 0 ? 1 : (weights.states[v] as number)));
  const alone = new Float64Array(n);
  for (let v = 0; v < n; v += 1) alone[v] = weightWith(v);
  const pairs = pairWeights(roster, ready);
  const single = alone.slice(0, sharedStates);
  let none = weightWith(-1);
  for (let t = sharedStates; t < n; t += 1) none += alone[t] as number;
  for (let a = 0; a < n; a += 1) {
    let sum = 0;
    for (let t = Math.max(sharedStates, ends[a] as number); t < n; t += 1) sum += pairs[(offsets[a] as number) + t] as number;
    if (a < sharedStates) single[a] = (single[a] as number) + sum;
    else none += sum;
  }
  return { none, single, alone, pairs };
}

/** Weights of all sets of the engine's shared states: none, each one, and pairs in the rows of the roster. */
type Weights = { none: number; readonly single: Float64Array; readonly pairs: Float64Array };

function priorWeights(roster: Roster, damping: Damping): Weights {
  const { ends, offsets } = roster;
  const single = stateWeights(roster, damping);
  const pairs = new Float64Array(roster.pairs);
  for (let a = 0; a < single.length; a += 1)
    for (let b = ends[a] as number; b < single.length; b += 1) pairs[(offsets[a] as number) + b] = (single[a] as number) * (single[b] as number);
  return { none: 1, single, pairs };
}

/** Multiplies cylinders into the weights of the engine's sets: so many that stand and look alike. */
function multiplyIn(weights: Weights, { ends, offsets }: Roster, here: Rows, { localOf, frame }: Place, times: number): void {
  const { single, pairs } = weights;
  const n = single.length;
  const local = frame.shape.roster.offsets;
  for (let a = 0; a < n; a += 1) {
    const first = localOf[a] as number;
    const alone = first < 0 ? here.none : (here.single[first] as number);
    const row = first < 0 ? 0 : (local[first] as number);
    const offset = offsets[a] as number;
    for (let b = ends[a] as number; b < n; b += 1) {
      const second = localOf[b] as number;
      const weight = second < 0 ? alone : first < 0 ? (here.single[second] as number) : (here.pairs[row + second] as number);
      let all = pairs[offset + b] as number;
      for (let i = 0; i < times; i += 1) all *= weight;
      pairs[offset + b] = all;
    }
    single[a] = (single[a] as number) * alone ** times;
  }
  weights.none *= here.none ** times;
}

/** What is left out weighs together at most this share of everything, felt symptoms aside. */
const LEFT_OUT = 1e-5;
/** The worlds of a cylinder are many for each set of the engine; only still lighter ones are left out. */
const LIGHTER = 0.1;

/** So few sets are all counted. */
const FEW = 1000;

/** The greatest weight (by powers of ten) under which all together stay within the share. */
function threshold({ none, single, pairs }: Weights): number {
  if (pairs.length < FEW) return 0;
  let all = none;
  for (const w of single) all += w;
  for (const w of pairs) all += w;
  for (let limit = 1e-6 * all; ; limit /= 10) {
    let out = 0;
    for (const w of pairs) if (w < limit) out += w;
    if (!(out > LEFT_OUT * all)) return limit;
  }
}

function heavy({ pairs }: Weights, { ends, offsets }: Roster, limit: number): StateSets {
  const sets: [number[], number[]] = [[-1], [-1]];
  const n = ends.length;
  for (let a = 0; a < n; a += 1) {
    sets[0].push(a);
    sets[1].push(-1);
    const offset = offsets[a] as number;
    for (let b = ends[a] as number; b < n; b += 1)
      if ((pairs[offset + b] as number) >= limit) {
        sets[0].push(a);
        sets[1].push(b);
      }
  }
  return { first: Int16Array.from(sets[0]), second: Int16Array.from(sets[1]) };
}

/** Weight of every counted set of the engine. */
function weightsOf(sets: StateSets, { none, single, pairs }: Weights, { offsets }: Roster): Float64Array {
  return Float64Array.from(sets.first, (a, s) => {
    const b = sets.second[s] as number;
    return a < 0 ? none : b < 0 ? (single[a] as number) : (pairs[(offsets[a] as number) + b] as number);
  });
}

/** What the other cylinders and the priors give to each shared set of this cylinder that leaves room for coupled states. */
function outsideOf(weights: Float64Array, setOf: Uint32Array, { first, second }: StateSets, here: Rows): Float64Array {
  const outside = new Float64Array(first.length);
  for (let s = 0; s < setOf.length; s += 1) {
    const at = setOf[s] as number;
    if ((second[at] as number) >= 0) continue;
    const own = (first[at] as number) < 0 ? here.none : (here.single[first[at] as number] as number);
    if (own > 0) outside[at] = (outside[at] as number) + (weights[s] as number) / own;
  }
  return outside;
}

type CountedPlace = Counted['places'][number];

/** The sets as one cylinder sees them, with those of its worlds that weigh enough. */
function placeOf({ frame: { shape }, localOf }: Place, sets: StateSets, weights: Float64Array, here: Rows, limit: number): CountedPlace {
  const { offsets } = shape.roster;
  const { setOf, local } = projected(sets, localOf);
  const outside = outsideOf(weights, setOf, local, here);
  const coupled = (a: number, b: number): number => (a < 0 ? (here.alone[b] as number) : (here.pairs[(offsets[a] as number) + b] as number));
  return { setOf, worlds: worldsFor(shape, local, (s, a, b) => (outside[s] as number) * coupled(a, b) >= limit) };
}

export type Screening = (roster: Roster, places: readonly Place[], evidence: Evidence) => Counted;

/**
 * Finds the worlds that weigh enough to be counted; cylinders that stand alike and look alike are weighed once.
 * The roster holds the states of all shared causes of the engine.
 */
export function screening(knowledge: Knowledge, memory: Memory): Screening {
  const own = dampingFor(knowledge, []);
  const known = new Kept<Shape, string, Rows, Damping>();
  const ready = (shape: Shape, { plugs, seen }: CylinderEvidence, damping: Damping): Ready => ({
    plugs: plugs.map((plug, p) => memory.plug(shape, p, plug, damping).under), found: memory.found(shape, seen), weights: memory.weights(shape, damping, own),
  });
  return (roster, places, { cylinders, absent }) => {
    const damping = dampingFor(knowledge, absent);
    const weights = priorWeights(roster, damping);
    const rows = cylinders.map((evidence, c) => {
      const { shape } = (places[c] as Place).frame;
      return known.once(shape, memory.look(evidence), () => rowsOf(shape, ready(shape, evidence, damping)), damping);
    });
    const met = new Kept<Rows, Int16Array, { readonly place: Place; times: number }>();
    const counts = rows.map((here, c) => met.once(here, (places[c] as Place).localOf, () => ({ place: places[c] as Place, times: 0 })));
    for (const count of counts) count.times += 1;
    rows.forEach((here, c) => {
      const { place, times } = counts[c] as (typeof counts)[number];
      if (place === places[c]) multiplyIn(weights, roster, here, place, times);
    });
    const limit = threshold(weights);
    const sets = heavy(weights, roster, limit);
    const inAll = weightsOf(sets, weights, roster);
    const alike = new Kept<Int16Array, Rows, CountedPlace>();
    const counted = rows.map((here, c) => {
      const place = places[c] as Place;
      return alike.once(place.localOf, here, () => placeOf(place, sets, inAll, here, LIGHTER * limit));
    });
    return { sets, places: shareAlike(counted) };
  };
}
