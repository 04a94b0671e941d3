import { useEffect, useRef, type ReactNode } from 'react';
import { COMMON_PRACTICE, FROM_MEMORY, OWN_LINE, type Appearance } from '../../../core/knowledge/types.ts';
import { useText } from '../../text/index.ts';
import { formatNumber } from '../../text/numbers.ts';
import { Citations } from '../../ui/citations.tsx';
import { OwnMark } from '../../ui/own-mark.tsx';
import { useTold } from '../../ui/use-told.ts';
import styles from './lines.module.css';
import { useLooking } from './looking.ts';

type Grounds = Pick<Appearance, 'because' | 'source' | 'against' | 'addedBy'>;

/** The reason of a line, where it comes from, and who says otherwise. */
export function Reason({ because, source, against, addedBy }: Grounds) {
  const text = useText().knowledge;
  const told = useTold();
  const named = [source].flat().filter((id) => id !== OWN_LINE);
  return (
    <div className={styles.reason}>
      <p>{told.sentence(because)} {named.length > 0 && <Citations ids={named} />}{addedBy !== undefined && <OwnMark by={addedBy} />}</p>
      {[against ?? []].flat().map((dissent) => (
        <p key={dissent.source} className={styles.against}>{text.against(told.sentence(dissent.says))} <Citations ids={[dissent.source]} /></p>
      ))}
    </div>
  );
}

/** Weight of a line in the open reading. */
function Spoke({ bits }: { bits: number }) {
  const text = useText().knowledge;
  return <span className={styles.spoke}>{text.spoke(`${bits > 0 ? '+' : '−'}${formatNumber(Math.abs(bits), 1)}`)}</span>;
}

/** One line of the knowledge: what it says, then why and from where. The line that the address names is marked and brought into view. */
export function LineRow({ lineKey, grounds, children }: { lineKey: string; grounds: Grounds; children: ReactNode }) {
  const { line, spoken } = useLooking();
  const here = line === lineKey;
  const row = useRef<HTMLLIElement>(null);
  const bits = spoken.get(lineKey);
  useEffect(() => {
    if (!here) return;
    row.current?.scrollIntoView({ block: 'center' });
    row.current?.focus({ preventScroll: true });
  }, [here, lineKey]);
  return (
    <li ref={row} className={styles.line} data-here={here || undefined} tabIndex={here ? -1 : undefined}>
      <div className={styles.says}>{children}{bits !== undefined && <Spoke bits={bits} />}</div>
      <Reason {...grounds} />
    </li>
  );
}

/** Documents among the sources of a page, in the order of the register. */
export function documentsOf(lines: readonly Grounds[]): readonly string[] {
  const ids = lines.flatMap(({ source, against }) => [...[source].flat(), ...[against ?? []].flat().map((dissent) => dissent.source)]);
  const documents = [...new Set(ids)].filter((id) => id !== COMMON_PRACTICE && id !== FROM_MEMORY && id !== OWN_LINE);
  return documents.sort((a, b) => a.localeCompare(b, 'en', { numeric: true }));
}
