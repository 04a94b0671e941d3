import { CONDITION_TAGS } from '../../../shared/vocabulary/conditions.ts';
import type { KnowledgeRule } from './rule.ts';

export const everyCircumstanceCounts: KnowledgeRule = {
  name: 'every-circumstance-counts',
  check: (kb, report) => {
    const moving = new Set(kb.causes.flatMap(({ moved }) => moved.flatMap(({ by }) => ('tag' in by ? [by.tag] : []))));
    for (const tag of CONDITION_TAGS) if (!moving.has(tag)) report(tag, 'can be recorded and moves no cause');
  },
  exceptions: [],
};
