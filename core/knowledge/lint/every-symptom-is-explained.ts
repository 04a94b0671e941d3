import { SYMPTOMS } from '../../../shared/vocabulary/conditions.ts';
import type { KnowledgeRule } from './rule.ts';

export const everySymptomIsExplained: KnowledgeRule = {
  name: 'every-symptom-is-explained',
  check: (kb, report) => {
    const given = new Set([...kb.conditions, ...kb.causes].flatMap(({ gives }) => gives.map(({ symptom }) => symptom)));
    for (const symptom of SYMPTOMS) if (!given.has(symptom)) report(symptom, 'nothing gives this symptom');
  },
  exceptions: [],
};
