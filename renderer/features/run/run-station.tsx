import { useFieldFocus } from '../../app/use-field-focus.ts';
import { useAct, useIsKept, useSheet } from '../../state/hooks.ts';
import { useText } from '../../text/index.ts';
import { Fold } from '../../ui/fold.tsx';
import { TextField } from '../../ui/text-field.tsx';
import { SincePanel } from '../followup/index.ts';
import { HowItRan } from './how-it-ran.tsx';
import { MeasureFields, WHILE_RUNNING } from './measure-fields.tsx';
import { Noticed } from './noticed.tsx';
import { ReadingPlan } from './reading-plan.tsx';
import styles from './run.module.css';

/** How the engine ran before the plugs were pulled, and what was noticed around it. */
export function RunStation() {
  const text = useText().run;
  const act = useAct();
  const sheet = useSheet();
  useFieldFocus();
  const measured = WHILE_RUNNING.filter((field) => sheet.conditions?.[field] !== undefined).length;
  return (
    <div className={styles.station}>
      <div className={styles.entry}>
        <SincePanel />
        <HowItRan />
        <Fold title={text.whileRunning} summary={text.measuredSummary(measured)} startOpen={measured > 0}>
          <p className={styles.hint}>{text.whileRunningHint}</p>
          <MeasureFields fields={WHILE_RUNNING} />
        </Fold>
        <Noticed />
        <section className={styles.block} data-field="notes">
          <TextField label={text.notes} lines="several" limit={4000} value={sheet.conditions?.text ?? ''} hint={text.notesHint} disabled={useIsKept()}
            onChange={(value) => act({ type: 'condition', field: 'text', value })} />
        </section>
      </div>
      <ReadingPlan sheet={sheet} />
    </div>
  );
}
