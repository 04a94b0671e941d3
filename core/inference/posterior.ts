import type { SymptomTag } from '../../shared/vocabulary/conditions.ts';
import { cylinderFor, cylinderTable, frameFor, flipWeight, plugSums, quietBefore, type Cylinder, type Frame } from './cylinder.ts';
import type { CylinderEvidence, Evidence } from './evidence.ts';
import { flipIndex, flipsUpToTwo, massUpToTwo, type Flips } from './flips.ts';
import type { Instance, Network } from './network.ts';
import { ownBeliefs } from './plug-belief.ts';
import { forEachWorld, type SolvedCylinder, type Term } from './solved-cylinder.ts';
import { dampingFor, signedSubsets, type Damping } from './symptoms.ts';

export type Solution = {
  readonly network: Network;
  readonly evidence: Evidence;
  /** Belief in a cause at its place. Those of one cylinder are worked out when first asked for. */
  readonly belief: (instance: Instance) => number;
  readonly cylinders: readonly SolvedCylinder[];
  /** Prior probability of all the sets of shared causes that were not counted. */
  readonly neglectedMass: number;
};

/** A set of symptoms taken as absent, with its sign in the sum. */
type Part = { readonly coefficient: number; readonly taken: readonly SymptomTag[] };

export type Prepared = { readonly cylinder: Cylinder; readonly terms: readonly Term[]; readonly sums: readonly Float64Array[] };

/** @param alsoSwitched local causes that are to be switched one by one, see `cylinderFor` */
export function prepare(
  network: Network,
  frame: Frame,
  evidence: CylinderEvidence,
  parts: readonly Part[],
  alsoSwitched?: (instance: Instance) => boolean,
): Prepared {
  const { knowledge } = network;
  const { conditions } = knowledge;
  const cylinder = cylinderFor(frame, evidence, network.local.get(evidence.cylinder) ?? [], conditions, alsoSwitched);
  const felt = signedSubsets(evidence.symptoms, []);
  const terms = parts.flatMap((part, index) =>
    felt.map(({ coefficient, taken }): Term => {
      const damping = dampingFor(knowledge, [...part.taken, ...taken]);
      const sums = plugSums(cylinder, damping, conditions);
      return { part: index, coefficient, damping, sums, table: cylinderTable(cylinder, sums, damping, dampingFor(knowledge, taken)) };
    }),
  );
  return {
    cylinder,
    terms,
    sums: parts.map((_, part) =>
      rowSums(
        terms.filter((term) => term.part === part),
        cylinder.sharedSets.length,
      ),
    ),
  };
}

/** Signed sum over the coupled sets, for every shared set. */
function rowSums(terms: readonly Term[], sets: number): Float64Array {
  const sums = new Float64Array(sets);
  for (const { coefficient, table } of terms) {
    for (let s = 0; s < sets; s += 1)
      for (let at = table.starts[s] as number; at < (table.starts[s + 1] as number); at += 1)
        sums[s] = (sums[s] as number) + coefficient * (table.values[at] as number);
  }
  return sums;
}

function projectedIndex(flips: Flips, to: readonly number[], n: number): number {
  const there = flips.map((f) => to[f] as number).filter((f) => f >= 0);
  return flipIndex(n, there[0] ?? -1, there[1] ?? -1);
}

type Weighed = { readonly perSet: Float64Array; readonly all: number; readonly outside: Float64Array[][] };

/** Weighs every counted set of shared causes of the engine against all cylinders. */
function weighShared(
  shared: readonly Instance[],
  sets: readonly Flips[],
  prepared: readonly Prepared[],
  indexOf: readonly Uint16Array[],
  dampings: readonly { coefficient: number; damping: Damping }[],
): Weighed {
  const actors = shared.map((instance) => ({ instance, on: instance.prior > 0.5 }));
  const perSet = new Float64Array(sets.length);
  const outside = prepared.map(({ cylinder }) => dampings.map(() => new Float64Array(cylinder.sharedSets.length)));
  let all = 0;
  dampings.forEach(({ coefficient, damping }, part) => {
    const weights = actors.map((a) => flipWeight(a, damping));
    const before = coefficient * quietBefore(actors, damping);
    sets.forEach((flips, s) => {
      let weight = before;
      for (const f of flips) weight *= weights[f] as number;
      for (let c = 0; c < prepared.length; c += 1) weight *= prepared[c]?.sums[part]?.[indexOf[c]?.[s] as number] as number;
      perSet[s] = (perSet[s] as number) + weight;
      all += weight;
      for (let c = 0; c < prepared.length; c += 1) {
        const at = indexOf[c]?.[s] as number;
        const own = prepared[c]?.sums[part]?.[at] as number;
        const there = outside[c]?.[part] as Float64Array;
        if (own !== 0) there[at] = (there[at] as number) + weight / own;
      }
    });
  });
  return { perSet, all, outside };
}

