import type { ReactNode } from 'react';
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
  return plugs.map((plug) => (
    <li key={`${plug.cylinder} ${plug.position}`} className={styles.row}>
      <ChangeTag change={plug.change} />
      <p><span className={styles.where}>{text.findings.place(plug.cylinder, plug.position)}.</span> {told.sentence(plug.why)}</p>
    </li>
  ));
}

function Cure({ cure }: { cure: CureFollowed }) {
  const text = useText();
  const told = useTold();
  return (
    <li className={styles.row}>
      <OutcomeTag outcome={cure.outcome} />
      <p>
        <span className={styles.where}>{told.cause(cure.cause, cure.name)}</span>
        {cure.cylinders.length > 0 && `, ${text.findings.cylinders(cure.cylinders)}`}{' '}
        <span className={styles.soft}>{text.followUp.belief(formatBelief(cure.beliefBefore), formatBelief(cure.beliefNow))}</span>
      </p>
    </li>
  );
}

function Felt({ symptoms }: { symptoms: FollowUp['symptoms'] }) {
  const text = useText();
  if (symptoms.length === 0) return null;
  return (
    <div>
      <h4>{text.followUp.felt}</h4>
      <ul className={styles.felt}>
        {symptoms.map(({ what, change }) => <li key={what}>{text.run.symptoms[what]}: <b>{text.followUp.symptoms[change]}</b></li>)}
      </ul>
    </div>
  );
}

/** Folded on the screen, laid open on paper. */
function Folded({ title, summary, onPaper, children }: { title: string; summary?: string; onPaper: boolean; children: ReactNode }) {
  if (onPaper) return <div><h3>{title}</h3>{children}</div>;
  return <Fold title={title} {...(summary !== undefined && { summary })}>{children}</Fold>;
}

/** What the comparison rests on, for who wants to know. */
function More({ followUp: { symptoms, cures, doubts }, onPaper }: { followUp: FollowUp; onPaper: boolean }) {
  const text = useText().followUp;
  const told = useTold();
  const done = cures.filter(({ outcome }) => outcome !== 'not done');
  if (symptoms.length + done.length + doubts.length === 0) return null;
  return (
    <Folded title={text.more} summary={text.moreSummary(doubts.length)} onPaper={onPaper}>
      <div className={styles.more}>
        <Felt symptoms={symptoms} />
        {done.length > 0 && (
          <div>
            <h4>{text.cureList}</h4>
            <ul className={styles.list}>{done.map(({ cause, name, cylinders, why }) => <li key={`${cause} ${cylinders.join()}`}>{told.cause(cause, name)}: {told.sentence(why)}</li>)}</ul>
          </div>
        )}
        {doubts.length > 0 && (
          <div>
            <h4>{text.doubts}</h4>
            <ul className={styles.list}>{doubts.map((doubt) => <li key={doubt}>{told.sentence(doubt)}</li>)}</ul>
          </div>
        )}
      </div>
    </Folded>
  );
}

/** Under this belief a cure that nobody carried out is of no use any more. */
const STILL_OF_USE = 0.1;

/** This reading against the one before: the sentence, every plug that is not as sound as it was, and the cures; the rest is folded away. */
export function WhatBecame({ followUp, onPaper = false }: { followUp: FollowUp; onPaper?: boolean }) {
  const text = useText().followUp;
  const told = useTold();
  const id = useStore((state) => state.reading?.id);
  const { before, plugs, cures, heat } = followUp;
  const moved = plugs.filter((plug) => !isSound(plug));
  const shown = cures.filter(({ outcome, beliefNow }) => outcome !== 'not done' || beliefNow >= STILL_OF_USE);
  const untold = cures.length > 0 && cures.every(({ outcome }) => outcome === 'not done');
  return (
    <section className={styles.became} aria-labelledby="findings-since">
      <h2 id="findings-since">{before.date === undefined ? text.sinceBefore : text.since(formatDate(before.date))}</h2>
      <p className={styles.summary}>{told.sentence(followUp.summary)}</p>
      <ul className={styles.rows}>
        {moved.length <= MANY && <Plugs plugs={moved} />}
        {shown.map((cure) => <Cure key={`${cure.cause} ${cure.cylinders.join()}`} cure={cure} />)}
      </ul>
      {heat !== undefined && <p>{told.sentence(heat)}</p>}
      {untold && id !== undefined && (
        <p className={styles.note}><a href={hrefOf({ page: 'reading', id, station: 'run', field: 'since' })}>{text.noteDone}</a></p>
      )}
      {moved.length > MANY && <Folded title={text.plugs} onPaper={onPaper}><ul className={styles.rows}><Plugs plugs={moved} /></ul></Folded>}
      <More followUp={followUp} onPaper={onPaper} />
    </section>
  );
}
