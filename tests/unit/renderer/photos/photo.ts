import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import type { PhotoMeasure } from '../../../../shared/formats/photo-measure.v1.ts';

/** A measured nose of light tan, on a grey card. Numbers are of no picture; tests change those they speak of. */
export const measure = (changed: Partial<PhotoMeasure> = {}): PhotoMeasure => ({
  format: 'corenose.photo-measure', version: 1, image: { width: 4000, height: 3000 },
  geometry: { shell: { x: 2000, y: 1500, r: 900 }, bore: { x: 2000, y: 1500, r: 600 }, nose: { x: 2000, y: 1500, r: 340 }, confidence: 0.92 },
  whiteReference: { kind: 'patch', taken: 'grey card', white: [0.8, 0.8, 0.8], x: 100, y: 100, w: 400, h: 300 },
  regions: { nose: { lab: [70, 6, 18], spread: [4, 1, 2], pixels: 9000 } },
  darkCoverage: 0.04, examined: 0.35, suggests: [{ facet: 'noseColour', value: 'light tan', belief: 0.85, because: 'nose hue 72 degrees' }], doubts: [],
  ...changed,
});

export const photo = (changed: Partial<PhotoRecord> = {}): PhotoRecord => ({
  id: '00000000-0000-4000-8000-00000000f001', engineId: '00000000-0000-4000-8000-000000000001', readingId: '00000000-0000-4000-8000-000000000002',
  name: 'IMG_2034.jpg', bytes: 3_000_000, width: 4000, height: 3000, takenAt: '2026-03-14T10:01:00', addedAt: '2026-03-14T11:00:00Z', place: null, view: 'end-on', order: 0,
  measured: true, problem: null, sha256: 'f'.repeat(64), camera: null, colour: 'yes', white: null, geometry: null, measure: measure(), annotations: [], ...changed,
});
