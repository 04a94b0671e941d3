import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import { photoAddress } from '../../../app/photo-door.ts';
import { hrefOf } from '../../../app/route.ts';
import { navigate } from '../../../app/use-route.ts';
import { useStore } from '../../../state/store.ts';
import { useText } from '../../../text/index.ts';
import { formatInstant } from '../../../text/numbers.ts';
import { GlyphButton } from '../../../ui/button.tsx';
import { BackGlyph } from '../../../ui/glyphs.tsx';
import { Menu } from '../../../ui/menu.tsx';
import { useKeys } from '../../../ui/use-keys.ts';
import { useInHand } from './hand.ts';
import { Panel } from './panel.tsx';
import styles from './photo.module.css';
import { Picture } from './picture.tsx';

type Props = { readonly photo: PhotoRecord; readonly photos: readonly PhotoRecord[] };

const toPhoto = ({ readingId, id }: PhotoRecord): void => navigate({ page: 'reading', id: readingId, station: 'photos', field: id });

function usePhotoMenu(photo: PhotoRecord) {
  const { photos: { photo: words, layOut }, shell } = useText();
  const { removePhotos, restorePhotos, tell } = useStore.getState();
  const save = (size: 'original' | 'export'): void => { const link = document.createElement('a'); link.href = photoAddress(photo.id, size); link.download = ''; link.click(); };
  const remove = async (): Promise<void> => {
    const error = await removePhotos([photo.id]);
    if (error !== null) return void tell({ text: shell.error(error), tone: 'problem' });
    tell({ text: layOut.removed(photo.name), tone: 'plain', undo: () => void restorePhotos([photo.id]) });
    navigate({ page: 'reading', id: photo.readingId, station: 'photos' });
  };
  return [
    { words: words.saveCopy, onSelect: () => save('export') }, { words: words.saveOriginal, onSelect: () => save('original') },
    { words: words.remove, onSelect: () => void remove(), grave: true },
  ];
}

function Head({ photo, photos }: Props) {
  const { photo: words } = useText().photos;
  const items = usePhotoMenu(photo);
  const at = photos.indexOf(photo);
  const taken = photo.takenAt === null ? undefined : formatInstant(photo.takenAt);
  const [before, after] = [photos[at - 1], photos[at + 1]];
  useKeys({ ...(before && { '[': () => toPhoto(before) }), ...(after && { ']': () => toPhoto(after) }) });
  return (
    <header className={styles.head}>
      <a className={styles.back} href={hrefOf({ page: 'reading', id: photo.readingId, station: 'photos' })}><BackGlyph />{words.all}</a>
      <GlyphButton name={words.previous} disabled={before === undefined} aria-keyshortcuts="[" onClick={() => { if (before) toPhoto(before); }}><BackGlyph /></GlyphButton>
      <h2 className={styles.name}>{photo.name}</h2>
      <GlyphButton name={words.next} disabled={after === undefined} aria-keyshortcuts="]" className={styles.next} onClick={() => { if (after) toPhoto(after); }}><BackGlyph /></GlyphButton>
      <span className={styles.facts}>{words.facts(at + 1, photos.length, taken, photo.width, photo.height)}</span>
      <Menu words={words.more} name={words.moreOf(photo.name)} items={items} />
    </header>
  );
}

/** One photo with all that is measured in it and said of it. */
export function PhotoScreen({ photo, photos }: Props) {
  const hand = useInHand(photo);
  return (
    <div className={styles.screen}>
      <Head photo={photo} photos={photos} />
      <Picture key={photo.id} photo={photo} hand={hand} />
      <Panel photo={photo} photos={photos} hand={hand} />
    </div>
  );
}
