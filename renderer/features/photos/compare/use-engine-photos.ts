import { useEffect, useState } from 'react';
import type { AppError, ReadingSummary } from '../../../../shared/channels.ts';
import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import { bridge } from '../../../app/bridge.ts';
import { useStore } from '../../../state/store.ts';

const PAGE = 500;

async function everyPhoto(engineId: string): Promise<readonly PhotoRecord[] | AppError> {
  const photos: PhotoRecord[] = [];
  for (;;) {
    const reply = await bridge['photo.ofEngine']({ engineId, offset: photos.length, limit: PAGE });
    if (!reply.ok) return reply.error;
    photos.push(...reply.value.photos);
    if (photos.length >= reply.value.total || reply.value.photos.length === 0) return photos;
  }
}

/** A reading with its photos and what was measured by hand at it. */
export type PhotographedReading = { readonly reading: ReadingSummary; readonly photos: readonly PhotoRecord[] };
export type EnginePhotos = { readonly readings: readonly PhotographedReading[] | null; readonly problem: AppError | null };

/** By its day; two of one day by what was done last. */
const momentOf = ({ date, changedAt }: ReadingSummary): string => `${date ?? changedAt} ${changedAt}`;

/** The readings of an engine that have photos, the newest first. */
export function useEnginePhotos(engineId: string): EnginePhotos {
  const [photos, setPhotos] = useState<readonly PhotoRecord[] | null>(null);
  const [problem, setProblem] = useState<AppError | null>(null);
  const log = useStore((state) => state.log);
  const loadLog = useStore((state) => state.loadLog);
  const there = log?.engineId === engineId;
  /** Fetched anew when the screen is opened, and when another library or engine took its place. */
  useEffect(() => {
    let left = false;
    void loadLog(engineId).then((error) => { if (!left && error !== null) setProblem(error); });
    return () => { left = true; };
  }, [engineId, loadLog, there]);
  useEffect(() => {
    let left = false;
    void everyPhoto(engineId).then((found) => {
      if (left) return;
      if ('code' in found) setProblem(found);
      else setPhotos(found);
    });
    return () => { left = true; };
  }, [engineId]);
  if (photos === null || !there) return { readings: null, problem };
  const readings = log.readings.map((reading) => ({ reading, photos: photos.filter(({ readingId }) => readingId === reading.id) }));
  return { readings: readings.filter((each) => each.photos.length > 0).toSorted((a, b) => (momentOf(a.reading) < momentOf(b.reading) ? 1 : -1)), problem };
}
