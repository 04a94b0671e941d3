import type { SymptomTag } from '../../shared/vocabulary/conditions.ts';
import { HEALTHY_SYMPTOM } from '../knowledge/findings.ts';
import type { Knowledge, SymptomLink } from '../knowledge/types.ts';
import { once } from '../once.ts';
import { strengthOf } from './network.ts';

/**
 * A symptom is a noisy-OR over everything in the engine, so "absent" is a product over all causes and conditions and "present" is one minus it.
 * The probability of several present symptoms is then a sum with alternating signs over subsets taken as absent
 * (Heckerman, "A tractable inference algorithm for diagnosing multiple diseases", 1989).
 */
export type Part = { readonly coefficient: number; readonly damping: Damping };

/** Chance that a condition or cause, when there, gives none of the symptoms taken as absent. */
export type Damping = { readonly conditions: Float64Array; readonly causes: ReadonlyMap<string, number>; readonly key: string };

/** More present symptoms than this on one place are not counted; each doubles the work. */
export const MOST_SYMPTOMS = 4;

const quiet = (links: readonly SymptomLink[], absent: readonly SymptomTag[]): number =>
  absent.reduce((p, symptom) => links.filter((link) => link.symptom === symptom).reduce((q, link) => q * (1 - strengthOf(link)), p), 1);

const known = new WeakMap<Knowledge, Map<string, Damping>>();

/** Worked out once for the same symptoms. */
export function dampingFor(knowledge: Knowledge, absent: readonly SymptomTag[]): Damping {
  const key = absent.join('|');
  return once(once(known, knowledge, () => new Map<string, Damping>()), key, () => dampingOf(knowledge, absent, key));
}

function dampingOf(knowledge: Knowledge, absent: readonly SymptomTag[], key: string): Damping {
  return {
    key,
    conditions: Float64Array.from(knowledge.conditions, (c) => quiet(c.gives, absent)),
    causes: new Map(knowledge.causes.map((c) => [c.id, quiet(c.gives, absent)])),
  };
}

function subsets<T>(items: readonly T[]): T[][] {
  return items.reduce<T[][]>((sets, item) => [...sets, ...sets.map((set) => [...set, item])], [[]]);
}

/** Each subset of the present symptoms taken as absent, with its sign. @returns pairs of coefficient and symptoms taken as absent */
export function signedSubsets(present: readonly SymptomTag[], absent: readonly SymptomTag[]): { coefficient: number; taken: SymptomTag[] }[] {
  return subsets(present.slice(0, MOST_SYMPTOMS)).map((taken) => ({
    coefficient: (taken.length % 2 === 0 ? 1 : -1) * (1 - HEALTHY_SYMPTOM) ** (taken.length + absent.length),
    taken: [...taken, ...absent],
  }));
}
