import { VERDICTS, type Verdict } from '../../shared/vocabulary/verdicts.ts';
import type { Condition } from '../knowledge/types.ts';
import { beliefThat, type PlugBelief } from './plug-belief.ts';

export type PlugVerdict = {
  readonly verdict: Verdict;
  readonly also: readonly Verdict[];
  readonly belief: number;
  readonly thermal: { readonly tooCold: number; readonly inWindow: number; readonly tooHot: number };
  /** Belief in each judgement; several may hold at once. `normal`: nothing but harmless states. */
  readonly beliefs: ReadonlyMap<Verdict, number>;
};

/** Below this, or nearer than this to a rival that excludes it, no judgement is given. Chosen, not measured. */
const LEAST_BELIEF = 0.4;
const LEAST_MARGIN = 0.08;
/** A second judgement is named from this belief on. */
const SECOND = 0.35;

export function verdictBeliefs(belief: PlugBelief, conditions: readonly Condition[]): ReadonlyMap<Verdict, number> {
  const of = (i: number): Verdict => (conditions[i] as Condition).verdict;
  const normal = beliefThat(belief, (set) => set.every((i) => of(i) === 'normal'));
  const faults = VERDICTS.filter((v) => v !== 'normal' && v !== 'undetermined');
  return new Map<Verdict, number>([
    ['normal', normal],
    ...faults.map((v): [Verdict, number] => [v, beliefThat(belief, (set) => set.some((i) => of(i) === v))]),
  ]);
}

function thermalOf(belief: PlugBelief, conditions: readonly Condition[]): PlugVerdict['thermal'] {
  const hot = (i: number): boolean => conditions[i]?.thermal === 'hot';
  const tooHot = beliefThat(belief, (set) => set.some(hot));
  const tooCold = beliefThat(belief, (set) => !set.some(hot) && set.some((i) => conditions[i]?.thermal === 'cold'));
  return { tooCold, inWindow: Math.max(0, 1 - tooHot - tooCold), tooHot };
}

/**
 * The judgement on one plug. Two faults may both hold, so a rival counts against the first only where one must give way:
 * normal against any fault, or two faults that do not reach a half together.
 */
export function judge(belief: PlugBelief, conditions: readonly Condition[], anythingSeen: boolean): PlugVerdict {
  const beliefs = verdictBeliefs(belief, conditions);
  const thermal = thermalOf(belief, conditions);
  const ranked = [...beliefs].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  const [first, second] = ranked as [[Verdict, number], [Verdict, number]];
  const open = !anythingSeen || first[1] < LEAST_BELIEF || (first[1] < 0.5 + LEAST_MARGIN && first[1] - second[1] < LEAST_MARGIN);
  if (open) return { verdict: 'undetermined', also: [], belief: anythingSeen ? first[1] : 0, thermal, beliefs };
  const also =
    first[0] === 'normal'
      ? []
      : ranked
          .slice(1)
          .filter(([v, p]) => v !== 'normal' && p >= SECOND)
          .map(([v]) => v)
          .slice(0, 2);
  return { verdict: first[0], also, belief: first[1], thermal, beliefs };
}
