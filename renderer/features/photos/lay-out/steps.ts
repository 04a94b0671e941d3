import { plugKey, type PlugKey, type PlugPlace } from '../../../../core/domain/plugs.ts';
import { PHOTO_VIEWS, type PhotoRecord, type PhotoView } from '../../../../shared/channels-photo.ts';
import type { PhotoLaying } from '../../../state/photos-slice.ts';
import type { Laying } from './laying.ts';

export const keyOfPhoto = ({ place }: Pick<PhotoRecord, 'place'>): PlugKey | null => (place === null ? null : plugKey(place.cylinder, place.position));

/** The photos of one plug in their order; `null` asks for those that lie at none. */
export const photosAt = (photos: readonly PhotoRecord[], key: PlugKey | null): readonly PhotoRecord[] =>
  photos.filter((photo) => keyOfPhoto(photo) === key).toSorted((a, b) => a.order - b.order);

const endOf = (photos: readonly PhotoRecord[], key: PlugKey | null): number => 1 + Math.max(-1, ...photosAt(photos, key).map(({ order }) => order));

/** A photo laid to another plug (or to none), after those that lie there. */
export function laidTo(photo: PhotoRecord, place: PlugPlace | null, photos: readonly PhotoRecord[]): PhotoLaying {
  const key = place === null ? null : plugKey(place.cylinder, place.position);
  return { id: photo.id, place, view: photo.view, order: endOf(photos, key) };
}

/** Layings in their order, after the photos that lie there already. */
export function inOrder(layings: readonly Laying[], photos: readonly PhotoRecord[]): readonly PhotoLaying[] {
  return layings.map((laying, i) => ({ ...laying, order: endOf(photos, plugKey(laying.place.cylinder, laying.place.position)) + i }));
}

/** The plug before or after in tray order; from no plug to the first, and from the first back to none. */
export function placeBeside(photo: PhotoRecord, places: readonly PlugPlace[], steps: -1 | 1): PlugPlace | null | undefined {
  const at = places.findIndex(({ cylinder, position }) => plugKey(cylinder, position) === keyOfPhoto(photo));
  if (at + steps < 0) return photo.place === null ? undefined : null;
  return places[at + steps];
}

/** The plug of a cylinder; in a cylinder of two, the one the photo does not lie at. */
export const placeOfCylinder = (cylinder: number, photo: PhotoRecord, places: readonly PlugPlace[]): PlugPlace | undefined =>
  places.find((place) => place.cylinder === cylinder && plugKey(place.cylinder, place.position) !== keyOfPhoto(photo));

export const nextView = (view: PhotoView): PhotoView => PHOTO_VIEWS[(PHOTO_VIEWS.indexOf(view) + 1) % PHOTO_VIEWS.length] ?? 'end-on';
