import type { Knowledge } from '../knowledge/types.ts';
import { once } from '../once.ts';
import type { SymptomTag } from '../../shared/vocabulary/conditions.ts';
import type { CylinderWeights, Frame } from './cylinder.ts';
import type { CylinderEvidence, PlugEvidence } from './evidence.ts';
import { foundUnder, type Found } from './found.ts';
import type { Memory, PlugTerm } from './memory.ts';
import type { PlugUnder } from './plug-under.ts';
import type { Worlds } from './state-sets.ts';
import { dampingFor, signedSubsets, type Damping } from './symptoms.ts';

/** A set of symptoms taken as absent, with its sign in the sum. */
export type Part = { readonly coefficient: number; readonly taken: readonly SymptomTag[] };

/** One signed term of the symptom sum, as one cylinder sees it: weight of every counted world, and the likelihood of each plug in it. */
export type Term = {
  readonly part: number;
  readonly coefficient: number;
  readonly damping: Damping;
  readonly plugs: readonly PlugTerm[];
  readonly likelihoods: readonly Float64Array[];
  readonly values: Float64Array;
};

/** One cylinder weighed: its terms, and for each part the signed sum of its worlds by shared set. */
export type Weighed = { readonly terms: readonly Term[]; readonly sums: readonly Float64Array[] };

export type SolvedCylinder = {
  readonly frame: Frame;
  readonly evidence: CylinderEvidence;
  readonly worlds: Worlds;
  readonly knowledge: Knowledge;
  readonly terms: readonly Term[];
  /** Weight that the rest of the engine gives to each shared set, by part of the symptom sum; divided by the total. */
  readonly outside: () => readonly Float64Array[];
};

/** Weight of every counted world, plugs left aside. */
function weightsIn({ first, second }: Worlds, { base, states }: CylinderWeights, found: Found): Float64Array {
  const values = new Float64Array(first.length);
  for (let w = 0; w < values.length; w += 1) {
    const [a, b] = [first[w] as number, second[w] as number];
    values[w] = base * foundUnder(found, a, b) * (a < 0 ? 1 : (states[a] as number)) * (b < 0 ? 1 : (states[b] as number));
  }
  return values;
}

function likelihoodsIn({ first, second }: Worlds, plug: PlugUnder): Float64Array {
  const values = new Float64Array(first.length);
  for (let w = 0; w < values.length; w += 1) {
    const [a, b] = [first[w] as number, second[w] as number];
    if (b >= 0) {
      plug.take(a);
      values[w] = plug.withAlso(b);
    } else values[w] = a < 0 ? plug.none : (plug.alone[a] as number);
  }
  return values;
}

const known = new WeakMap<Worlds, WeakMap<PlugUnder, Float64Array>>();

/** Likelihood of one plug in every counted world, worked out once. */
const likelihoodsOf = (worlds: Worlds, plug: PlugUnder): Float64Array =>
  once(once(known, worlds, () => new WeakMap<PlugUnder, Float64Array>()), plug, () => likelihoodsIn(worlds, plug));

/** Weighs the worlds of a cylinder under every part of the symptom sum. */
export function weighCylinder(knowledge: Knowledge, memory: Memory, frame: Frame, evidence: CylinderEvidence, worlds: Worlds, parts: readonly Part[]): Weighed {
  const found = memory.found(frame, evidence.seen);
  const terms = parts.flatMap((part, index) =>
    signedSubsets(evidence.symptoms, []).map(({ coefficient, taken }): Term => {
      const damping = dampingFor(knowledge, [...part.taken, ...taken]);
      const plugs = frame.plugs.map((plug, p) => memory.plug(plug, evidence.plugs[p] as PlugEvidence, damping));
      const likelihoods = plugs.map(({ under }) => likelihoodsOf(worlds, under));
      const values = weightsIn(worlds, memory.weights(frame, damping, dampingFor(knowledge, taken)), found);
      for (const plug of likelihoods) for (let w = 0; w < values.length; w += 1) values[w] = (values[w] as number) * (plug[w] as number);
      return { part: index, coefficient, damping, plugs, likelihoods, values };
    }),
  );
  const sums = parts.map(() => new Float64Array(worlds.shared.first.length));
  for (const { part, coefficient, values } of terms) {
    const sum = sums[part] as Float64Array;
    for (let w = 0; w < values.length; w += 1) {
      const s = worlds.set[w] as number;
      sum[s] = (sum[s] as number) + coefficient * (values[w] as number);
    }
  }
  return { terms, sums };
}

/** The probability of every counted world of one cylinder. */
export function worldProbabilities({ terms, outside, worlds }: Pick<SolvedCylinder, 'terms' | 'outside' | 'worlds'>): Float64Array {
  const p = new Float64Array(worlds.set.length);
  const all = outside();
  for (const { part, coefficient, values } of terms) {
    const outer = all[part] as Float64Array;
    for (let w = 0; w < p.length; w += 1) p[w] = (p[w] as number) + coefficient * (outer[worlds.set[w] as number] as number) * (values[w] as number);
  }
  return p;
}
