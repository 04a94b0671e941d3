import { useDeferredValue, useState } from 'react';
import { PHOTO_VIEWS, type PhotoView } from '../../../../shared/channels-photo.ts';
import { useText } from '../../../text/index.ts';
import { Choice } from '../../../ui/choice.tsx';
import { Notice } from '../../../ui/notice.tsx';
import { Tag } from '../../../ui/tag.tsx';
import { TextField } from '../../../ui/text-field.tsx';
import styles from './library.module.css';
import { PhotoGrid } from './photo-grid.tsx';
import { useLibrary } from './use-library.ts';

/** Every photo of the library, the newest first. */
export function PhotoLibraryScreen() {
  const { photos: words, shell } = useText();
  const [typed, setTyped] = useState('');
  const [view, setView] = useState<PhotoView>();
  const [unplaced, setUnplaced] = useState(false);
  const find = useDeferredValue(typed.trim());
  const library = useLibrary({ ...(find !== '' && { find }), ...(view !== undefined && { view }), ...(unplaced && { unplaced }) });
  const { total, problem } = library;
  const nothing = total === 0 && typed === '' && view === undefined && !unplaced;
  return (
    <div className={styles.screen}>
      <header className={styles.head}>
        <h1>{words.library.title}</h1>
        <span role="status" className={styles.total}>{total === undefined ? shell.loading : words.library.total(total)}</span>
        {!nothing && (
          <>
            <div className={styles.find}><TextField label={words.library.find} value={typed} limit={200} onChange={setTyped} /></div>
            <Choice label={words.library.seen} options={PHOTO_VIEWS} value={view} nameOf={(each) => words.layOut.views[each]} onChange={setView} />
            <Tag on={unplaced} onChange={setUnplaced}>{words.library.unlaid}</Tag>
          </>
        )}
      </header>
      {problem !== null && <Notice tone="problem" title={words.unreadable}>{shell.error(problem)}</Notice>}
      {total === 0 && <p>{words.library.none}</p>}
      {total !== undefined && total > 0 && <PhotoGrid library={library} total={total} />}
    </div>
  );
}
