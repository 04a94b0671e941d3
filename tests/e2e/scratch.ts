import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

/** A folder for the tests of one file, gone when they are done. */
export function scratchFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'corenose-e2e-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }));
  return folder;
}
