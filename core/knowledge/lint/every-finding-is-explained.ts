import { CYLINDER_FINDINGS, HEALTHY_CYLINDER, HEALTHY_PLUG, PLUG_FINDINGS } from '../findings.ts';
import type { KnowledgeRule } from './rule.ts';

/** A value met on more than every tenth sound part needs no fault to explain it. */
const ORDINARY = 0.1;

type Findings = Readonly<Record<string, readonly string[]>>;
type Shares = Readonly<Record<string, Readonly<Record<string, number>>>>;

function unusual(findings: Findings, healthy: Shares): { finding: string; value: string }[] {
  return Object.entries(findings).flatMap(([finding, values]) => {
    const shares = healthy[finding] ?? {};
    const sum = Object.values(shares).reduce((a, b) => a + b, 0);
    return values.filter((value) => (shares[value] ?? 0) / sum <= ORDINARY).map((value) => ({ finding, value }));
  });
}

/** What trying parts yields follows from the part that a cause names, not from a line of its own. */
const isTrial = (finding: string): boolean => finding.startsWith('swap ') || finding.startsWith('known-good ');

export const everyFindingIsExplained: KnowledgeRule = {
  name: 'every-finding-is-explained',
  check: (kb, report) => {
    const byConditions = new Set(kb.conditions.flatMap(({ shows }) => shows.map(({ finding, is }) => `${finding} ${is}`)));
    const byCauses = new Set(kb.causes.flatMap(({ shows }) => shows.map(({ finding, is }) => `${finding} ${is}`)));
    for (const { finding, value } of unusual(PLUG_FINDINGS, HEALTHY_PLUG)) if (!byConditions.has(`${finding} ${value}`)) report(`${finding} ${value}`, 'no condition shows it');
    for (const { finding, value } of unusual(CYLINDER_FINDINGS, HEALTHY_CYLINDER)) {
      if (!isTrial(finding) && !byCauses.has(`${finding} ${value}`)) report(`${finding} ${value}`, 'no cause shows it');
    }
  },
  exceptions: [],
};
