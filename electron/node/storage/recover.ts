import { closeSync, copyFileSync, existsSync, fsyncSync, mkdirSync, openSync, renameSync } from 'node:fs';
import { basename, join } from 'node:path';
import { err, ok, type Result } from '../../../shared/result.ts';
import { isSound, listBackups } from './backup.ts';
import { placesIn } from './place.ts';

/**
 * Puts a copy of a backup in the place of the library file. The file that was there, with its log, is moved to `set-aside`, never deleted.
 * The library must be closed.
 * @returns an error in words when the name is not one of the backups, or the backup itself is damaged.
 * @throws when the disk is full or the folder cannot be written; the library file is then still where it was.
 */
export function putBackupInPlace(folder: string, backup: string, now: Date): Result<null, string> {
  const places = placesIn(folder);
  if (!listBackups(places.backups).includes(backup)) return err(`There is no backup "${backup}".`);
  const source = join(places.backups, backup);
  if (!isSound(source)) return err(`The backup "${backup}" is damaged too. Choose another.`);
  const incoming = `${places.file}.incoming`;
  copyFileSync(source, incoming);
  const handle = openSync(incoming, 'r+');
  try { fsyncSync(handle); } finally { closeSync(handle); }
  const aside = join(places.setAside, now.toISOString().replaceAll(':', ''));
  mkdirSync(aside, { recursive: true });
  for (const file of [`${places.file}-wal`, `${places.file}-shm`, places.file])
    if (existsSync(file)) renameSync(file, join(aside, basename(file)));
  renameSync(incoming, places.file);
  return ok(null);
}
