import { frameFor, quietInBase, stateWeights } from './cylinder.ts';
import type { CylinderEvidence, Evidence } from './evidence.ts';
import { memoryFor, type Memory } from './memory.ts';
import type { Instance, Network } from './network.ts';
import { ownBeliefs } from './plug-belief.ts';
import { rosterOf, turns, type Roster } from './roster.ts';
import { screened, type Counted, type Place } from './screen.ts';
import { weighCylinder, worldProbabilities, type Part, type SolvedCylinder, type Weighed } from './solved-cylinder.ts';
import { massUpToTwo, type StateSets, type Worlds } from './state-sets.ts';
import { switchFor, type Switch } from './states.ts';
import { dampingFor, signedSubsets } from './symptoms.ts';

export type Solution = {
  readonly network: Network;
  readonly evidence: Evidence;
  readonly ground: Ground;
  /** Belief in a cause at its place. Those of one cylinder are worked out when first asked for. */
  readonly belief: (instance: Instance) => number;
  /** The counted sets of shared states, and their probabilities. */
  readonly counted: Counted;
  readonly perSet: Float64Array;
  readonly cylinders: readonly SolvedCylinder[];
  /** Prior probability of all the sets of shared causes that were not counted. */
  readonly neglectedMass: number;
};

/** Weights of the counted sets by part of the symptom sum, and of the sets over all parts. */
type Engine = { readonly byPart: readonly Float64Array[]; readonly perSet: Float64Array; readonly all: number };

/** Weighs every counted set of shared states of the engine against all cylinders. */
function weighEngine({ knowledge }: Network, roster: Roster, { sets, places }: Counted, cylinders: readonly Weighed[], parts: readonly Part[]): Engine {
  const size = sets.first.length;
  const perSet = new Float64Array(size);
  const byPart = parts.map(({ coefficient, taken }, part) => {
    const damping = dampingFor(knowledge, taken);
    const prior = stateWeights(roster, damping);
    const before = coefficient * quietInBase(roster.switches, damping);
    const weights = new Float64Array(size);
    for (let s = 0; s < size; s += 1) {
      const [a, b] = [sets.first[s] as number, sets.second[s] as number];
      weights[s] = before * (a < 0 ? 1 : (prior[a] as number)) * (b < 0 ? 1 : (prior[b] as number));
    }
    cylinders.forEach(({ sums }, c) => {
      const setOf = places[c]?.setOf as Uint32Array;
      const sum = sums[part] as Float64Array;
      for (let s = 0; s < size; s += 1) weights[s] = (weights[s] as number) * (sum[setOf[s] as number] as number);
    });
    for (let s = 0; s < size; s += 1) perSet[s] = (perSet[s] as number) + (weights[s] as number);
    return weights;
  });
  return { byPart, perSet, all: perSet.reduce((sum, w) => sum + w, 0) };
}

/** What the rest of the engine gives to each shared set of one cylinder, by part. */
function outsideOf({ byPart, all }: Engine, { setOf }: Counted['places'][number], { sums }: Weighed): Float64Array[] {
  return byPart.map((weights, part) => {
    const sum = sums[part] as Float64Array;
    const outside = new Float64Array(sum.length);
    for (let s = 0; s < weights.length; s += 1) {
      const at = setOf[s] as number;
      const own = sum[at] as number;
      if (own !== 0) outside[at] = (outside[at] as number) + (weights[s] as number) / own / all;
    }
    return outside;
  });
}

function stateBeliefs({ states }: Roster, { first, second }: StateSets, { perSet, all }: Engine): Float64Array {
  const beliefs = new Float64Array(states.length);
  for (let s = 0; s < perSet.length; s += 1) {
    const [a, b] = [first[s] as number, second[s] as number];
    if (a >= 0) beliefs[a] = (beliefs[a] as number) + (perSet[s] as number) / all;
    if (b >= 0) beliefs[b] = (beliefs[b] as number) + (perSet[s] as number) / all;
  }
  return beliefs;
}

/** Belief in each cause of a roster, from the beliefs in its states. */
function causeBeliefs(roster: Roster, beliefs: Float64Array): Map<string, number> {
  const turned = new Float64Array(roster.switches.length);
  beliefs.forEach((belief, v) => {
    const o = roster.owners[v] as number;
    if (turns(roster, v)) turned[o] = (turned[o] as number) + belief;
  });
  return new Map(
    roster.switches.map(({ instance, base }, o) => [instance.id, base.there ? 1 - (turned[o] as number) : (turned[o] as number)]),
  );
}

function coupledBeliefs(solved: SolvedCylinder): Map<string, number> {
  const { roster, sharedStates, coupled } = solved.frame;
  const beliefs = new Float64Array(roster.states.length);
  if (coupled.length === 0) return new Map();
  worldProbabilities(solved).forEach((p, w) => {
    for (const v of [solved.worlds.first[w] as number, solved.worlds.second[w] as number]) if (v >= sharedStates) beliefs[v] = (beliefs[v] as number) + p;
  });
  const all = causeBeliefs(roster, beliefs);
  return new Map(coupled.map(({ instance: { id } }) => [id, all.get(id) as number]));
}

