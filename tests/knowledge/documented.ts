import { diagnose } from '../../core/inference/diagnose.ts';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import type { Knowledge } from '../../core/knowledge/types.ts';
import type { Findings } from '../../shared/formats/findings.v1.ts';
import { parseReadingSheet, type ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import cases from '../fixtures/documented-cases.json' with { type: 'json' };

/**
 * Plugs that somebody described and judged in print: manuals, accident reports, repairs that were confirmed. Each case names its source. A case is met
 * when the main verdict of every plug is one that the source allows.
 */
export type Case = {
  readonly id: string;
  readonly source: { readonly title: string };
  readonly use: string;
  readonly sheet: unknown;
  readonly expect: {
    readonly plugs: readonly { readonly cylinder: number; readonly position?: string; readonly verdictAnyOf: readonly string[] }[];
    readonly notVerdict?: readonly string[];
    readonly causeWords?: readonly string[];
    readonly heatAllowed?: readonly number[];
    readonly stopExpected?: boolean;
  };
};

export const sheetOf = ({ sheet }: Case): ReadingSheet => {
  const parsed = parseReadingSheet(sheet);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
  return parsed.value;
};

export const SCORED = (cases as readonly Case[]).filter(({ use }) => use === 'score');
export const findingsOf = (one: Case, knowledge: Knowledge = KNOWLEDGE): Findings => diagnose(sheetOf(one), { knowledge, digest: 'test' });

export function verdictMisses({ expect: { plugs, notVerdict = [] } }: Case, findings: { readonly plugs: readonly Pick<Findings['plugs'][number], 'cylinder' | 'position' | 'verdict'>[] }): string[] {
  return plugs.flatMap(({ cylinder, position = 'only', verdictAnyOf }) => {
    const found = findings.plugs.find((plug) => plug.cylinder === cylinder && plug.position === position)?.verdict ?? 'no such plug';
    return verdictAnyOf.includes(found) && !notVerdict.includes(found)
      ? []
      : [`cylinder ${cylinder} ${position}: ${found}, the source allows ${verdictAnyOf.join(' or ')}`];
  });
}

export const share = (met: number, of: number): string => `${met} of ${of} (${((100 * met) / of).toFixed(1)} %)`;
