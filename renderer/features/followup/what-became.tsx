import type { CureFollowed, FollowUp, PlugChange } from '../../../shared/formats/findings.v1.ts';
import { hrefOf } from '../../app/route.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { formatBelief, formatDate } from '../../text/numbers.ts';
import { Fold } from '../../ui/fold.tsx';
import { useTold } from '../../ui/use-told.ts';
import { ChangeTag, OutcomeTag } from './change-tag.tsx';
import styles from './what-became.module.css';

const isSound = ({ change, before, now }: PlugChange): boolean => change === 'unchanged' && before === 'normal' && now === 'normal';

/** More plugs than this are folded away; the sentence above them tells their number. */
const MANY = 6;

function Plugs({ plugs }: { plugs: readonly PlugChange[] }) {
  const text = useText();
  const told = useTold();
  return (
    <ul className={styles.rows}>
      {plugs.map((plug) => (
        <li key={`${plug.cylinder} ${plug.position}`} className={styles.row}>
          <ChangeTag change={plug.change} />
          <p><span className={styles.where}>{text.findings.place(plug.cylinder, plug.position)}.</span> {told.sentence(plug.why)}</p>
        </li>
      ))}
    </ul>
  );
}

function Cure({ cure }: { cure: CureFollowed }) {
  const text = useText();
  const told = useTold();
  return (
    <li className={styles.row}>
      <OutcomeTag outcome={cure.outcome} />
      <div>
        <p>
          <span className={styles.where}>{told.cause(cure.cause, cure.name)}</span>
          {cure.cylinders.length > 0 && `, ${text.findings.cylinders(cure.cylinders)}`}
        </p>
        {cure.outcome !== 'not done' && <p>{told.sentence(cure.why)}</p>}
        <p className={styles.soft}>{text.followUp.belief(formatBelief(cure.beliefBefore), formatBelief(cure.beliefNow))}</p>
      </div>
    </li>
  );
}

function Felt({ symptoms }: { symptoms: FollowUp['symptoms'] }) {
  const text = useText();
  if (symptoms.length === 0) return null;
  return (
    <div>
      <h3>{text.followUp.felt}</h3>
      <ul className={styles.felt}>
        {symptoms.map(({ what, change }) => <li key={what}>{text.run.symptoms[what]}: <b>{text.followUp.symptoms[change]}</b></li>)}
      </ul>
    </div>
  );
}

/** This reading against the one before: the sentence, every plug that is not as sound as it was, the cures, and what limits the comparison. */
export function WhatBecame({ followUp }: { followUp: FollowUp }) {
  const text = useText().followUp;
  const told = useTold();
  const id = useStore((state) => state.reading?.id);
  const { before, plugs, symptoms, cures, heat, doubts } = followUp;
  const moved = plugs.filter((plug) => !isSound(plug));
  const untold = cures.every(({ outcome }) => outcome === 'not done');
  return (
    <section className={styles.became} aria-labelledby="findings-since">
      <h2 id="findings-since">{before.date === undefined ? text.sinceBefore : text.since(formatDate(before.date))}</h2>
      <p className={styles.summary}>{told.sentence(followUp.summary)}</p>
      {moved.length > MANY && <Fold title={text.plugs}><Plugs plugs={moved} /></Fold>}
      {moved.length > 0 && moved.length <= MANY && <Plugs plugs={moved} />}
      {cures.length > 0 && (
        <div>
          <h3>{text.cureList}</h3>
          <ul className={styles.rows}>{cures.map((cure) => <Cure key={`${cure.cause} ${cure.cylinders.join()}`} cure={cure} />)}</ul>
        </div>
      )}
      {untold && cures.length > 0 && id !== undefined && (
        <p className={styles.note}><a href={hrefOf({ page: 'reading', id, station: 'run', field: 'since' })}>{text.noteDone}</a></p>
      )}
      <Felt symptoms={symptoms} />
      {heat !== undefined && <p>{told.sentence(heat)}</p>}
      {doubts.length > 0 && (
        <div className={styles.doubts}>
          <h3>{text.doubts}</h3>
          <ul>{doubts.map((doubt) => <li key={doubt}>{told.sentence(doubt)}</li>)}</ul>
        </div>
      )}
    </section>
  );
}
