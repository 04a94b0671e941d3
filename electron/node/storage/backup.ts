import { closeSync, existsSync, fsyncSync, mkdirSync, openSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { DatabaseSync } from 'node:sqlite';
import { connect } from './connection.ts';
import { APPLICATION_ID } from './migrate.ts';
import { pragmaNumber } from './connection.ts';

const NAME = /^\d{4}-\d{2}-\d{2}T\d{6}Z(-before-form-\d+)?\.sqlite$/;
const DAY_MS = 24 * 60 * 60 * 1000;

const stampOf = (at: Date): string => `${at.toISOString().slice(0, 19).replaceAll(':', '')}Z`;
const timeOf = (name: string): number => Date.parse(name.replace(/^(.{13})(\d{2})(\d{2})Z.*$/, '$1:$2:$3Z'));

/** Names of the backup copies in a folder, newest first. */
export function listBackups(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder).filter((name) => NAME.test(name)).sort().reverse();
}

/**
 * Writes a whole, compact copy under a dated name: first under a temporary name, then flushed, then renamed, so that a name in the folder is a whole copy.
 * @returns the name of the copy.
 * @throws when the disk is full or the folder cannot be written; no half copy stays.
 */
export function writeBackup(raw: DatabaseSync, folder: string, at: Date, beforeForm?: number): string {
  mkdirSync(folder, { recursive: true });
  const name = `${stampOf(at)}${beforeForm === undefined ? '' : `-before-form-${beforeForm}`}.sqlite`;
  const unfinished = join(folder, 'unfinished');
  rmSync(unfinished, { force: true });
  try {
    raw.prepare('VACUUM INTO ?').run(unfinished);
    flush(unfinished);
    renameSync(unfinished, join(folder, name));
  } catch (error) {
    rmSync(unfinished, { force: true });
    throw error;
  }
  return name;
}

function flush(file: string): void {
  const handle = openSync(file, 'r+');
  try { fsyncSync(handle); } finally { closeSync(handle); }
}

export function backupIsDue(folder: string, now: Date): boolean {
  const newest = listBackups(folder)[0];
  return newest === undefined || now.getTime() - timeOf(newest) >= DAY_MS;
}

/** Removes daily copies beyond the 14 newest, keeping the newest of every month and every copy made before a change of form. */
export function thinBackups(folder: string): void {
  const all = listBackups(folder);
  const months = new Set<string>();
  all.forEach((name, age) => {
    const month = name.slice(0, 7);
    const newestOfMonth = !months.has(month);
    months.add(month);
    if (age >= 14 && !newestOfMonth && !name.includes('-before-form-')) rmSync(join(folder, name));
  });
}

/** Whether a file is a whole library: ours, and without damage. */
export function isSound(file: string): boolean {
  try {
    const { raw } = connect(file, { readOnly: true });
    try {
      return pragmaNumber(raw, 'application_id') === APPLICATION_ID && integrityProblems(raw).length === 0;
    } finally { raw.close(); }
  } catch { return false; }
}

/** What SQLite's own check finds wrong; empty when nothing is. */
export function integrityProblems(raw: DatabaseSync): string[] {
  const rows = [...raw.prepare('PRAGMA integrity_check(10)').all(), ...raw.prepare('PRAGMA foreign_key_check').all()];
  return rows.map((row) => ('integrity_check' in row ? String(row['integrity_check']) : `row ${String(row['rowid'])} of ${String(row['table'])} points nowhere`)).filter((line) => line !== 'ok');
}
