import { stateWeights, type CylinderWeights, type Frame } from './cylinder.ts';
import type { Evidence, PlugEvidence } from './evidence.ts';
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

type Ready = { readonly plugs: readonly PlugUnder[]; readonly found: Found; readonly weights: CylinderWeights };

/** All worlds of one cylinder, row by row. */
class Rows {
  readonly frame: Frame;
  /** Weight of the world with the taken state and each later state. */
  readonly row: Float64Array;
  /** With the coupled states summed up: nothing shared, and one shared state alone. */
  none: number;
  readonly single: Float64Array;
  /** By shared state, the last row for none: weight with each coupled state. */
  private readonly withCoupled: Float64Array;
  private readonly coupledPairs: Float64Array;
  private readonly ready: Ready;

  constructor(frame: Frame, ready: Ready) {
    const { sharedStates, roster } = frame;
    const states = roster.states.length;
    const coupled = states - sharedStates;
    this.frame = frame;
    this.ready = ready;
    this.row = new Float64Array(states);
    this.withCoupled = new Float64Array((sharedStates + 1) * coupled);
    this.coupledPairs = new Float64Array(coupled * coupled);
    this.none = ready.plugs.reduce((w, plug) => w * plug.none, ready.weights.base * foundUnder(ready.found, -1, -1));
    this.fill(-1);
    this.single = this.row.slice(0, sharedStates);
    this.none += this.keepCoupled(sharedStates);
    for (let t = sharedStates; t < states; t += 1) {
      this.fill(t);
      for (let u = roster.ends[t] as number; u < states; u += 1) {
        this.coupledPairs[(t - sharedStates) * coupled + u - sharedStates] = this.row[u] as number;
        this.none += this.row[u] as number;
      }
    }
  }

  fill(a: number): void {
    const { row } = this;
    const { plugs, found, weights } = this.ready;
    const { states } = weights;
    const from = a < 0 ? 0 : (this.frame.roster.ends[a] as number);
    const before = weights.base * (a < 0 ? 1 : (states[a] as number));
    const { table, width, turned } = found;
    const at = (a < 0 ? width - 1 : (turned[a] as number)) * width;
    for (let b = from; b < row.length; b += 1) row[b] = before * (states[b] as number) * (table[at + (turned[b] as number)] as number);
    for (const plug of plugs) {
      plug.take(a);
      plug.multiplyInto(row, from, row.length);
    }
  }

  /** Keeps the coupled part of the row. @returns its sum */
  keepCoupled(at: number): number {
    const { sharedStates } = this.frame;
    const coupled = this.row.length - sharedStates;
    let sum = 0;
    for (let t = 0; t < coupled; t += 1) {
      const weight = this.row[sharedStates + t] as number;
      this.withCoupled[at * coupled + t] = weight;
      sum += weight;
    }
    return sum;
  }

  /** Weight of a world with coupled states. */
  coupledWeight(a: number, b: number): number {
    const { sharedStates } = this.frame;
    const coupled = this.row.length - sharedStates;
    const t = b - sharedStates;
    if (a >= sharedStates) return this.coupledPairs[(a - sharedStates) * coupled + t] as number;
    return this.withCoupled[(a < 0 ? sharedStates : a) * coupled + t] as number;
  }
}

/** Weights of all sets of the engine's shared states: none, each one, and pairs in rows by their first state. */
type Weights = { none: number; readonly single: Float64Array; readonly pairs: Float64Array; readonly starts: Uint32Array };

function priorWeights(roster: Roster, damping: Damping): Weights {
  const single = stateWeights(roster, damping);
  const n = single.length;
  const starts = new Uint32Array(n + 1);
  for (let a = 0; a < n; a += 1) starts[a + 1] = (starts[a] as number) + n - (roster.ends[a] as number);
  const pairs = new Float64Array(starts[n] as number);
  for (let a = 0; a < n; a += 1) {
    const end = roster.ends[a] as number;
    for (let b = end; b < n; b += 1) pairs[(starts[a] as number) + b - end] = (single[a] as number) * (single[b] as number);
  }
  return { none: 1, single, pairs, starts };
}

