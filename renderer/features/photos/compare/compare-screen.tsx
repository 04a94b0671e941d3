import { useState } from 'react';
import { compared, COVERAGE_ERROR } from '../../../../core/photo/compared.ts';
import type { PlugKey } from '../../../../core/domain/plugs.ts';
import type { EngineRecord } from '../../../../shared/channels.ts';
import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import { EngineHead } from '../../../app/engine-head.tsx';
import { hrefOf } from '../../../app/route.ts';
import { placeOf } from '../../../state/places.ts';
import { useStore } from '../../../state/store.ts';
import { useText } from '../../../text/index.ts';
import { formatDate } from '../../../text/numbers.ts';
import { Notice } from '../../../ui/notice.tsx';
import { keyOfPhoto, photosAt } from '../lay-out/steps.ts';
import { Comparison } from './comparison.tsx';
import styles from './compare.module.css';
import { EngineStrip } from './engine-strip.tsx';
import { Trend } from './trend.tsx';
import { useEnginePhotos, type PhotographedReading } from './use-engine-photos.ts';

type Pair = { readonly before: PhotoRecord; readonly after: PhotoRecord };

/** The photos of one plug from the same side, the newest first. */
const atPlug = (readings: readonly PhotographedReading[], key: PlugKey | null, view: PhotoRecord['view']): readonly PhotoRecord[] =>
  readings.flatMap(({ photos }) => photosAt(photos, key).filter((photo) => photo.view === view));

/** A photo with the one before it at the same plug and from the same side; with the one after it where it is the first. */
function pairWith(readings: readonly PhotographedReading[], photo: PhotoRecord): Pair {
  const all = atPlug(readings, keyOfPhoto(photo), photo.view);
  const at = all.findIndex(({ id }) => id === photo.id);
  const before = all[at + 1];
  return before === undefined ? { before: photo, after: all[at - 1] ?? photo } : { before, after: photo };
}

/** How far a pair differs, in parts of what counts as a change. */
function change({ before, after }: Pair): number {
  const { parts, coverage } = compared(before, after);
  const share = coverage === undefined ? 0 : Math.abs(coverage.after - coverage.before) / COVERAGE_ERROR;
  return Math.max(share, ...parts.map(({ difference, uncertainty }) => difference / uncertainty));
}

/** The plug of the newest reading that differs most from the one before it. */
function firstPair(readings: readonly PhotographedReading[]): Pair | undefined {
  const pairs = readings.map(({ photos }) => photos.filter(({ place }) => place !== null).map((photo) => pairWith(readings, photo))
    .filter(({ before, after }) => before.id !== after.id));
  return pairs.find((some) => some.length > 0)?.toSorted((a, b) => change(b) - change(a))[0];
}

function Compare({ record, readings }: { record: EngineRecord; readings: readonly PhotographedReading[] }) {
  const { photos: words, tray, shell } = useText();
  const [picked, setPicked] = useState<Pair>();
  const pair = picked ?? firstPair(readings);
  const dayOf = (photo: PhotoRecord): string => {
    const date = readings.find(({ reading }) => reading.id === photo.readingId)?.reading.date;
    return date === null || date === undefined ? shell.reading.noDate : formatDate(date);
  };
  const key = pair === undefined ? null : keyOfPhoto(pair.after);
  const alone = (photo: PhotoRecord): boolean => atPlug(readings, key, photo.view).filter(({ readingId }) => readingId === photo.readingId).length === 1;
  const nameOf = (photo: PhotoRecord): string => (alone(photo) ? dayOf(photo) : `${dayOf(photo)} · ${photo.name}`);
  const place = key === null ? undefined : placeOf(key);
  return (
    <div className={styles.screen}>
      <EngineStrip engine={record.engine} readings={readings} chosen={[pair?.before, pair?.after]}
        onChoose={(photo) => setPicked(pairWith(readings, photo))} />
      {pair === undefined || place === undefined ? <p>{words.compare.onlyOne}</p> : (
        <>
          <h2>{tray.placeName(place)}</h2>
          <Comparison choice={atPlug(readings, key, pair.after.view)} before={pair.before} after={pair.after} nameOf={nameOf}
            onPair={(before, after) => setPicked({ before, after })} />
          <Trend readings={readings} plug={key ?? ''} view={pair.after.view} />
        </>
      )}
    </div>
  );
}

/** The photos of an engine over the years. */
export function CompareScreen({ id }: { id: string }) {
  const { photos: words, shell } = useText();
  const record = useStore((state) => state.engines.find((engine) => engine.id === id));
  const { readings, problem } = useEnginePhotos(id);
  if (record === undefined) return <Notice title={shell.notHere}><a href={hrefOf({ page: 'shelf' })}>{shell.allEngines}</a></Notice>;
  return (
    <>
      <EngineHead record={record} page="engine-photos" />
      {problem !== null ? <Notice tone="problem" title={words.unreadable}>{shell.error(problem)}</Notice>
        : readings === null ? <p role="status">{shell.loading}</p>
          : readings.length === 0 ? <p>{words.compare.none}</p> : <Compare record={record} readings={readings} />}
    </>
  );
}
