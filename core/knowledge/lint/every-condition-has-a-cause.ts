import type { KnowledgeRule } from './rule.ts';

export const everyConditionHasACause: KnowledgeRule = {
  name: 'every-condition-has-a-cause',
  check: (kb, report) => {
    const known = new Set(kb.conditions.map(({ id }) => id));
    const made = new Set(kb.causes.flatMap(({ makes }) => makes.map(({ condition }) => condition)));
    for (const id of known) if (!made.has(id)) report(id, 'no cause makes this condition');
    for (const { id, makes } of kb.causes) for (const { condition } of makes) if (!known.has(condition)) report(id, `makes ${condition}, which is no condition`);
  },
  exceptions: [],
};
