import type { Since } from '../../../shared/formats/reading-sheet.v1.ts';
import { useAct, useFindings, useIsKept, useSheet } from '../../state/hooks.ts';
import { useText } from '../../text/index.ts';
import { formatDate } from '../../text/numbers.ts';
import { Tag } from '../../ui/tag.tsx';
import { useTold } from '../../ui/use-told.ts';
import { causeName } from './causes.ts';
import { CompareWith, useEarlier } from './compare-with.tsx';
import { CureList } from './cure-list.tsx';
import styles from './since-panel.module.css';

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
      <div className={styles.columns}><CureList since={since} disabled={disabled} />{called && <PlugsThemselves disabled={disabled} />}</div>
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
      {!kept && earlier.length > 0 && <CompareWith earlier={earlier} since={since} />}
      {since !== undefined && <Work since={since} disabled={kept} />}
    </section>
  );
}
