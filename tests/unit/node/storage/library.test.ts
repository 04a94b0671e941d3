import { existsSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { sql } from 'kysely';
import { describe, expect, it, onTestFinished } from 'vitest';
import { addEngine, listEngines } from '../../../../electron/node/storage/engines.ts';
import { appErrorOf } from '../../../../electron/node/storage/failure.ts';
import { openLibrary, type Library } from '../../../../electron/node/storage/library.ts';
import { MIGRATIONS } from '../../../../electron/node/storage/migrations/index.ts';
import type { Migration } from '../../../../electron/node/storage/migrations/migration.ts';
import { putBackupInPlace } from '../../../../electron/node/storage/recover.ts';
import { fourCylinder } from '../../../fixtures/plain-sheets.ts';
import { temporaryFolder } from '../../../fixtures/temporary-folder.ts';

const at = (day: string): Date => new Date(`${day}T09:00:00.000Z`);

async function open(folder: string, day = '2026-03-20', migrations: readonly Migration[] = MIGRATIONS): Promise<Library> {
  const library = await openLibrary({ folder, kind: 'own', now: at(day), migrations });
  onTestFinished(() => library.close());
  return library;
}

async function folderWithEngines(...names: string[]): Promise<string> {
  const folder = temporaryFolder();
  const library = await open(folder);
  for (const name of names) await addEngine(library.db!, name, { ...fourCylinder, name }, at('2026-03-20').toISOString());
  library.close();
  return folder;
}

const namesIn = async ({ db }: Library): Promise<string[]> => (await listEngines(db!)).map(({ id }) => id).sort();

function damage(folder: string): void {
  const file = join(folder, 'library.sqlite');
  const bytes = readFileSync(file);
  bytes.fill(0x5a, 4096, 4096 * 3);
  writeFileSync(file, bytes);
}

describe('opening a library', () => {
  it('makes one where there is none, in a folder that need not exist', async () => {
    const library = await open(join(temporaryFolder(), 'deep', 'down'));
    expect(library.state).toMatchObject({ readOnly: false, trouble: null });
    expect(await namesIn(library)).toEqual([]);
  });

  it('finds everything again after it was closed', async () => {
    expect(await namesIn(await open(await folderWithEngines('a', 'b')))).toEqual(['a', 'b']);
  });

  it('reads but does not write while another has it open, and says so', async () => {
    const folder = await folderWithEngines('a');
    await open(folder);
    const second = await open(folder);
    expect(second.state).toMatchObject({ readOnly: true, trouble: { code: 'in-use' } });
    expect(await namesIn(second)).toEqual(['a']);
    await expect(addEngine(second.db!, 'b', fourCylinder, at('2026-03-20').toISOString())).rejects.toSatisfy((error) => appErrorOf(error)?.code === 'read-only');
  });

  it('refuses a file from a newer program and leaves it as it was', async () => {
    const folder = await folderWithEngines('a');
    const raw = new DatabaseSync(join(folder, 'library.sqlite'));
    raw.exec('PRAGMA user_version = 99');
    raw.close();
    const before = readFileSync(join(folder, 'library.sqlite'));
    const library = await open(folder);
    expect(library).toMatchObject({ db: null, state: { trouble: { code: 'newer' } } });
    expect(readFileSync(join(folder, 'library.sqlite')).equals(before)).toBe(true);
  });

  it('refuses a SQLite file of some other program', async () => {
    const folder = temporaryFolder();
    const raw = new DatabaseSync(join(folder, 'library.sqlite'));
    raw.exec('create table recipe (name text)');
    raw.close();
    expect((await open(folder)).state.trouble).toMatchObject({ code: 'cannot-open', message: expect.stringContaining('not a Corenose library') as string });
  });

  it('says so when the folder cannot be made', async () => {
    const file = join(temporaryFolder(), 'a-file');
    writeFileSync(file, '');
    expect(await open(join(file, 'library'))).toMatchObject({ db: null, state: { readOnly: true, trouble: { code: 'cannot-open' } } });
  });
});

describe('backup copies', () => {
  const backups = (folder: string): string[] => readdirSync(join(folder, 'backups')).sort();

  it('are made when a library with content is opened, at most once a day', async () => {
    const folder = await folderWithEngines('a');
    for (const day of ['2026-03-21', '2026-03-21', '2026-03-22']) (await open(folder, day)).close();
    expect(backups(folder)).toEqual(['2026-03-21T090000Z.sqlite', '2026-03-22T090000Z.sqlite']);
  });

  it('are made before the form of the file changes, and hold the old form', async () => {
    const folder = await folderWithEngines('a');
    const form = MIGRATIONS.length;
    const next: Migration = { version: form + 1, name: 'next', up: async (db) => { await sql`create table later (a text) strict`.execute(db); } };
    expect((await open(folder, '2026-03-21', [...MIGRATIONS, next])).state.trouble).toBeNull();
    const copy = new DatabaseSync(join(folder, 'backups', `2026-03-21T090000Z-before-form-${form}.sqlite`), { readOnly: true });
    expect(copy.prepare('PRAGMA user_version').get()).toEqual({ user_version: form });
    copy.close();
  });

  it('leave a library usable when today\'s copy cannot be written', async () => {
    const folder = await folderWithEngines('a');
    writeFileSync(join(folder, 'backups'), 'a file where the folder should be');
    const library = await open(folder);
    expect(library.state).toMatchObject({ readOnly: false, trouble: { message: expect.stringContaining('backup copy could not be made') as string } });
    expect(await namesIn(library)).toEqual(['a']);
  });

  it('keep the last fourteen, the newest of each month and those before a change of form', async () => {
    const folder = await folderWithEngines('a');
    mkdirSync(join(folder, 'backups'));
    const old = ['2026-01-05T090000Z', '2026-01-06T090000Z', '2026-01-02T090000Z-before-form-1', ...Array.from({ length: 15 }, (_, i) => `2026-02-${String(i + 1).padStart(2, '0')}T090000Z`)];
    for (const name of old) writeFileSync(join(folder, 'backups', `${name}.sqlite`), '');
    (await open(folder, '2026-03-01')).close();
    const left = backups(folder).map((name) => name.replace('T090000Z', '').replace('.sqlite', ''));
    expect(left).toEqual(['2026-01-02-before-form-1', '2026-01-06', ...Array.from({ length: 13 }, (_, i) => `2026-02-${String(i + 3).padStart(2, '0')}`), '2026-03-01']);
  });
});

describe('a damaged library', () => {
  it('is told, with the backups that are whole, and nothing is changed', async () => {
    const folder = await folderWithEngines('a');
    (await open(folder, '2026-03-21')).close();
    writeFileSync(join(folder, 'backups', '2026-03-22T090000Z.sqlite'), 'half a copy');
    damage(folder);
    const before = readFileSync(join(folder, 'library.sqlite'));
    const library = await open(folder, '2026-03-23');
    expect(library).toMatchObject({ db: null, state: { trouble: { code: 'damaged', backups: ['2026-03-21T090000Z.sqlite'] } } });
    expect(readFileSync(join(folder, 'library.sqlite')).equals(before)).toBe(true);
  });

  it('goes on from a backup, and the damaged file is kept aside', async () => {
    const folder = await folderWithEngines('a');
    (await open(folder, '2026-03-21')).close();
    damage(folder);
    expect(putBackupInPlace(folder, '2026-03-21T090000Z.sqlite', at('2026-03-23'))).toEqual({ ok: true, value: null });
    expect(await namesIn(await open(folder, '2026-03-23'))).toEqual(['a']);
    expect(existsSync(join(folder, 'set-aside', '2026-03-23T090000.000Z', 'library.sqlite'))).toBe(true);
  });

  it.each(['../library.sqlite', 'nothing.sqlite', '2026-03-22T090000Z.sqlite'])('takes no file that is not a whole backup: %s', async (name) => {
    const folder = await folderWithEngines('a');
    mkdirSync(join(folder, 'backups'));
    writeFileSync(join(folder, 'backups', '2026-03-22T090000Z.sqlite'), 'half a copy');
    const before = readFileSync(join(folder, 'library.sqlite'));
    expect(putBackupInPlace(folder, name, at('2026-03-23')).ok).toBe(false);
    expect(readFileSync(join(folder, 'library.sqlite')).equals(before)).toBe(true);
  });

  it('is recognised when the file is text, cut short, or gone while backups are there', async () => {
    for (const break_ of [
      (file: string) => writeFileSync(file, 'this is not a database, it is a letter to the editor '.repeat(100)),
      (file: string) => writeFileSync(file, readFileSync(file).subarray(0, 9000)),
      (file: string) => rmSync(file),
    ]) {
      const folder = await folderWithEngines('a');
      (await open(folder, '2026-03-21')).close();
      break_(join(folder, 'library.sqlite'));
      expect((await open(folder, '2026-03-22')).state.trouble).toMatchObject({ code: 'damaged', backups: ['2026-03-21T090000Z.sqlite'] });
    }
  });
});

describe('a full disk', () => {
  it('is told as such, and what was saved before is still there', async () => {
    const folder = await folderWithEngines('a');
    const library = await open(folder);
    const { rows } = await sql<{ page_count: number }>`PRAGMA page_count`.execute(library.db!);
    await sql.raw(`PRAGMA max_page_count = ${rows[0]!.page_count}`).execute(library.db!);
    const large = { ...fourCylinder, name: 'x'.repeat(100_000) };
    await expect(addEngine(library.db!, 'b', large, at('2026-03-20').toISOString())).rejects.toSatisfy((error) => appErrorOf(error)?.code === 'disk-full');
    expect(await namesIn(library)).toEqual(['a']);
    library.close();
    expect(await namesIn(await open(folder))).toEqual(['a']);
  });
});
