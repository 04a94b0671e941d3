import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './targets.ts';

const FOLDER = join(ROOT, 'node_modules/electron');
const FETCH_MS = 8000;

/** The Electron binary that was fetched before, or null. `path.txt` is written last, so a fetch that was cut short leaves none. */
export function electronBinary(): string | null {
  const note = join(FOLDER, 'path.txt');
  if (!existsSync(note)) return null;
  const binary = join(FOLDER, 'dist', readFileSync(note, 'utf8'));
  return existsSync(binary) ? binary : null;
}

/** Fetches the binary with the package's own installer. Gives up quietly when that takes longer than a few seconds or fails. */
export async function fetchElectron(): Promise<string | null> {
  const installer = join(FOLDER, 'install.js');
  if (!existsSync(installer)) return null;
  await new Promise<void>((done) => {
    const fetching = spawn(process.execPath, [installer], { stdio: 'ignore', timeout: FETCH_MS });
    fetching.once('error', () => done());
    fetching.once('exit', () => done());
  });
  return electronBinary();
}
