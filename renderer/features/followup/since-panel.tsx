import { useEffect } from 'react';
import type { ReadingSummary } from '../../../shared/channels.ts';
import type { CureFollowed } from '../../../shared/formats/findings.v1.ts';
import type { Cure, Since } from '../../../shared/formats/reading-sheet.v1.ts';
import { useAct, useDiagnosis, useFindings, useIsKept, useSheet } from '../../state/hooks.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { formatDate } from '../../text/numbers.ts';
import { SelectField } from '../../ui/select-field.tsx';
import { Tag } from '../../ui/tag.tsx';
import { useTold } from '../../ui/use-told.ts';
import { AddCure } from './add-cure.tsx';
import { causeName } from './causes.ts';
import styles from './since-panel.module.css';

/** The kept readings of this engine that this one can be compared with, the newest first. */
function useEarlier(): readonly ReadingSummary[] {
  const { id, engineId } = useStore((state) => state.reading) ?? {};
  const log = useStore((state) => state.log);
  const loadLog = useStore((state) => state.loadLog);
  const known = log?.engineId === engineId;
  useEffect(() => { if (!known && engineId !== undefined) void loadLog(engineId); }, [known, engineId, loadLog]);
  return known ? (log?.readings ?? []).filter((reading) => reading.state === 'kept' && reading.id !== id && reading.plugsRead > 0) : [];
}

const isThe = ({ reading }: Since, { title, date }: ReadingSummary): boolean => (reading.date ?? null) === date && (reading.title ?? '') === title;

function CompareWith({ earlier, since, disabled }: { earlier: readonly ReadingSummary[]; since: Since | undefined; disabled: boolean }) {
  const { followUp: text, shell } = useText();
  const { compareWith, tell } = useStore.getState();
  const chosen = since && earlier.find((reading) => isThe(since, reading));
  const nameOf = (id: string): string => {
    const { date = null, title = '' } = earlier.find((each) => each.id === id) ?? {};
    return [date === null ? text.undated : formatDate(date), title].filter(Boolean).join(': ');
  };
  const choose = async (id: string | undefined): Promise<void> => {
    const error = await compareWith(id);
    if (error !== null) tell({ text: shell.error(error), tone: 'problem' });
  };
  return (
    <SelectField label={text.compareWith} options={earlier.map(({ id }) => id)} value={chosen?.id} none={text.compareNone} nameOf={nameOf}
      disabled={disabled} onChange={(id) => void choose(id)} />
  );
}

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

function Cures({ since, disabled }: { since: Since; disabled: boolean }) {
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

function PlugsThemselves({ disabled }: { disabled: boolean }) {
  const text = useText().followUp;
  const act = useAct();
  const tags = useSheet().conditions?.tags ?? [];
  return (
    <div role="group" aria-label={text.plugsTitle} className={styles.group}>
      <h3>{text.plugsTitle}</h3>
      <div className={styles.tags}>
        <Tag on={tags.includes('plugs new')} onChange={(on) => act({ type: 'tag', tag: 'plugs new', on })} disabled={disabled}>{text.plugsNew}</Tag>
        <Tag on={tags.includes('plugs cleaned')} onChange={(on) => act({ type: 'tag', tag: 'plugs cleaned', on })} disabled={disabled}>{text.plugsCleaned}</Tag>
      </div>
      <p className={styles.soft}>{text.plugsHint}</p>
    </div>
  );
}

/** What was put right between the two readings; short where the earlier one called for nothing. */
function Work({ since, disabled }: { since: Since; disabled: boolean }) {
  const text = useText().followUp;
  const told = useTold();
  const called = (useFindings()?.followUp?.cures ?? []).length + (since.done ?? []).length > 0;
  const tried = (since.tried ?? []).map(({ cause }) => told.cause(cause, causeName(cause)));
  return (
    <>
      {called && <p className={styles.soft}>{text.about}</p>}
      <div className={styles.columns}><Cures since={since} disabled={disabled} />{called && <PlugsThemselves disabled={disabled} />}</div>
      {tried.length > 0 && <p className={styles.soft}>{text.tried(tried.join(', '))}</p>}
    </>
  );
}

/** Which earlier reading this one is compared with, and what was put right between the two. Nothing where there is no earlier one. */
export function SincePanel() {
  const text = useText().followUp;
  const kept = useIsKept();
  const { since } = useSheet();
  const earlier = useEarlier();
  if (since === undefined && (earlier.length === 0 || kept)) return null;
  return (
    <section className={styles.panel} aria-labelledby="since" data-field="since">
      <h2 id="since">{since?.reading.date === undefined ? text.sinceBefore : text.since(formatDate(since.reading.date))}</h2>
      {!kept && earlier.length > 0 && <CompareWith earlier={earlier} since={since} disabled={kept} />}
      {since !== undefined && <Work since={since} disabled={kept} />}
    </section>
  );
}
