import { groundedLines } from './grounded-lines.ts';
import type { KnowledgeRule } from './rule.ts';

const SENTENCE = /^[A-Z0-9][^\n]{8,}\.$/;

export const everyReasonIsASentence: KnowledgeRule = {
  name: 'every-reason-is-a-sentence',
  check: (kb, report) => {
    for (const { place, because } of groundedLines(kb)) if (!SENTENCE.test(because)) report(place, `gives no whole sentence as its reason: "${because}"`);
  },
  exceptions: [],
};
