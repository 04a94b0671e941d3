import type { KnowledgeRule } from './rule.ts';

export const harmlessCausesDoNoHarm: KnowledgeRule = {
  name: 'harmless-causes-do-no-harm',
  check: (kb, report) => {
    const normal = new Set(kb.conditions.filter(({ verdict }) => verdict === 'normal').map(({ id }) => id));
    for (const { id, harmless, kind, makes, gives } of kb.causes) {
      if ((harmless === true) !== (kind === 'harmless')) report(id, 'is marked harmless in one place and not in the other');
      if (harmless !== true) continue;
      for (const { condition } of makes) if (!normal.has(condition)) report(id, `is harmless but makes ${condition}`);
      if (gives.length > 0) report(id, 'is harmless but gives a symptom');
    }
  },
  exceptions: [],
};
