import { describe, expect, it } from 'vitest';
import { browserPlaces } from '../../../../electron/start/browsers.ts';

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
