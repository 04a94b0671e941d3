import type { Knowledge } from '../knowledge/types.ts';
import { Kept, once } from '../once.ts';
import { framing, quietInBase, stateWeights, type Framing } from './cylinder.ts';
import type { CylinderEvidence, Evidence } from './evidence.ts';
import { localBelief } from './local-belief.ts';
import { memoryFor, type Memory } from './memory.ts';
import { standsAs, type Instance, type Network } from './network.ts';
import { causeBeliefs, rosterOf, type Roster } from './roster.ts';
import { screening, type Counted, type Place, type Screening } from './screen.ts';
import { partsFor, weighing, type Parts, type Solved, type SolvedCylinder, type Weighed } from './solved-cylinder.ts';
import { massUpToTwo, type StateSets, type Worlds } from './state-sets.ts';
import { switchFor, type Switch } from './states.ts';
import { dampingFor } from './symptoms.ts';

export type Solution = {
  readonly network: Network;
  readonly evidence: Evidence;
  readonly ground: Ground;
  /** Belief in a cause at its place. Worked out when first asked for. */
  readonly belief: (instance: Instance) => number;
  /** The counted sets of shared states, and their probabilities. */
  readonly counted: Counted;
  readonly perSet: () => Float64Array;
  readonly cylinders: readonly SolvedCylinder[];
  /** Prior probability of all the sets of shared causes that were not counted. */
  readonly neglectedMass: number;
};

export type Solver = (evidence: Evidence) => Solution;

/** A network with its states laid out and what was worked out of it so far. */
export type Ground = {
  readonly network: Network;
  readonly memory: Memory;
  readonly framed: Framing;
  readonly shared: readonly Switch[];
  readonly roster: Roster;
  readonly places: readonly Place[];
  readonly screened: Screening;
};

function newGround(network: Network): Ground {
  const { conditions } = network.knowledge;
  const memory = memoryFor(conditions);
  const shared = network.shared.map((instance) => switchFor(instance, conditions));
  const framed = framing(conditions);
  const known = new Map<string, Int16Array>();
  /** A cylinder among the shared causes of the engine. */
  const placeOf = (evidence: CylinderEvidence): Place => {
    const here = shared.map(({ instance }) => instance.cylinders.includes(evidence.cylinder));
    let next = 0;
    const localOf = once(known, here.join(), () => Int16Array.from(shared.flatMap(({ others }, o) => others.map(() => (here[o] === true ? next++ : -1)))));
    return { frame: framed(shared.filter((_, o) => here[o]), evidence, network.local.get(evidence.cylinder) ?? []), localOf };
  };
  const places = network.evidence.cylinders.map(placeOf);
  return { network, memory, framed, shared, roster: rosterOf(shared), places, screened: screening(network.knowledge, memory) };
}

/** Where the ground for one engine lies, and how many readings it has served. */
const last = new WeakMap<Knowledge, { readonly ground: Ground; served: number }>();
/** What was worked out for older readings is let go after so many; each may need a megabyte. */
const MOST_READINGS = 40;

/** The ground of the reading before serves again when all causes stand as they did, so that a reading is quickly read again with one thing changed. */
function groundFor(network: Network): Ground {
  const before = last.get(network.knowledge);
  if (before !== undefined && before.served < MOST_READINGS && standsAs(before.ground.network, network)) {
    before.served += 1;
    return { ...before.ground, network };
  }
  const ground = newGround(network);
  last.set(network.knowledge, { ground, served: 1 });
  return ground;
}

/** Every cylinder weighed among the counted sets. */
type Engine = { readonly ground: Ground; readonly counted: Counted; readonly parts: Parts; readonly weighed: readonly Weighed[] };

