import type { AppError, Bridge } from '../../../../shared/channels.ts';
import type { PhotoCard, PhotoRecord } from '../../../../shared/channels-photo.ts';
import { err, ok } from '../../../../shared/result.ts';

type PhotoCalls = Pick<Bridge, Extract<keyof Bridge, `photo.${string}`>>;

const cardOf = ({ sha256: _s, camera: _c, colour: _o, white: _w, geometry: _g, measure: _m, annotations: _a, ...card }: PhotoRecord): PhotoCard => card;

/** Photos of the host in memory: laid, removed and marked as the real one does. Nothing is decoded: what a measurement gives is put into the map beforehand. */
export function fakePhotos(): { readonly photos: Map<string, PhotoRecord>; readonly calls: PhotoCalls } {
  const photos = new Map<string, PhotoRecord>();
  const removed = new Set<string>();
  const gone = err<AppError>({ code: 'not-found', what: 'photo' });
  const there = (): PhotoRecord[] => [...photos.values()].filter(({ id }) => !removed.has(id));
  const change = (id: string, by: Partial<PhotoRecord>) => {
    const found = photos.get(id);
    if (found === undefined || removed.has(id)) return gone;
    const next = { ...found, ...by };
    photos.set(id, next);
    return ok(next);
  };
  const calls: PhotoCalls = {
    'photo.list': async ({ readingId }) => ok(there().filter((photo) => photo.readingId === readingId)),
    'photo.get': async ({ id }) => change(id, {}),
    'photo.ofEngine': async ({ engineId, place, view, offset, limit }) => {
      const all = there().filter((photo) => photo.engineId === engineId && (view === undefined || photo.view === view)
        && (place === undefined || (photo.place?.cylinder === place.cylinder && photo.place.position === place.position)));
      return ok({ total: all.length, photos: all.slice(offset, offset + limit) });
    },
    'photo.library': async ({ find, view, unplaced, offset, limit }) => {
      const all = there().filter((photo) => photo.name.includes(find ?? '') && (view === undefined || photo.view === view) && (unplaced !== true || photo.place === null));
      return ok({ total: all.length, photos: all.slice(offset, offset + limit).map(cardOf) });
    },
    'photo.place': async ({ photos: wanted }) => {
      if (wanted.some(({ id }) => !photos.has(id))) return gone;
      for (const { id, ...to } of wanted) change(id, to);
      return ok(wanted.map(({ id }) => photos.get(id)!));
    },
    'photo.remove': async ({ ids }) => { for (const id of ids) removed.add(id); return ok(null); },
    'photo.restore': async ({ ids }) => { for (const id of ids) removed.delete(id); return ok(ids.map((id) => photos.get(id)!)); },
    'photo.measure': async ({ id, white, geometry }) => change(id, { ...(white !== undefined && { white }), ...(geometry !== undefined && { geometry }) }),
    'photo.mark': async ({ id, annotations }) => change(id, { annotations }),
    'photo.check': async () => ok({ checked: there().length, missing: [], damaged: [] }),
  };
  return { photos, calls };
}
