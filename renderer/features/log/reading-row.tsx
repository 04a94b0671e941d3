import type { ReadingSummary } from '../../../shared/channels.ts';
import { hrefOf } from '../../app/route.ts';
import { useExport } from '../../app/use-export.ts';
import { useReadOnly } from '../../state/hooks.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { formatDate, formatInstant } from '../../text/numbers.ts';
import { Menu } from '../../ui/menu.tsx';
import styles from './engine-log.module.css';
import { VerdictList } from './verdict-list.tsx';

/** What can be done with a reading without opening it. */
function useReadingMenu(reading: ReadingSummary, title: string) {
  const { engines: { page }, shell } = useText();
  const { removeReading, restoreReading, tell } = useStore.getState();
  const tellError = (error: Parameters<typeof shell.error>[0]): void => { tell({ text: shell.error(error), tone: 'problem' }); };
  const save = useExport();
  const readOnly = useReadOnly();
  const restore = async (): Promise<void> => {
    const error = await restoreReading(reading.id);
    if (error !== null) tellError(error);
  };
  const remove = async (): Promise<void> => {
    const error = await removeReading(reading.id);
    if (error !== null) return tellError(error);
    tell({ text: page.removedReading(title), tone: 'plain', undo: () => void restore() });
  };
  const saving = { words: page.export, onSelect: () => void save(reading.id) };
  return readOnly ? [saving] : [saving, { words: page.remove, onSelect: () => void remove(), grave: true }];
}

export function ReadingRow({ reading }: { reading: ReadingSummary }) {
  const { engines: { page }, shell } = useText();
  const date = reading.date === null ? '' : formatDate(reading.date);
  const title = reading.title === '' ? date || shell.reading.untitled : reading.title;
  const items = useReadingMenu(reading, title);
  const draft = reading.state === 'draft';
  return (
    <li className={styles.row}>
      <a className={styles.open} href={hrefOf({ page: 'reading', id: reading.id, station: draft ? 'plugs' : 'findings' })}>
        <span className={styles.title}>{title}</span>
        <span className={styles.soft}>
          {[title === date ? '' : date, page.plugsRead(reading.plugsRead), draft ? page.changed(formatInstant(reading.changedAt)) : ''].filter(Boolean).join(' · ')}
        </span>
      </a>
      <span className={styles.state} data-draft={draft ? '' : undefined}>{draft ? shell.reading.draft : shell.reading.kept}</span>
      <Menu words={page.more} name={page.moreOf(title)} items={items} />
      <VerdictList verdicts={reading.verdicts} />
    </li>
  );
}
