import { DatabaseSync } from 'node:sqlite';
import { sqliteCode, SQLITE } from './failure.ts';

export type Lock = { readonly release: () => void };

/**
 * Takes the library for this process, or gives null when another process has it. The lock is SQLite's own lock on a file beside the
 * library, held by the operating system: it ends with the process, however that ends, and leaves nothing to clean up.
 * @throws when the lock file cannot be made at all, for example in a folder that may not be written.
 */
export function takeLock(file: string): Lock | null {
  const database = new DatabaseSync(file);
  try {
    database.exec('PRAGMA journal_mode = MEMORY; BEGIN EXCLUSIVE');
  } catch (error) {
    database.close();
    if (sqliteCode(error) === SQLITE.busy) return null;
    throw error;
  }
  return { release: () => { if (database.isOpen) database.close(); } };
}
