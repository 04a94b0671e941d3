import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { takeLock } from '../../../../electron/node/storage/lock.ts';
import { temporaryFolder } from '../../../fixtures/temporary-folder.ts';

const module = new URL('../../../../electron/node/storage/lock.ts', import.meta.url).href;

async function anotherProcessHolding(file: string): Promise<ChildProcess> {
  const script = `import { takeLock } from ${JSON.stringify(module)}; console.log(takeLock(${JSON.stringify(file)}) === null ? 'refused' : 'held'); setInterval(() => {}, 1000);`;
  const other = spawn(process.execPath, ['--input-type=module', '--eval', script], { stdio: ['ignore', 'pipe', 'inherit'] });
  const [said] = await once(other.stdout, 'data') as [Buffer];
  expect(said.toString().trim()).toBe('held');
  return other;
}

describe('the lock of a library', () => {
  it('is held by one taker at a time and free again once released', () => {
    const file = join(temporaryFolder(), 'in-use.lock');
    const first = takeLock(file);
    expect(takeLock(file)).toBeNull();
    first?.release();
    const second = takeLock(file);
    expect(second).not.toBeNull();
    second?.release();
  });

  it('is refused while another process has it, and ends with that process however it ends', async () => {
    const file = join(temporaryFolder(), 'in-use.lock');
    const other = await anotherProcessHolding(file);
    expect(takeLock(file)).toBeNull();
    other.kill('SIGKILL');
    await once(other, 'exit');
    const mine = takeLock(file);
    expect(mine).not.toBeNull();
    mine?.release();
  });
});
