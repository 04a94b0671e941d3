import type { Cause, Check } from '../types.ts';
import type { KnowledgeRule } from './rule.ts';

const partOf = (finding: string): string | undefined => /^(?:swap|known-good) (.+)$/.exec(finding)?.[1];

function canTell({ tells }: Check, cause: Cause): boolean {
  if ('looksFor' in tells) return tells.looksFor.includes(cause.id);
  const part = partOf(tells.finding);
  return part === undefined ? cause.shows.some(({ finding }) => finding === tells.finding) : cause.part === part;
}

/** A cause sends only to checks that can see it, and a check looks only for what is known. */
export const checksCanTell: KnowledgeRule = {
  name: 'checks-can-tell',
  check: (kb, report) => {
    const byId = new Map(kb.checks.map((check) => [check.id, check]));
    for (const cause of kb.causes) {
      for (const id of cause.checks) {
        const check = byId.get(id);
        if (check === undefined) report(cause.id, `sends to the check ${id}, which does not exist`);
        else if (!canTell(check, cause)) report(cause.id, `sends to the check ${id}, which cannot tell it`);
      }
    }
    const causes = new Set(kb.causes.map(({ id }) => id));
    for (const { id, tells } of kb.checks) for (const cause of 'looksFor' in tells ? tells.looksFor : []) if (!causes.has(cause)) report(id, `looks for ${cause}, which is no cause`);
  },
  exceptions: [],
};
