import { groundedLines } from './grounded-lines.ts';
import type { KnowledgeRule } from './rule.ts';

export const everySourceIsCited: KnowledgeRule = {
  name: 'every-source-is-cited',
  check: (kb, report) => {
    const cited = new Set(groundedLines(kb).flatMap(({ sources, against }) => [...sources, ...against]));
    for (const { id } of kb.sources) if (!cited.has(id)) report(id, 'stands in the register and nothing rests on it');
  },
  exceptions: [],
};
