import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Kysely } from 'kysely';
import type { LibraryState } from '../../../shared/channels.ts';
import { backupIsDue, integrityProblems, isSound, listBackups, thinBackups, writeBackup } from './backup.ts';
import { connect, pragmaNumber, type Connection } from './connection.ts';
import { failureOf } from './failure.ts';
import { takeLock, type Lock } from './lock.ts';
import { formOf, migrate } from './migrate.ts';
import { MIGRATIONS } from './migrations/index.ts';
import type { Migration } from './migrations/migration.ts';
import { placesIn, type Places } from './place.ts';
import type { Tables } from './tables.ts';

/** An opened library folder. `db` is null when the file cannot be used; `state.trouble` then says why and what to do. */
export type Library = { readonly state: LibraryState; readonly db: Kysely<Tables> | null; readonly close: () => void };

export type LibraryToOpen = {
  readonly folder: string;
  readonly kind: LibraryState['kind'];
  readonly now: Date;
  readonly migrations?: readonly Migration[];
};

type Trouble = NonNullable<LibraryState['trouble']>;
type Opened = { readonly connection: Connection | null; readonly readOnly: boolean; readonly trouble: Trouble | null };

const trouble = (code: Trouble['code'], message: string, backups: string[] = []): Trouble => ({ code, message, backups });
const unusable = (problem: Trouble): Opened => ({ connection: null, readOnly: true, trouble: problem });

/** Opens, and where needed makes, the library in a folder. Never throws for what a disk, a file or another process can do: that is told in `state.trouble`. */
export async function openLibrary({ folder, kind, now, migrations = MIGRATIONS }: LibraryToOpen): Promise<Library> {
  const places = placesIn(folder);
  let lock: Lock | null = null;
  let opened: Opened;
  try {
    mkdirSync(folder, { recursive: true });
    lock = takeLock(places.lock);
    opened = lock === null ? openInUse(places, migrations) : await openOwn(places, now, migrations);
  } catch (error) {
    opened = unusable(troubleOf(error, places));
  }
  const { connection, readOnly, trouble: problem } = opened;
  return {
    state: { kind, folder, readOnly, trouble: problem },
    db: connection?.db ?? null,
    close: () => {
      if (connection?.raw.isOpen === true) connection.raw.close();
      lock?.release();
    },
  };
}

async function openOwn(places: Places, now: Date, migrations: readonly Migration[]): Promise<Opened> {
  if (!existsSync(places.file) && listBackups(places.backups).length > 0) return unusable(damaged(places, 'The library file is gone, but backup copies are there'));
  const connection = connect(places.file, { readOnly: false });
  try {
    const form = formOf(connection, migrations);
    if (form === 'newer' || form === 'foreign') { connection.raw.close(); return unusable(wrongForm(form, places)); }
    const found = integrityProblems(connection.raw);
    if (found.length > 0) { connection.raw.close(); return unusable(damaged(places, `The library file is damaged (${found[0] ?? ''})`)); }
    if (form === 'older') writeBackup(connection.raw, places.backups, now, pragmaNumber(connection.raw, 'user_version'));
    await migrate(connection, migrations);
    return { connection, readOnly: false, trouble: form === 'empty' ? null : dailyBackup(connection, places, now) };
  } catch (error) {
    connection.raw.close();
    throw error;
  }
}

function openInUse(places: Places, migrations: readonly Migration[]): Opened {
  const words = 'Another Corenose has this library open. Here everything can be read, but nothing can be changed; close the other one, then open this one again.';
  const connection = connect(places.file, { readOnly: true });
  if (formOf(connection, migrations) === 'current') return { connection, readOnly: true, trouble: trouble('in-use', words) };
  connection.raw.close();
  return unusable(trouble('in-use', 'Another Corenose of a different version has this library open. Close it, then open this one again.'));
}

function dailyBackup({ raw }: Connection, places: Places, now: Date): Trouble | null {
  try {
    if (backupIsDue(places.backups, now)) {
      writeBackup(raw, places.backups, now);
      thinBackups(places.backups);
    }
    return null;
  } catch (error) {
    const why = failureOf(error) === 'disk-full' ? 'the disk is full' : error instanceof Error ? error.message : String(error);
    return trouble('disk-full', `Today's backup copy could not be made: ${why}. The library itself works. Free some space soon.`);
  }
}

const damaged = (places: Places, words: string): Trouble =>
  trouble('damaged', `${words}. Choose a backup copy to go on with. The damaged file is kept in ${places.setAside}.`, listBackups(places.backups).filter((name) => isSound(join(places.backups, name))));

const wrongForm = (form: 'newer' | 'foreign', places: Places): Trouble =>
  form === 'newer'
    ? trouble('newer', 'This library was written by a newer Corenose. Update this program to open it; nothing was changed.')
    : trouble('cannot-open', `${places.file} is not a Corenose library. Choose another folder with --library, or move that file away; nothing was changed.`);

function troubleOf(error: unknown, places: Places): Trouble {
  const failure = failureOf(error);
  if (failure === 'damaged') return damaged(places, 'The library file is damaged');
  if (failure === 'disk-full') return trouble('disk-full', 'The disk is full, so the library could not be opened. Nothing was changed. Free some space, then open it again.');
  return trouble('cannot-open', `The library in ${places.folder} cannot be opened: ${error instanceof Error ? error.message : String(error)}. Check that the folder exists and may be written.`);
}
