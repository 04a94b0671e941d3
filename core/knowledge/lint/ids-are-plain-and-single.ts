import type { KnowledgeRule } from './rule.ts';

const KEBAB = /^[a-z0-9]+(-[a-z0-9]+)*$/;

export const idsArePlainAndSingle: KnowledgeRule = {
  name: 'ids-are-plain-and-single',
  check: (kb, report) => {
    const { conditions, causes, checks, stopRules, barsOnHotter, cautions, contradictions } = kb;
    const network = [...conditions, ...causes].map(({ id }) => id);
    const lists = [network, ...[checks, stopRules, barsOnHotter, cautions, contradictions].map((list) => list.map(({ id }) => id))];
    for (const id of lists.flat()) if (!KEBAB.test(id)) report(id, 'is not in lower case with hyphens');
    for (const ids of [...lists, kb.sources.map(({ id }) => id)]) ids.forEach((id, i) => { if (ids.indexOf(id) !== i) report(id, 'is used twice'); });
  },
  exceptions: [],
};
