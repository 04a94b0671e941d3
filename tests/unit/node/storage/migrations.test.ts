import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import { sql, type Kysely } from 'kysely';
import { describe, expect, it } from 'vitest';
import { connect, pragmaNumber } from '../../../../electron/node/storage/connection.ts';
import { formOf, migrate } from '../../../../electron/node/storage/migrate.ts';
import { MIGRATIONS } from '../../../../electron/node/storage/migrations/index.ts';
import type { Migration } from '../../../../electron/node/storage/migrations/migration.ts';
import { temporaryFolder } from '../../../fixtures/temporary-folder.ts';

const freshFile = (): string => join(temporaryFolder(), 'library.sqlite');
const at = '2026-03-20T09:00:00.000Z';
const engineRow = { id: 'e', json: '{}', created_at: at, changed_at: at, removed_at: null };
const readingRow = { id: 'r', engine_id: 'e', state: 'draft', revision: 0, dated: null, sheet: '{}', pending: '{}', findings: null, created_at: at, changed_at: at, removed_at: null } as const;

describe('the steps of the library file', () => {
  it('are numbered 1, 2, 3 without a gap', () => {
    expect(MIGRATIONS.map(({ version }) => version)).toEqual(MIGRATIONS.map((_, i) => i + 1));
  });

  it('keep the step before when one fails, and say which failed', async () => {
    const connection = connect(freshFile(), { readOnly: false });
    const broken: Migration = { version: 2, name: 'broken', up: async (db) => { await sql`create table half (a text)`.execute(db); throw new Error('power cut'); } };
    await expect(migrate(connection, [MIGRATIONS[0]!, broken])).rejects.toThrow('step 2 (broken) failed');
    expect(pragmaNumber(connection.raw, 'user_version')).toBe(1);
    expect(connection.raw.prepare("select name from sqlite_schema where name = 'half'").get()).toBeUndefined();
    connection.raw.close();
  });

  it('tell an empty file, a current, an older, a newer and a stranger apart', async () => {
    const connection = connect(freshFile(), { readOnly: false });
    const next: Migration = { version: 2, name: 'next', up: async () => undefined };
    expect(formOf(connection, MIGRATIONS)).toBe('empty');
    await migrate(connection, MIGRATIONS);
    expect(formOf(connection, MIGRATIONS)).toBe('current');
    expect(formOf(connection, [...MIGRATIONS, next])).toBe('older');
    expect(formOf(connection, [])).toBe('newer');
    connection.raw.exec('PRAGMA application_id = 7');
    expect(formOf(connection, MIGRATIONS)).toBe('foreign');
    connection.raw.close();
  });
});

describe('step 3, shop lines', () => {
  it('opens a library of the form before and keeps what was in it beside the new lines', async () => {
    const { raw, db } = connect(freshFile(), { readOnly: false });
    await migrate({ raw, db }, MIGRATIONS.slice(0, 2));
    await db.insertInto('engine').values(engineRow).execute();
    await migrate({ raw, db }, MIGRATIONS.slice(0, 3));
    const row = { id: 'a', json: '{}', created_at: at, changed_at: at, removed_at: null };
    await db.insertInto('shop_line').values(row).execute();
    await expect(db.insertInto('shop_line').values(row).execute()).rejects.toThrow('UNIQUE');
    expect(await db.selectFrom('shop_line').selectAll().execute()).toEqual([row]);
    expect(await db.selectFrom('engine').selectAll().execute()).toEqual([engineRow]);
    raw.close();
  });
});

