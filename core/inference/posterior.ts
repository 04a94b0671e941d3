import type { SymptomTag } from '../../shared/vocabulary/conditions.ts';
import { cylinderFor, cylinderTable, flipWeight, plugSums, quietBefore, type Cylinder } from './cylinder.ts';
import type { Condition } from '../knowledge/types.ts';
import type { CylinderEvidence, Evidence } from './evidence.ts';
import { flipIndex, flipsUpToTwo, massUpToTwo, type Flips } from './flips.ts';
import type { Instance, Network } from './network.ts';
import { ownBeliefs } from './plug-belief.ts';
import type { PlugSum } from './plug-sum.ts';
import { dampingFor, signedSubsets, type Damping } from './symptoms.ts';

/** One signed term of the symptom sum, as one cylinder sees it. */
export type Term = { readonly part: number; readonly coefficient: number; readonly damping: Damping; readonly sums: readonly PlugSum[]; readonly rows: readonly Float64Array[] };

export type SolvedCylinder = {
  readonly cylinder: Cylinder;
  readonly shared: readonly Instance[];
  readonly conditions: readonly Condition[];
  readonly terms: readonly Term[];
  /** Weight that the rest of the engine gives to each shared set, by part of the symptom sum; divided by the total. */
  readonly outside: readonly Float64Array[];
};

export type Solution = {
  readonly network: Network;
  readonly evidence: Evidence;
  /** Belief in each cause at each place, by instance id. */
  readonly beliefs: ReadonlyMap<string, number>;
  readonly cylinders: readonly SolvedCylinder[];
  /** Prior probability of all the sets of shared causes that were not counted. */
  readonly neglectedMass: number;
};

/** A set of symptoms taken as absent, with its sign in the sum. */
type Part = { readonly coefficient: number; readonly taken: readonly SymptomTag[] };

export type Prepared = { readonly cylinder: Cylinder; readonly terms: readonly Term[]; readonly sums: readonly Float64Array[] };

/** @param alsoSwitched local causes that are to be switched one by one, see `cylinderFor` */
export function prepare(network: Network, evidence: CylinderEvidence, parts: readonly Part[], alsoSwitched?: (instance: Instance) => boolean): Prepared {
  const { knowledge, shared } = network;
  const { conditions } = knowledge;
  const cylinder = cylinderFor(evidence, shared, network.local.get(evidence.cylinder) ?? [], conditions, alsoSwitched);
  const felt = signedSubsets(evidence.symptoms, []);
  const terms = parts.flatMap((part, index) => felt.map(({ coefficient, taken }): Term => {
    const damping = dampingFor(knowledge, [...part.taken, ...taken]);
    const sums = plugSums(cylinder, damping, conditions);
    return { part: index, coefficient, damping, sums, rows: cylinderTable(cylinder, sums, damping, dampingFor(knowledge, taken)) };
  }));
  const sums = parts.map((_, index) => Float64Array.from(cylinder.sharedSets, (_set, s) => terms.reduce((sum, term) => (term.part === index ? sum + term.coefficient * total(term.rows[s] as Float64Array) : sum), 0)));
  return { cylinder, terms, sums };
}

const total = (row: Float64Array): number => { let sum = 0; for (const v of row) sum += v; return sum; };

function projectedIndex(flips: Flips, to: readonly number[], n: number): number {
  const there = flips.map((f) => to[f] as number).filter((f) => f >= 0);
  return flipIndex(n, there[0] ?? -1, there[1] ?? -1);
}

type Weighed = { readonly perSet: Float64Array; readonly all: number; readonly outside: Float64Array[][] };

/** Weighs every counted set of shared causes of the engine against all cylinders. */
function weighShared(shared: readonly Instance[], sets: readonly Flips[], prepared: readonly Prepared[], indexOf: readonly Uint16Array[], dampings: readonly { coefficient: number; damping: Damping }[]): Weighed {
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
  sets.forEach((flips, s) => { for (const f of flips) flipped[f] = (flipped[f] as number) + (perSet[s] as number); });
  return shared.map((instance, i) => [instance.id, instance.prior > 0.5 ? 1 - (flipped[i] as number) / all : (flipped[i] as number) / all]);
}

