import type { Findings } from '../../shared/formats/findings.v1.ts';
import type { Cure, ReadingSheet, Since } from '../../shared/formats/reading-sheet.v1.ts';
import { faultsOf } from './plug-change.ts';

/** Whether the trouble that a cure was meant for is still on one of its plugs. */
const stillOpen = ({ plugs }: Findings, { cylinders }: Cure): boolean =>
  plugs.some((plug) => (cylinders === undefined || cylinders.includes(plug.cylinder)) && faultsOf(plug).length > 0);

/**
 * A kept reading as the reading before of the next one. Cures that it found to have changed nothing go along as tried, as long as the trouble is there.
 * @param findings those kept with the reading; null when there are none
 */
export function sinceOf(sheet: ReadingSheet, findings: Findings | null): Since {
  const { format: _, version: __, engine: ___, since, ...reading } = sheet;
  const failed = (findings?.followUp?.cures ?? []).filter(({ outcome }) => outcome === 'not borne out')
    .map(({ cause, cylinders }): Cure => ({ cause, ...(cylinders.length > 0 && { cylinders }) }));
  const earlier = (since?.tried ?? []).filter((cure) => findings !== null && stillOpen(findings, cure));
  const tried = [...failed, ...earlier.filter(({ cause }) => !failed.some((cure) => cure.cause === cause))];
  return { reading, ...(tried.length > 0 && { tried }) };
}
