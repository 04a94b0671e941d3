import { chmodSync, mkdirSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { LIMITS } from '../../../../electron/node/photo/limits.ts';
import { photoErrorText } from '../../../../electron/node/photo/photo-error.ts';
import { readPhotoFile } from '../../../../electron/node/photo/read-photo-file.ts';
import { temporaryFolder } from '../../../fixtures/temporary-folder.ts';

const words = async (path: string): Promise<string> => {
  const read = await readPhotoFile(path);
  return read.ok ? `read ${read.value.length} bytes` : photoErrorText(read.error);
};

describe('the file of a photo', () => {
  it('is read whole', async () => {
    const file = join(temporaryFolder(), 'plug.jpg');
    writeFileSync(file, Buffer.alloc(1234, 7));
    expect(await words(file)).toBe('read 1234 bytes');
  });

  it.skipIf(process.platform === 'win32')('is not reached through a link, nor read from a device', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'plug.jpg'), 'x');
    symlinkSync(join(folder, 'plug.jpg'), join(folder, 'link.jpg'));
    expect(await words(join(folder, 'link.jpg'))).toBe('this is a symbolic link; give the picture itself');
    expect(await words('/dev/zero')).toBe('this is not an ordinary file; give a picture');
  });

  it('may have vanished, be a folder, be empty or be too large', async () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, 'tray'));
    writeFileSync(join(folder, 'empty.jpg'), '');
    writeFileSync(join(folder, 'large.jpg'), '');
    truncateSync(join(folder, 'large.jpg'), LIMITS.bytes + 1);
    expect(await words(join(folder, 'gone.jpg'))).toBe('there is no such file');
    expect(await words(join(folder, 'empty.jpg', 'below.jpg'))).toBe('there is no such file');
    expect(await words(join(folder, 'tray'))).toBe('this is a folder; give a picture');
    expect(await words(join(folder, 'empty.jpg'))).toMatch(/^the file is empty/);
    expect(await words(join(folder, 'large.jpg'))).toBe('the file is too large; at most 150 MB are read');
  });

  it.skipIf(process.platform === 'win32' || process.getuid?.() === 0)('may be closed to this person', async () => {
    const file = join(temporaryFolder(), 'plug.jpg');
    writeFileSync(file, 'x');
    chmodSync(file, 0);
    expect(await words(file)).toBe('this file may not be read');
  });
});