/** Calls `visit` for every counted world of one cylinder with its probability. */
export function forEachWorld({ cylinder, terms, outside }: Pick<SolvedCylinder, 'cylinder' | 'terms' | 'outside'>, visit: (shared: number, local: number, probability: number) => void): void {
  cylinder.sharedSets.forEach((_, s) => {
    const rows = terms.map((term) => term.rows[s] as Float64Array);
    const factors = terms.map((term) => term.coefficient * (outside[term.part]?.[s] as number));
    const width = rows[0]?.length ?? 0;
    for (let t = 0; t < width; t += 1) {
      let p = 0;
      for (let k = 0; k < rows.length; k += 1) p += (factors[k] as number) * (rows[k]?.[t] as number);
      visit(s, t, p);
    }
  });
}

function coupledBeliefs(solved: SolvedCylinder): [string, number][] {
  const { coupled, coupledSets } = solved.cylinder;
  const flipped = new Float64Array(coupled.length);
  if (coupled.length > 0) forEachWorld(solved, (_s, t, p) => { for (const f of coupledSets[t] as Flips) flipped[f] = (flipped[f] as number) + p; });
  return coupled.map(({ instance, on }, i) => [instance.id, on ? 1 - (flipped[i] as number) : flipped[i] as number]);
}

/** A solver keeps the tables of cylinders it has met, so that taking one observation away costs one cylinder. */
export type Solver = (evidence: Evidence) => Solution;

/**
 * Exact beliefs over all counted sets: at most two changes that reach beyond one plug (shared ones, and the coupled ones of a cylinder),
 * any number of the causes that belong to one plug, at most two conditions on a plug.
 */
export function solverFor(network: Network): Solver {
  const known = new WeakMap<CylinderEvidence, Map<string, Prepared>>();
  const { shared, knowledge } = network;
  const sets = flipsUpToTwo(shared.length);
  const neglectedMass = 1 - massUpToTwo(shared.map(({ prior }) => Math.min(prior, 1 - prior)));
  const here = new Map(network.evidence.cylinders.map(({ cylinder }) => [cylinder, shared.filter((i) => i.cylinders.includes(cylinder))]));
  const indexOf = [...here.values()].map((list) => { const to = shared.map((i) => list.indexOf(i)); return Uint16Array.from(sets, (flips) => projectedIndex(flips, to, list.length)); });

  const prepared = (cylinder: CylinderEvidence, parts: readonly Part[], key: string): Prepared => {
    const met = known.get(cylinder) ?? new Map<string, Prepared>();
    known.set(cylinder, met);
    const found = met.get(key) ?? prepare(network, cylinder, parts);
    met.set(key, found);
    return found;
  };

  return (evidence) => {
    const parts = signedSubsets(evidence.present, evidence.absent);
    const key = parts.map(({ taken }) => taken.join('|')).join('/');
    const ready = evidence.cylinders.map((c) => prepared(c, parts, key));
    const weighed = weighShared(shared, sets, ready, indexOf, parts.map(({ coefficient, taken }) => ({ coefficient, damping: dampingFor(knowledge, taken) })));
    const cylinders = ready.map(({ cylinder, terms }, c): SolvedCylinder => ({
      cylinder, terms, shared: here.get(cylinder.evidence.cylinder) ?? [], conditions: knowledge.conditions,
      outside: (weighed.outside[c] as Float64Array[]).map((list) => list.map((v) => v / weighed.all)),
    }));
    const beliefs = [...sharedBeliefs(shared, sets, weighed), ...cylinders.flatMap((solved) => [...coupledBeliefs(solved), ...ownBeliefs(solved)])];
    return { network, evidence, beliefs: new Map(beliefs.map(([id, p]) => [id, Math.min(1, Math.max(0, p))])), cylinders, neglectedMass };
  };
}
