import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { openedFiles, pathNamed } from '../../../electron/node/opened-files.ts';
import { SHEET_LIMIT } from '../../../shared/channels.ts';
import { temporaryFolder } from '../../fixtures/temporary-folder.ts';

function fileOf(name: string, content: string): string {
  const path = join(temporaryFolder(), name);
  writeFileSync(path, content);
  return path;
}

describe('files to open', () => {
  it('are given once each, in the order they came, by name and content', async () => {
    const opened = openedFiles();
    opened.add([fileOf('a.corenose', 'Öl'), fileOf('b.json', '')]);
    opened.add([fileOf('c.corenose', '{}')]);
    expect([await opened.take(), await opened.take(), await opened.take(), await opened.take()]).toEqual([
      { name: 'a.corenose', text: 'Öl' }, { name: 'b.json', text: '' }, { name: 'c.corenose', text: '{}' }, null,
    ]);
  });

  it('are read when they are taken, not before', async () => {
    const opened = openedFiles();
    const path = join(temporaryFolder(), 'late.corenose');
    opened.add([path]);
    writeFileSync(path, 'written after');
    expect(await opened.take()).toEqual({ name: 'late.corenose', text: 'written after' });
  });

  it('are named with the reason when they cannot be read', async () => {
    const folder = temporaryFolder();
    const opened = openedFiles();
    mkdirSync(join(folder, 'folder.corenose'));
    const file = fileOf('file.corenose', 'x');
    opened.add([join(folder, 'gone.corenose'), join(file, 'below-a-file.corenose'), join(folder, 'folder.corenose'), join(folder, 'a\0b')]);
    expect([await opened.take(), await opened.take(), await opened.take(), await opened.take()]).toEqual([
      { name: 'gone.corenose', unread: 'missing' }, { name: 'below-a-file.corenose', unread: 'missing' }, { name: 'folder.corenose', unread: 'not a file' },
      { name: 'a\0b', unread: 'unreadable' },
    ]);
  });

  it('are read up to the size of the largest sheet, and no further', async () => {
    const opened = openedFiles();
    opened.add([fileOf('full.corenose', ' '.repeat(SHEET_LIMIT)), fileOf('over.corenose', ' '.repeat(SHEET_LIMIT + 1))]);
    const full = await opened.take();
    expect(full !== null && 'text' in full ? full.text.length : full).toBe(SHEET_LIMIT);
    expect(await opened.take()).toEqual({ name: 'over.corenose', unread: 'too large' });
  });

  it.skipIf(process.platform === 'win32')('never wait for a pipe that nobody writes to', async () => {
    const pipe = join(temporaryFolder(), 'pipe.corenose');
    spawnSync('mkfifo', [pipe]);
    const opened = openedFiles();
    opened.add([pipe]);
    expect(await opened.take()).toEqual({ name: 'pipe.corenose', unread: 'not a file' });
  });
});

describe('a file on a command line', () => {
  it('is named by a path, from the present folder where it is not whole, or by its address', () => {
    const whole = resolve('/srv/plugs/a b.corenose');
    expect(pathNamed(whole)).toBe(whole);
    expect(pathNamed('a.corenose')).toBe(join(process.cwd(), 'a.corenose'));
    expect(pathNamed(pathToFileURL(whole).href)).toBe(whole);
  });

  it('of another machine is left as it is named', () => {
    expect(pathNamed('file:///a%2Fb')).toBe('file:///a%2Fb');
  });
});
