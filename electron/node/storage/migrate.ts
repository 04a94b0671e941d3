import { sql, type Kysely } from 'kysely';
import { pragmaNumber, type Connection } from './connection.ts';
import type { Migration } from './migrations/migration.ts';

/** Marks a SQLite file as a library of this program: the bytes of "CNos". */
export const APPLICATION_ID = 0x434e6f73;

/** How the file's form stands to what this program writes. */
export function formOf({ raw }: Connection, migrations: readonly Migration[]): 'empty' | 'foreign' | 'older' | 'current' | 'newer' {
  const version = pragmaNumber(raw, 'user_version');
  const tables = Number(raw.prepare('SELECT count(*) AS n FROM sqlite_schema').get()?.['n']);
  if (version === 0 && tables === 0) return 'empty';
  if (pragmaNumber(raw, 'application_id') !== APPLICATION_ID) return 'foreign';
  if (version === migrations.length) return 'current';
  return version < migrations.length ? 'older' : 'newer';
}

/**
 * Brings an empty or older file to the newest form, one transaction a step.
 * @throws when a step fails; the file then stands where the step before it left it.
 */
export async function migrate({ raw, db }: Connection, migrations: readonly Migration[]): Promise<void> {
  for (const { version, name, up } of migrations.slice(pragmaNumber(raw, 'user_version'))) {
    try {
      await db.transaction().execute(async (step) => {
        await up(step as unknown as Kysely<never>);
        await sql.raw(`PRAGMA application_id = ${APPLICATION_ID}`).execute(step);
        await sql.raw(`PRAGMA user_version = ${version}`).execute(step);
      });
    } catch (cause) {
      throw new Error(`step ${version} (${name}) failed`, { cause });
    }
  }
}
