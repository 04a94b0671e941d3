import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import { hrefOf } from '../../../app/route.ts';
import { useText } from '../../../text/index.ts';
import { Crop } from '../crop.tsx';
import { whiteFilter } from '../light/common-white.tsx';
import styles from './lay-out.module.css';

/** What travels with a photo that is dragged to a plug. */
export const DRAGGED = 'application/x-corenose-photo';

/** A photo on the light table: leads to the photo, can be dragged, takes keys. */
export function PhotoCard({ photo, large, place, corrected }: { photo: PhotoRecord; large: boolean; place: string; corrected: boolean }) {
  const { layOut: words } = useText().photos;
  const { id, name, readingId, view, problem, measured } = photo;
  const state = problem ?? (measured ? '' : words.notMeasured);
  return (
    <li className={styles.card} data-large={large ? '' : undefined}>
      <a className={styles.open} data-photo={id} href={hrefOf({ page: 'reading', id: readingId, station: 'photos', field: id })} draggable
        aria-label={[name, place, words.views[view], state].filter(Boolean).join(', ')} title={state === '' ? name : `${name}: ${state}`}
        onDragStart={(event) => { event.dataTransfer.setData(DRAGGED, id); event.dataTransfer.effectAllowed = 'move'; }}>
        <Crop photo={photo} size={large ? 'screen' : 'small'} filter={corrected ? whiteFilter(photo) : undefined} />
        <span className={styles.view}>{words.views[view]}</span>
        {problem !== null && <span className={styles.problem} aria-hidden="true">!</span>}
      </a>
    </li>
  );
}
