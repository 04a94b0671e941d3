import { useState } from 'react';
import type { PlugPlace } from '../../../../core/domain/plugs.ts';
import type { AppError } from '../../../../shared/channels.ts';
import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import { usePlaces } from '../../../state/hooks.ts';
import type { PhotoLaying } from '../../../state/photos-slice.ts';
import { useStore } from '../../../state/store.ts';
import { useText } from '../../../text/index.ts';
import { byCapture, evenShare, laidByName, laidInTurn } from './laying.ts';
import { inOrder, laidTo, nextView, photosAt } from './steps.ts';

export type LayingOut = {
  /** What was done last, for a screen reader. */
  readonly saying: string;
  readonly lay: (photo: PhotoRecord, place: PlugPlace | null) => void;
  readonly turn: (photo: PhotoRecord) => void;
  readonly remove: (photo: PhotoRecord) => void;
  /** Lays all that lie at no plug. @param each photos to a plug */
  readonly layAll: (by: 'capture' | 'name', each: number) => void;
  readonly suggestedEach: number;
};

/** Lays photos to plugs, one or all, and says what was done; every step can be taken back. */
export function useLaying(photos: readonly PhotoRecord[]): LayingOut {
  const { photos: { layOut: words }, shell, tray } = useText();
  const places = usePlaces();
  const { placePhotos, removePhotos, restorePhotos, tell } = useStore.getState();
  const [saying, setSaying] = useState('');
  const unlaid = photosAt(photos, null);
  const failed = (error: AppError): void => { tell({ text: shell.error(error), tone: 'problem' }); };
  const checked = (deed: Promise<AppError | null>): void => void deed.then((error) => { if (error !== null) failed(error); });
  const place = async (layings: readonly PhotoLaying[], said: string): Promise<boolean> => {
    const error = await placePhotos(layings);
    if (error === null) setSaying(said);
    else failed(error);
    return error === null;
  };
  const nameOf = (at: PlugPlace | null): string => (at === null ? words.nowhere : tray.placeName(at));
  return {
    saying,
    suggestedEach: evenShare(unlaid.length, places.length),
    lay: (photo, at) => void place([laidTo(photo, at, photos)], words.laid(photo.name, nameOf(at))),
    turn: ({ id, name, place: at, view: before, order }) => {
      const view = nextView(before);
      void place([{ id, place: at, view, order }], words.turned(name, words.views[view]));
    },
    remove: (photo) => void removePhotos([photo.id]).then((error) => {
      if (error !== null) failed(error);
      else tell({ text: words.removed(photo.name), tone: 'plain', undo: () => checked(restorePhotos([photo.id])) });
    }),
    layAll: (by, each) => {
      const layings = by === 'name' ? laidByName(unlaid, places, each) : laidInTurn(unlaid.toSorted(byCapture), places, each);
      if (layings.length === 0) return setSaying(words.noneLaid);
      const ids = new Set(layings.map(({ id }) => id));
      const before = photos.filter(({ id }) => ids.has(id)).map(({ id, place: at, view, order }) => ({ id, place: at, view, order }));
      const said = `${words.allLaid(layings.length)} ${words.left(unlaid.length - layings.length)}`.trim();
      void place(inOrder(layings, photos), said).then((done) => { if (done) tell({ text: said, tone: 'plain', undo: () => checked(placePhotos(before)) }); });
    },
  };
}
