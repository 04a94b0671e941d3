import fc from 'fast-check';
import type { PlugFit } from '../../../../core/inference/appearance.ts';
import type { Instance } from '../../../../core/inference/network.ts';
import type { OwnCause } from '../../../../core/inference/plug-sum.ts';
import { plugTouches, rosterOf, type PlugTouches, type Roster } from '../../../../core/inference/roster.ts';
import type { State, Touch } from '../../../../core/inference/states.ts';
import { cause } from './small-knowledge.ts';

/** Numbers of one plug drawn at random, and what they mean by definition: every cause there or not, every set of conditions. */
export type SmallPlug = {
  readonly absent: Float64Array; readonly damping: Float64Array; readonly fit: PlugFit; readonly own: readonly OwnCause[];
};

const chance = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const chances = (n: number, min: number, max: number): fc.Arbitrary<number[]> => fc.array(chance(min, max), { minLength: n, maxLength: n });

/** Touches of one or two of n conditions. */
const anyTouches = (n: number, factor: fc.Arbitrary<number>): fc.Arbitrary<Touch[]> =>
  fc.uniqueArray(fc.record({ k: fc.nat(n - 1), factor }), { selector: ({ k }) => k, minLength: 1, maxLength: 2 });

const anyOwn = (n: number): fc.Arbitrary<OwnCause[]> =>
  fc.array(fc.record({ prior: chance(0.05, 0.9), quiet: chance(0.1, 0.9), passes: anyTouches(n, chance(0.1, 0.9)) }), { maxLength: 3 });

const symmetric = (n: number, list: readonly number[]): Float64Array =>
  Float64Array.from({ length: n * n }, (_, at) => list[Math.min(Math.floor(at / n), at % n) * n + Math.max(Math.floor(at / n), at % n)] as number);

export const anyPlug = (n: number): fc.Arbitrary<SmallPlug> =>
  fc.record({ absent: chances(n, 0.3, 0.95), damping: chances(n, 0.1, 0.95), none: chance(0.05, 1), fits: chances(n * n, 0.05, 1), own: anyOwn(n) })
    .map(({ absent, damping, none, fits, own }) => {
      const pair = symmetric(n, fits);
      return {
        absent: Float64Array.from(absent), damping: Float64Array.from(damping), own,
        fit: { none, single: Float64Array.from({ length: n }, (_, k) => pair[k * n + k] as number), pair },
      };
    });

/** A cause that acts on plug `1`, in these states beside the base state. */
export const switched = (others: readonly (readonly Touch[])[], plugs = ['1']): Roster['switches'][number] => {
  const instance: Instance = { id: 'x', cause: cause('x', {}), group: '', cylinders: [1], plugs, prior: 0.1, moves: [] };
  const states = others.map((touches): State => ({ there: true, chance: 0.1, touches }));
  return { instance, base: { there: false, chance: 0.9, touches: [] }, others: states };
};

/** Some causes that are switched, as they touch n conditions of one plug; a factor above 1 stands for a state that touches less than the base does. */
export const anyRoster = (n: number): fc.Arbitrary<{ readonly roster: Roster; readonly touches: PlugTouches }> =>
  fc.array(fc.array(anyTouches(n, chance(0.2, 2)), { minLength: 1, maxLength: 2 }), { minLength: 2, maxLength: 4 }).map((list) => {
    const roster = rosterOf(list.map((others) => switched(others)));
    return { roster, touches: plugTouches(roster, { key: '1' }) };
  });

/** Sets of at most two of n conditions. */
export const setsOfTwo = (n: number): number[][] =>
  [[], ...Array.from({ length: n }, (_, i) => [i]), ...Array.from({ length: n }, (_, i) => Array.from({ length: i }, (__, j) => [j, i])).flat()];

export const product = (list: Iterable<number>): number => [...list].reduce((p, x) => p * x, 1);

/** What a value on sets of at most two conditions says of one of them. */
export const at = ({ none, single, pair }: { none: number; single: Float64Array; pair: Float64Array }, [i, j]: readonly number[]): number =>
  (i === undefined ? none : j === undefined ? single[i] : pair[i * single.length + j]) as number;

/** Every way in which the own causes may be there, with its weight and the chance of each condition to be absent. */
export function ways({ absent, own }: SmallPlug): { readonly weight: number; readonly absent: number[] }[] {
  return own.reduce(
    (all, { prior, quiet, passes }) => all.flatMap(({ weight, absent: away }) => [
      { weight: weight * (1 - prior), absent: away },
      { weight: weight * prior * quiet, absent: away.map((a, k) => a * product(passes.filter((t) => t.k === k).map(({ factor }) => factor))) },
    ]),
    [{ weight: 1, absent: [...absent] }],
  );
}
