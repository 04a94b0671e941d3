import { diagnose } from '../../../../core/inference/diagnose.ts';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import type { Findings, FollowUp } from '../../../../shared/formats/findings.v1.ts';
import { parseReadingSheet, type Cure, type ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';

/** A reading with another before it, and what was put right between the two. */
export function after(before: ReadingSheet, now: ReadingSheet, done: readonly Cure[] = []): ReadingSheet {
  const { format: _, version: __, engine: ___, since: ____, ...reading } = before;
  const parsed = parseReadingSheet({ ...now, since: { reading, ...(done.length > 0 && { done }) } });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
  return parsed.value;
}

export const findingsOf = (sheet: ReadingSheet): Findings => diagnose(sheet, { knowledge: KNOWLEDGE, digest: 'test' });

export function followed(sheet: ReadingSheet): FollowUp {
  const { followUp } = findingsOf(sheet);
  if (followUp === undefined) throw new Error('the sheet tells of no reading before');
  return followUp;
}

export const changeAt = ({ plugs }: FollowUp, cylinder: number): string | undefined => plugs.find((plug) => plug.cylinder === cylinder)?.change;
export const cureOf = ({ cures }: FollowUp, cause: string): FollowUp['cures'][number] | undefined => cures.find((cure) => cure.cause === cause);
