import { chmodSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { startElectron } from '../../../../electron/start/start-electron.ts';
import { temporaryFolder } from '../../../fixtures/temporary-folder.ts';

/** A program in the place of Electron's, as a script that the system runs by its first line. */
function binary(script: string): string {
  const file = join(temporaryFolder(), 'electron');
  writeFileSync(file, `#!${process.execPath}\n${script}\n`);
  chmodSync(file, 0o755);
  return file;
}

const run = (script: string): Promise<string | null> => startElectron(binary(script), { folder: '/srv/plugs', demo: true });

describe.skipIf(process.platform === 'win32')('Electron', () => {
  it('is given the library and what to open', async () => {
    const heard = join(temporaryFolder(), 'heard.json');
    expect(await run(`require('fs').writeFileSync(${JSON.stringify(heard)}, JSON.stringify(process.argv.slice(3)))`)).toBeNull();
    expect(JSON.parse(readFileSync(heard, 'utf8'))).toEqual(['--library=/srv/plugs', '--demo']);
  });

  it('that ends at once with an error did not start, and its last words say why', async () => {
    expect(await run('console.error("first\\nThe SUID sandbox helper is not set up."); process.exitCode = 1;')).toBe('The SUID sandbox helper is not set up.');
    expect(await run('process.exitCode = 127;')).toBe('it ended with 127');
    expect(await run('process.kill(process.pid, "SIGTRAP");')).toBe('it ended with SIGTRAP');
  });

  it('that is not there did not start', async () => {
    expect(await startElectron(join(temporaryFolder(), 'nothing'), { folder: '/', demo: false })).toContain('ENOENT');
  });
});
