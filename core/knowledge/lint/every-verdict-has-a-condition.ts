import { VERDICTS } from '../../../shared/vocabulary/verdicts.ts';
import type { KnowledgeRule } from './rule.ts';

export const everyVerdictHasACondition: KnowledgeRule = {
  name: 'every-verdict-has-a-condition',
  check: (kb, report) => {
    const given = new Set<string>(kb.conditions.map(({ verdict }) => verdict));
    for (const verdict of VERDICTS) if (verdict !== 'undetermined' && !given.has(verdict)) report(verdict, 'no condition has this verdict');
  },
  exceptions: [],
};
