import { chmodSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { temporaryFolder } from '../../../fixtures/temporary-folder.ts';
import { browserPlaces, openAsWindow } from '../../../../electron/start/browsers.ts';

describe('an installed browser', () => {
  it('is looked for first where the person says', () => {
    for (const platform of ['linux', 'darwin', 'win32'] as const) expect(browserPlaces({ platform, env: { CORENOSE_CHROMIUM: '/opt/mine' } })[0]).toBe('/opt/mine');
  });

  it('is looked for in every folder of the path on Linux', () => {
    const places = browserPlaces({ platform: 'linux', env: { PATH: ['/usr/bin', '/snap/bin'].join(process.platform === 'win32' ? ';' : ':') } }).map((place) => place.replaceAll('\\', '/'));
    expect(places).toEqual(expect.arrayContaining(['/usr/bin/chromium', '/snap/bin/chromium', '/usr/bin/google-chrome']));
  });

  it('is looked for where applications are installed on macOS and Windows, also for one person only', () => {
    expect(browserPlaces({ platform: 'darwin', env: { HOME: '/Users/a' } })).toContain('/Applications/Chromium.app/Contents/MacOS/Chromium');
    expect(browserPlaces({ platform: 'win32', env: { LOCALAPPDATA: 'C:\\Users\\a\\AppData\\Local' } })).toContain('C:\\Users\\a\\AppData\\Local\\Chromium\\Application\\chrome.exe');
  });
});

describe.skipIf(process.platform === 'win32')('a window of an installed browser', () => {
  it('is asked for as an application, without the bars of a browser', async () => {
    const folder = temporaryFolder();
    const heard = join(folder, 'heard');
    writeFileSync(join(folder, 'browser'), `#!/bin/sh\necho "$@" > ${heard}.part && mv ${heard}.part ${heard}\n`);
    chmodSync(join(folder, 'browser'), 0o755);
    expect(await openAsWindow(join(folder, 'browser'), 'http://127.0.0.1:4801/open?key=x')).toBe(true);
    await expect.poll(() => existsSync(heard)).toBe(true);
    expect(readFileSync(heard, 'utf8')).toBe('--app=http://127.0.0.1:4801/open?key=x\n');
  });

  it('that cannot be started is told, so that another way can be tried', async () => {
    expect(await openAsWindow(join(temporaryFolder(), 'nothing'), 'http://127.0.0.1:4801/')).toBe(false);
  });
});