function sharedBeliefs(shared: readonly Instance[], sets: readonly Flips[], { perSet, all }: Weighed): [string, number][] {
  const flipped = new Float64Array(shared.length);
  sets.forEach((flips, s) => {
    for (const f of flips) flipped[f] = (flipped[f] as number) + (perSet[s] as number);
  });
  return shared.map((instance, i) => [instance.id, instance.prior > 0.5 ? 1 - (flipped[i] as number) / all : (flipped[i] as number) / all]);
}

function coupledBeliefs(solved: SolvedCylinder): [string, number][] {
  const { coupled, coupledSets } = solved.cylinder;
  const flipped = new Float64Array(coupled.length);
  if (coupled.length > 0)
    forEachWorld(solved, (_s, t, p) => {
      for (const f of coupledSets[t] as Flips) flipped[f] = (flipped[f] as number) + p;
    });
  return coupled.map(({ instance, on }, i) => [instance.id, on ? 1 - (flipped[i] as number) : (flipped[i] as number)]);
}

/** A solver keeps the tables of cylinders it has met, so that taking one observation away costs one cylinder. */
export type Solver = (evidence: Evidence) => Solution;

/**
 * Exact beliefs over all counted sets: at most two changes that reach beyond one plug (shared ones, and the coupled ones of a cylinder),
 * any number of the causes that belong to one plug, at most two conditions on a plug.
 */
export function solverFor(network: Network): Solver {
  const { shared, knowledge } = network;
  const sets = flipsUpToTwo(shared.length);
  const neglectedMass = 1 - massUpToTwo(shared.map(({ prior }) => Math.min(prior, 1 - prior)));
  const places = network.evidence.cylinders.map((c) => placeOf(c, network, sets));
  const prepared = remembered((evidence: CylinderEvidence, c: number, parts: readonly Part[]) =>
    prepare(network, (places[c] as Place).frame, evidence, parts),
  );
  return (evidence) => {
    const parts = signedSubsets(evidence.present, evidence.absent);
    const ready = evidence.cylinders.map((c, i) => prepared(c, i, parts));
    const weighed = weighShared(
      shared,
      sets,
      ready,
      places.map(({ indexOf }) => indexOf),
      parts.map(({ coefficient, taken }) => ({ coefficient, damping: dampingFor(knowledge, taken) })),
    );
    const cylinders = ready.map(({ cylinder, terms }, c): SolvedCylinder => ({
      cylinder,
      terms,
      frame: (places[c] as Place).frame,
      conditions: knowledge.conditions,
      outside: (weighed.outside[c] as Float64Array[]).map((list) => list.map((v) => v / weighed.all)),
    }));
    return { network, evidence, belief: beliefIn(new Map(sharedBeliefs(shared, sets, weighed)), cylinders), cylinders, neglectedMass };
  };
}

/** One cylinder's standing among the shared causes: its frame, and for each set of the engine the set that reaches it. */
type Place = { readonly frame: Frame; readonly indexOf: Uint16Array };

function placeOf(evidence: CylinderEvidence, { shared, knowledge }: Network, sets: readonly Flips[]): Place {
  const here = shared.filter((i) => i.cylinders.includes(evidence.cylinder));
  const to = shared.map((i) => here.indexOf(i));
  return {
    frame: frameFor(evidence, here, knowledge.conditions),
    indexOf: Uint16Array.from(sets, (flips) => projectedIndex(flips, to, here.length)),
  };
}

/** Keeps what was prepared for a cylinder's evidence; evidence that did not change is the same object. */
function remembered(make: (evidence: CylinderEvidence, at: number, parts: readonly Part[]) => Prepared): typeof make {
  const known = new WeakMap<CylinderEvidence, Map<string, Prepared>>();
  return (evidence, at, parts) => {
    const key = parts.map(({ taken }) => taken.join('|')).join('/');
    const met = known.get(evidence) ?? new Map<string, Prepared>();
    known.set(evidence, met);
    const found = met.get(key) ?? make(evidence, at, parts);
    met.set(key, found);
    return found;
  };
}

function beliefIn(shared: ReadonlyMap<string, number>, cylinders: readonly SolvedCylinder[]): Solution['belief'] {
  const local = new Map<number, ReadonlyMap<string, number>>();
  return (instance) => {
    const known = shared.get(instance.id);
    const number = instance.cylinders[0] as number;
    const solved = cylinders.find(({ cylinder }) => cylinder.evidence.cylinder === number) as SolvedCylinder;
    const own = known === undefined ? (local.get(number) ?? new Map([...coupledBeliefs(solved), ...ownBeliefs(solved)])) : undefined;
    if (own !== undefined) local.set(number, own);
    return Math.min(1, Math.max(0, known ?? own?.get(instance.id) ?? 0));
  };
}
