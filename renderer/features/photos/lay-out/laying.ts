import type { PlugPlace } from '../../../../core/domain/plugs.ts';
import { POSITIONS, type Position } from '../../../../shared/vocabulary/engine.ts';
import { PHOTO_VIEWS, type PhotoView } from '../../../../shared/channels-photo.ts';

/** What is needed of a photo to lay it. `takenAt`: ISO 8601; null where the file does not say. */
export type Layable = { readonly id: string; readonly name: string; readonly takenAt: string | null; readonly addedAt: string };

/** Where one photo goes. */
export type Laying = { readonly id: string; readonly place: PlugPlace; readonly view: PhotoView };

const naturally = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

const byName = (a: Layable, b: Layable): number => naturally.compare(a.name, b.name);
/** By the moment of capture; those that do not tell theirs come last, by name. */
export function byCapture(a: Layable, b: Layable): number {
  if (a.takenAt === null || b.takenAt === null) return Number(a.takenAt === null) - Number(b.takenAt === null) || byName(a, b);
  return a.takenAt < b.takenAt ? -1 : a.takenAt > b.takenAt ? 1 : byName(a, b);
}

/**
 * Photos laid to plugs one after the other, `each` of them to a plug: the first end-on, then the side, then the strap. Photos beyond the last plug stay where
 * they are.
 */
export function laidInTurn(photos: readonly Layable[], places: readonly PlugPlace[], each: number): readonly Laying[] {
  return photos.flatMap(({ id }, i) => {
    const place = places[Math.floor(i / each)];
    return place === undefined ? [] : [{ id, place, view: PHOTO_VIEWS[Math.min(i % each, PHOTO_VIEWS.length - 1)] ?? 'end-on' }];
  });
}

/** How many photos there are for each plug when they come out even; 1 when they do not. */
export function evenShare(photos: number, places: number): number {
  const share = photos / Math.max(1, places);
  return Number.isInteger(share) && share >= 1 && share <= PHOTO_VIEWS.length ? share : 1;
}

const POSITION_WORDS: Readonly<Record<string, Position>> = {
  ...Object.fromEntries(POSITIONS.filter((position) => position !== 'only' && position !== 'unknown').map((position) => [position, position])),
  u: 'upper', top: 'upper', l: 'lower', bottom: 'lower', in: 'intake', ex: 'exhaust',
};
const VIEW_WORDS: Readonly<Record<string, PhotoView>> = { side: 'side', strap: 'strap', end: 'end-on' };

/** The words and numbers of a file name: `cyl3_upper-side.JPG` has cyl, 3, upper, side. */
const partsOf = (name: string): readonly string[] => name.replace(/\.\w+$/, '').toLowerCase().match(/\d+|\p{L}+/gu) ?? [];

/** The plug that a file name tells, if it tells one without doubt. Numbers of three digits and more are the camera's. */
export function placeInName(name: string, places: readonly PlugPlace[]): PlugPlace | undefined {
  const parts = partsOf(name);
  const cylinders = new Set(parts.filter((part) => /^\d{1,2}$/.test(part)).map(Number));
  const [cylinder] = cylinders;
  if (cylinders.size !== 1) return undefined;
  const ofCylinder = places.filter((place) => place.cylinder === cylinder);
  if (ofCylinder.length <= 1) return ofCylinder[0];
  const told = ofCylinder.filter(({ position }) => parts.some((part) => POSITION_WORDS[part] === position));
  return told.length === 1 ? told[0] : undefined;
}

const viewInName = (name: string): PhotoView => partsOf(name).flatMap((part) => VIEW_WORDS[part] ?? [])[0] ?? 'end-on';

/** Photos whose names tell their plug, laid there; where no name tells one, all in the order of their names. */
export function laidByName(photos: readonly Layable[], places: readonly PlugPlace[], each: number): readonly Laying[] {
  const told = photos.flatMap(({ id, name }) => {
    const place = placeInName(name, places);
    return place === undefined ? [] : [{ id, place, view: viewInName(name) }];
  });
  return told.length > 0 ? told : laidInTurn(photos.toSorted(byName), places, each);
}
