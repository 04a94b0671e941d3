import type { Kysely } from 'kysely';
import type { Knowledge } from '../../../core/knowledge/types.ts';
import type { AppError, AppInfo } from '../../../shared/channels.ts';
import type { Findings } from '../../../shared/formats/findings.v1.ts';
import type { FirstLook } from '../../../shared/formats/first-look.ts';
import type { ReadingSheet } from '../../../shared/formats/reading-sheet.v1.ts';
import type { ShopLine } from '../../../shared/formats/shop-lines.v1.ts';
import type { Result } from '../../../shared/result.ts';
import type { LibraryShelf } from '../library-shelf.ts';
import type { OpenedFiles } from '../opened-files.ts';
import type { PhotoDesk } from '../photo-store/photo-desk.ts';
import type { Tables } from '../storage/tables.ts';

/** Everything the handlers need from outside: no handler reads a clock, draws an id or knows the knowledge by itself. */
export type Given = {
  readonly shelf: LibraryShelf;
  readonly clock: () => Date;
  readonly newId: () => string;
  readonly firstLook: (sheet: ReadingSheet, lines: readonly ShopLine[]) => FirstLook;
  readonly diagnose: (sheet: ReadingSheet, lines: readonly ShopLine[]) => Findings;
  readonly knowledge: Knowledge;
  readonly photos: PhotoDesk;
  readonly opened: OpenedFiles;
  readonly about: Pick<AppInfo, 'version' | 'host' | 'knowledge'>;
};

type Work<I, O> = (db: Kysely<Tables>, input: I) => Promise<Result<O, AppError>>;

/** A handler that reads the open library. */
export const reads = <I, O>({ shelf }: Given, work: Work<I, O>) => async (input: I): Promise<Result<O, AppError>> => {
  const db = shelf.readable();
  return db.ok ? work(db.value, input) : db;
};

/** A handler that changes the open library. */
export const writes = <I, O>({ shelf }: Given, work: Work<I, O>) => async (input: I): Promise<Result<O, AppError>> => {
  const db = shelf.writable();
  return db.ok ? work(db.value, input) : db;
};

export const notFound = (what: string): { readonly ok: false; readonly error: AppError } => ({ ok: false, error: { code: 'not-found', what } });
export const conflict = (message: string): { readonly ok: false; readonly error: AppError } => ({ ok: false, error: { code: 'conflict', message } });
