import type { Knowledge } from '../knowledge/types.ts';
import { Kept } from '../once.ts';
import type { SymptomTag } from '../../shared/vocabulary/conditions.ts';
import type { CylinderWeights, Frame, Shape } from './cylinder.ts';
import type { CylinderEvidence, Evidence } from './evidence.ts';
import { foundUnder, type Found } from './found.ts';
import type { Memory, PlugTerm } from './memory.ts';
import type { PlugUnder } from './plug-under.ts';
import type { Worlds } from './state-sets.ts';
import { dampingFor, signedSubsets, type Damping } from './symptoms.ts';

/** A set of symptoms taken as absent, with its sign in the sum. */
export type Part = { readonly coefficient: number; readonly taken: readonly SymptomTag[] };

/** All sets of the symptoms felt in the engine, taken as absent. `key`: the same for the same symptoms. */
export type Parts = { readonly key: string; readonly all: readonly Part[] };

export const partsFor = ({ present, absent }: Evidence): Parts => ({ key: `${present.join('|')}/${absent.join('|')}`, all: signedSubsets(present, absent) });

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

/** What cylinders that stand alike and look alike have in common once all is weighed. */
export type Solved = {
  readonly shape: Shape;
  readonly worlds: Worlds;
  readonly knowledge: Knowledge;
  readonly terms: readonly Term[];
  /** Weight that the rest of the engine gives to each shared set, by part of the symptom sum; divided by the total. */
  readonly outside: () => readonly Float64Array[];
};

export type SolvedCylinder = { readonly frame: Frame; readonly evidence: CylinderEvidence; readonly solved: Solved };

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
  for (let w = 0; w < values.length; w += 1) values[w] = plug.with(first[w] as number, second[w] as number);
  return values;
}

export type Weighing = (shape: Shape, evidence: CylinderEvidence, worlds: Worlds, parts: Parts) => Weighed;

function signedSums(terms: readonly Term[], worlds: Worlds, parts: number): Float64Array[] {
  const sums = Array.from({ length: parts }, () => new Float64Array(worlds.shared.first.length));
  for (const { part, coefficient, values } of terms) {
    const sum = sums[part] as Float64Array;
    for (let w = 0; w < values.length; w += 1) {
      const s = worlds.set[w] as number;
      sum[s] = (sum[s] as number) + coefficient * (values[w] as number);
    }
  }
  return sums;
}

/** Weighs the worlds of cylinders under every part of the symptom sum; what stands alike and looks alike is weighed once. */
export function weighing(knowledge: Knowledge, memory: Memory): Weighing {
  const likelihoods = new Kept<Worlds, PlugUnder, Float64Array>();
  const weighed = new Kept<Worlds, Shape, Weighed, string>();
  const weigh = (shape: Shape, evidence: CylinderEvidence, worlds: Worlds, { all }: Parts): Weighed => {
    const found = memory.found(shape, evidence.seen);
    const terms = all.flatMap((part, index) =>
      signedSubsets(evidence.symptoms, []).map(({ coefficient, taken }): Term => {
        const damping = dampingFor(knowledge, [...part.taken, ...taken]);
        const plugs = evidence.plugs.map((plug, p) => memory.plug(shape, p, plug, damping));
        const seen = plugs.map(({ under }) => likelihoods.once(worlds, under, () => likelihoodsIn(worlds, under)));
        const values = weightsIn(worlds, memory.weights(shape, damping, dampingFor(knowledge, taken)), found);
        for (const plug of seen) for (let w = 0; w < values.length; w += 1) values[w] = (values[w] as number) * (plug[w] as number);
        return { part: index, coefficient, damping, plugs, likelihoods: seen, values };
      }),
    );
    return { terms, sums: signedSums(terms, worlds, all.length) };
  };
  return (shape, evidence, worlds, parts) =>
    weighed.once(worlds, shape, () => weigh(shape, evidence, worlds, parts), `${memory.look(evidence)} ${parts.key}`);
}

/** The probability of every counted world of one cylinder. */
export function worldProbabilities({ terms, outside, worlds }: Pick<Solved, 'terms' | 'outside' | 'worlds'>): Float64Array {
  const p = new Float64Array(worlds.set.length);
  const all = outside();
  for (const { part, coefficient, values } of terms) {
    const outer = all[part] as Float64Array;
    for (let w = 0; w < p.length; w += 1) p[w] = (p[w] as number) + coefficient * (outer[worlds.set[w] as number] as number) * (values[w] as number);
  }
  return p;
}
