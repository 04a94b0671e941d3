import { useMemo } from 'react';
import type { PlugKey } from '../../../core/domain/plugs.ts';
import type { PhotoRecord } from '../../../shared/channels-photo.ts';
import { hrefOf } from '../../app/route.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { Crop } from './crop.tsx';
import { photosAt } from './lay-out/steps.ts';
import styles from './photos.module.css';

const NONE: readonly PhotoRecord[] = [];

/** The photos of one plug of the open reading, as far as they have been fetched. */
function usePlugPhotos(plug: PlugKey): readonly PhotoRecord[] {
  const records = useStore((state) => (state.photos !== null && state.photos.readingId === state.reading?.id ? state.photos.records : NONE));
  return useMemo(() => photosAt(records, plug), [records, plug]);
}

/** The photos of a plug, each leading to itself; nothing where there is none. */
export function PlugPhotos({ plug }: { plug: PlugKey }) {
  const { photosOf, layOut } = useText().photos;
  const photos = usePlugPhotos(plug);
  if (photos.length === 0) return null;
  return (
    <ul className={styles.strip} aria-label={photosOf(photos.length)}>
      {photos.map((photo) => (
        <li key={photo.id}>
          <a className={styles.open} href={hrefOf({ page: 'reading', id: photo.readingId, station: 'photos', field: photo.id })}
            aria-label={`${photo.name}, ${layOut.views[photo.view]}`} title={photo.name}>
            <Crop photo={photo} size="small" />
          </a>
        </li>
      ))}
    </ul>
  );
}

/** The first photo of a plug, small, where nothing can be pressed. */
export function PlugPhotoMark({ plug, className }: { plug: PlugKey; className: string | undefined }) {
  const [photo] = usePlugPhotos(plug);
  return photo === undefined ? null : <span className={className} aria-hidden="true"><Crop photo={photo} size="small" /></span>;
}
