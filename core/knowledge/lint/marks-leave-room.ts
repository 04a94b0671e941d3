import { STRENGTHS, type Strength } from '../strengths.ts';
import type { KnowledgeRule } from './rule.ts';

/** Nothing marks a finding for certain: readers and lighting err. Chosen, not measured. */
const MOST = 0.97;
const ROUNDING = 1e-9;

type Link = { readonly finding: string; readonly strength: Strength };

function sums(links: readonly Link[]): Map<string, number> {
  const by = new Map<string, number>();
  for (const { finding, strength } of links) by.set(finding, (by.get(finding) ?? 0) + STRENGTHS[strength]);
  return by;
}

export const marksLeaveRoom: KnowledgeRule = {
  name: 'marks-leave-room',
  check: (kb, report) => {
    for (const { id, shows } of [...kb.conditions, ...kb.causes]) {
      for (const [finding, sum] of sums(shows)) if (sum > MOST + ROUNDING) report(`${id} ${finding}`, `its strengths add up to ${sum.toFixed(3)}, at most ${MOST}`);
    }
  },
  exceptions: [],
};
