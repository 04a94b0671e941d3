import type { KnowledgeRule } from './rule.ts';

/** Without a cause a state is rare; a leak above this would outweigh causes. Chosen, not measured. */
const MOST_LEAK = 0.02;

export const everyConditionIsUsable: KnowledgeRule = {
  name: 'every-condition-is-usable',
  check: (kb, report) => {
    for (const { id, leak, shows, verdict, thermal, heatRule } of kb.conditions) {
      if (!(leak > 0 && leak <= MOST_LEAK)) report(id, `has a leak of ${leak}, allowed above 0 and up to ${MOST_LEAK}`);
      if (shows.length === 0) report(id, 'shows nothing');
      if (heatRule.startsWith('hotter') && thermal !== 'cold') report(id, 'allows a hotter plug although it is not cold');
      if (heatRule.startsWith('colder') && thermal !== 'hot' && verdict !== 'glazing') report(id, 'allows a colder plug although it is not hot');
    }
  },
  exceptions: [],
};
