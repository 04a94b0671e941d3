import type { KnowledgeRule } from './rule.ts';

/** A kind that bars any step toward hotter must not hide behind a harmless look, and what is harmless asks for no cure of heat. */
export const everyCauseIsComplete: KnowledgeRule = {
  name: 'every-cause-is-complete',
  check: (kb, report) => {
    for (const cause of kb.causes) {
      if (cause.makes.length === 0) report(cause.id, 'makes no condition, so no plug can speak for it');
      if (cause.checks.length === 0) report(cause.id, 'names no check');
      if (cause.cure.trim() === '') report(cause.id, 'names no cure');
      if (cause.synonyms.length === 0) report(cause.id, 'is not said in any other words');
      if (cause.synonyms.includes(cause.name)) report(cause.id, 'repeats its name among its other names');
      if (cause.heatStep !== undefined && cause.kind !== 'heat value') report(cause.id, 'asks for a heat step although the heat value is not its kind');
    }
  },
  exceptions: [],
};
