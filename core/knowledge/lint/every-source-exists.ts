import { groundedLines, isNoDocument } from './grounded-lines.ts';
import type { KnowledgeRule } from './rule.ts';

export const everySourceExists: KnowledgeRule = {
  name: 'every-source-exists',
  check: (kb, report) => {
    const known = new Set(kb.sources.map((source) => source.id));
    for (const { place, sources, against } of groundedLines(kb)) {
      for (const source of [...sources, ...against]) if (!isNoDocument(source) && !known.has(source)) report(place, `names the source ${source}, which is not in the register`);
      if (sources.length === 0) report(place, 'names no source');
    }
  },
  exceptions: [],
};
