import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './targets.ts';

const FOLDER = join(ROOT, 'node_modules/electron');
/** Where the binary lies with all that belongs to it. */
export const ELECTRON_FOLDER = join(FOLDER, 'dist');
const FETCH_MS = 8000;

/** The Electron binary that was fetched before, or null. `path.txt` is written last, so a fetch that was cut short leaves none. */
export function electronBinary(): string | null {
  const note = join(FOLDER, 'path.txt');
  if (!existsSync(note)) return null;
  const binary = join(ELECTRON_FOLDER, readFileSync(note, 'utf8'));
  return existsSync(binary) ? binary : null;
}

/**
 * Fetches the binary with the package's own installer. Gives up quietly when that takes too long or fails.
 * @param patience in milliseconds; without it a few seconds
 */
export async function fetchElectron(patience = FETCH_MS): Promise<string | null> {
  const installer = join(FOLDER, 'install.js');
  if (!existsSync(installer)) return null;
  await new Promise<void>((done) => {
    const fetching = spawn(process.execPath, [installer], { stdio: 'ignore', timeout: patience });
    fetching.once('error', () => done());
    fetching.once('exit', () => done());
  });
  return electronBinary();
}
