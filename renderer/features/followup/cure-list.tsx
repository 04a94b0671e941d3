import type { CureFollowed } from '../../../shared/formats/findings.v1.ts';
import type { Cure, Since } from '../../../shared/formats/reading-sheet.v1.ts';
import { useAct, useDiagnosis, useFindings } from '../../state/hooks.ts';
import { useText } from '../../text/index.ts';
import { useTold } from '../../ui/use-told.ts';
import { AddCure } from './add-cure.tsx';
import { causeName } from './causes.ts';
import styles from './since-panel.module.css';

const asCure = ({ cause, cylinders }: Pick<CureFollowed, 'cause' | 'cylinders'>): Cure => ({ cause, ...(cylinders.length > 0 && { cylinders }) });

function CureBox({ cure, on, disabled }: { cure: CureFollowed; on: boolean; disabled: boolean }) {
  const text = useText();
  const told = useTold();
  const act = useAct();
  return (
    <li>
      <label className={styles.cure}>
        <input type="checkbox" checked={on} disabled={disabled} onChange={(event) => act({ type: 'cure', cure: asCure(cure), on: event.target.checked })} />
        <span>
          <span className={styles.name}>{told.cause(cure.cause, cure.name)}{cure.cylinders.length > 0 && `, ${text.findings.cylinders(cure.cylinders)}`}</span>
          <span className={styles.do}>{told.sentence(cure.do)}</span>
        </span>
      </label>
    </li>
  );
}

/** Cures noted as done that the findings do not know yet, or never will. */
function NotFollowed({ done, disabled }: { done: readonly Cure[]; disabled: boolean }) {
  const text = useText();
  const told = useTold();
  const act = useAct();
  return done.map((cure) => (
    <li key={`${cure.cause} ${cure.cylinders?.join() ?? ''}`}>
      <label className={styles.cure}>
        <input type="checkbox" checked disabled={disabled} onChange={() => act({ type: 'cure', cure, on: false })} />
        <span className={styles.name}>{told.cause(cure.cause, causeName(cure.cause))}{cure.cylinders !== undefined && `, ${text.findings.cylinders(cure.cylinders)}`}</span>
      </label>
    </li>
  ));
}

const covers = (followed: CureFollowed, cure: Cure): boolean =>
  followed.cause === cure.cause && (cure.cylinders === undefined || followed.cylinders.length === 0 || followed.cylinders.join() === cure.cylinders.join());

/** The cures that the reading before called for and those noted besides, each to be ticked. */
export function CureList({ since, disabled }: { since: Since; disabled: boolean }) {
  const text = useText().followUp;
  const [followUp, diagnosis] = [useFindings()?.followUp, useDiagnosis()];
  const done = since.done ?? [];
  const cures = followUp?.cures ?? [];
  const others = done.filter((cure) => !cures.some((followed) => covers(followed, cure)));
  return (
    <div role="group" aria-label={text.cures} className={styles.group}>
      <h3>{text.cures}</h3>
      {followUp === undefined && <p role="status" className={styles.soft}>{diagnosis.kind === 'failed' ? '' : text.working}</p>}
      {followUp !== undefined && cures.length + others.length === 0 && <p className={styles.soft}>{text.noCures}</p>}
      <ul className={styles.list}>
        {cures.map((cure) => (
          <CureBox key={`${cure.cause} ${cure.cylinders.join()}`} cure={cure} on={done.some((each) => covers(cure, each))} disabled={disabled} />
        ))}
        <NotFollowed done={others} disabled={disabled} />
      </ul>
      {!disabled && <AddCure />}
    </div>
  );
}
