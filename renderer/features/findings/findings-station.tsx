import type { NextCheck } from '../../../shared/formats/findings.v1.ts';
import { hrefOf as addressOf, type Route } from '../../app/route.ts';
import { useDiagnosis, useFindings, usePlaces, useSelectPlug, useSheet } from '../../state/hooks.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { ButtonLink } from '../../ui/button.tsx';
import { Notice } from '../../ui/notice.tsx';
import styles from './findings.module.css';
import { FindingsView } from './findings-view.tsx';
import { outcomeField } from './outcome-field.ts';

const saysNothing = ({ tip, measured }: { tip?: object | undefined; measured?: object | undefined }): boolean => tip === undefined && measured === undefined;

function Empty({ id }: { id: string }) {
  const text = useText().findings;
  return (
    <div className={styles.empty}>
      <h2>{text.empty}</h2>
      <p>{text.emptyAbout}</p>
      <p className={styles.expert}>{text.expert}</p>
      <ButtonLink look="main" href={addressOf({ page: 'reading', id, station: 'plugs' })}>{text.toPlugs}</ButtonLink>
    </div>
  );
}

/** What follows from the reading: verdicts, plan, heat step, reasons, next checks. */
export function FindingsStation() {
  const text = useText();
  const id = useStore((state) => state.reading?.id ?? '');
  const [sheet, findings, diagnosis, places, selectPlug] = [useSheet(), useFindings(), useDiagnosis(), usePlaces(), useSelectPlug()];
  const bare = sheet.plugs.every(saysNothing) && sheet.symptoms === undefined && sheet.cylinderChecks === undefined;
  const hrefOf = (check: NextCheck): string => addressOf({ page: 'reading', id, ...outcomeField(check, sheet.engine.use) } satisfies Route);
  const failed = diagnosis.kind === 'failed' && <div className={styles.problem}><Notice tone="problem" title={text.findings.failed}>{text.shell.error(diagnosis.error)}</Notice></div>;
  if (bare) return <>{failed}<Empty id={id} /></>;
  if (findings === null) return failed || <p role="status" className={styles.empty}>{text.findings.waiting}</p>;
  return (
    <>
      {failed}
      <FindingsView findings={findings} sheet={sheet} places={places} hrefOf={hrefOf} onShow={selectPlug} status={diagnosis.kind === 'working' ? text.findings.working : ''} />
    </>
  );
}
