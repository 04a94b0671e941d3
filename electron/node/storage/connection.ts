import { DatabaseSync, type SQLInputValue } from 'node:sqlite';
import { Kysely, SqliteDialect, type SqliteDatabase } from 'kysely';
import type { Tables } from './tables.ts';

/** Node's own SQLite in the shape that Kysely's dialect expects. */
function forKysely(database: DatabaseSync): SqliteDatabase {
  return {
    close: () => database.close(),
    prepare: (sql) => {
      const statement = database.prepare(sql);
      return {
        reader: statement.columns().length > 0,
        all: (parameters) => statement.all(...(parameters as SQLInputValue[])),
        run: (parameters) => statement.run(...(parameters as SQLInputValue[])),
        iterate: (parameters) => statement.iterate(...(parameters as SQLInputValue[])),
      };
    },
  };
}

export type Connection = { readonly raw: DatabaseSync; readonly db: Kysely<Tables> };

/**
 * Opens the file with the settings every connection has: a write-ahead log, each commit flushed to the disk, foreign keys enforced.
 * @throws the error of SQLite when the file cannot be opened or is no database; `troubleOf` names it.
 */
export function connect(file: string, { readOnly }: { readonly readOnly: boolean }): Connection {
  const raw = new DatabaseSync(file, { readOnly });
  try {
    raw.exec('PRAGMA foreign_keys = ON; PRAGMA trusted_schema = OFF; PRAGMA busy_timeout = 2000;');
    if (!readOnly) raw.exec('PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;');
    raw.prepare('SELECT count(*) FROM sqlite_schema').get();
  } catch (error) {
    raw.close();
    throw error;
  }
  return { raw, db: new Kysely<Tables>({ dialect: new SqliteDialect({ database: forKysely(raw) }) }) };
}

/** Reads a whole-number pragma such as `user_version`. */
export function pragmaNumber(raw: DatabaseSync, name: 'user_version' | 'application_id'): number {
  return Number(Object.values(raw.prepare(`PRAGMA ${name}`).get() ?? { value: 0 })[0]);
}
