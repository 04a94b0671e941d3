import { useEffect, useState } from 'react';
import type { AppError } from '../../../shared/channels.ts';
import type { PhotoRecord } from '../../../shared/channels-photo.ts';
import { useStore } from '../../state/store.ts';

/** The photos of a reading, fetched when they are first asked for; null until they are there. */
export function usePhotos(readingId: string): { readonly photos: readonly PhotoRecord[] | null; readonly problem: AppError | null } {
  const shown = useStore((state) => state.photos);
  const loadPhotos = useStore((state) => state.loadPhotos);
  const [problem, setProblem] = useState<AppError | null>(null);
  const there = shown?.readingId === readingId;
  useEffect(() => {
    if (there) return;
    let left = false;
    void loadPhotos(readingId).then((error) => { if (!left) setProblem(error); });
    return () => { left = true; };
  }, [there, readingId, loadPhotos]);
  return { photos: there ? shown.records : null, problem };
}

/** How many photos a reading has; undefined until that is known. */
export const usePhotoCount = (readingId: string): number | undefined => usePhotos(readingId).photos?.length;
