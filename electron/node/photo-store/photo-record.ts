import type { Annotation, PhotoCard, PhotoPlace, PhotoRecord, WhiteGiven } from '../../../shared/channels-photo.ts';
import { photoMeasure, type PhotoMeasure, type PhotoParts } from '../../../shared/formats/photo-measure.v1.ts';
import type { PhotoCardRow, PhotoRow } from '../storage/photos.ts';

const placeOf = ({ cylinder, position }: Pick<PhotoRow, 'cylinder' | 'position'>): PhotoPlace | null =>
  (cylinder === null ? null : { cylinder, position: (position ?? 'only') as PhotoPlace['position'] });

const common = (row: PhotoCardRow | PhotoRow): Omit<PhotoCard, 'measured'> => ({
  id: row.id, engineId: row.engine_id, readingId: row.reading_id, name: row.name, bytes: row.bytes, width: row.width, height: row.height,
  takenAt: row.taken_at, addedAt: row.added_at, place: placeOf(row), view: row.view, order: row.place_order, problem: row.problem,
});

export const cardOf = (row: PhotoCardRow): PhotoCard => ({ ...common(row), measured: row.measured === 1 });

export function photoRecordOf(row: PhotoRow): PhotoRecord {
  const measure = measureOf(row);
  return {
    ...common(row), measured: measure !== null, sha256: row.sha256, camera: row.camera, colour: row.colour,
    white: parsed(row.white) as WhiteGiven | null, geometry: parsed(row.geometry) as PhotoParts | null, measure,
    annotations: JSON.parse(row.annotations) as Annotation[],
  };
}

const parsed = (json: string | null): unknown => (json === null ? null : JSON.parse(json));

/** The measurement that was kept; one in a form of an earlier version counts as none and is made again when asked for. */
export function measureOf({ measure }: Pick<PhotoRow, 'measure'>): PhotoMeasure | null {
  const kept = measure === null ? undefined : photoMeasure.safeParse(JSON.parse(measure));
  return kept?.success === true ? kept.data : null;
}
