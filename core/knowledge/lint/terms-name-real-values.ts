import { CYLINDER_FINDINGS, PLUG_FINDINGS } from '../findings.ts';
import type { Term } from '../types.ts';
import type { KnowledgeRule } from './rule.ts';

function unknownValues(term: Term): string[] {
  if ('plug' in term) return term.is.filter((value) => !(PLUG_FINDINGS[term.plug] as readonly string[]).includes(value));
  if ('cylinder' in term) return term.is.filter((value) => !(CYLINDER_FINDINGS[term.cylinder] as readonly string[]).includes(value));
  return [];
}

export const termsNameRealValues: KnowledgeRule = {
  name: 'terms-name-real-values',
  check: (kb, report) => {
    const terms = [
      ...kb.stopRules.flatMap(({ id, anyOf }) => anyOf.flat().map((term) => ({ id, term }))),
      ...kb.barsOnHotter.flatMap(({ id, anyOf }) => anyOf.map((term) => ({ id, term }))),
      ...kb.cautions.flatMap(({ id, when }) => (when ?? []).map((term) => ({ id, term }))),
      ...kb.contradictions.flatMap(({ id, first, second }) => [first, ...(second === undefined ? [] : [second])].map((term) => ({ id, term }))),
    ];
    for (const { id, term } of terms) for (const value of unknownValues(term)) report(id, `asks for "${value}", which that finding does not have`);
    for (const { id, anyOf } of kb.stopRules) if (anyOf.length === 0 || anyOf.some((all) => all.length === 0)) report(id, 'has an alternative without any term');
  },
  exceptions: [],
};
