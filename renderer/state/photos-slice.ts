import type { AppError, Input } from '../../shared/channels.ts';
import type { Annotation, PhotoRecord } from '../../shared/channels-photo.ts';
import type { Result } from '../../shared/result.ts';
import { bridge } from '../app/bridge.ts';
import type { SliceCreator } from './store.ts';

type Step = { readonly back: () => Promise<AppError | null>; readonly again: () => Promise<AppError | null> };
export type PhotoLaying = Input<'photo.place'>['photos'][number];
/** What a person points out in a photo; what is absent stays, null forgets it. */
export type PointedOut = Pick<Input<'photo.measure'>, 'white' | 'geometry'>;

export type PhotosSlice = {
  /** The photos of one reading, in the order of the host. */
  readonly photos: { readonly readingId: string; readonly records: readonly PhotoRecord[] } | null;
  /** Photos that are being measured now. */
  readonly measuring: ReadonlySet<string>;
  /** What was done to photos and can be taken back, the latest last; and what was taken back. */
  readonly photoPast: readonly Step[];
  readonly photoFuture: readonly Step[];
  readonly loadPhotos: (readingId: string) => Promise<AppError | null>;
  /** Takes in a photo that has just come, and measures it; no step to take back. */
  readonly welcomePhoto: (photo: PhotoRecord) => Promise<AppError | null>;
  readonly placePhotos: (layings: readonly PhotoLaying[]) => Promise<AppError | null>;
  readonly removePhotos: (ids: readonly string[]) => Promise<AppError | null>;
  readonly restorePhotos: (ids: readonly string[]) => Promise<AppError | null>;
  readonly measurePhoto: (id: string, change: PointedOut) => Promise<AppError | null>;
  readonly markPhoto: (id: string, annotations: readonly Annotation[]) => Promise<AppError | null>;
  readonly stepPhotos: (way: 'back' | 'again') => Promise<AppError | null>;
  /** Puts something done elsewhere, such as a value taken into the reading, among the steps. */
  readonly notePhotoStep: (step: Step) => void;
};

const laidAs = ({ id, place, view, order }: PhotoRecord): PhotoLaying => ({ id, place, view, order });

/** The photos of a reading with those that changed, or came, in their newest form. */
function withChanged(photos: NonNullable<PhotosSlice['photos']>, changed: readonly PhotoRecord[]): NonNullable<PhotosSlice['photos']> {
  const fresh = new Map(changed.filter(({ readingId }) => readingId === photos.readingId).map((photo) => [photo.id, photo]));
  const known = new Set(photos.records.map(({ id }) => id));
  const added = [...fresh.values()].filter(({ id }) => !known.has(id));
  return { ...photos, records: [...photos.records.map((photo) => fresh.get(photo.id) ?? photo), ...added] };
}

export const createPhotosSlice: SliceCreator<PhotosSlice> = (set, get) => {
  const recordOf = (id: string): PhotoRecord | undefined => get().photos?.records.find((photo) => photo.id === id);
  const put = (changed: readonly PhotoRecord[]): void => set(({ photos }) => (photos === null ? {} : { photos: withChanged(photos, changed) }));
  const answered = async (asked: Promise<Result<readonly PhotoRecord[] | PhotoRecord, AppError>>): Promise<AppError | null> => {
    const reply = await asked;
    if (!reply.ok) return reply.error;
    put([reply.value].flat());
    return null;
  };
  const place = (photos: readonly PhotoLaying[]) => answered(bridge['photo.place']({ photos: [...photos] }));
  const mark = (id: string, annotations: readonly Annotation[]) => answered(bridge['photo.mark']({ id, annotations: [...annotations] }));
  const measure = async (id: string, change: PointedOut): Promise<AppError | null> => {
    set(({ measuring }) => ({ measuring: new Set([...measuring, id]) }));
    const error = await answered(bridge['photo.measure']({ id, ...change }));
    set(({ measuring }) => ({ measuring: new Set([...measuring].filter((other) => other !== id)) }));
    return error;
  };
  const remove = async (ids: readonly string[]): Promise<AppError | null> => {
    const reply = await bridge['photo.remove']({ ids: [...ids] });
    if (!reply.ok) return reply.error;
    set(({ photos }) => (photos === null ? {} : { photos: { ...photos, records: photos.records.filter(({ id }) => !ids.includes(id)) } }));
    return null;
  };
  const restore = (ids: readonly string[]) => answered(bridge['photo.restore']({ ids: [...ids] }));
  const note = (step: Step): void => set(({ photoPast }) => ({ photoPast: [...photoPast, step], photoFuture: [] }));
  /** Does it, and if that went well keeps the way back. */
  const done = async (step: Step): Promise<AppError | null> => {
    const error = await step.again();
    if (error === null) note(step);
    return error;
  };
  return {
    photos: null,
    measuring: new Set(),
    photoPast: [],
    photoFuture: [],
    loadPhotos: async (readingId) => {
      const reply = await bridge['photo.list']({ readingId });
      if (!reply.ok) return reply.error;
      const other = get().photos?.readingId !== readingId;
      set({ photos: { readingId, records: reply.value }, ...(other && { photoPast: [], photoFuture: [] }) });
      return null;
    },
    welcomePhoto: async (photo) => {
      put([photo]);
      return photo.measure === null && photo.problem === null ? measure(photo.id, {}) : null;
    },
    placePhotos: (layings) => {
      const before = layings.flatMap(({ id }) => recordOf(id) ?? []).map(laidAs);
      return done({ again: () => place(layings), back: () => place(before) });
    },
    removePhotos: (ids) => done({ again: () => remove(ids), back: () => restore(ids) }),
    restorePhotos: (ids) => done({ again: () => restore(ids), back: () => remove(ids) }),
    measurePhoto: (id, change) => {
      const { white = null, geometry = null } = recordOf(id) ?? {};
      const before = { ...('white' in change && { white }), ...('geometry' in change && { geometry }) };
      return done({ again: () => measure(id, change), back: () => measure(id, before) });
    },
    markPhoto: (id, annotations) => {
      const before = recordOf(id)?.annotations ?? [];
      return done({ again: () => mark(id, annotations), back: () => mark(id, before) });
    },
    stepPhotos: async (way) => {
      const { photoPast, photoFuture } = get();
      const step = (way === 'back' ? photoPast : photoFuture).at(-1);
      if (step === undefined) return null;
      const error = await step[way]();
      if (error !== null) return error;
      set(way === 'back'
        ? { photoPast: photoPast.slice(0, -1), photoFuture: [...photoFuture, step] }
        : { photoPast: [...photoPast, step], photoFuture: photoFuture.slice(0, -1) });
      return null;
    },
    notePhotoStep: note,
  };
};