describe('step 1, engines and readings', () => {
  const opened = async () => {
    const connection = connect(freshFile(), { readOnly: false });
    await migrate(connection, MIGRATIONS.slice(0, 1));
    return connection;
  };

  it('keeps an engine with its readings and settings', async () => {
    const { raw, db } = await opened();
    await db.insertInto('engine').values(engineRow).execute();
    await db.insertInto('reading').values(readingRow).execute();
    await db.insertInto('setting').values({ name: 'theme', json: '"dark"' }).execute();
    expect(await db.selectFrom('reading').selectAll().execute()).toEqual([readingRow]);
    raw.close();
  });

  it('refuses a reading without its engine, a third state, and a text where a number belongs', async () => {
    const { raw, db } = await opened();
    await expect(db.insertInto('reading').values(readingRow).execute()).rejects.toThrow('FOREIGN KEY');
    await db.insertInto('engine').values(engineRow).execute();
    const loose = db as unknown as Kysely<Record<'reading', Record<string, unknown>>>;
    await expect(loose.insertInto('reading').values({ ...readingRow, state: 'lost' }).execute()).rejects.toThrow('CHECK');
    await expect(loose.insertInto('reading').values({ ...readingRow, revision: 'many' }).execute()).rejects.toThrow('cannot store TEXT');
    raw.close();
  });

  it('flushes every commit to the disk and writes ahead', async () => {
    const { raw } = await opened();
    expect(raw.prepare('PRAGMA journal_mode').get()?.['journal_mode']).toBe('wal');
    expect(raw.prepare('PRAGMA synchronous').get()?.['synchronous']).toBe(2);
    raw.close();
  });

  it('finds everything again in a copy made while the process that wrote it was still running', async () => {
    const file = freshFile();
    const { raw, db } = connect(file, { readOnly: false });
    await migrate({ raw, db }, MIGRATIONS);
    await db.insertInto('engine').values(engineRow).execute();
    const copy = `${file}.copy`;
    for (const end of ['', '-wal']) copyFileSync(`${file}${end}`, `${copy}${end}`);
    const again = connect(copy, { readOnly: false });
    expect(await again.db.selectFrom('engine').selectAll().execute()).toEqual([engineRow]);
    again.raw.close();
    raw.close();
  });
});

describe('step 2, heat entries', () => {
  it('keeps the engines of a library of the form before, and takes no entry without its engine', async () => {
    const connection = connect(freshFile(), { readOnly: false });
    await migrate(connection, MIGRATIONS.slice(0, 1));
    await connection.db.insertInto('engine').values(engineRow).execute();
    await migrate(connection, MIGRATIONS.slice(0, 2));
    expect(await connection.db.selectFrom('engine').selectAll().execute()).toEqual([engineRow]);
    const entry = { id: 'h', engine_id: 'e', json: '{}', created_at: at, removed_at: null };
    await connection.db.insertInto('heat_entry').values(entry).execute();
    expect(await connection.db.selectFrom('heat_entry').selectAll().execute()).toEqual([entry]);
    await expect(connection.db.insertInto('heat_entry').values({ ...entry, id: 'i', engine_id: 'nobody' }).execute()).rejects.toThrow('FOREIGN KEY');
    connection.raw.close();
  });
});

describe('step 4, photos', () => {
  const file = { sha256: 'f'.repeat(64), bytes: 10, format: 'jpeg', width: 400, height: 300, colour: 'yes' as const, taken_at: null, camera: null, problem: null };
  const photo = {
    id: 'p', engine_id: 'e', reading_id: 'r', sha256: file.sha256, name: 'plug.jpg', shown_at: at, cylinder: null, position: null, view: 'end-on' as const, place_order: 0,
    white: null, geometry: null, measure: null, annotations: '[]', added_at: at, removed_at: null,
  };

  it('keeps what a library of the form before held, and takes photos of its readings, the same bytes once a reading', async () => {
    const connection = connect(freshFile(), { readOnly: false });
    await migrate(connection, MIGRATIONS.slice(0, 3));
    await connection.db.insertInto('engine').values(engineRow).execute();
    await connection.db.insertInto('reading').values(readingRow).execute();
    await migrate(connection, MIGRATIONS.slice(0, 4));
    expect(await connection.db.selectFrom('reading').selectAll().execute()).toEqual([readingRow]);
    await expect(connection.db.insertInto('photo').values(photo).execute()).rejects.toThrow('FOREIGN KEY');
    await connection.db.insertInto('photo_file').values(file).execute();
    await connection.db.insertInto('photo').values(photo).execute();
    await expect(connection.db.insertInto('photo').values({ ...photo, id: 'q' }).execute()).rejects.toThrow('UNIQUE');
    expect(await connection.db.selectFrom('photo').selectAll().execute()).toEqual([photo]);
    connection.raw.close();
  });
});
