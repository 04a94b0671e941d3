import type { Kysely } from 'kysely';
import { plugPlaces } from '../../../core/domain/plugs.ts';
import type { AppError, Handlers, Input } from '../../../shared/channels.ts';
import type { PhotoCard, PhotoRecord, WhiteGiven } from '../../../shared/channels-photo.ts';
import type { PhotoParts } from '../../../shared/formats/photo-measure.v1.ts';
import type { Problem } from '../../../shared/formats/strict.ts';
import { err, ok, type Result } from '../../../shared/result.ts';
import type { PointedWhite } from '../photo/pointed-out.ts';
import { stateOfOriginal } from '../photo-store/originals.ts';
import { photoRefusal } from '../photo-store/photo-desk.ts';
import { cardOf, measureOf, photoRecordOf } from '../photo-store/photo-record.ts';
import { findEngine } from '../storage/engines.ts';
import { changePhotos, countPhotos, everyPhotoFile, findPhotos, listPhotos, pageOfCards, pageOfPhotos, type PhotoRow } from '../storage/photos.ts';
import type { Tables } from '../storage/tables.ts';
import { notFound, reads, writes, type Given } from './given.ts';

type Group = Pick<Handlers, Extract<keyof Handlers, `photo.${string}`>>;

export function photoHandlers(given: Given): Group {
  const now = (): string => given.clock().toISOString();
  return {
    'photo.list': reads(given, async (db, { readingId }) => ok((await listPhotos(db, readingId)).map(photoRecordOf))),
    'photo.get': reads(given, async (db, { id }) => one(db, id)),
    'photo.ofEngine': reads(given, async (db, { offset, limit, ...asked }) =>
      ok({ total: await countPhotos(db, asked), photos: (await pageOfPhotos(db, asked, { offset, limit })).map(photoRecordOf) })),
    'photo.library': reads(given, async (db, { offset, limit, ...asked }) =>
      ok({ total: await countPhotos(db, asked), photos: (await pageOfCards(db, asked, { offset, limit })).map(cardOf) })),
    'photo.place': writes(given, place),
    'photo.remove': writes(given, async (db, { ids }) => {
      const found = await all(db, ids);
      if (!found.ok) return found;
      await changePhotos(db, ids.map((id) => ({ id, change: { removed_at: now() } })));
      return ok(null);
    }),
    'photo.restore': writes(given, async (db, { ids }) => {
      const found = await all(db, ids, { removed: true });
      if (!found.ok) return found;
      await changePhotos(db, ids.map((id) => ({ id, change: { removed_at: null } })));
      return records(db, ids);
    }),
    'photo.measure': writes(given, (db, input) => measure(given, db, input)),
    'photo.mark': writes(given, async (db, { id, annotations }) => {
      const found = await all(db, [id]);
      if (!found.ok) return found;
      await changePhotos(db, [{ id, change: { annotations: JSON.stringify(annotations) } }]);
      return one(db, id);
    }),
    'photo.check': reads(given, (db) => check(given, db)),
  };
}

async function all(db: Kysely<Tables>, ids: readonly string[], also?: { readonly removed: boolean }): Promise<Result<PhotoRow[], AppError>> {
  const rows = await findPhotos(db, ids, also);
  return rows.length === ids.length ? ok(rows) : notFound('photo');
}

async function records(db: Kysely<Tables>, ids: readonly string[]): Promise<Result<PhotoRecord[], AppError>> {
  const rows = await all(db, ids);
  return rows.ok ? ok(rows.value.map(photoRecordOf)) : rows;
}

async function one(db: Kysely<Tables>, id: string): Promise<Result<PhotoRecord, AppError>> {
  const [row] = await findPhotos(db, [id]);
  return row === undefined ? notFound('photo') : ok(photoRecordOf(row));
}