/** By part of the symptom sum: weight of every counted set of shared states by the priors alone, then with one cylinder more each time. */
function buildUp({ ground: { network, roster }, counted: { sets, places }, parts, weighed }: Engine): Float64Array[][] {
  const size = sets.first.length;
  return parts.all.map(({ coefficient, taken }, part) => {
    const damping = dampingFor(network.knowledge, taken);
    const prior = stateWeights(roster, damping);
    const before = coefficient * quietInBase(roster.switches, damping);
    const weights = new Float64Array(size);
    for (let s = 0; s < size; s += 1) {
      const [a, b] = [sets.first[s] as number, sets.second[s] as number];
      weights[s] = before * (a < 0 ? 1 : (prior[a] as number)) * (b < 0 ? 1 : (prior[b] as number));
    }
    const steps = [weights];
    weighed.forEach(({ sums }, c) => { steps.push(multiplied(steps[c] as Float64Array, sums[part] as Float64Array, places[c]?.setOf as Uint32Array)); });
    return steps;
  });
}

/** By part and cylinder, what all others give: those before it, from the build-up, and those after. */
function othersOf({ counted: { places }, weighed }: Engine, steps: readonly (readonly Float64Array[])[]): Float64Array[][] {
  return steps.map((before, part) => {
    const others: Float64Array[] = [];
    let after = new Float64Array((before[0] as Float64Array).length).fill(1);
    for (let c = weighed.length - 1; c >= 0; c -= 1) {
      others[c] = (before[c] as Float64Array).map((weight, s) => weight * (after[s] as number));
      after = multiplied(after, weighed[c]?.sums[part] as Float64Array, places[c]?.setOf as Uint32Array);
    }
    return others;
  });
}

function multiplied(weights: Float64Array, sum: Float64Array, setOf: Uint32Array): Float64Array<ArrayBuffer> {
  const product = new Float64Array(weights.length);
  for (let s = 0; s < product.length; s += 1) product[s] = (weights[s] as number) * (sum[setOf[s] as number] as number);
  return product;
}

function sumOf(byPart: readonly Float64Array[]): { readonly perSet: Float64Array; readonly all: number } {
  const perSet = new Float64Array((byPart[0] as Float64Array).length);
  let all = 0;
  for (const weights of byPart)
    for (let s = 0; s < perSet.length; s += 1) {
      perSet[s] = (perSet[s] as number) + (weights[s] as number);
      all += weights[s] as number;
    }
  return { perSet, all };
}

function stateBeliefs({ states }: Roster, { first, second }: StateSets, { perSet, all }: ReturnType<typeof sumOf>): Float64Array {
  const beliefs = new Float64Array(states.length);
  for (let s = 0; s < perSet.length; s += 1) {
    const [a, b] = [first[s] as number, second[s] as number];
    if (a >= 0) beliefs[a] = (beliefs[a] as number) + (perSet[s] as number) / all;
    if (b >= 0) beliefs[b] = (beliefs[b] as number) + (perSet[s] as number) / all;
  }
  return beliefs;
}

/** What the counted sets weigh, with all cylinders or all but one; where only one cylinder differs from those of `base`, what the others give is taken over. */
class Products {
  /** By part, what the priors and all cylinders give to each counted set. */
  readonly all: readonly Float64Array[];
  private readonly engine: Engine;
  private readonly base: Products | undefined;
  private readonly changed: number;
  private steps: Float64Array[][] | undefined;
  private others: Float64Array[][] | undefined;

  constructor(engine: Engine, base: Products | undefined) {
    this.engine = engine;
    this.base = base;
    this.changed = base === undefined ? -1 : base.onlyChange(engine);
    this.all = this.changed < 0 ? this.built.map((steps) => steps.at(-1) as Float64Array) : this.withChanged();
  }

  private get built(): Float64Array[][] {
    return (this.steps ??= buildUp(this.engine));
  }

  /** The one cylinder that differs; -1 where it is not one, or more than cylinders differ. */
  private onlyChange({ counted, parts, weighed }: Engine): number {
    const { engine } = this;
    if (counted !== engine.counted || parts.key !== engine.parts.key) return -1;
    const changed = weighed.findIndex((one, c) => one !== engine.weighed[c]);
    return weighed.some((one, c) => c > changed && one !== engine.weighed[c]) ? -1 : changed;
  }

