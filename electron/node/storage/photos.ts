import { sql, type Insertable, type Kysely, type Selectable, type Updateable } from 'kysely';
import type { PhotoFileTable, PhotoTable, Tables } from './tables.ts';

export type PhotoFileRow = Selectable<PhotoFileTable>;
/** A photo with what is known of its bytes. */
export type PhotoRow = Selectable<PhotoTable> & PhotoFileRow;
/** What a list shows: without the long columns, but with whether there is a measurement. */
export type PhotoCardRow = Omit<PhotoRow, 'white' | 'geometry' | 'measure' | 'annotations'> & { readonly measured: number };

const joined = (db: Kysely<Tables>) => db.selectFrom('photo').innerJoin('photo_file', 'photo_file.sha256', 'photo.sha256');
const whole = (db: Kysely<Tables>) => joined(db).selectAll('photo_file').selectAll('photo');
const CARD = [
  'photo.id', 'photo.engine_id', 'photo.reading_id', 'photo.sha256', 'photo.name', 'photo.shown_at', 'photo.cylinder', 'photo.position', 'photo.view', 'photo.place_order',
  'photo.added_at', 'photo.removed_at', 'photo_file.bytes', 'photo_file.format', 'photo_file.width', 'photo_file.height', 'photo_file.colour', 'photo_file.taken_at',
  'photo_file.camera', 'photo_file.problem',
] as const;

/** Photos of a reading that are not removed: those laid to plugs in tray order, then the others as they were taken. */
export async function listPhotos(db: Kysely<Tables>, readingId: string): Promise<PhotoRow[]> {
  return whole(db).where('photo.reading_id', '=', readingId).where('photo.removed_at', 'is', null)
    .orderBy(sql`photo.cylinder is null`).orderBy('photo.cylinder').orderBy('photo.position').orderBy('photo.place_order')
    .orderBy('photo.shown_at').orderBy('photo.name').orderBy('photo.id').execute();
}

/** The photos with these ids in that order, without those unknown; removed ones only where `removed` says so. */
export async function findPhotos(db: Kysely<Tables>, ids: readonly string[], { removed = false }: { readonly removed?: boolean } = {}): Promise<PhotoRow[]> {
  const rows = await whole(db).where('photo.id', 'in', [...ids]).execute();
  const byId = new Map(rows.filter(({ removed_at }) => removed || removed_at === null).map((row) => [row.id, row]));
  return ids.map((id) => byId.get(id)).filter((row) => row !== undefined);
}

export type PhotosAsked = {
  readonly engineId?: string | undefined;
  readonly place?: { readonly cylinder: number; readonly position: string } | undefined;
  readonly view?: PhotoTable['view'] | undefined;
  readonly unplaced?: boolean | undefined;
  readonly find?: string | undefined;
};
type Paged = { readonly offset: number; readonly limit: number };

/** Photos of readings and engines that are there, as asked for; one index answers most of it. */
function asked(db: Kysely<Tables>, { engineId, place, view, unplaced, find }: PhotosAsked) {
  const gone = (table: 'engine' | 'reading') => db.selectFrom(table).select('id').where('removed_at', 'is not', null);
  let query = db.selectFrom('photo').where('removed_at', 'is', null).where('engine_id', 'not in', gone('engine')).where('reading_id', 'not in', gone('reading'));
  if (engineId !== undefined) query = query.where('engine_id', '=', engineId);
  if (place !== undefined) query = query.where('cylinder', '=', place.cylinder).where('position', '=', place.position);
  if (view !== undefined) query = query.where('view', '=', view);
  if (unplaced === true) query = query.where('cylinder', 'is', null);
  if (find !== undefined && find !== '') {
    const like = `%${find.replace(/[\\%_]/g, '\\$&')}%`;
    const named = db.selectFrom('engine').select('id').where(sql<boolean>`json_extract(json, '$.name') like ${like} escape '\\'`);
    query = query.where((e) => e.or([sql<boolean>`name like ${like} escape '\\'`, e('engine_id', 'in', named)]));
  }
  return query;
}

export async function countPhotos(db: Kysely<Tables>, what: PhotosAsked): Promise<number> {
  const { n } = await asked(db, what).select((e) => e.fn.countAll<number>().as('n')).executeTakeFirstOrThrow();
  return n;
}

/** The ids of one page, newest first; only its own rows are then read whole. */
const pageOf = (db: Kysely<Tables>, what: PhotosAsked, { offset, limit }: Paged) =>
  asked(db, what).select('id').orderBy('shown_at', 'desc').orderBy('id', 'desc').offset(offset).limit(limit);

/** Newest first. */
export async function pageOfPhotos(db: Kysely<Tables>, what: PhotosAsked, paged: Paged): Promise<PhotoRow[]> {
  return whole(db).where('photo.id', 'in', pageOf(db, what, paged)).orderBy('photo.shown_at', 'desc').orderBy('photo.id', 'desc').execute();
}

/** Newest first, without the long columns. */
export async function pageOfCards(db: Kysely<Tables>, what: PhotosAsked, paged: Paged): Promise<PhotoCardRow[]> {
  return joined(db).select(CARD).select(sql<number>`photo.measure is not null`.as('measured')).where('photo.id', 'in', pageOf(db, what, paged))
    .orderBy('photo.shown_at', 'desc').orderBy('photo.id', 'desc').execute();
}

/** Every photo that is not removed, for the check of the originals; one row per file. */
export async function everyPhotoFile(db: Kysely<Tables>): Promise<PhotoCardRow[]> {
  return joined(db).select(CARD).select(sql<number>`photo.measure is not null`.as('measured')).where('photo.removed_at', 'is', null)
    .groupBy('photo.sha256').orderBy('photo.shown_at', 'desc').orderBy('photo.id', 'desc').execute();
}

/** The photo of a reading with these bytes, also a removed one. */
export async function findByBytes(db: Kysely<Tables>, readingId: string, sha256: string): Promise<PhotoRow | undefined> {
  return whole(db).where('photo.reading_id', '=', readingId).where('photo.sha256', '=', sha256).executeTakeFirst();
}

export async function findPhotoFile(db: Kysely<Tables>, sha256: string): Promise<PhotoFileRow | undefined> {
  return db.selectFrom('photo_file').selectAll().where('sha256', '=', sha256).executeTakeFirst();
}

/** Adds a photo and, where they are new, what is known of its bytes. Two that bring the same bytes at once end with one photo. */
export async function addPhoto(db: Kysely<Tables>, file: Insertable<PhotoFileTable>, photo: Insertable<PhotoTable>): Promise<void> {
  await db.transaction().execute(async (step) => {
    await step.insertInto('photo_file').values(file).onConflict((on) => on.column('sha256').doNothing()).execute();
    await step.insertInto('photo').values(photo).onConflict((on) => on.columns(['reading_id', 'sha256']).doUpdateSet({ removed_at: null })).execute();
  });
}

export type PhotoChange = Pick<Updateable<PhotoTable>, 'cylinder' | 'position' | 'view' | 'place_order' | 'white' | 'geometry' | 'measure' | 'annotations' | 'removed_at'>;

/** Changes photos, all or none. */
export async function changePhotos(db: Kysely<Tables>, changes: readonly { readonly id: string; readonly change: PhotoChange }[]): Promise<void> {
  await db.transaction().execute(async (step) => {
    for (const { id, change } of changes) await step.updateTable('photo').set(change).where('id', '=', id).execute();
  });
}
