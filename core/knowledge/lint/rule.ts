import type { Knowledge } from '../types.ts';

/** Reports one breach: where it is, as a path of ids, and what is wrong there. */
export type Report = (place: string, problem: string) => void;

/** One thing that must hold everywhere in the knowledge. An exception names a place; one that is no longer needed is a breach itself. */
export type KnowledgeRule = {
  readonly name: string;
  readonly check: (kb: Knowledge, report: Report) => void;
  readonly exceptions: readonly string[];
};

export type Breach = { readonly rule: string; readonly place: string; readonly problem: string };

/** Holds the knowledge against the rules. @returns every breach, in the order of the rules; empty when all is well */
export function lintKnowledge(kb: Knowledge, rules: readonly KnowledgeRule[]): Breach[] {
  return rules.flatMap(({ name, check, exceptions }) => {
    const found: Breach[] = [];
    check(kb, (place, problem) => { found.push({ rule: name, place, problem }); });
    const stale = exceptions
      .filter((place) => !found.some((breach) => breach.place === place))
      .map((place): Breach => ({ rule: name, place, problem: 'this exception is no longer needed; delete it' }));
    return [...found.filter((breach) => !exceptions.includes(breach.place)), ...stale];
  });
}