export type Solver = (evidence: Evidence) => Solution;

/** A cylinder among the shared causes of the engine. */
function placeOf(network: Network, shared: readonly Switch[], evidence: CylinderEvidence): Place {
  const here = shared.filter(({ instance }) => instance.cylinders.includes(evidence.cylinder));
  let next = 0;
  const localOf = Int16Array.from(shared.flatMap((one) => one.others.map(() => (here.includes(one) ? next++ : -1))));
  return { frame: frameFor(here, evidence, network.local.get(evidence.cylinder) ?? [], network.knowledge.conditions), localOf };
}

type Counting = (evidence: Evidence) => Counted;
/** A network with its states laid out and what was worked out of it so far. */
export type Ground = {
  readonly network: Network;
  readonly memory: Memory;
  readonly shared: readonly Switch[];
  readonly roster: Roster;
  readonly places: readonly Place[];
};

function groundFor(network: Network): Ground {
  const { conditions } = network.knowledge;
  const shared = network.shared.map((instance) => switchFor(instance, conditions));
  const places = network.evidence.cylinders.map((c) => placeOf(network, shared, c));
  return { network, memory: memoryFor(conditions), shared, roster: rosterOf(shared), places };
}

export function solverOn(ground: Ground, counting: Counting): Solver {
  const { network, memory, shared, roster, places } = ground;
  const neglectedMass = 1 - massUpToTwo(shared.map(({ base }) => 1 - base.chance));
  const { knowledge } = network;
  const weighed = remembered((evidence, c, worlds, parts) => weighCylinder(knowledge, memory, (places[c] as Place).frame, evidence, worlds, parts));
  return (evidence) => {
    const parts = signedSubsets(evidence.present, evidence.absent);
    const counted = counting(evidence);
    const key = parts.map(({ taken }) => taken.join('|')).join('/');
    const here = evidence.cylinders.map((cylinder, c) => weighed(cylinder, c, (counted.places[c] as Counted['places'][number]).worlds, parts, key));
    const engine = weighEngine(network, roster, counted, here, parts);
    const cylinders = here.map((one, c): SolvedCylinder => {
      const place = counted.places[c] as Counted['places'][number];
      let outside: readonly Float64Array[] | undefined;
      return {
        frame: (places[c] as Place).frame,
        evidence: evidence.cylinders[c] as CylinderEvidence,
        worlds: place.worlds,
        knowledge,
        terms: one.terms,
        outside: () => (outside ??= outsideOf(engine, place, one)),
      };
    });
    const states = stateBeliefs(roster, counted.sets, engine);
    const belief = beliefIn(causeBeliefs(roster, states), cylinders);
    return { network, ground, evidence, counted, perSet: engine.perSet.map((w) => w / engine.all), belief, cylinders, neglectedMass };
  };
}

type Weighing = (evidence: CylinderEvidence, at: number, worlds: Worlds, parts: readonly Part[], key: string) => Weighed;

/** Keeps what was weighed of a cylinder; evidence that did not change is the same object. */
function remembered(weigh: Weighing): Weighing {
  const known = new WeakMap<CylinderEvidence, Map<string, { readonly worlds: Worlds; readonly weighed: Weighed }>>();
  return (evidence, at, worlds, parts, key) => {
    const met = known.get(evidence) ?? new Map<string, { readonly worlds: Worlds; readonly weighed: Weighed }>();
    known.set(evidence, met);
    const found = met.get(key);
    if (found?.worlds === worlds) return found.weighed;
    const weighed = weigh(evidence, at, worlds, parts, key);
    met.set(key, { worlds, weighed });
    return weighed;
  };
}

/**
 * Exact beliefs over all counted sets: at most two changes that reach beyond one plug (shared ones, and the coupled ones of a cylinder),
 * any number of the causes that belong to one plug, at most two conditions on a plug. Worlds too light to be seen in the beliefs are left out.
 */
export function solverFor(network: Network): Solver {
  const ground = groundFor(network);
  return solverOn(ground, (evidence) => screened(network.knowledge, ground.memory, ground.roster, ground.places, evidence));
}

function beliefIn(shared: ReadonlyMap<string, number>, cylinders: readonly SolvedCylinder[]): Solution['belief'] {
  const local = new Map<number, ReadonlyMap<string, number>>();
  return (instance) => {
    const known = shared.get(instance.id);
    const number = instance.cylinders[0] as number;
    const solved = cylinders.find(({ evidence }) => evidence.cylinder === number) as SolvedCylinder;
    const own = known === undefined ? (local.get(number) ?? new Map([...coupledBeliefs(solved), ...ownBeliefs(solved)])) : undefined;
    if (own !== undefined) local.set(number, own);
    return Math.min(1, Math.max(0, known ?? own?.get(instance.id) ?? 0));
  };
}