async function place(db: Kysely<Tables>, { photos }: Input<'photo.place'>): Promise<Result<PhotoRecord[], AppError>> {
  const ids = photos.map(({ id }) => id);
  const rows = await all(db, ids);
  if (!rows.ok) return rows;
  const engines = await Promise.all([...new Set(rows.value.map((row) => row.engine_id))].map((id) => findEngine(db, id)));
  const engineOf = (i: number) => engines.find((engine) => engine?.id === rows.value[i]?.engine_id)?.engine;
  const problems = photos.flatMap(({ place: wanted }, i): Problem[] => {
    const engine = engineOf(i);
    if (wanted === null || engine === undefined || wanted.position === 'unknown' && wanted.cylinder <= engine.cylinders) return [];
    const places = plugPlaces(engine);
    if (places.some(({ cylinder, position }) => cylinder === wanted.cylinder && position === wanted.position)) return [];
    const allowed = places.map(({ cylinder, position }) => (position === 'only' ? `${cylinder}` : `${cylinder} ${position}`)).join(', ');
    return [{ path: `photos.${i}.place`, message: `the engine has no plug ${wanted.cylinder} ${wanted.position}; it has ${allowed}` }];
  });
  if (problems.length > 0) return err({ code: 'bad-request', problems });
  await changePhotos(db, photos.map(({ id, place: to, view, order }) =>
    ({ id, change: { cylinder: to?.cylinder ?? null, position: to?.position ?? null, view, place_order: order } })));
  return records(db, ids);
}

async function measure({ photos }: Given, db: Kysely<Tables>, { id, white: newWhite, geometry: newGeometry }: Input<'photo.measure'>): Promise<Result<PhotoRecord, AppError>> {
  const [row] = await findPhotos(db, [id]);
  if (row === undefined) return notFound('photo');
  const before = photoRecordOf(row);
  const white = newWhite === undefined ? before.white : newWhite;
  const geometry: PhotoParts | null = newGeometry === undefined ? before.geometry : newGeometry;
  const pointed = white === null ? ok(undefined) : await pointedWhite(db, row, white);
  if (!pointed.ok) return pointed;
  const pointedOut = { ...(pointed.value && { white: pointed.value }), ...(geometry && { parts: geometry }) };
  const measured = await photos.reader.do({ kind: 'measure', file: photos.originalOf(row), pointedOut });
  if (!measured.ok) return photoRefusal(row.name, measured.error);
  const change = { white: white && JSON.stringify(white), geometry: geometry && JSON.stringify(geometry), measure: JSON.stringify(measured.value) };
  await changePhotos(db, [{ id, change }]);
  return one(db, id);
}

/** What a person pointed out, with the white of another photo looked up. */
async function pointedWhite(db: Kysely<Tables>, { id, name }: PhotoRow, white: WhiteGiven): Promise<Result<PointedWhite, AppError>> {
  if (white.kind !== 'photo') return ok(white);
  const [other] = await findPhotos(db, [white.id]);
  const reference = other && measureOf(other)?.whiteReference;
  if (other === undefined || reference === undefined || reference.kind === 'none' || white.id === id) {
    return err({ code: 'bad-request', problems: [{ path: name, message: 'the other photo has no white of its own to go by; point one out there first' }] });
  }
  const [red = 0, green = 0, blue = 0] = reference.white;
  return ok({ kind: 'light', white: [red, green, blue], reference: reference.kind });
}

async function check({ photos }: Given, db: Kysely<Tables>): Promise<Result<{ checked: number; missing: PhotoCard[]; damaged: PhotoCard[] }, AppError>> {
  const rows = await everyPhotoFile(db);
  const found: { missing: PhotoCard[]; damaged: PhotoCard[] } = { missing: [], damaged: [] };
  for (const row of rows) {
    const state = await stateOfOriginal(photos.originalOf(row), row.sha256);
    if (state !== 'whole') found[state].push(cardOf(row));
  }
  return ok({ checked: rows.length, ...found });
}
