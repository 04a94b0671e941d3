import type { Kysely } from 'kysely';
import type { AppError, LibraryState } from '../../shared/channels.ts';
import { err, ok, type Result } from '../../shared/result.ts';
import { appErrorOf } from './storage/failure.ts';
import { openLibrary, type Library } from './storage/library.ts';
import { placesIn } from './storage/place.ts';
import { putBackupInPlace } from './storage/recover.ts';
import { readSettings, writeSettings } from './storage/settings.ts';
import type { Tables } from './storage/tables.ts';

type Kind = LibraryState['kind'];

export type ShelfGiven = {
  /** The person's own library folder; the demo library lies inside it. */
  readonly folder: string;
  readonly clock: () => Date;
  /** Fills the demo library the first time it is opened. */
  readonly fillDemo: (db: Kysely<Tables>) => Promise<void>;
};

/** The libraries of this program, one of them open. */
export type LibraryShelf = {
  readonly state: () => LibraryState;
  /** The open library to read from, or why it cannot be read. */
  readonly readable: () => Result<Kysely<Tables>, AppError>;
  /** The open library to write to, or why it cannot be written. */
  readonly writable: () => Result<Kysely<Tables>, AppError>;
  readonly use: (kind: Kind) => Promise<void>;
  readonly recover: (backup: string) => Promise<Result<null, AppError>>;
  readonly close: () => void;
};

export async function openShelf(given: ShelfGiven, first: Kind): Promise<LibraryShelf> {
  let library = await open(given, first);

  const readable = (): Result<Kysely<Tables>, AppError> =>
    library.db === null ? err({ code: 'library-unavailable', message: library.state.trouble?.message ?? 'The library is not open.' }) : ok(library.db);

  const writable = (): Result<Kysely<Tables>, AppError> => {
    const db = readable();
    return db.ok && library.state.readOnly ? err({ code: 'read-only', message: library.state.trouble?.message ?? 'This library can only be read.' }) : db;
  };

  async function use(kind: Kind): Promise<void> {
    if (kind === library.state.kind && library.state.trouble === null) return;
    const settings = library.db === null ? undefined : await readSettings(library.db);
    library.close();
    library = await open(given, kind);
    if (settings !== undefined && library.db !== null && !library.state.readOnly) await writeSettings(library.db, settings);
  }

  async function recover(backup: string): Promise<Result<null, AppError>> {
    const { kind, folder, trouble } = library.state;
    if (trouble?.code !== 'damaged') return err({ code: 'conflict', message: 'The library is not damaged; nothing was put in its place.' });
    library.close();
    try {
      const done = putBackupInPlace(folder, backup, given.clock());
      return done.ok ? done : err({ code: 'conflict', message: done.error });
    } catch (error) {
      return err(appErrorOf(error) ?? { code: 'internal', message: String(error) });
    } finally {
      library = await open(given, kind);
    }
  }

  return { state: () => library.state, readable, writable, use, recover, close: () => library.close() };
}

async function open({ folder, clock, fillDemo }: ShelfGiven, kind: Kind): Promise<Library> {
  const library = await openLibrary({ folder: kind === 'own' ? folder : placesIn(folder).demo, kind, now: clock() });
  if (kind === 'demo' && library.db !== null && !library.state.readOnly) await fillDemo(library.db);
  return library;
}
