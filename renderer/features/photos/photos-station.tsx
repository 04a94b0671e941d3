import { useState } from 'react';
import { useRoute } from '../../app/use-route.ts';
import { hrefOf } from '../../app/route.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { ButtonLink } from '../../ui/button.tsx';
import { Notice } from '../../ui/notice.tsx';
import { Tag } from '../../ui/tag.tsx';
import { useKeys } from '../../ui/use-keys.ts';
import { AddPhotos } from './bring-in/add-photos.tsx';
import { Progress } from './bring-in/progress.tsx';
import { LightTable } from './lay-out/light-table.tsx';
import { PhotoScreen } from './photo/photo-screen.tsx';
import styles from './photos-station.module.css';
import { usePhotos } from './use-photos.ts';

/** Undo and redo of what is done to photos; where there is nothing of it, the reading's own hold. */
function usePhotoSteps(): void {
  const { shell } = useText();
  const [canGoBack, canGoOn] = [useStore((state) => state.photoPast.length > 0), useStore((state) => state.photoFuture.length > 0)];
  const step = (way: 'back' | 'again') => (): void => {
    const { stepPhotos, tell } = useStore.getState();
    void stepPhotos(way).then((error) => { if (error !== null) tell({ text: shell.error(error), tone: 'problem' }); });
  };
  useKeys({ ...(canGoBack && { 'Ctrl Z': step('back') }), ...(canGoOn && { 'Ctrl Y': step('again'), 'Ctrl Shift Z': step('again') }) });
}

function Teaching() {
  const { empty } = useText().photos;
  return (
    <div className={styles.empty}>
      <h2>{empty.title}</h2>
      <p>{empty.about}</p>
      <ul>{empty.advice.map((line) => <li key={line}>{line}</li>)}</ul>
    </div>
  );
}

/** The photos of a reading: all beside their plugs, or one of them. */
export function PhotosStation() {
  const { photos: words, shell } = useText();
  const route = useRoute();
  const reading = useStore((state) => state.reading);
  const demo = useStore((state) => state.info?.library.kind === 'demo');
  const readingId = reading?.id ?? '';
  const { photos, problem } = usePhotos(readingId);
  const place = useStore((state) => state.incoming.some((one) => one.readingId === readingId));
  const [corrected, setCorrected] = useState(false);
  usePhotoSteps();
  const asked = route.page === 'reading' ? route.field : undefined;
  const photo = photos?.find(({ id }) => id === asked);
  if (problem !== null) return <Notice tone="problem" title={words.unreadable}>{shell.error(problem)}</Notice>;
  if (photos === null) return <p role="status">{shell.loading}</p>;
  if (photo !== undefined) return <PhotoScreen photo={photo} photos={photos} />;
  return (
    <div className={styles.station}>
      <header className={styles.head}>
        <AddPhotos readingId={readingId} />
        <span className={styles.hint}>{demo && photos.length > 0 ? words.demoHint : words.bringIn.hint}</span>
        {photos.length > 0 && <Tag on={corrected} onChange={setCorrected}>{words.viewer.corrected}</Tag>}
        {reading !== null && photos.length > 0 && <ButtonLink href={hrefOf({ page: 'engine-photos', id: reading.engineId })}>{words.compareLink}</ButtonLink>}
      </header>
      <Progress readingId={readingId} />
      {photos.length === 0 && !place ? <Teaching /> : <LightTable photos={photos} corrected={corrected} />}
    </div>
  );
}
