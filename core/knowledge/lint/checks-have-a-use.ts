import type { KnowledgeRule } from './rule.ts';

export const checksHaveAUse: KnowledgeRule = {
  name: 'checks-have-a-use',
  check: (kb, report) => {
    const asked = new Set(kb.causes.flatMap(({ checks }) => checks));
    const cautions = new Set(kb.cautions.map(({ id }) => id));
    for (const check of kb.checks) {
      if (!asked.has(check.id)) report(check.id, 'no cause sends to this check');
      if (!(check.minutes > 0)) report(check.id, 'takes no time');
      for (const id of check.cautions) if (!cautions.has(id)) report(check.id, `goes with the caution ${id}, which does not exist`);
    }
  },
  exceptions: [],
};
