import type { AppError } from '../../../shared/channels.ts';

/** Primary result codes of SQLite (sqlite.org/rescode.html). */
export const SQLITE = { busy: 5, readOnly: 8, ioError: 10, corrupt: 11, full: 13, cannotOpen: 14, notADatabase: 26 } as const;

/** The extended code for a write-ahead index that cannot grow: a full disk met in another place (SQLITE_IOERR_SHMSIZE). */
const NO_ROOM_FOR_INDEX = 4874;

function extendedCode(error: unknown): number | undefined {
  if (!(error instanceof Error)) return undefined;
  return 'errcode' in error && typeof error.errcode === 'number' ? error.errcode : extendedCode(error.cause);
}

/** The primary result code of an error of SQLite, or of the error that caused it; undefined for any other error. */
export function sqliteCode(error: unknown): number | undefined {
  const extended = extendedCode(error);
  return extended === undefined ? undefined : extended & 0xff;
}

const systemCode = (error: unknown): string | undefined =>
  error instanceof Error ? ('code' in error && typeof error.code === 'string' && error.code !== 'ERR_SQLITE_ERROR' ? error.code : systemCode(error.cause)) : undefined;

export type StorageFailure = 'disk-full' | 'read-only' | 'damaged' | 'cannot-open';

/** What an error of the disk or of SQLite means for the person; undefined when it is a bug of ours. */
export function failureOf(error: unknown): StorageFailure | undefined {
  const sqlite = sqliteCode(error);
  const system = systemCode(error);
  if (sqlite === SQLITE.full || extendedCode(error) === NO_ROOM_FOR_INDEX || system === 'ENOSPC' || system === 'EDQUOT') return 'disk-full';
  if (sqlite === SQLITE.readOnly || system === 'EROFS') return 'read-only';
  if (sqlite === SQLITE.corrupt || sqlite === SQLITE.notADatabase) return 'damaged';
  if (sqlite === SQLITE.cannotOpen || sqlite === SQLITE.ioError || sqlite === SQLITE.busy || system !== undefined) return 'cannot-open';
  return undefined;
}

const WORDS: { readonly [F in StorageFailure]: AppError } = {
  'disk-full': { code: 'disk-full', message: 'The disk is full, so this was not saved. What was saved before is safe. Free some space and try again.' },
  'read-only': { code: 'read-only', message: 'The library may not be written here, so this was not saved.' },
  damaged: { code: 'library-unavailable', message: 'The library file is damaged. Close the program and open it again: it then offers the backups.' },
  'cannot-open': { code: 'library-unavailable', message: 'The library file cannot be read or written. Is the disk or the network folder still there?' },
};

/** The answer the page gets when storing or reading failed for a reason outside the program. */
export function appErrorOf(error: unknown): AppError | undefined {
  const failure = failureOf(error);
  return failure === undefined ? undefined : WORDS[failure];
}