/** Multiplies one cylinder into the weights of the engine's sets. */
function multiplyIn(weights: Weights, { ends }: Roster, here: Rows, localOf: Int16Array): void {
  const { single, pairs, starts } = weights;
  const n = single.length;
  for (let a = 0; a < n; a += 1) {
    const at = localOf[a] as number;
    if (at < 0) continue;
    here.fill(at);
    here.single[at] = (here.single[at] as number) + here.keepCoupled(at);
    const end = ends[a] as number;
    const offset = (starts[a] as number) - end;
    for (let b = end; b < n; b += 1) {
      const other = localOf[b] as number;
      if (other >= 0) pairs[offset + b] = (pairs[offset + b] as number) * (here.row[other] as number);
    }
  }
  const of = (v: number): number => ((localOf[v] as number) < 0 ? here.none : (here.single[localOf[v] as number] as number));
  for (let a = 0; a < n; a += 1) {
    const end = ends[a] as number;
    const offset = (starts[a] as number) - end;
    const away = (localOf[a] as number) < 0;
    for (let b = end; b < n; b += 1)
      if (away || (localOf[b] as number) < 0) pairs[offset + b] = (pairs[offset + b] as number) * (away ? of(b) : of(a));
    single[a] = (single[a] as number) * of(a);
  }
  weights.none *= here.none;
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

function heavy({ single, pairs, starts }: Weights, { ends }: Roster, limit: number): StateSets {
  const sets: [number[], number[]] = [[-1], [-1]];
  const n = single.length;
  for (let a = 0; a < n; a += 1) {
    sets[0].push(a);
    sets[1].push(-1);
    const end = ends[a] as number;
    const offset = (starts[a] as number) - end;
    for (let b = end; b < n; b += 1)
      if ((pairs[offset + b] as number) >= limit) {
        sets[0].push(a);
        sets[1].push(b);
      }
  }
  return { first: Int16Array.from(sets[0]), second: Int16Array.from(sets[1]) };
}

/** What the other cylinders and the priors give to each shared set of this cylinder that leaves room for coupled states. */
function outsideOf(weights: Weights, { ends }: Roster, sets: StateSets, setOf: Uint32Array, local: StateSets, here: Rows): Float64Array {
  const outside = new Float64Array(local.first.length);
  for (let s = 0; s < setOf.length; s += 1) {
    const at = setOf[s] as number;
    if ((local.second[at] as number) >= 0) continue;
    const [a, b] = [sets.first[s] as number, sets.second[s] as number];
    const paired = (): number => weights.pairs[(weights.starts[a] as number) + b - (ends[a] as number)] as number;
    const weight = a < 0 ? weights.none : b < 0 ? (weights.single[a] as number) : paired();
    const own = (local.first[at] as number) < 0 ? here.none : (here.single[local.first[at] as number] as number);
    if (own > 0) outside[at] = (outside[at] as number) + weight / own;
  }
  return outside;
}

/**
 * The worlds that weigh enough to be counted.
 * @param roster the states of all shared causes of the engine
 * @param places by cylinder: where each of these states stands in the cylinder's own roster
 */
export function screened(knowledge: Knowledge, memory: Memory, roster: Roster, places: readonly Place[], { cylinders, absent }: Evidence): Counted {
  const damping = dampingFor(knowledge, absent);
  const own = dampingFor(knowledge, []);
  const weights = priorWeights(roster, damping);
  const rows = cylinders.map((evidence, c) => {
    const { frame, localOf } = places[c] as Place;
    const plugs = frame.plugs.map((plug, p) => memory.plug(plug, evidence.plugs[p] as PlugEvidence, damping).under);
    const here = new Rows(frame, { plugs, found: memory.found(frame, evidence.seen), weights: memory.weights(frame, damping, own) });
    multiplyIn(weights, roster, here, localOf);
    return here;
  });
  const limit = threshold(weights);
  const sets = heavy(weights, roster, limit);
  return {
    sets,
    places: shareAlike(rows.map((here, c) => {
      const { setOf, local } = projected(sets, (places[c] as Place).localOf);
      const outside = outsideOf(weights, roster, sets, setOf, local, here);
      return { setOf, worlds: worldsFor(here.frame, local, (s, a, b) => (outside[s] as number) * here.coupledWeight(a, b) >= LIGHTER * limit) };
    })),
  };
}
