import { rm, stat } from 'node:fs/promises';
import type { Kysely } from 'kysely';
import type { AppError } from '../../../shared/channels.ts';
import type { IncomingPhoto } from '../../../shared/channels-photo.ts';
import { err, ok, type Result } from '../../../shared/result.ts';
import type { LibraryShelf } from '../library-shelf.ts';
import { photoErrorText, type PhotoError } from '../photo/photo-error.ts';
import type { PhotoReader } from '../photo/photo-reader.ts';
import type { InspectedPhoto, PictureSize } from '../photo/picture.ts';
import { addPhoto, changePhotos, findByBytes, findPhotoFile, findPhotos, type PhotoRow } from '../storage/photos.ts';
import { placesIn } from '../storage/place.ts';
import { findReading } from '../storage/readings.ts';
import type { Tables } from '../storage/tables.ts';
import { clearIncoming, keepOriginal, originalPath, takeIn, type TakenIn } from './originals.ts';
import { photoRecordOf } from './photo-record.ts';
import { Pictures } from './pictures.ts';

export type PhotoDeskGiven = { readonly shelf: LibraryShelf; readonly clock: () => Date; readonly newId: () => string; readonly reader: PhotoReader };
export type IncomingFile = { readonly readingId: string; readonly name: string; readonly body: AsyncIterable<Uint8Array> };
export type PictureFile = { readonly path: string; readonly row: PhotoRow };

/** Why a photo cannot be taken or shown, as an answer to the page; the path of the problem is the name of the file. */
export const photoRefusal = (name: string, error: PhotoError): { readonly ok: false; readonly error: AppError } =>
  err({ code: 'bad-request', problems: [{ path: name, message: photoErrorText(error) }] });

/** Where photos come in, are kept, and are handed out again, for the library that is open. */
export class PhotoDesk {
  readonly reader: PhotoReader;
  readonly #given: PhotoDeskGiven;
  readonly #pictures = new Map<string, Pictures>();

  constructor(given: PhotoDeskGiven) {
    this.#given = given;
    this.reader = given.reader;
  }

  /** Where the original of a photo lies in the open library. */
  originalOf(row: { readonly sha256: string; readonly format: string }): string {
    return originalPath(this.#places().photos, row);
  }

  /** Removes what earlier runs took in and never kept. */
  async tidy(): Promise<void> {
    if (!this.#given.shelf.state().readOnly) await clearIncoming(this.#places().photos);
  }

  /** Takes a file into a reading: kept byte for byte, once; the same bytes again are recognised. */
  async bringIn({ readingId, name, body }: IncomingFile): Promise<Result<IncomingPhoto, AppError>> {
    const { shelf } = this.#given;
    const db = shelf.writable();
    if (!db.ok) return db;
    const reading = await findReading(db.value, readingId);
    if (reading === undefined) return err({ code: 'not-found', what: 'reading' });
    const taken = await takeIn(this.#places().photos, body);
    if (!taken.ok) return photoRefusal(name, taken.error);
    try {
      return await this.#kept(db.value, { readingId, engineId: reading.engine_id, name }, taken.value);
    } finally {
      await rm(taken.value.path, { force: true });
      await rm(smallBeside(taken.value.path), { force: true });
    }
  }

  async #kept(db: Kysely<Tables>, to: { readingId: string; engineId: string; name: string }, taken: TakenIn): Promise<Result<IncomingPhoto, AppError>> {
    const known = await findByBytes(db, to.readingId, taken.sha256);
    if (known !== undefined && (await isFile(this.originalOf(known)))) return this.#again(db, known);
    const inspected = await this.#inspected(db, taken);
    if (!inspected.ok) return photoRefusal(to.name, inspected.error);
    const { format, width, height, colour, takenAt, camera, problem } = inspected.value;
    await keepOriginal(this.#places().photos, taken, format);
    if (known !== undefined) return this.#again(db, known);
    const at = this.#given.clock().toISOString();
    const photo = {
      id: this.#given.newId(), engine_id: to.engineId, reading_id: to.readingId, sha256: taken.sha256, name: to.name, shown_at: takenAt ?? at,
      cylinder: null, position: null, view: 'end-on' as const, place_order: 0, white: null, geometry: null, measure: null, annotations: '[]', added_at: at, removed_at: null,
    };
    await addPhoto(db, { sha256: taken.sha256, bytes: taken.bytes, format, width, height, colour, taken_at: takenAt, camera, problem }, photo);
    const row = await findByBytes(db, to.readingId, taken.sha256);
    return row === undefined ? err({ code: 'not-found', what: 'photo' }) : ok({ photo: photoRecordOf(row), known: row.id !== photo.id });
  }

  /** Bytes that the reading has already; a photo that was removed comes back. */
  async #again(db: Kysely<Tables>, known: PhotoRow): Promise<Result<IncomingPhoto, AppError>> {
    if (known.removed_at !== null) await changePhotos(db, [{ id: known.id, change: { removed_at: null } }]);
    return ok({ photo: photoRecordOf(known), known: true });
  }

  /** What is known of the bytes from another reading, else what the decoder finds. */
  async #inspected(db: Kysely<Tables>, { sha256, path }: TakenIn): Promise<Result<InspectedPhoto, PhotoError>> {
    const known = await findPhotoFile(db, sha256);
    if (known !== undefined) return ok({ ...known, takenAt: known.taken_at });
    const small = smallBeside(path);
    const inspected = await this.reader.do({ kind: 'inspect', file: path, small });
    if (inspected.ok) await this.#picturesHere().put(small, sha256, 'small');
    return inspected;
  }

  /** The file that shows a photo in a size, drawn where it is missing. */
  async picture(id: string, size: PictureSize): Promise<Result<PictureFile, AppError>> {
    const row = await this.#row(id);
    if (!row.ok) return row;
    const { sha256, name } = row.value;
    const path = await this.#picturesHere().of(sha256, size, (to) => this.reader.do({ kind: 'show', file: this.originalOf(row.value), size, to }));
    return path.ok ? ok({ path: path.value, row: row.value }) : photoRefusal(name, path.error);
  }

  async original(id: string): Promise<Result<PictureFile, AppError>> {
    const row = await this.#row(id);
    if (!row.ok) return row;
    const path = this.originalOf(row.value);
    return (await isFile(path)) ? ok({ path, row: row.value }) : photoRefusal(row.value.name, { code: 'no-file' });
  }

  async #row(id: string): Promise<Result<PhotoRow, AppError>> {
    const db = this.#given.shelf.readable();
    if (!db.ok) return db;
    const [row] = await findPhotos(db.value, [id]);
    return row === undefined ? err({ code: 'not-found', what: 'photo' }) : ok(row);
  }

  #places(): ReturnType<typeof placesIn> { return placesIn(this.#given.shelf.state().folder); }

  #picturesHere(): Pictures {
    const folder = this.#places().pictures;
    const there = this.#pictures.get(folder) ?? new Pictures(folder);
    this.#pictures.set(folder, there);
    return there;
  }
}

const smallBeside = (path: string): string => `${path}.small`;
const isFile = async (path: string): Promise<boolean> => (await stat(path).catch(() => undefined))?.isFile() === true;
