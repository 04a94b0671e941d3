import { VERDICTS, type Verdict } from '../../shared/vocabulary/verdicts.ts';
import type { Condition } from '../knowledge/types.ts';
import { forEachConditionSet, type PlugBelief } from './plug-belief.ts';

export type PlugVerdict = {
  readonly verdict: Verdict;
  /** Id of the likeliest of the conditions that bear this verdict; absent for normal and undetermined. */
  readonly condition?: string;
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

/** Belief in each judgement; a set of two conditions counts for both of their judgements. */
function verdictBeliefs(belief: PlugBelief, conditions: readonly Condition[]): ReadonlyMap<Verdict, number> {
  const called = VERDICTS.filter((v) => v !== 'undetermined');
  const normal = called.indexOf('normal');
  const of = conditions.map(({ verdict }) => called.indexOf(verdict));
  const sums = new Float64Array(called.length);
  const add = (verdict: number, p: number): void => { sums[verdict] = (sums[verdict] as number) + p; };
  forEachConditionSet(belief, (i, j, p) => {
    const [first, second] = [of[i] ?? normal, of[j] ?? normal];
    if (first === normal && second === normal) add(normal, p);
    if (first !== normal) add(first, p);
    if (second !== normal && second !== first) add(second, p);
  });
  return new Map(called.map((verdict, at) => [verdict, Math.min(1, sums[at] as number)]));
}

/** The likeliest condition of those that are called so. */
function likeliest(verdict: Verdict, belief: PlugBelief, conditions: readonly Condition[]): string | undefined {
  const sums = conditions.map(() => 0);
  forEachConditionSet(belief, (i, j, p) => {
    for (const k of [i, j]) if (k >= 0) sums[k] = (sums[k] as number) + p;
  });
  const called = conditions.map(({ id }, k) => ({ id, belief: sums[k] as number })).filter((_, k) => conditions[k]?.verdict === verdict);
  return called.sort((a, b) => b.belief - a.belief || (a.id < b.id ? -1 : 1))[0]?.id;
}

function thermalOf(belief: PlugBelief, conditions: readonly Condition[]): PlugVerdict['thermal'] {
  let [tooCold, tooHot] = [0, 0];
  const states = conditions.map(({ thermal }) => thermal);
  forEachConditionSet(belief, (i, j, p) => {
    if (states[i] === 'hot' || states[j] === 'hot') tooHot += p;
    else if (states[i] === 'cold' || states[j] === 'cold') tooCold += p;
  });
  return { tooCold, inWindow: Math.max(0, 1 - tooHot - tooCold), tooHot };
}

/**
 * The judgement on one plug. Two faults may both hold, so a rival counts against the first only where one must give way:
 * normal against all faults taken together, or two faults that do not reach a half together.
 */
export function judge(belief: PlugBelief, conditions: readonly Condition[], anythingSeen: boolean): PlugVerdict {
  const beliefs = verdictBeliefs(belief, conditions);
  const thermal = thermalOf(belief, conditions);
  const ranked = [...beliefs].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  const [first, second] = ranked as [[Verdict, number], [Verdict, number]];
  const rival = first[0] === 'normal' ? 1 - first[1] : second[1];
  const open = !anythingSeen || first[1] < LEAST_BELIEF || (first[1] < 0.5 + LEAST_MARGIN && first[1] - rival < LEAST_MARGIN);
  if (open) return { verdict: 'undetermined', also: [], belief: anythingSeen ? first[1] : 0, thermal, beliefs };
  const also =
    first[0] === 'normal'
      ? []
      : ranked
          .slice(1)
          .filter(([v, p]) => v !== 'normal' && p >= SECOND)
          .map(([v]) => v)
          .slice(0, 2);
  const condition = first[0] === 'normal' ? undefined : likeliest(first[0], belief, conditions);
  return { verdict: first[0], ...(condition !== undefined && { condition }), also, belief: first[1], thermal, beliefs };
}
