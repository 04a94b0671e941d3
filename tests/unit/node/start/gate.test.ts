import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { temporaryFolder } from '../../../fixtures/temporary-folder.ts';

const gate = fileURLToPath(new URL('../../../../electron/start/gate.mjs', import.meta.url));

function through(version: string | null, args: readonly string[]) {
  const script = join(temporaryFolder(), 'script.ts');
  writeFileSync(script, 'const words: string = process.argv.slice(2).join(" "); console.log(`ran ${words}`);');
  const pretend = version === null ? [] : ['--import', `data:text/javascript,Object.defineProperty(process.versions, "node", { value: "${version}" })`];
  return spawnSync(process.execPath, [...pretend, gate, script, ...args], { encoding: 'utf8' });
}

describe('the gate in front of every script', () => {
  it('runs a TypeScript file with its arguments', () => {
    expect(through(null, ['--demo', 'x'])).toMatchObject({ status: 0, stdout: 'ran --demo x\n', stderr: '' });
  });

  it.each(['18.20.0', '20.20.2', '22.17.1'])('tells Node %s in one line what to do', (version) => {
    const { status, stdout, stderr } = through(version, []);
    expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
    expect(stderr.trim().split('\n')).toHaveLength(1);
    expect(stderr).toContain(`This is Node ${version}`);
    expect(stderr).toContain('npm install');
  });

  it.each(['22.18.0', '24.0.0', '26.1.0'])('lets Node %s pass', (version) => {
    expect(through(version, []).status).toBe(0);
  });
});