  private withChanged(): Float64Array[] {
    const { counted, weighed } = this.engine;
    return this.without(this.changed).map((rest, part) =>
      multiplied(rest, weighed[this.changed]?.sums[part] as Float64Array, counted.places[this.changed]?.setOf as Uint32Array));
  }

  /** By part, what the priors and all other cylinders give to each counted set. */
  without(c: number): Float64Array[] {
    if (this.base !== undefined && c === this.changed) return this.base.without(c);
    this.others ??= othersOf(this.engine, this.built);
    return this.others.map((of) => of[c] as Float64Array);
  }

  /** The same to each shared set of one cylinder, divided by the total. */
  outside(c: number, total: number): Float64Array[] {
    const { setOf, worlds } = this.engine.counted.places[c] as Counted['places'][number];
    return this.without(c).map((weights) => {
      const outside = new Float64Array(worlds.shared.first.length);
      for (let s = 0; s < weights.length; s += 1) outside[setOf[s] as number] = (outside[setOf[s] as number] as number) + (weights[s] as number) / total;
      return outside;
    });
  }
}

/** By cylinder, what is worked out once for those that look alike, stand alike and see the same sets. */
function solvedFor({ ground, counted, weighed }: Engine, products: Products, total: number): SolvedCylinder['solved'][] {
  const alike = new Kept<Weighed, Uint32Array, Solved>();
  return weighed.map((one, c) => {
    const { setOf, worlds } = counted.places[c] as Counted['places'][number];
    return alike.once(one, setOf, () => {
      let outside: readonly Float64Array[] | undefined;
      const { shape } = (ground.places[c] as Place).frame;
      return { shape, worlds, knowledge: ground.network.knowledge, terms: one.terms, outside: () => (outside ??= products.outside(c, total)) };
    });
  });
}

export function solverOn(ground: Ground, counting: (evidence: Evidence) => Counted): Solver {
  const { network, memory, shared, roster, places } = ground;
  const neglectedMass = 1 - massUpToTwo(shared.map(({ base }) => 1 - base.chance));
  const weigh = weighing(network.knowledge, memory);
  const causes = new Map(shared.map(({ instance }, o) => [instance.id, o]));
  const cylinderAt = new Map(network.evidence.cylinders.map(({ cylinder }, c) => [cylinder, c]));
  let base: Products | undefined;
  return (evidence) => {
    const parts = partsFor(evidence);
    const counted = counting(evidence);
    const worldsOf = (c: number): Worlds => (counted.places[c] as Counted['places'][number]).worlds;
    const weighed = evidence.cylinders.map((cylinder, c) => weigh((places[c] as Place).frame.shape, cylinder, worldsOf(c), parts));
    const engine = { ground, counted, parts, weighed };
    const products = new Products(engine, base);
    base ??= products;
    const sum = sumOf(products.all);
    const cylinders = solvedFor(engine, products, sum.all).map((solved, c): SolvedCylinder => ({
      frame: (places[c] as Place).frame, evidence: evidence.cylinders[c] as CylinderEvidence, solved,
    }));
    let beliefs: Float64Array | undefined;
    const sharedBelief = (o: number): number => (beliefs ??= causeBeliefs(roster, stateBeliefs(roster, counted.sets, sum)))[o] as number;
    const belief = ({ id, cylinders: [number] }: Instance): number => {
      const o = causes.get(id);
      const local = (): number => localBelief(cylinders[cylinderAt.get(number as number) as number] as SolvedCylinder, id);
      return Math.min(1, Math.max(0, o === undefined ? local() : sharedBelief(o)));
    };
    return { network, ground, evidence, counted, perSet: () => sum.perSet.map((w) => w / sum.all), belief, cylinders, neglectedMass };
  };
}

/**
 * Exact beliefs over all counted sets: at most two changes that reach beyond one plug (shared ones, and the coupled ones of a cylinder),
 * any number of the causes that belong to one plug, at most two conditions on a plug. Worlds too light to be seen in the beliefs are left out.
 */
export function solverFor(network: Network): Solver {
  const ground = groundFor(network);
  return solverOn(ground, (evidence) => ground.screened(ground.roster, ground.places, evidence));
}
